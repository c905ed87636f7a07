import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { entriesOf } from '../../study/load.ts';
import { materialOf, type Prepared } from '../../study/prepare.ts';
import type { Results } from '../../study/results.ts';
import { answersOf, type RunOptions, resultsOf } from '../../study/run-study.ts';
import { commonCount, countedBy, type Errand, type Handed } from './errand.ts';

/** With more rows than these each further thread may take a gigabyte or two, which nobody has asked for by default. */
const MANY = 50_000;

/**
 * `analyse` on all cores: this thread and one more for each further core take the analyses of a study one after
 * the other. Each analysis draws from its own random stream, so the results are the same bytes on any number of
 * threads. What a thread that cannot be had, or that ends early, leaves undone is computed here.
 *
 * @param threads how many at most, this one included; all cores by default, with very many rows this one alone.
 */
export async function analyseSideBySide(
  prepared: Prepared,
  files: ReadonlyMap<string, Uint8Array>,
  { threads, ...options }: RunOptions & { readonly threads?: number } = {},
): Promise<Results> {
  const entries = entriesOf(prepared.study);
  const most = threads ?? (prepared.all.rows > MANY ? 1 : availableParallelism());
  const copies = Math.min(most, entries.length) - 1;
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
