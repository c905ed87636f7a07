import { greatest, least } from '../foundation/lists.ts';
import type { Unavailable } from '../foundation/unavailable.ts';

/** Steps of halving after which the place no longer moves. */
const HALVINGS = 200;

/**
 * Where a share of what lies within spans is reached, when each span is shared out evenly: the quantile of an even
 * mixture of uniform distributions. A span without length lies at its one place.
 *
 * @param share between 0 and 1. Unavailable without spans.
 *
 * Example: sharedOutQuantile([0, 100], [100, 200], 0.5) is 100.
 */
export function sharedOutQuantile(
  from: readonly number[],
  to: readonly number[],
  share: number,
): number | Unavailable {
  if (from.length === 0) return { why: 'there is no span' };
  const below = (at: number) =>
    from.reduce((sum, start, i) => {
      if (at >= to[i]) return sum + 1;
      return at <= start ? sum : sum + (at - start) / (to[i] - start);
    }, 0) / from.length;
  let low = least(from);
  let high = greatest(to);
  if (below(low) >= share) return low;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (below(middle) >= share) high = middle;
    else low = middle;
  }
  return high;
}
