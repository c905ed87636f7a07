import { describe, expect, it } from 'vitest';
import { exactShareLimits, jeffreysShareLimits } from '../../src/numerics/assemblages/shares.ts';
import { intervalDistribution, intervalQuantile } from '../../src/numerics/describing/turnbull.ts';
import { ln } from '../../src/numerics/foundation/elementary.ts';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { permutationTest } from '../../src/numerics/resampling/permutation.ts';
import { association, withoutEmptyLines } from '../../src/numerics/tests/contingency.ts';
import { equivalentMeans, smallestDetectableDelta } from '../../src/numerics/tests/equivalence.ts';
import { fisherExact } from '../../src/numerics/tests/fisher-exact.ts';
import { jonckheereTerpstra, spearman } from '../../src/numerics/tests/trend.ts';
import { reference } from '../references/reference.ts';
import { available, expectClose } from './close.ts';

interface Reference {
  contingency: Record<
    string,
    {
      table: number[][];
      chiSquared: number;
      df: number;
      p: number;
      g: number;
      gP: number;
      cramersV: number;
      fisher: number | null;
      residuals: number[][];
    }
  >;
  limits: { count: number; n: number; exact: number[]; jeffreys: number[] }[];
  turnbull: { low: number[]; high: (string | number)[]; time: number[]; surv: number[] };
  spearman: Record<string, { x: number[]; y: number[]; rho: number; p: number }>;
  equivalence: { first: number[]; second: number[]; margin: number; p: number; interval: number[] };
}

const r = reference<Reference>('counts-and-trends');
const random = () => createRandom(11);

describe(`tables of counts, as ${r.tool} ${r.version}`, () => {
  it.each(Object.entries(r.contingency))('%s', (_, expected) => {
    const found = available(association(expected.table));
    expectClose(found.chiSquared, expected.chiSquared);
    expect(found.df).toBe(expected.df);
    expectClose(found.p, expected.p, 1e-7);
    expectClose(found.g, expected.g);
    expectClose(found.gP, expected.gP, 1e-7);
    expectClose(found.cramersV, expected.cramersV);
    found.residuals.forEach((line, i) => {
      line.forEach((residual, j) => {
        expectClose(residual, expected.residuals[i][j]);
      });
    });
    if (expected.fisher !== null) {
      const exact = available(fisherExact(expected.table, random()));
      expect(exact.method).toBe('exact');
      expectClose(exact.p, expected.fisher, 1e-7);
    }
  });

  it('draws tables where they are too many to walk, and comes near the chi-squared p', () => {
    const { table, p } = r.contingency.caithness;
    const drawn = available(
      fisherExact(
        table.map((line) => line.map((count) => Math.ceil(count / 15))),
        random(),
      ),
    );
    expect(drawn.p).toBeGreaterThan(0);
    expect(p).toBeLessThan(1e-9);
    expect(drawn.p).toBeLessThan(0.001);
  });

  it('contributions of the cells add up to one', () => {
    const { contributions } = available(association(r.contingency.hairEye.table));
    expectClose(
      contributions.flat().reduce((sum, part) => sum + part, 0),
      1,
    );
  });

  it('a corrected V of independent counts is 0', () => {
    expect(
      available(
        association([
          [10, 20],
          [20, 40],
        ]),
      ).cramersVCorrected,
    ).toBe(0);
  });

  it('says why not', () => {
    expect(association([[1, 2]])).toEqual({ why: 'an association needs two rows and two columns' });
    expect(
      association([
        [1, 0],
        [2, 0],
      ]),
    ).toEqual({ why: 'a row or column of the table is empty' });
    expect(
      withoutEmptyLines([
        [1, 0, 2],
        [0, 0, 0],
        [3, 0, 1],
      ]),
    ).toEqual({
      table: [
        [1, 2],
        [3, 1],
      ],
      rows: [0, 2],
      columns: [0, 2],
    });
  });
});

