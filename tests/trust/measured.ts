import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const BUILT = fileURLToPath(new URL('../../dist/cli/main.js', import.meta.url));

/** Told by the process itself when it leaves: what it took, all threads together. */
const TELLS =
  `data:text/javascript,import { writeSync } from 'node:fs'; import { isMainThread } from 'node:worker_threads';
if (isMainThread) process.on('exit', () => writeSync(3, JSON.stringify(process.resourceUsage())));`.replaceAll(
    '\n',
    '%0A',
  );

export interface Taken {
  readonly status: number;
  /** Seconds of processor time, of all threads, and seconds until the end. */
  readonly processor: number;
  readonly wall: number;
  /** Megabytes of memory at most. */
  readonly memory: number;
  readonly out: string;
  readonly err: string;
}

/** One command line as it is built, in a process of its own, with what it took. */
export function measured(args: readonly string[], node = process.execPath): Promise<Taken> {
  const from = performance.now();
  const child = spawn(node, ['--import', TELLS, BUILT, ...args], {
    stdio: ['ignore', 'pipe', 'pipe', 'pipe'],
  });
  const said = ['', '', '', ''];
  [1, 2, 3].forEach((place) => {
    child.stdio[place]?.on('data', (part: Buffer) => {
      said[place] += part.toString();
    });
  });
  return new Promise((done) => {
    child.once('close', (status) => {
      const { userCPUTime = 0, systemCPUTime = 0, maxRSS = 0 } = said[3] === '' ? {} : JSON.parse(said[3]!);
      done({
        status: status ?? -1,
        processor: (userCPUTime + systemCPUTime) / 1e6,
        wall: (performance.now() - from) / 1000,
        memory: maxRSS / 1024,
        out: said[1]!,
        err: said[2]!,
      });
    });
  });
}
