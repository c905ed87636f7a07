import type { FigureCheck } from '../../found.ts';
import type { Evidence } from '../evidence.ts';
import { familyChecks } from './family.ts';
import { goodnessChecks } from './goodness.ts';
import { impossibleStatistic } from './impossible-statistics.ts';
import { intervalChecks } from './intervals.ts';
import { pFromStatistic } from './p-of-statistic.ts';
import { rankTestChecks } from './rank-tests.ts';
import { degreesFromN } from './test-degrees.ts';
import { type PrintedTest, testsOf } from './test-groups.ts';

const RANKED: ReadonlySet<string> = new Set(['U', 'W', 'signed-rank', 'rho', 'tau']);

/** Test statistics, degrees of freedom and p of one text, row or set against each other. */
export function checkTests({ sets }: Evidence): FigureCheck[] {
  const tests = [...sets.values()].map((set) => ({ set, tests: testsOf(set) }));
  // What stands together is a family: the tests of a table or a set, and those of the texts of no set.
  const alone = tests.filter(
    ({ set, tests: own }) => own.length === 1 && set.every(({ line }) => line === set[0].line),
  );
  const families = [...tests.map((one) => one.tests), alone.flatMap((one) => one.tests)];
  const adjusted = new Map(families.flatMap((family) => [...familyChecks(family)]));
  return tests.flatMap(({ set, tests: own }) =>
    own.flatMap((test) => [
      ...(isElsewhere(test)
        ? byDistribution(test)
        : [
            ...impossibleStatistic(test),
            ...degreesFromN(test),
            ...goodnessChecks(test, set),
            ...intervalChecks(test, set),
            ...(RANKED.has(test.method)
              ? rankTestChecks(test)
              : test.p.flatMap((p) => adjusted.get(p.id) ?? pFromStatistic(test, p))),
          ]),
    ]),
  );
}

/** A test of another question that prints t, F, z or chi-squared: only their distribution is known. */
function isElsewhere({ statistic }: PrintedTest): boolean {
  return statistic.manners.includes('another test');
}

function byDistribution(test: PrintedTest): FigureCheck[] {
  return RANKED.has(test.method) ? [] : test.p.flatMap((p) => pFromStatistic(test, p));
}