// Fisher 1935, The Design of Experiments: the lady tasting tea; table from memory, p by arithmetic.
it('Fisher’s tea: two-sided p 34/70', () => {
  expectClose(
    available(
      fisherExact(
        [
          [3, 1],
          [1, 3],
        ],
        random(),
      ),
    ).p,
    34 / 70,
  );
});

describe(`limits of shares, as ${r.tool}`, () => {
  it.each(r.limits)('$count of $n', ({ count, n, exact, jeffreys }) => {
    const clopper = available(exactShareLimits(count, n));
    expectClose(clopper.low, exact[0], 1e-8);
    expectClose(clopper.high, exact[1], 1e-8);
    const posterior = available(jeffreysShareLimits(count, n));
    if (count > 0) expectClose(posterior.low, jeffreys[0], 1e-8);
    else expect(posterior.low).toBe(0);
    if (count < n) expectClose(posterior.high, jeffreys[1], 1e-8);
    else expect(posterior.high).toBe(1);
  });

  // Newcombe 1998, Stat. Med. 17:857, Table I, method 5 (Clopper-Pearson).
  it('Newcombe’s table: 81/263 lies between 0.2527 and 0.3676, 0/20 below 0.1684', () => {
    expect(available(exactShareLimits(81, 263)).low).toBeCloseTo(0.2527, 4);
    expect(available(exactShareLimits(81, 263)).high).toBeCloseTo(0.3676, 4);
    expect(available(exactShareLimits(0, 20)).high).toBeCloseTo(0.1684, 4);
  });
});

describe('readings that are intervals', () => {
  const { low } = r.turnbull;
  const high = r.turnbull.high.map(Number);
  const found = available(intervalDistribution(low, high));

  // Gentleman & Geyer 1994, Biometrika 81:618: the conditions that only the maximum meets.
  it('reaches the maximum of the likelihood', () => {
    const chance = low.map((l, i) => {
      let sum = 0;
      found.share.forEach((share, j) => {
        if (found.low[j] >= l && found.high[j] <= high[i]) sum += share;
      });
      return sum;
    });
    found.share.forEach((share, j) => {
      let gradient = 0;
      low.forEach((l, i) => {
        if (found.low[j] >= l && found.high[j] <= high[i]) gradient += 1 / chance[i];
      });
      expect(gradient).toBeLessThan(low.length * (1 + 1e-6));
      if (share > 1e-6) expectClose(gradient, low.length, 1e-6);
    });
    expectClose(
      found.share.reduce((sum, share) => sum + share, 0),
      1,
    );
  });

  // survfit 3.5 stops as soon as no share moves by more than 5e-5 in a step, well short of the maximum.
  it('agrees with R’s survfit as far as that iterates', () => {
    let compared = 0;
    let below = 0;
    found.share.forEach((share, j) => {
      below += share;
      const middle = (found.low[j] + found.high[j]) / 2;
      const at = r.turnbull.time.findIndex((time) => Math.abs(time - middle) < 1e-9);
      if (at < 0) return;
      compared++;
      expect(Math.abs(1 - below - r.turnbull.surv[at])).toBeLessThan(5e-3);
    });
    expect(compared).toBeGreaterThan(15);
  });

  it('exact readings give the ordinary distribution', () => {
    const exact = available(intervalDistribution([1, 2, 2, 5], [1, 2, 2, 5]));
    expect([...exact.low]).toEqual([1, 2, 5]);
    expect([...exact.share]).toEqual([0.25, 0.5, 0.25]);
    expect(intervalQuantile(exact, 0.5)).toEqual({ low: 2, high: 2 });
  });

  // Readings 2, <1, 3.5, <0.5, 1.5 with lower limit 0: the median is 1.5 whatever the censored ones are.
  it('the median of 2, <1, 3.5, <0.5, 1.5 is 1.5', () => {
    const mixed = available(intervalDistribution([2, 0, 3.5, 0, 1.5], [2, 1, 3.5, 0.5, 1.5]));
    expect(intervalQuantile(mixed, 0.5)).toEqual({ low: 1.5, high: 1.5 });
  });
});

