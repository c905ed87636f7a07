import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { permutationTest } from '../../../src/numerics/resampling/permutation.ts';
import { oneWayAnova, welchAnova } from '../../../src/numerics/tests/analysis-of-variance.ts';
import { andersonDarling } from '../../../src/numerics/tests/anderson-darling.ts';
import { kolmogorovSmirnov } from '../../../src/numerics/tests/kolmogorov-smirnov.ts';
import { kruskalWallis } from '../../../src/numerics/tests/kruskal-wallis.ts';
import { mannWhitney } from '../../../src/numerics/tests/mann-whitney.ts';
import { medianDifference } from '../../../src/numerics/tests/pairwise-median.ts';
import { reference } from '../../references/reference.ts';
import { available, expectClose } from '../close.ts';
import { kSample, twoSample } from '../rank-values.ts';

describe('worked examples', () => {
  // Hollander & Wolfe 1999, Nonparametric Statistical Methods, Table 4.1; p computed with R 4.2.2 wilcox.test.
  it('Hollander & Wolfe, table 4.1: W = 35, exact two-sided p 0.2544123', () => {
    const { first, second } = twoSample.hollanderWolfe41;
    const test = available(mannWhitney(first, second));
    expect(test.statistic).toBe(35);
    expect(test.p).toBeCloseTo(0.2544123, 7);
    expectClose(available(medianDifference(first, second)), 0.305);
  });

  // Hollander & Wolfe 1999, Table 6.1; exact p counted over all 252,252 relabellings.
  it('Hollander & Wolfe, table 6.1: H = 27/35, chi-squared p 0.67996, exact p 179294/252252', () => {
    const { groups } = kSample.hollanderWolfe61;
    expectClose(available(kruskalWallis(groups)).statistic, 27 / 35);
    expect(available(kruskalWallis(groups)).p).toBeCloseTo(0.67996, 5);
    const labels = groups.flatMap((group, label) => group.map(() => label));
    const values = groups.flat();
    const exact = permutationTest(
      labels,
      (dealt) =>
        available(kruskalWallis([0, 1, 2].map((label) => values.filter((__, i) => dealt[i] === label))))
          .statistic,
      { random: createRandom(1) },
    );
    expect(exact).toMatchObject({ method: 'exact', relabellings: 252252 });
    expectClose(exact.p, 179294 / 252252);
  });

  it('three against three, all apart: the smallest two-sided p there is, 0.1', () => {
    expectClose(available(mannWhitney([1, 2, 3], [4, 5, 6])).p, 0.1);
  });

  // Scholz & Stephens 1987, section 8 (paper smoothness, four laboratories), as given in scipy.stats.anderson_ksamp's tests.
  it('Anderson-Darling of four laboratories: 4.480 when standardised', () => {
    const laboratories = [
      [38.7, 41.5, 43.8, 44.5, 45.5, 46.0, 47.7, 58.0],
      [39.2, 39.3, 39.7, 41.4, 41.8, 42.9, 43.3, 45.8],
      [34.0, 35.0, 39.0, 40.0, 43.0, 43.0, 44.0, 45.0],
      [34.0, 34.8, 34.8, 35.4, 37.2, 37.8, 41.2, 42.8],
    ];
    const values = laboratories.flat();
    const labels = laboratories.flatMap((group, label) => group.map(() => label));
    const { raw, mean, sd, standardised } =
      reference<Record<'raw' | 'mean' | 'sd' | 'standardised', number>>('anderson-darling');
    const statistic = andersonDarling(values, labels, 4);
    expectClose(statistic, raw);
    expectClose((statistic - mean) / sd, standardised);
    // The paper prints 4.480 for this version (ties by mid-distribution).
    expect((statistic - mean) / sd).toBeCloseTo(4.48, 3);
  });
});

describe('what cannot be tested says why', () => {
  it.each([
    ['one group', () => kruskalWallis([[1, 2]]), 'a comparison needs two groups'],
    ['an empty group', () => mannWhitney([], [1]), 'group 1 has no value; 1 needed'],
    ['all ties', () => kruskalWallis([[2, 2], [2]]), 'all values are equal'],
    [
      'no spread within',
      () =>
        oneWayAnova([
          [1, 1],
          [2, 2],
        ]),
      'no group has any spread within',
    ],
    [
      'one value a group',
      () => oneWayAnova([[1], [2]]),
      'every group has a single value, so there is no spread to judge by',
    ],
    ['Welch with a single value', () => welchAnova([[1, 2], [3]]), 'group 2 has only 1; 2 needed'],
    ['curves of equal values', () => kolmogorovSmirnov([1], [1, 1]), 'all values are equal'],
  ])('%s', (_, compute, why) => {
    expect(compute()).toEqual({ why });
  });
});
