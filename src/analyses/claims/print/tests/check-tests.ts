import type { Check } from '../../found.ts';
import type { Evidence } from '../evidence.ts';
import { impossibleStatistic } from './impossible-statistics.ts';
import { pFromStatistic } from './p-of-statistic.ts';
import { rankTestChecks } from './rank-tests.ts';
import { degreesFromN } from './test-degrees.ts';
import { testsOf } from './test-groups.ts';

const RANKED: ReadonlySet<string> = new Set(['U', 'W', 'signed-rank', 'rho', 'tau']);

/** Test statistics, degrees of freedom and p of one text, row or set against each other. */
export function checkTests({ sets }: Evidence): Check[] {
  return [...sets.values()].flatMap((set) =>
    testsOf(set).flatMap((test) => [
      ...impossibleStatistic(test),
      ...degreesFromN(test),
      ...(RANKED.has(test.method) ? rankTestChecks(test) : test.p.flatMap((p) => pFromStatistic(test, p))),
    ]),
  );
}
