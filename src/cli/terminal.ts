import { createColors } from 'picocolors';

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

/** The process's own terminal. No colour unless a person looks on and NO_COLOR (no-color.org) is unset. */
export function processTerminal(): Terminal {
  const { stdout, stderr, env } = process;
  const closed = new Set<NodeJS.WriteStream>();
  for (const stream of [stdout, stderr])
    stream.on('error', (fault: NodeJS.ErrnoException) => {
      // `thrum run … | head` closes the pipe early: the reader's wish, and what is to be written still is.
      if (fault.code !== 'EPIPE') throw fault;
      closed.add(stream);
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
    out: (text) => write(stdout, text),
    err: (text) => {
      line('');
      write(stderr, text);
    },
    width: widthOf(stdout.columns, env.COLUMNS),
    colour: createColors(colourful),
    progress: (share, what) => line(`${String(Math.round(share * 100)).padStart(3)} %  ${what}`.slice(0, 79)),
    endProgress: () => line(''),
  };
}

function widthOf(columns: number | undefined, setting: string | undefined): number {
  const wanted = columns ?? Number(setting);
  return Number.isInteger(wanted) && wanted >= 40 ? wanted : DEFAULT_WIDTH;
}
