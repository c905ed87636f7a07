import { describe, expect, it } from 'vitest';
import {
  coefficientOfVariation,
  mean,
  skewness,
  standardDeviation,
} from '../../../src/numerics/describing/moments.ts';
import { reference } from '../../references/reference.ts';
import { available, expectClose } from '../close.ts';

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
