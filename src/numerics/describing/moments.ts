import { doubledMean, doubledSum, squaredDeviations } from '../foundation/sums.ts';
import type { Unavailable } from '../foundation/unavailable.ts';

/**
 * Mean, spread and lean of plain numbers. Values must be finite: whoever calls decides first what a
 * gap or an open-ended reading means. Checked against NIST's certified univariate sets and R in
 * tests/numerics/describing/moments.test.ts.
 */

/** Arithmetic mean; needs one value. */
export function mean(values: ArrayLike<number>): number | Unavailable {
  if (values.length === 0) return { why: 'no value to take a mean of' };
  return doubledMean(values).high;
}

/** Sample standard deviation with divisor n - 1, about a mean of twice the precision. Needs two values. */
export function standardDeviation(values: ArrayLike<number>): number | Unavailable {
  if (values.length < 2) return { why: `a standard deviation needs 2 values, not ${values.length}` };
  return Math.sqrt(squaredDeviations(values, doubledMean(values)) / (values.length - 1));
}

/** Standard deviation as a share of the mean. Makes sense for ratio scales only; needs a mean above 0. */
export function coefficientOfVariation(values: ArrayLike<number>): number | Unavailable {
  const sd = standardDeviation(values);
  if (typeof sd !== 'number')
    return { why: sd.why.replace('standard deviation', 'coefficient of variation') };
  const average = doubledMean(values).high;
  if (average <= 0) return { why: 'a coefficient of variation needs a mean above 0' };
  return sd / average;
}

/**
 * Skewness, adjusted Fisher-Pearson G1 = g1 sqrt(n (n - 1)) / (n - 2) (Joanes & Gill 1998, The
 * Statistician 47:183). Positive: the long tail is on the side of large values. Needs three values
 * that are not all equal.
 */
export function skewness(values: ArrayLike<number>): number | Unavailable {
  const n = values.length;
  if (n < 3) return { why: `skewness needs 3 values, not ${n}` };
  const centre = doubledMean(values);
  const second = squaredDeviations(values, centre);
  if (second === 0) return { why: 'all values are equal, so there is no skewness' };
  const cubes = Float64Array.from(values, (value) => {
    const deviation = value - centre.high - centre.low;
    return deviation * deviation * deviation;
  });
  const variance = second / n;
  const g1 = doubledSum(cubes).high / n / (variance * Math.sqrt(variance));
  return g1 * (Math.sqrt(n * (n - 1)) / (n - 2));
}
