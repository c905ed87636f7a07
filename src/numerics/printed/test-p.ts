import {
  chiSquaredUpper,
  fisherUpper,
  normalTwoSided,
  studentTwoSided,
} from '../foundation/distributions.ts';
import { greatest, least } from '../foundation/lists.ts';
import { type Range, size } from './range.ts';

/** Tests whose p follows from the printed statistic and its degrees of freedom. */
export type TabledTest = 't' | 'F' | 'chi-squared' | 'z' | 'r';

/**
 * Between which values must p lie, given the print of a statistic and of its degrees of freedom?
 * t, z and r two-sided; F and chi-squared the upper tail. The p of each falls as the statistic grows, so
 * the ends of the statistic bound it; degrees of freedom are tried at both ends.
 * A correlation r of n pairs is Student's t = r sqrt(df / (1 - r^2)) with df = n - 2.
 *
 * Checked against R over a grid in tests/numerics/printed/test-p.test.ts.
 */
export function pRange(test: TabledTest, statistic: Range, df: readonly Range[]): Range {
  const [first, second] = df;
  const pairs: [number | undefined, number | undefined][] = ends(first).flatMap((one) =>
    ends(second).map((two): [number | undefined, number | undefined] => [one, two]),
  );
  const strongest = pairs.map(([one, two]) => pOf(test, farEnd(test, statistic), one, two));
  const weakest = pairs.map(([one, two]) => pOf(test, nearEnd(test, statistic), one, two));
  return { low: least(strongest), high: greatest(weakest) };
}

function ends(df: Range | undefined): readonly (number | undefined)[] {
  if (df === undefined) return [undefined];
  const low = Math.max(df.low, 1e-6);
  return low === df.high ? [low] : [low, df.high];
}

function farEnd(test: TabledTest, statistic: Range): number {
  return test === 'F' || test === 'chi-squared' ? statistic.high : size(statistic).high;
}

function nearEnd(test: TabledTest, statistic: Range): number {
  return test === 'F' || test === 'chi-squared' ? Math.max(0, statistic.low) : size(statistic).low;
}

/** p of one statistic, from 0: two-sided for t, z and r, the upper tail for F and chi-squared. */
export function pOf(test: TabledTest, statistic: number, df = Number.NaN, dfWithin = Number.NaN): number {
  if (statistic === Infinity) return 0;
  switch (test) {
    case 'z':
      return normalTwoSided(statistic);
    case 't':
      return studentTwoSided(statistic, df);
    case 'F':
      return fisherUpper(statistic, df, dfWithin);
    case 'chi-squared':
      return chiSquaredUpper(statistic, df);
    case 'r': {
      const rest = 1 - statistic * statistic;
      return rest <= 0 ? 0 : studentTwoSided(statistic * Math.sqrt(df / rest), df);
    }
  }
}

/** The statistic, from 0, whose p is this: by halving. */
export function statisticOfP(test: TabledTest, p: number, df?: number, dfWithin?: number): number {
  let [low, high] = [0, test === 'r' ? 1 : 1e4];
  for (let turn = 0; turn < 100; turn++) {
    const middle = (low + high) / 2;
    if (pOf(test, middle, df, dfWithin) > p) low = middle;
    else high = middle;
  }
  return low;
}
