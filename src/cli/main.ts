#!/usr/bin/env node
import { Command } from 'commander';
import { VERSION } from '../study/version.ts';
import { describeFailure, STATUS } from './failure.ts';
import { processTerminal } from './terminal.ts';
import { openVerb } from './verbs/open.ts';
import { placeVerb } from './verbs/place.ts';
import { readVerb } from './verbs/read.ts';
import { runVerb } from './verbs/run.ts';

/** `thrum`: one verb, one file under verbs/. */
async function main(argv: readonly string[]): Promise<number> {
  const terminal = processTerminal();
  const program = new Command('thrum')
    .description('Where does a fabric find, or a whole site, sit among its comparanda?')
    .version(VERSION)
    .option('--trace', 'show where in the program an unexpected fault arose')
    .configureOutput({ writeOut: terminal.out, writeErr: () => undefined, outputError: () => undefined })
    .exitOverride()
    .addHelpText(
      'after',
      '\nExit status: 0 done, 1 found what you asked to be told of, 2 bad input or usage.',
    );
  let status: number = STATUS.done;
  for (const verb of [readVerb, runVerb, placeVerb, openVerb]) {
    program.addCommand(
      verb(terminal, (code) => {
        status = code;
      })
        .copyInheritedSettings(program)
        .option('--trace', 'show where in the program an unexpected fault arose'),
    );
  }
  try {
    if (argv.length === 2) program.help();
    await program.parseAsync([...argv]);
  } catch (fault) {
    const { text, status: failed } = describeFailure(fault, argv.includes('--trace'));
    terminal.endProgress();
    if (text !== '') terminal.err(text);
    status = failed;
  }
  terminal.endProgress();
  return status;
}

process.exitCode = await main(process.argv);
