import { describe, expect, it } from 'vitest';
import { fisherTails } from '../../../src/numerics/printed/fisher-tails.ts';
import { printedNumber } from '../../../src/numerics/printed/printed-number.ts';
import { exactly, overlap, printRange } from '../../../src/numerics/printed/range.ts';
import { pOf, pRange } from '../../../src/numerics/printed/test-p.ts';
import { mannWhitneyFromU } from '../../../src/numerics/printed/u-test.ts';
import { tables, tests, u } from './printed-tests-values.ts';

const relative = (found: number, wanted: number) => Math.abs(found - wanted) / Math.max(wanted, 1e-300);

describe('p from a statistic, against R', () => {
  it('equals R over the grid of t, F, chi-squared, z and r to 1e-10', () => {
    expect(tests.length).toBeGreaterThan(95);
    for (const { test, statistic, df, p } of tests)
      expect(
        relative(pOf(test, Math.abs(statistic[0]), ...df), p[0]),
        `${test} ${statistic} ${df}`,
      ).toBeLessThan(1e-10);
  });

  it.each([1, 2, 3])(
    'holds the p of R whatever the statistic was before it was printed to %i decimals',
    (places) => {
      for (const { test, statistic, df, p } of tests) {
        const printed = printRange(printedNumber(statistic[0].toFixed(places))!, 'any');
        expect(
          overlap(pRange(test, printed, df.map(exactly)), exactly(p[0])),
          `${test} ${statistic} ${df}`,
        ).toBe(true);
      }
    },
  );

  it('shuts out a p whose second significant digit is another, where the statistic has three decimals', () => {
    for (const { test, statistic, df, p } of tests) {
      // Below a millionth p moves by more than that within the third decimal; nobody prints it.
      if (p[0] > 0.8 || p[0] < 1e-6 || Math.abs(statistic[0]) < 0.3) continue;
      const printed = printRange(printedNumber(statistic[0].toFixed(3))!, 'any');
      for (const off of [0.85, 1.15])
        expect(
          overlap(pRange(test, printed, df.map(exactly)), exactly(p[0] * off)),
          `${test} ${statistic}`,
        ).toBe(false);
    }
  });

  it('equals pwilcox and the two normal approximations for U, to 1e-9', () => {
    for (const { u: value, n, exact, corrected, plain } of u) {
      const ways = mannWhitneyFromU(value, ...n).map(({ p }) => p);
      [exact, corrected, plain].forEach(([wanted], i) => {
        expect(relative(ways[i], wanted), `U ${value} of ${n}`).toBeLessThan(1e-9);
      });
    }
  });

  it('equals both tails of fisher.test, to 1e-9', () => {
    for (const { cells, less, more } of tables) {
      const [a, b, c, d] = cells;
      const [below, above] = fisherTails([
        [a, b],
        [c, d],
      ]).map(({ value }) => value);
      expect(relative(below, less[0])).toBeLessThan(1e-9);
      expect(relative(above, more[0])).toBeLessThan(1e-9);
    }
  });
});
