import { constants } from 'node:os';
import { CommanderError } from 'commander';
import { InputError } from '../errors.ts';
import { Interrupted } from '../report/writing/fault.ts';
import { tame } from './text-table.ts';

/** Exit statuses: 0 done; 1 the run found what the caller asked to be told of; 2 bad input or usage. */
export const STATUS = { done: 0, found: 1, badInput: 2 } as const;

/** What to print on standard error for a fault, and the status to leave with. */
export function describeFailure(fault: unknown, trace: boolean): { text: string; status: number } {
  if (fault instanceof InputError) return { text: `${tame(fault.message)}\n`, status: STATUS.badInput };
  if (fault instanceof Interrupted)
    return {
      text: 'Stopped; nothing was written.\n',
      status: 128 + (constants.signals[fault.signal as NodeJS.Signals] ?? 2),
    };
  if (fault instanceof CommanderError) return commanderFailure(fault);
  const said = fault instanceof Error ? fault.message.split('\n')[0] : String(fault);
  if (trace) return { text: `${fault instanceof Error ? fault.stack : said}\n`, status: STATUS.badInput };
  return {
    text: `A fault in Thrum itself, not in your material (${tame(said)}); run the command again with --trace to see where.\n`,
    status: STATUS.badInput,
  };
}

/** Help and version end well; everything else that commander finds is a fault of usage. */
function commanderFailure(fault: CommanderError): { text: string; status: number } {
  if (fault.exitCode === 0) return { text: '', status: STATUS.done };
  if (fault.code === 'commander.help')
    return {
      text: 'there is no such verb; thrum --help lists what can be asked.\n',
      status: STATUS.badInput,
    };
  const [, said, near] = /^(?:error: )?(.*?)\.?\s*(?:\(Did you mean (.*)\?\))?$/s.exec(fault.message) ?? [];
  const mend = near === undefined ? 'thrum --help lists what can be asked' : `write ${near} if that is meant`;
  return { text: `${said ?? fault.message}; ${mend}.\n`, status: STATUS.badInput };
}
