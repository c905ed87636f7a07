import { quantileSorted } from '../describing/quantile.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { withWidth } from './bootstrap.ts';

/**
 * Limits of a value from what it came to when items were drawn again: the plain percentiles, widened where need be so
 * that they hold the value itself. Unavailable where there are no draws, and where nearly all of them agree.
 *
 * @param draws any order. @param tail share left out at either end.
 */
export function percentileLimits(
  value: number,
  draws: ArrayLike<number>,
  tail: number,
): { readonly low: number; readonly high: number } | Unavailable {
  if (draws.length === 0) return { why: 'no draw of the items gave a value' };
  const sorted = Float64Array.from(draws).sort();
  const [low, high] = [tail, 1 - tail].map((share) => quantileSorted(sorted, share));
  return withWidth({ low: Math.min(low, value), high: Math.max(high, value) });
}
