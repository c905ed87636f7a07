import { describe, expect, it } from 'vitest';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { dip, dipTest } from '../../src/numerics/modes/dip.ts';
import { gaussianMixture } from '../../src/numerics/modes/gaussian-mixture.ts';
import { crossing } from '../../src/numerics/modes/mixture-parts.ts';
import { discriminant } from '../../src/numerics/ordination/discriminant.ts';
import { reference } from '../references/reference.ts';
import { available, expectClose } from './close.ts';

interface Reference {
  dips: Record<string, { x: number[]; dip: number; p?: number }>;
  mixtures: {
    x: number[];
    k: number;
    spread: 'equal' | 'own';
    logLikelihood: number;
    bic: number;
    mean: number[] | number;
    sd: number[] | number;
    share: number[] | number;
  }[];
  discriminant: Record<
    string,
    { x: number[][]; groups: number[]; posterior: number[][]; left: number[][]; leftClass: number[] }
  >;
}
const r = reference<Reference>('modes');
const sorted = (values: number[]) => Float64Array.from(values).sort();

describe(`dip, as ${r.tool} ${r.version}`, () => {
  it.each(Object.entries(r.dips))('%s', (_, { x, dip: expected }) => {
    expectClose(dip(sorted(x)), expected);
  });

  it.each(Object.entries(r.dips).filter(([, { p }]) => p !== undefined))(
    'p of %s, within the noise of both simulations',
    (_, { x, p }) => {
      const found = available(dipTest(x, createRandom(4), 1999));
      expect(Math.abs(found.p - (p as number))).toBeLessThan(
        5 * Math.sqrt(Math.max(p as number, 5e-4) / 1999),
      );
    },
  );

  it('never gives a p of 0 and needs four values', () => {
    expect(available(dipTest(r.dips.eruptions.x, createRandom(4), 99)).p).toBe(0.01);
    expect(dipTest([1, 2, 3], createRandom(4))).toEqual({
      why: 'a test for several modes needs 4 values, not 3',
    });
  });
});

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
