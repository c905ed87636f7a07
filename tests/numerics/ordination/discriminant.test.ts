import { describe, expect, it } from 'vitest';
import { discriminant } from '../../../src/numerics/ordination/discriminant.ts';
import { available } from '../close.ts';
import { r } from '../modes-values.ts';

describe('linear discriminant analysis, as MASS', () => {
  it.each(Object.entries(r.discriminant))('%s', (_, { x, groups, posterior, left, leftClass }) => {
    const all = available(discriminant(x, groups));
    const one = available(
      discriminant(
        x,
        groups,
        x.map((__, i) => i),
      ),
    );
    posterior.forEach((chances, i) => {
      chances.forEach((chance, j) => {
        expect(Math.abs(all.posterior[i][j] - chance)).toBeLessThan(1e-9);
        // MASS leaves one out by an update of the pooled spread, which is the same to rounding.
        expect(Math.abs(one.posterior[i][j] - left[i][j])).toBeLessThan(1e-7);
      });
    });
    expect([...one.predicted]).toEqual(leftClass);
  });

  it('says why not', () => {
    expect(
      discriminant(
        [
          [1, 2],
          [2, 4],
          [3, 6],
          [4, 8],
          [5, 10.0],
        ],
        [0, 0, 1, 1, 1],
      ),
    ).toHaveProperty('why');
    expect(discriminant([[1], [2]], [0, 1])).toEqual({
      why: '2 records are too few for 1 attributes and 2 classes',
    });
  });
});
