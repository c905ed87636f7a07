import { describe, expect, it } from 'vitest';
import { chiSquaredUpper } from '../../../src/numerics/foundation/distributions.ts';
import { exp, ln } from '../../../src/numerics/foundation/elementary.ts';
import { logFactorial } from '../../../src/numerics/foundation/log-factorial.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import {
  binomial,
  dealtOut,
  drawnAgain,
  hypergeometric,
} from '../../../src/numerics/resampling/drawn-counts.ts';

const DRAWS = 20_000;

/** p that so many draws come from these chances: Pearson's chi-squared, values of fewer than 8 expected draws together. */
function fit(draws: readonly number[], chance: (value: number) => number, most: number): number {
  const seen = new Map<number, number>();
  for (const value of draws) seen.set(value, (seen.get(value) ?? 0) + 1);
  let [statistic, cells, restSeen, restExpected] = [0, 0, 0, 0];
  const add = (count: number, expected: number) => {
    statistic += (count - expected) ** 2 / expected;
    cells++;
  };
  for (let value = 0; value <= most; value++) {
    const expected = DRAWS * chance(value);
    const count = seen.get(value) ?? 0;
    if (expected >= 8) add(count, expected);
    else {
      restSeen += count;
      restExpected += expected;
    }
  }
  // What the formulas leave out would be a value that cannot be.
  if (restExpected >= 1) add(restSeen, restExpected);
  else expect(restSeen).toBeLessThanOrEqual(5);
  return chiSquaredUpper(statistic, cells - 1);
}

const choose = (n: number, k: number) => logFactorial(n) - logFactorial(k) - logFactorial(n - k);

describe('the chances of counts are those of the formulas', () => {
  it.each([
    [40, 0.1],
    [40, 0.9],
    [200, 0.5],
    [5000, 0.3],
    [5000, 0.995],
    [100_000, 0.02],
  ])('of %d trials with a chance of %d (binomial)', (n, p) => {
    const random = createRandom(n);
    const draws = Array.from({ length: DRAWS }, () => binomial(n, p, random));
    const chance = (k: number) => exp(choose(n, k) + k * ln(p) + (n - k) * ln(1 - p));
    expect(fit(draws, chance, n)).toBeGreaterThan(0.001);
  });

  it.each([
    [6, 14, 8],
    [30, 20, 5],
    [300, 50, 340],
    [300, 500, 200],
    [500, 300, 650],
    [9000, 1000, 4000],
    [40, 60_000, 20_000],
  ])('of %d marked and %d others, %d drawn (hypergeometric)', (marked, others, wanted) => {
    const random = createRandom(marked);
    const draws = Array.from({ length: DRAWS }, () => hypergeometric(marked, others, wanted, random));
    const all = choose(marked + others, wanted);
    const chance = (k: number) =>
      k > marked || wanted - k > others || k > wanted
        ? 0
        : exp(choose(marked, k) + choose(others, wanted - k) - all);
    expect(fit(draws, chance, Math.min(marked, wanted))).toBeGreaterThan(0.001);
  });
});

describe('several kinds', () => {
  const counts = [4000, 0, 900, 100, 1];

  it('come as many as are drawn, none more often than it is dealt from, and in their shares', () => {
    const random = createRandom(7);
    const sums = new Float64Array(counts.length);
    for (let draw = 0; draw < 400; draw++) {
      const dealt = dealtOut(counts, 2000, random);
      expect(dealt.reduce((sum, count) => sum + count, 0)).toBe(2000);
      for (const [kind, count] of dealt.entries()) {
        expect(count).toBeLessThanOrEqual(counts[kind]!);
        sums[kind]! += count;
      }
    }
    // Six standard errors of the mean of 400 deals, by the variance of the hypergeometric.
    for (const [kind, count] of counts.entries()) {
      const share = count / 5001;
      const variance = (2000 * share * (1 - share) * 3001) / 5000;
      expect(Math.abs(sums[kind]! / 400 - 2000 * share)).toBeLessThanOrEqual(6 * Math.sqrt(variance / 400));
    }
  });

  it('are drawn again by shares that do not add up to the last digit, and by the seed', () => {
    const shares = [0.1, 0.2, 0.3, 0.4 + 1e-15];
    const draw = () => drawnAgain(shares, 30_000, createRandom(3));
    expect(draw().reduce((sum, count) => sum + count, 0)).toBe(30_000);
    expect(draw()).toEqual(draw());
    for (const [kind, count] of draw().entries())
      expect(Math.abs(count / 30_000 - shares[kind]!)).toBeLessThan(0.02);
    expect([...drawnAgain([0, 5, 0], 9, createRandom(1))]).toEqual([0, 9, 0]);
    expect([...dealtOut([3, 2], 5, createRandom(1))]).toEqual([3, 2]);
    expect([...dealtOut([3, 2], 0, createRandom(1))]).toEqual([0, 0]);
  });
});
