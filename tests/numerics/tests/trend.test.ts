import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { permutationTest } from '../../../src/numerics/resampling/permutation.ts';
import { jonckheereTerpstra, spearman } from '../../../src/numerics/tests/trend.ts';
import { available, expectClose } from '../close.ts';
import { r } from '../counts-and-trends-values.ts';

const random = () => createRandom(11);

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
