import { quantileSorted, sortedValues } from '../describing/quantile.ts';
import { fisherUpper } from '../foundation/distributions.ts';
import { doubledMean, squaredDeviations } from '../foundation/sums.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { whyNotCompared } from './samples.ts';

/** One-way analysis of variance: do the groups share one mean? */
export interface AnalysisOfVariance {
  readonly statistic: number;
  readonly dfBetween: number;
  readonly dfWithin: number;
  readonly p: number;
  readonly sumOfSquaresBetween: number;
  readonly sumOfSquaresWithin: number;
  /** Share of the total sum of squares that lies between the groups. */
  readonly rSquared: number;
  readonly residualSd: number;
}

/**
 * Fisher's one-way analysis of variance, equal spreads assumed. Sums are kept to twice double
 * precision, so readings far from zero keep their digits (NIST StRD one-way ANOVA sets).
 * Unavailable with fewer than two groups, an empty group, one value a group, or no spread within.
 * Source: Fisher 1925, Statistical Methods for Research Workers, chapter 7.
 */
export function oneWayAnova(groups: readonly ArrayLike<number>[]): AnalysisOfVariance | Unavailable {
  const refusal = whyNotCompared(groups);
  if (refusal) return refusal;
  const n = groups.reduce((sum, group) => sum + group.length, 0);
  const k = groups.length;
  if (n <= k) return { why: 'every group has a single value, so there is no spread to judge by' };
  const grand = doubledMean(Float64Array.from(groups.flatMap((group) => Array.from(group))));
  let between = 0;
  let within = 0;
  for (const group of groups) {
    const mean = doubledMean(group);
    const shift = mean.high - grand.high + (mean.low - grand.low);
    between += group.length * shift * shift;
    within += squaredDeviations(group, mean);
  }
  if (within === 0) return { why: 'no group has any spread within' };
  const statistic = between / (k - 1) / (within / (n - k));
  return {
    statistic,
    dfBetween: k - 1,
    dfWithin: n - k,
    p: fisherUpper(statistic, k - 1, n - k),
    sumOfSquaresBetween: between,
    sumOfSquaresWithin: within,
    rSquared: between / (between + within),
    residualSd: Math.sqrt(within / (n - k)),
  };
}

export interface WelchAnova {
  readonly statistic: number;
  readonly dfBetween: number;
  readonly dfWithin: number;
  readonly p: number;
}

/**
 * Welch's analysis of variance, spreads may differ (Welch 1951, Biometrika 38:330).
 * Unavailable when a group has fewer than two values or no spread.
 */
export function welchAnova(groups: readonly ArrayLike<number>[]): WelchAnova | Unavailable {
  const refusal = whyNotCompared(groups, 2);
  if (refusal) return refusal;
  const k = groups.length;
  const parts = groups.map((group) => {
    const mean = doubledMean(group);
    const variance = squaredDeviations(group, mean) / (group.length - 1);
    return { n: group.length, mean: mean.high + mean.low, weight: group.length / variance, variance };
  });
  const still = parts.findIndex((part) => part.variance === 0);
  if (still >= 0) return { why: `group ${still + 1} has no spread within` };
  const total = parts.reduce((sum, part) => sum + part.weight, 0);
  const centre = parts.reduce((sum, part) => sum + part.weight * part.mean, 0) / total;
  let between = 0;
  let lambda = 0;
  for (const part of parts) {
    const shift = part.mean - centre;
    between += part.weight * shift * shift;
    const rest = 1 - part.weight / total;
    lambda += (rest * rest) / (part.n - 1);
  }
  const statistic = between / (k - 1) / (1 + (2 * (k - 2) * lambda) / (k * k - 1));
  const dfWithin = (k * k - 1) / (3 * lambda);
  return { statistic, dfBetween: k - 1, dfWithin, p: fisherUpper(statistic, k - 1, dfWithin) };
}

/**
 * Brown-Forsythe test of equal spread: analysis of variance of the distances to each group's median
 * (Brown & Forsythe 1974, J. Am. Stat. Assoc. 69:364). Unavailable as for oneWayAnova.
 */
export function brownForsythe(groups: readonly ArrayLike<number>[]): AnalysisOfVariance | Unavailable {
  return oneWayAnova(
    groups.map((group) => {
      const sorted = sortedValues(group);
      const median = quantileSorted(sorted, 0.5);
      return sorted.map((value) => Math.abs(value - median));
    }),
  );
}
