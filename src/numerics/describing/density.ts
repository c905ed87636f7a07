import { exp, pow } from '../foundation/elementary.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { standardDeviation } from './moments.ts';
import { quantileSorted, sortedValues } from './quantile.ts';

export interface DensityCurve {
  readonly at: Float64Array;
  readonly density: Float64Array;
  readonly bandwidth: number;
}

/**
 * How values are spread, as a smooth curve: Gaussian kernels summed exactly at `points` places from
 * three bandwidths below the smallest value to three above the largest. Bandwidth by the rule of
 * Silverman 1986, Density Estimation, equation 3.31 (R's `bw.nrd0`): 0.9 min(sd, IQR / 1.34) n^(-1/5).
 * Unavailable below 2 values and without any spread.
 */
export function densityCurve(values: ArrayLike<number>, points = 64): DensityCurve | Unavailable {
  const sorted = sortedValues(values);
  const n = sorted.length;
  const sd = standardDeviation(sorted);
  if (typeof sd !== 'number') return sd;
  const quartiles = (quantileSorted(sorted, 0.75) - quantileSorted(sorted, 0.25)) / 1.34;
  const spread = Math.min(sd, quartiles) || sd;
  if (!(spread > 0)) return { why: 'all values are equal' };
  const bandwidth = 0.9 * spread * pow(n, -0.2);
  const low = sorted[0] - 3 * bandwidth;
  const high = sorted[n - 1] + 3 * bandwidth;
  const at = Float64Array.from({ length: points }, (_, i) => low + ((high - low) * i) / (points - 1));
  const scale = 1 / (n * bandwidth * Math.sqrt(2 * Math.PI));
  const density = at.map((place) => {
    let sum = 0;
    for (const value of sorted) {
      const z = (place - value) / bandwidth;
      sum += exp((-z * z) / 2);
    }
    return sum * scale;
  });
  return { at, density, bandwidth };
}
