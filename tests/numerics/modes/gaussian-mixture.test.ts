import { describe, expect, it } from 'vitest';
import { gaussianMixture } from '../../../src/numerics/modes/gaussian-mixture.ts';
import { crossing } from '../../../src/numerics/modes/mixture-parts.ts';
import { available, expectClose } from '../close.ts';
import { r } from '../modes-values.ts';

describe('Gaussian mixtures of one variable, as mclust', () => {
  it.each(r.mixtures.map((expected, index) => ({ index, k: expected.k, spread: expected.spread, expected })))(
    '$index: $k parts, $spread spread',
    ({ expected }) => {
      const found = available(gaussianMixture(expected.x, expected.k, { spread: expected.spread }));
      const list = (values: number[] | number) => (Array.isArray(values) ? values : [values]);
      expectClose(found.logLikelihood, expected.logLikelihood, 1e-8);
      expectClose(found.bic, expected.bic, 1e-8);
      found.parts.forEach((part, j) => {
        expectClose(part.mean, list(expected.mean)[j], 1e-4);
        expectClose(part.sd, list(expected.sd)[j], 1e-3);
        expectClose(part.share, list(expected.share)[j] ?? 1, 1e-3);
      });
    },
  );

  it('equal parts cross half-way', () => {
    expect(crossing({ share: 0.5, mean: 2, sd: 1 }, { share: 0.5, mean: 8, sd: 1 })).toBeCloseTo(5, 9);
  });

  it('says why not', () => {
    expect(gaussianMixture([1, 2, 3], 2)).toEqual({ why: '2 parts need at least 4 values, not 3' });
    expect(gaussianMixture([4, 4, 4, 4], 2)).toEqual({ why: 'all values are equal' });
  });
});
