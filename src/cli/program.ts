import { Command } from 'commander';
import { VERSION } from '../study/version.ts';
import { describeFailure, STATUS } from './failure.ts';
import type { Terminal } from './terminal.ts';
import type { Verb } from './verbs/verb.ts';

/** Every verb of the command line, in the order in which help lists them; each is loaded when it is called. */
const VERBS: Readonly<Record<string, () => Promise<Verb>>> = {
  read: async () => (await import('./verbs/read.ts')).readVerb,
  run: async () => (await import('./verbs/run.ts')).runVerb,
  place: async () => (await import('./verbs/place.ts')).placeVerb,
  check: async () => (await import('./verbs/check.ts')).checkVerb,
  explain: async () => (await import('./verbs/explain.ts')).explainVerb,
  open: async () => (await import('./verbs/open.ts')).openVerb,
  demo: async () => (await import('./verbs/demo.ts')).demoVerb,
};

/** The verbs that a command line needs: the one it names; none for the version alone; all of them for help. */
async function verbsFor(args: readonly string[]): Promise<readonly Verb[]> {
  const named = args.find((word) => !word.startsWith('-')) ?? '';
  const one = Object.hasOwn(VERBS, named) ? VERBS[named] : undefined;
  if (one !== undefined) return [await one()];
  if (named === '' && args.some((word) => word === '--version' || word === '-V')) return [];
  return Promise.all(Object.values(VERBS).map((load) => load()));
}

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
  for (const verb of await verbsFor(args)) {
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
