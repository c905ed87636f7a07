import { mean, standardDeviation } from '../describing/moments.ts';
import { normalQuantileUpper, studentQuantileUpper, studentUpper } from '../foundation/distributions.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { whyNotCompared } from './samples.ts';

export interface Equivalence {
  /** Difference of means, first minus second. */
  readonly difference: number;
  /** Interval at 1 - 2 alpha: equivalent at alpha when it lies wholly within the margin. */
  readonly low: number;
  readonly high: number;
  /** The larger of the two one-sided p values: small means "alike within the margin". */
  readonly p: number;
  readonly df: number;
}

/**
 * Are two means alike within ± `margin`? Two one-sided Welch tests (Schuirmann 1987, J. Pharmacokinet.
 * Biopharm. 15:657; degrees of freedom: Welch 1947, Biometrika 34:28). For "within 20 %" give
 * logarithms and the margin ln 1.2. Needs two values and some spread in each sample.
 *
 * @param alpha of each one-sided test, default 0.05.
 */
export function equivalentMeans(
  first: ArrayLike<number>,
  second: ArrayLike<number>,
  margin: number,
  alpha = 0.05,
): Equivalence | Unavailable {
  const refusal = whyNotCompared([first, second], 2);
  if (refusal) return refusal;
  const a = spreadOfMean(first);
  const b = spreadOfMean(second);
  if (a + b === 0) return { why: 'neither group has any spread within' };
  const se = Math.sqrt(a + b);
  const df = ((a + b) * (a + b)) / ((a * a) / (first.length - 1) + (b * b) / (second.length - 1));
  const difference = (mean(first) as number) - (mean(second) as number);
  const reach = studentQuantileUpper(alpha, df) * se;
  return {
    difference,
    low: difference - reach,
    high: difference + reach,
    p: Math.max(studentUpper((difference + margin) / se, df), studentUpper((margin - difference) / se, df)),
    df,
  };
}

/** Squared standard error of a mean of at least two values. */
function spreadOfMean(values: ArrayLike<number>): number {
  const sd = standardDeviation(values) as number;
  return (sd * sd) / values.length;
}

/**
 * Smallest Cliff's delta that the Mann-Whitney test would find with the stated power in samples of
 * these sizes, by Noether's approximation (Noether 1987, J. Am. Stat. Assoc. 82:645, equation 5).
 * Says why when even complete separation would be missed.
 */
export function smallestDetectableDelta(
  n1: number,
  n2: number,
  { alpha = 0.05, power = 0.8 }: { alpha?: number; power?: number } = {},
): number | Unavailable {
  if (n1 < 1 || n2 < 1) return { why: 'a group has no value' };
  const n = n1 + n2;
  const c = n1 / n;
  const delta =
    (2 * (normalQuantileUpper(alpha / 2) + normalQuantileUpper(1 - power))) / Math.sqrt(12 * c * (1 - c) * n);
  return delta > 1 ? { why: `with ${n1} and ${n2} items even complete separation could be missed` } : delta;
}

/**
 * How many finds of each of two groups the Mann-Whitney test needs to find a Cliff's delta of this size with the stated
 * power, by the same approximation; at least two of each. Says why where the two do not differ at all.
 */
export function findsNeeded(
  delta: number,
  { alpha = 0.05, power = 0.8 }: { alpha?: number; power?: number } = {},
): number | Unavailable {
  if (delta === 0) return { why: 'no number of finds tells apart what does not differ' };
  const reach = (2 * (normalQuantileUpper(alpha / 2) + normalQuantileUpper(1 - power))) / Math.abs(delta);
  return Math.max(2, Math.ceil((reach * reach) / 6));
}

/**
 * The shift between two normal samples of equal spread, in standard deviations, that makes a Cliff's
 * delta of this size: sqrt(2) times the normal quantile of (1 + delta) / 2 (McGraw & Wong 1992, Psychol.
 * Bull. 111:361, the common-language effect size). Infinite at complete separation.
 */
export function normalShiftOfDelta(delta: number): number {
  return delta >= 1 ? Infinity : Math.SQRT2 * normalQuantileUpper((1 - delta) / 2);
}
