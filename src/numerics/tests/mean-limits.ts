import { mean, standardDeviation } from '../describing/moments.ts';
import { studentQuantileUpper } from '../foundation/distributions.ts';
import type { Unavailable } from '../foundation/unavailable.ts';

/**
 * Limits of a mean by Student's t (Student 1908, Biometrika 6:1): exact for normal values, whatever their number.
 * Unavailable for fewer than two values and where all are equal.
 */
export function meanLimits(
  values: ArrayLike<number>,
  confidence: number,
): { readonly low: number; readonly high: number } | Unavailable {
  const n = values.length;
  const middle = mean(values);
  const sd = standardDeviation(values);
  if (typeof middle !== 'number') return middle;
  if (typeof sd !== 'number') return sd;
  const half = (studentQuantileUpper((1 - confidence) / 2, n - 1) * sd) / Math.sqrt(n);
  return half > 0
    ? { low: middle - half, high: middle + half }
    : { why: 'the readings are too coarse to give limits a width' };
}
