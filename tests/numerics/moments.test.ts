import { describe, expect, it } from 'vitest';
import { coefficientOfVariation, mean, skewness, standardDeviation } from '../../src/numerics/moments.ts';
import { reference } from '../references/reference.ts';
import { available, expectClose } from './close.ts';

interface Sample {
  values: number[];
  mean: number[];
  sd: number[];
  skewness: number[];
}
const { samples, tool, version } = reference<{ samples: Record<string, Sample> }>('moments');

describe(`moments, as ${tool} (${version})`, () => {
  it.each(Object.entries(samples))(
    'of the sample "%s" agree within 1e-12, skewness within 1e-9',
    (_, sample) => {
      const values = Object.freeze(sample.values);
      expectClose(available(mean(values)), sample.mean[0], 1e-12);
      expectClose(available(standardDeviation(values)), sample.sd[0], 1e-12);
      expectClose(available(skewness(values)), sample.skewness[0], 1e-9);
    },
  );
});

const alternating = (first: number, low: number, high: number) => [
  first,
  ...Array.from({ length: 500 }, () => [low, high]).flat(),
];

// NIST/ITL Statistical Reference Datasets, univariate summary statistics: certified mean and standard
// deviation. The tolerances of NumAcc3 and NumAcc4 are what the stored doubles themselves can hold.
describe('certified univariate sets of NIST', () => {
  const sets: [name: string, values: readonly number[], mean: number, sd: number, tolerance: number][] = [
    ['Michelso', samples.michelson.values, 299.8524, 0.0790105478190518, 1e-12],
    ['NumAcc1', [10000001, 10000003, 10000002], 10000002, 1, 0],
    ['NumAcc2', alternating(1.2, 1.1, 1.3), 1.2, 0.1, 1e-14],
    ['NumAcc3', alternating(1000000.2, 1000000.1, 1000000.3), 1000000.2, 0.1, 4e-10],
    ['NumAcc4', alternating(10000000.2, 10000000.1, 10000000.3), 10000000.2, 0.1, 6e-9],
  ];
  it.each(sets)('%s', (_, values, certifiedMean, certifiedSd, tolerance) => {
    expectClose(available(mean(values)), certifiedMean, Math.max(tolerance, Number.EPSILON));
    expectClose(available(standardDeviation(values)), certifiedSd, Math.max(tolerance, Number.EPSILON));
  });
});

describe('what cannot be computed says why', () => {
  it('a mean of nothing, a spread of one value, a skewness of two', () => {
    expect(mean([])).toEqual({ why: 'no value to take a mean of' });
    expect(standardDeviation([4])).toEqual({ why: 'a standard deviation needs 2 values, not 1' });
    expect(skewness([1, 2])).toEqual({ why: 'skewness needs 3 values, not 2' });
    expect(skewness([7, 7, 7])).toEqual({ why: 'all values are equal, so there is no skewness' });
    expect(coefficientOfVariation([-1, 1, 0])).toEqual({
      why: 'a coefficient of variation needs a mean above 0',
    });
  });

  it('a coefficient of variation is the standard deviation over the mean', () => {
    const { values, sd, mean: average } = samples.plain;
    expectClose(available(coefficientOfVariation(values)), sd[0] / average[0], 1e-14);
  });
});
