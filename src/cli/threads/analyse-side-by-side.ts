import { availableParallelism, freemem } from 'node:os';
import { Worker } from 'node:worker_threads';
import { entriesOf } from '../../study/load.ts';
import { materialOf, type Prepared } from '../../study/prepare.ts';
import type { Results } from '../../study/results.ts';
import { answersOf, type RunOptions, resultsOf } from '../../study/run-study.ts';
import { commonCount, countedBy, type Errand, type Handed } from './errand.ts';

/** A copy of the material of a small study is no matter to any machine. */
const FEW = 50_000;

/**
 * How many further threads there is memory for: each takes a copy of the material and as much again to work with, which
 * together is no more than this process holds. Half of what is free is left to others.
 */
function threadsInMemory(rows: number): number {
  if (rows <= FEW) return Number.POSITIVE_INFINITY;
  return Math.floor(freemem() / 2 / process.memoryUsage.rss());
}

/**
 * `analyse` on all cores: this thread and one more for each further core take the analyses of a study one after
 * the other. Each analysis draws from its own random stream, so the results are the same bytes on any number of
 * threads. What a thread that cannot be had, or that ends early, leaves undone is computed here.
 *
 * @param threads how many at most, this one included; all cores by default.
 */
export async function analyseSideBySide(
  prepared: Prepared,
  files: ReadonlyMap<string, Uint8Array>,
  { threads = availableParallelism(), ...options }: RunOptions & { readonly threads?: number } = {},
): Promise<Results> {
  const entries = entriesOf(prepared.study);
  const copies = Math.min(threads, entries.length, 1 + threadsInMemory(prepared.all.rows)) - 1;
  const count = commonCount();
  const errand = { prepared: materialOf(prepared), files, count };
  const others = Array.from({ length: copies }, () => handedBy(errand));
  const begun = () => Math.min(entries.length, Atomics.load(count, 0));
  const claim = countedBy(count, prepared);
  const done = new Map(answersOf(prepared, files, { ...options, claim, begun }));
  for (const handed of await Promise.all(others)) {
    for (const [id, answer] of handed.answers) done.set(id, answer);
    for (const [id, fault] of handed.faults) options.onFault?.(id, fault);
  }
  const left = entries.flatMap(({ id }, place) => (done.has(id) ? [] : [place]));
  for (const [id, answer] of answersOf(prepared, files, { ...options, claim: () => left.shift() ?? null }))
    done.set(id, answer);
  return resultsOf(prepared, done);
}

/** What one more thread hands over; nothing, where it cannot be started or runs out of memory. */
function handedBy(errand: Errand): Promise<Handed> {
  const here = import.meta.url;
  const thread = new Worker(new URL(`./thread${here.slice(here.lastIndexOf('.'))}`, here), {
    workerData: errand,
  });
  return new Promise((settle) => {
    thread.once('message', settle);
    thread.once('error', () => settle({ answers: new Map(), faults: [] }));
    thread.once('exit', () => settle({ answers: new Map(), faults: [] }));
  });
}
