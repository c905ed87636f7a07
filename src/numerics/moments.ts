import type { Unavailable } from './unavailable.ts';

/**
 * Mean, spread and lean of plain numbers. Values must be finite: whoever calls decides first what a
 * gap or an open-ended reading means. Checked against NIST's certified univariate sets and scipy in
 * tests/numerics/moments.test.ts.
 */

/** Sum with the rounding errors carried along (Neumaier 1974, Z. Angew. Math. Mech. 54:39). */
export function sum(values: ArrayLike<number>): number {
  let total = 0;
  let lost = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i];
    const next = total + value;
    lost += Math.abs(total) >= Math.abs(value) ? total - next + value : value - next + total;
    total = next;
  }
  return total + lost;
}

/** Arithmetic mean; needs one value. */
export function mean(values: ArrayLike<number>): number | Unavailable {
  if (values.length === 0) return { why: 'no value to take a mean of' };
  return centre(values);
}

/**
 * Sample standard deviation with divisor n - 1, in two passes with the mean's own rounding error
 * taken out (Chan, Golub & LeVeque 1983, Am. Stat. 37:242, eq. 1.7). Needs three values: with two it
 * says no more than their difference does.
 */
export function standardDeviation(values: ArrayLike<number>): number | Unavailable {
  if (values.length < 2) return { why: `a standard deviation needs 2 values, not ${values.length}` };
  return Math.sqrt(centralSums(values).second / (values.length - 1));
}

/** Standard deviation as a share of the mean. Makes sense for ratio scales only; needs a mean above 0. */
export function coefficientOfVariation(values: ArrayLike<number>): number | Unavailable {
  const sd = standardDeviation(values);
  if (typeof sd !== 'number')
    return { why: sd.why.replace('standard deviation', 'coefficient of variation') };
  const average = centre(values);
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
  const { second, third } = centralSums(values);
  if (second === 0) return { why: 'all values are equal, so there is no skewness' };
  const variance = second / n;
  return (third / n / (variance * Math.sqrt(variance))) * (Math.sqrt(n * (n - 1)) / (n - 2));
}

function centre(values: ArrayLike<number>): number {
  const first = sum(values) / values.length;
  const residuals = Float64Array.from(values, (value) => value - first);
  return first + sum(residuals) / values.length;
}

function centralSums(values: ArrayLike<number>): { second: number; third: number } {
  const middle = centre(values);
  const n = values.length;
  const squares = new Float64Array(n);
  const cubes = new Float64Array(n);
  const deviations = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const deviation = values[i] - middle;
    deviations[i] = deviation;
    squares[i] = deviation * deviation;
    cubes[i] = deviation * deviation * deviation;
  }
  const drift = sum(deviations);
  return { second: Math.max(0, sum(squares) - (drift * drift) / n), third: sum(cubes) };
}