describe('trends', () => {
  it.each(Object.entries(r.spearman))('Spearman, %s, as R', (_, { x, y, rho, p }) => {
    const found = available(spearman(x, y));
    expectClose(found.statistic, rho);
    expectClose(found.p, p, 1e-7);
  });

  // Hollander & Wolfe 1999, Table 6.6 (motivational effect of knowledge of performance), from memory:
  // J = 79; the book's 2.02 leaves the ties in the variance, (79 - 54) / sqrt(153).
  it('Jonckheere-Terpstra, Hollander & Wolfe table 6.6: J = 79', () => {
    const found = available(
      jonckheereTerpstra([
        [40, 35, 38, 43, 44, 41],
        [38, 40, 47, 44, 40, 42],
        [48, 40, 45, 43, 46, 44],
      ]),
    );
    expect(found.statistic).toBe(79);
    expect(found.z).toBeGreaterThan((79 - 54) / Math.sqrt(153));
  });

  it('its mean and variance, ties included, are those over every relabelling', () => {
    const values = [1, 2, 2, 3, 3, 3, 5, 6];
    const labels = [0, 0, 0, 1, 1, 1, 2, 2];
    const split = (dealt: ArrayLike<number>) =>
      [0, 1, 2].map((label) => values.filter((_, i) => dealt[i] === label));
    const seen: number[] = [];
    permutationTest(
      labels,
      (dealt) => {
        const found = available(jonckheereTerpstra(split(dealt)));
        seen.push(found.statistic);
        return found.statistic;
      },
      { random: random() },
    );
    const every = seen.slice(1);
    const mean = every.reduce((sum, j) => sum + j, 0) / every.length;
    const variance = every.reduce((sum, j) => sum + (j - mean) * (j - mean), 0) / every.length;
    const observed = available(jonckheereTerpstra(split(labels)));
    expectClose(observed.z, (observed.statistic - mean) / Math.sqrt(variance));
  });

  it('its sign follows the order of the groups', () => {
    expect(
      available(
        jonckheereTerpstra([
          [1, 2],
          [3, 4],
          [5, 6],
        ]),
      ).z,
    ).toBeGreaterThan(0);
    expect(
      available(
        jonckheereTerpstra([
          [5, 6],
          [3, 4],
          [1, 2],
        ]),
      ).z,
    ).toBeLessThan(0);
  });
});

describe('alike within a margin', () => {
  it('two one-sided Welch tests, as R', () => {
    const { first, second, margin, p, interval } = r.equivalence;
    const found = available(equivalentMeans(first, second, margin));
    expectClose(found.p, p, 1e-7);
    expectClose(found.low, interval[0]);
    expectClose(found.high, interval[1]);
  });

  it('equal samples are alike within 20 %, distant ones are not', () => {
    const near = [10, 11, 9, 10, 10.5].map(ln);
    const far = [20, 22, 18, 21, 19].map(ln);
    expect(available(equivalentMeans(near, near, ln(1.2))).p).toBeLessThan(0.05);
    expect(available(equivalentMeans(near, far, ln(1.2))).p).toBeGreaterThan(0.5);
  });

  // Noether 1987, equation 5, by hand: z(0.025) + z(0.2) = 2.801585; 2 x 2.801585 / sqrt(12 x 0.25 x 40) = 0.511497.
  it('twenty against twenty finds deltas from 0.51', () => {
    expect(available(smallestDetectableDelta(20, 20))).toBeCloseTo(0.5115, 4);
    expect(smallestDetectableDelta(3, 3)).toEqual({
      why: 'with 3 and 3 items even complete separation could be missed',
    });
  });
});
