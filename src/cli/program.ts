import { Command } from 'commander';
import { VERSION } from '../study/version.ts';
import { describeFailure, STATUS } from './failure.ts';
import type { Terminal } from './terminal.ts';
import { checkVerb } from './verbs/check.ts';
import { openVerb } from './verbs/open.ts';
import { placeVerb } from './verbs/place.ts';
import { readVerb } from './verbs/read.ts';
import { runVerb } from './verbs/run.ts';

/** Every verb of the command line, in the order in which help lists them. */
const VERBS = [readVerb, runVerb, placeVerb, checkVerb, openVerb];

/**
 * Runs one command line and never throws: a fault becomes one sentence on the terminal's error side.
 *
 * @param args the words after `thrum`.
 * @returns the exit status.
 */
export async function runProgram(args: readonly string[], terminal: Terminal): Promise<number> {
  const program = new Command('thrum')
    .description('Where does a fabric find, or a whole site, sit among its comparanda?')
    .version(VERSION)
    .option('--trace', TRACE)
    .configureOutput({ writeOut: terminal.out, writeErr: () => undefined, outputError: () => undefined })
    .configureHelp({ helpWidth: Math.min(terminal.width, 100) })
    .exitOverride()
    .addHelpText(
      'after',
      '\nExit status: 0 done, 1 found what you asked to be told of, 2 bad input or usage.',
    );
  let status: number = STATUS.done;
  for (const verb of VERBS) {
    const command = verb(terminal, (code) => {
      status = code;
    });
    program.addCommand(command.copyInheritedSettings(program).option('--trace', TRACE));
  }
  try {
    if (args.length === 0) terminal.out(program.helpInformation());
    else await program.parseAsync([...args], { from: 'user' });
  } catch (fault) {
    const { text, status: failed } = describeFailure(fault, args.includes('--trace'));
    terminal.endProgress();
    if (text !== '') terminal.err(text);
    status = failed;
  }
  terminal.endProgress();
  return status;
}

const TRACE = 'show where in the program an unexpected fault arose';
