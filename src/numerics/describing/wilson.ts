import { normalQuantileUpper } from '../foundation/distributions.ts';
import type { Unavailable } from '../foundation/unavailable.ts';

/** Ends of an interval for a share, both within 0 and 1. */
export interface ShareLimits {
  readonly low: number;
  readonly high: number;
}

/**
 * Between which shares the true one plausibly lies, given `count` of `n`: the score interval without
 * continuity correction (Wilson 1927, J. Am. Stat. Assoc. 22:209; method 3 of Newcombe 1998, Stat.
 * Med. 17:857). Unlike mean plus or minus it never leaves [0, 1] and it works for 0 of n.
 *
 * @param confidence two-sided, 0 to 1; 0.95 unless given.
 */
export function wilsonLimits(count: number, n: number, confidence = 0.95): ShareLimits | Unavailable {
  if (n < 1) return { why: 'no record to take a share of' };
  const z = normalQuantileUpper((1 - confidence) / 2);
  const share = count / n;
  const middle = share + (z * z) / (2 * n);
  const half = z * Math.sqrt((share * (1 - share)) / n + (z * z) / (4 * n * n));
  const scale = 1 + (z * z) / n;
  return {
    low: count === 0 ? 0 : Math.max(0, (middle - half) / scale),
    high: count === n ? 1 : Math.min(1, (middle + half) / scale),
  };
}
