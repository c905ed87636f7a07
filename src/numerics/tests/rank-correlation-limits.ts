import { normalQuantileUpper, normalTwoSided } from '../foundation/distributions.ts';
import { exp, ln } from '../foundation/elementary.ts';
import type { Unavailable } from '../foundation/unavailable.ts';

export interface CorrelationLimits {
  readonly low: number;
  readonly high: number;
}

/** Fewer pairs leave the standard error without a meaning. */
const FEWEST = 5;

/**
 * Limits of Spearman's rank correlation: Fisher's z with the variance (1 + rho^2 / 2) / (n - 3)
 * (Bonett & Wright 2000, Psychometrika 65:23). Unavailable below 5 pairs and where the ranks agree wholly,
 * since limits without width would claim a certainty that no sample gives.
 *
 * @param level two-sided confidence, between 0 and 1.
 */
export function correlationLimits(rho: number, n: number, level: number): CorrelationLimits | Unavailable {
  if (n < FEWEST) return { why: `limits of a correlation need ${FEWEST} pairs, not ${n}` };
  if (Math.abs(rho) > WHOLLY) return { why: 'the ranks agree wholly, so that their limits cannot be told' };
  const reach = normalQuantileUpper((1 - level) / 2) * Math.sqrt(variance(rho, n));
  return { low: fromZ(toZ(rho) - reach), high: fromZ(toZ(rho) + reach) };
}

export interface PooledCorrelation extends CorrelationLimits {
  readonly rho: number;
  /** Two-sided, of no correlation within any group. */
  readonly p: number;
  /** Groups that take part, and their pairs. */
  readonly groups: number;
  readonly n: number;
}

/**
 * One rank correlation for several groups, each ranked by itself: their z values weighted by the inverse of their
 * variances (Hedges & Olkin 1985, Statistical Methods for Meta-Analysis, ch. 11). What groups share by differing
 * from each other in both measurements has no part in it.
 *
 * @param parts rho and n of each group; groups of fewer than 5 pairs take no part.
 */
export function pooledCorrelation(
  parts: readonly { readonly rho: number; readonly n: number }[],
  level: number,
): PooledCorrelation | Unavailable {
  const usable = parts.filter(({ n }) => n >= FEWEST);
  if (usable.length === 0)
    return { why: `no group has the ${FEWEST} pairs that a correlation within it needs` };
  let weights = 0;
  let sum = 0;
  for (const { rho, n } of usable) {
    const held = Math.max(-WHOLLY, Math.min(WHOLLY, rho));
    const weight = 1 / variance(held, n);
    weights += weight;
    sum += weight * toZ(held);
  }
  const middle = sum / weights;
  const error = Math.sqrt(1 / weights);
  const reach = normalQuantileUpper((1 - level) / 2) * error;
  return {
    rho: fromZ(middle),
    low: fromZ(middle - reach),
    high: fromZ(middle + reach),
    p: normalTwoSided(middle / error),
    groups: usable.length,
    n: usable.reduce((total, { n }) => total + n, 0),
  };
}

/** Beyond this a correlation counts as perfect: its z would be without bound. */
const WHOLLY = 0.9999;

function variance(rho: number, n: number): number {
  return (1 + (rho * rho) / 2) / (n - 3);
}

function toZ(rho: number): number {
  return ln((1 + rho) / (1 - rho)) / 2;
}

function fromZ(z: number): number {
  const grown = exp(2 * z);
  return (grown - 1) / (grown + 1);
}
