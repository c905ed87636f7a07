import { createColors } from 'picocolors';
import { InputError } from '../errors.ts';
import { reasonOf } from '../report/writing/fault.ts';
import { STATUS } from './failure.ts';

/** Where a verb writes: answers to `out`, progress and faults to `err`. Nothing else in the CLI prints. */
export interface Terminal {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** Columns to fill at most. */
  readonly width: number;
  readonly colour: ReturnType<typeof createColors>;
  /** Show a passing line of progress; an empty text takes it away. */
  readonly progress: (share: number, what: string) => void;
  readonly endProgress: () => void;
}

const DEFAULT_WIDTH = 100;

/** The terminal of a process, which may fail to take what is printed. */
export interface ProcessTerminal extends Terminal {
  /**
   * Waits until all that was printed is out.
   *
   * @param status the one to leave with.
   * @returns that, or the status of bad use where the output could not take the answer.
   */
  readonly leave: (status: number) => Promise<number>;
}

/** The process's own terminal. No colour unless a person looks on and NO_COLOR (no-color.org) is unset. */
export function processTerminal(): ProcessTerminal {
  const { stdout, stderr, env } = process;
  const closed = new Set<NodeJS.WriteStream>();
  let refused: NodeJS.ErrnoException | null = null;
  for (const stream of [stdout, stderr])
    stream.on('error', (fault: NodeJS.ErrnoException) => {
      closed.add(stream);
      // `thrum run … | head` closes the pipe early: the reader's wish, and what is to be written still is.
      if (fault.code !== 'EPIPE' && stream === stdout) refused ??= fault;
    });
  const write = (stream: NodeJS.WriteStream, text: string) => {
    if (!closed.has(stream)) stream.write(text);
  };
  const colourful = stdout.isTTY === true && !env.NO_COLOR && env.TERM !== 'dumb';
  let shown = '';
  const line = (text: string) => {
    if (stderr.isTTY !== true || text === shown) return;
    shown = text;
    write(stderr, `\r\u001b[2K${text}`);
  };
  return {
    out: (text) => write(stdout, stdout.isTTY === true ? withoutSteering(text) : text),
    err: (text) => {
      line('');
      write(stderr, stderr.isTTY === true ? withoutSteering(text) : text);
    },
    width: widthOf(stdout.columns, env.COLUMNS),
    colour: createColors(colourful),
    progress: (share, what) => line(`${String(Math.round(share * 100)).padStart(3)} %  ${what}`.slice(0, 79)),
    endProgress: () => line(''),
    leave: async (status) => {
      await Promise.all([drained(stdout), drained(stderr)]);
      if (refused === null) return status;
      const fault = new InputError(
        `the answer could not be printed (${reasonOf(refused)})`,
        {},
        'send it to another file or disk',
      );
      write(stderr, `${fault.message}\n`);
      return STATUS.badInput;
    },
  };
}

/** The colours and weights that Thrum itself uses; anything else that steers a terminal came with the data. */
const OWN_CODE = /^\p{Cc}\[(?:[0-47]|2[2-47]|3[0-79]|4[0-79]|9[0-7])m$/u;
const ESCAPE = 27;

/** Takes from a text what would move the cursor, hide what was printed or run on in the terminal. */
export function withoutSteering(text: string): string {
  return text.replace(/\p{Cc}(?:\[[0-9;]*m)?|[\u202a-\u202e\u2066-\u2069]/gu, (found) => {
    if (found.startsWith('\n') || found.startsWith('\t')) return found;
    return found.charCodeAt(0) === ESCAPE && OWN_CODE.test(found) ? found : ' ';
  });
}

function drained(stream: NodeJS.WriteStream): Promise<void> {
  return new Promise((done) => {
    stream.write('', () => done());
  });
}

function widthOf(columns: number | undefined, setting: string | undefined): number {
  const wanted = columns ?? Number(setting);
  return Number.isInteger(wanted) && wanted >= 40 ? wanted : DEFAULT_WIDTH;
}
