import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/**
 * What every benchmark needs: processor time of ours, processor time of a yardstick in another language on
 * the same numbers, and one line that says both. Processor time of one thread, so that a busy machine
 * disturbs both alike; ratios below 1 mean that ours is faster.
 */

/** Whether a part was asked for; all are when none is named. */
export function asked(name: string): boolean {
  const wanted = process.argv.slice(2);
  return wanted.length === 0 || wanted.includes(name);
}

/** Best of several runs, in seconds of processor time. */
export function seconds(run: () => void, runs = 3): number {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < runs; i++) {
    const start = process.cpuUsage();
    run();
    const used = process.cpuUsage(start);
    best = Math.min(best, (used.user + used.system) / 1e6);
  }
  return best;
}

export interface Theirs {
  readonly seconds: number | null;
  /** Ours may take this many times as long; the yardstick stands alone where nothing was promised. */
  readonly atMost?: number;
}

/** Prints one line: our time, each yardstick with its ratio, and whether the ratio asked for is kept. */
export function report(name: string, ours: number, yardsticks: Readonly<Record<string, Theirs>>): void {
  const parts = Object.entries(yardsticks).map(([tool, { seconds: theirs, atMost }]) => {
    if (theirs === null) return `${tool} not here`;
    const ratio = ours / theirs;
    const goal =
      atMost === undefined
        ? ''
        : `, asked for at most ${printed(atMost)}: ${ratio <= atMost ? 'kept' : 'MISSED'}`;
    return `${tool} ${printed(theirs)} s (ratio ${printed(ratio)}${goal})`;
  });
  console.log([`${name}: ${printed(ours)} s`, ...parts].join('; '));
}

/** The median, the upper one of two. */
export function middle(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}

function printed(value: number): string {
  return String(Number(value.toPrecision(3)));
}

/** Most memory held at any time so far. */
export function memory(): string {
  return `at most ${(process.resourceUsage().maxRSS / 1024).toFixed(0)} MB resident`;
}

const folder = mkdtempSync(join(tmpdir(), 'thrum-bench-'));
process.on('exit', () => rmSync(folder, { recursive: true }));

/** Writes numbers where a yardstick can read them as raw doubles; gives the path. */
export function handOver(name: string, values: Float64Array): string {
  const path = join(folder, name);
  writeFileSync(path, values);
  return path;
}

/** Runs Python that calls `best(function, runs)` for each time wanted; null where it or a package is missing. */
export function python(
  code: string,
  count: number,
  environment: Readonly<Record<string, string>> = {},
): (number | null)[] {
  return times('/usr/bin/python3', ['-c', `${PYTHON}\n${code}`], count, environment);
}

/** The same in R, with `best(expression, runs)` and `numbers(path, rows, columns)`. */
export function rscript(code: string, count: number): (number | null)[] {
  return times('Rscript', ['-e', `${R}\n${code}`], count, {});
}

function times(
  command: string,
  args: readonly string[],
  count: number,
  environment: Readonly<Record<string, string>>,
): (number | null)[] {
  const env = { ...process.env, OMP_NUM_THREADS: '1', OPENBLAS_NUM_THREADS: '1', ...environment };
  const done = spawnSync(command, args, { encoding: 'utf8', env });
  const lines = done.status === 0 ? done.stdout.trim().split('\n').map(Number) : [];
  return Array.from({ length: count }, (_, i) => (Number.isFinite(lines[i]) ? lines[i] : null));
}

const PYTHON = `
import time, numpy as np
def best(f, runs=3):
    out = []
    for _ in range(runs):
        t = time.process_time(); f(); out.append(time.process_time() - t)
    print(min(out), flush=True)
def numbers(path, columns):
    return np.fromfile(path).reshape(-1, columns)`;

const R = `
best <- function(f, runs = 1) {
  out <- replicate(runs, { t <- system.time(f()); t[["user.self"]] + t[["sys.self"]] })
  cat(format(min(out), digits = 6), "\\n", sep = "")
}
numbers <- function(path, columns) {
  raw <- readBin(path, "double", file.size(path) / 8)
  matrix(raw, ncol = columns, byrow = TRUE)
}`;
