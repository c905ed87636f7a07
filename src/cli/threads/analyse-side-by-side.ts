import { entriesOf } from '../../study/load.ts';
import { materialOf, type Prepared } from '../../study/prepare.ts';
import type { Results } from '../../study/results/results.ts';
import { answersOf, type RunOptions, resultsOf } from '../../study/run-study.ts';
import type { Crew } from './crew.ts';
import { commonCount, countedBy } from './errand.ts';

/**
 * `analyse` on several threads: this one and those of the crew take the analyses of a study one after the other. Each
 * analysis draws from its own random stream, so the results are the same bytes on any number of threads. What a thread
 * that cannot be had, or that ends early, leaves undone is computed here.
 */
export async function analyseSideBySide(
  prepared: Prepared,
  files: ReadonlyMap<string, Uint8Array>,
  crew: Crew,
  options: RunOptions = {},
): Promise<Results> {
  const entries = entriesOf(prepared.study);
  const count = commonCount();
  const others = crew.send({ prepared: materialOf(prepared), files, count });
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
