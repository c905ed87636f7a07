import type { Unavailable } from '../foundation/unavailable.ts';
import { quantileSorted, sortedValues } from './quantile.ts';

/** The least and the greatest value a statistic can have, given readings that are intervals. */
export interface Bounds {
  readonly low: number;
  readonly high: number;
}

/**
 * Between which values a quantile (type 7 of Hyndman & Fan 1996, Am. Stat. 50:361) must lie when each
 * reading is only known to be within `[low, high]`: the quantile of all lower ends and that of all
 * upper ends. Both are attained, since a quantile never falls when a reading grows. Ends may be
 * infinite; a bound that depends on one is infinite too. Needs one reading; NaN is not allowed.
 */
export function quantileBounds(
  low: ArrayLike<number>,
  high: ArrayLike<number>,
  probability: number,
): Bounds | Unavailable {
  if (low.length === 0) return { why: 'no reading to take a quantile of' };
  return {
    low: quantileOfEnds(sortedValues(low), probability, -Infinity),
    high: quantileOfEnds(sortedValues(high), probability, Infinity),
  };
}

/** `outward`: where the bound goes when it falls between two ends that are infinite on either side. */
function quantileOfEnds(sorted: Float64Array, probability: number, outward: number): number {
  const found = quantileSorted(sorted, probability);
  return Number.isNaN(found) ? outward : found;
}
