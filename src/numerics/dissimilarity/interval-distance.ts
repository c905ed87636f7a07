import type { IntervalRule } from './variables.ts';

/**
 * How far two readings are apart when each is an interval with finite ends.
 *
 * - `midpoint`: distance of the midpoints;
 * - `expected`: mean of |x - y| for x and y drawn independently and evenly from the two intervals; two
 *   equal intervals of length L are L/3 apart, because nothing says that the same value is meant;
 * - `least`, `greatest`: the bounds that the intervals allow (Moore 1966, Interval Analysis, ch. 2).
 *
 * Equal to |a - c| under every rule when both readings are exact.
 */
export function intervalDistance(rule: IntervalRule, a: number, b: number, c: number, d: number): number {
  if (rule === 'midpoint') return Math.abs((a + b) / 2 - (c + d) / 2);
  if (rule === 'least') return Math.max(0, c - b, a - d);
  if (rule === 'greatest') return Math.max(d - a, b - c);
  return a <= c ? expectedDistance(a, b, c, d) : expectedDistance(c, d, a, b);
}

/**
 * Mean distance of points drawn evenly from [a, b] and [c, d], a <= c. The first interval is cut where
 * the other begins and ends, so that only positive parts are added and nothing cancels.
 */
function expectedDistance(a: number, b: number, c: number, d: number): number {
  if (b <= c) return (c + d) / 2 - (a + b) / 2;
  const left = ((c - a) / (b - a)) * ((c + d) / 2 - (a + c) / 2);
  if (b <= d) {
    const within = d > c ? (b - c) / (d - c) : 1;
    const shared = within * ((b - c) / 3) + (1 - within) * ((b + d) / 2 - (c + b) / 2);
    return left + ((b - c) / (b - a)) * shared;
  }
  const right = ((b - d) / (b - a)) * ((d + b) / 2 - (c + d) / 2);
  return left + ((d - c) / (b - a)) * ((d - c) / 3) + right;
}
