import type { ShareLimits } from '../describing/wilson.ts';
import { betaQuantile } from '../foundation/distributions.ts';
import type { Unavailable } from '../foundation/unavailable.ts';

/**
 * Exact binomial interval for a share (Clopper & Pearson 1934, Biometrika 26:404): covers at least the
 * stated confidence, usually more.
 */
export function exactShareLimits(count: number, n: number, confidence = 0.95): ShareLimits | Unavailable {
  if (n < 1) return { why: 'no record to take a share of' };
  const tail = (1 - confidence) / 2;
  return {
    low: count === 0 ? 0 : betaQuantile(tail, count, n - count + 1),
    high: count === n ? 1 : betaQuantile(1 - tail, count + 1, n - count),
  };
}

/**
 * Jeffreys interval: the equal-tailed part of the beta posterior under the prior beta(1/2, 1/2), with
 * the end at 0 or 1 kept where the count is 0 or n (Brown, Cai & DasGupta 2001, Stat. Sci. 16:101).
 */
export function jeffreysShareLimits(count: number, n: number, confidence = 0.95): ShareLimits | Unavailable {
  if (n < 1) return { why: 'no record to take a share of' };
  const tail = (1 - confidence) / 2;
  return {
    low: count === 0 ? 0 : betaQuantile(tail, count + 0.5, n - count + 0.5),
    high: count === n ? 1 : betaQuantile(1 - tail, count + 0.5, n - count + 0.5),
  };
}
