import { normalQuantileUpper } from '../foundation/distributions.ts';
import { exp, ln } from '../foundation/elementary.ts';
import type { Unavailable } from '../foundation/unavailable.ts';

export interface ChaoInterval {
  readonly estimate: number;
  readonly standardError: number;
  readonly low: number;
  readonly high: number;
}

/**
 * How many kinds may there be, unseen ones included, and between which numbers? Chao's estimator in its
 * bias-corrected form (Chiu, Wang, Walther & Chao 2014, Biometrics 70:671), its variance by the delta method
 * (as R's vegan 2.6 `estimateR`), and log-normal limits that never fall below the kinds seen
 * (Chao 1987, Biometrics 43:783). Without a kind met once nothing unseen is estimated and no limits are given.
 *
 * @param counts items of each kind; kinds with none are passed over.
 */
export function chaoInterval(counts: ArrayLike<number>, confidence = 0.95): ChaoInterval | Unavailable {
  const present = Array.from(counts).filter((count) => count > 0);
  const richness = present.length;
  if (richness === 0) return { why: 'no item to count' };
  const once = present.filter((count) => count === 1).length;
  const twice = present.filter((count) => count === 2).length;
  if (once < 2)
    return { why: 'fewer than two kinds were met only once, so that no unseen kind is estimated' };
  const unseen = (once * (once - 1)) / (2 * (twice + 1));
  const two = twice + 1;
  const estimate = richness + unseen;
  // Delta method: how the estimate moves with each frequency of frequencies, these being multinomial.
  const perOnce = 1 + (2 * once - 1) / (2 * two);
  const perTwice = 1 - (once * (once - 1)) / (2 * two * two);
  const others = richness - once - twice;
  const mean = once * perOnce + twice * perTwice + others;
  const variance = once * perOnce * perOnce + twice * perTwice * perTwice + others - (mean * mean) / estimate;
  const factor = exp(
    normalQuantileUpper((1 - confidence) / 2) * Math.sqrt(ln(1 + variance / (unseen * unseen))),
  );
  return {
    estimate,
    standardError: Math.sqrt(variance),
    low: richness + unseen / factor,
    high: richness + unseen * factor,
  };
}
