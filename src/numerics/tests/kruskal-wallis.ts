import { chiSquaredUpper, normalTwoSided } from '../foundation/distributions.ts';
import { midranks } from '../foundation/ranks.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { type Adjustment, adjustP } from './adjust.ts';
import { whyNotCompared } from './samples.ts';

/** Do several samples come from one distribution, or does at least one tend to larger values? */
export interface KruskalWallis {
  /** H, corrected for ties. */
  readonly statistic: number;
  readonly df: number;
  /** From chi-squared; see groupPermutation for the exact or resampled p of small samples. */
  readonly p: number;
  /** Share of the variance of the ranks that lies between the groups, H / (n - 1). */
  readonly epsilonSquared: number;
  readonly n: number;
}

/**
 * Kruskal-Wallis test with the correction for ties. Unavailable with fewer than two groups, an empty
 * group, or all values equal.
 * Source: Kruskal & Wallis 1952, J. Am. Stat. Assoc. 47:583; epsilon squared: Kelley 1935, as used by
 * Tomczak & Tomczak 2014, Trends Sport Sci. 21:19.
 */
export function kruskalWallis(groups: readonly ArrayLike<number>[]): KruskalWallis | Unavailable {
  const refusal = whyNotCompared(groups);
  if (refusal) return refusal;
  const pooled = poolRanks(groups);
  const { n, meanRanks, sizes, variance } = pooled;
  let between = 0;
  meanRanks.forEach((mean, group) => {
    const shift = mean - (n + 1) / 2;
    between += sizes[group] * shift * shift;
  });
  const statistic = between / variance;
  const df = groups.length - 1;
  return { statistic, df, p: chiSquaredUpper(statistic, df), epsilonSquared: statistic / (n - 1), n };
}

export interface DunnPair {
  readonly first: number;
  readonly second: number;
  /** Standardised difference of mean ranks, positive when the first group ranks higher. */
  readonly statistic: number;
  /** Two-sided. */
  readonly p: number;
  readonly pAdjusted: number;
}

/**
 * Dunn's pairwise follow-up to Kruskal-Wallis, on the pooled ranks with the tie correction
 * (Dunn 1964, Technometrics 6:241). Pairs in the order (0,1), (0,2), …
 */
export function dunnPairs(
  groups: readonly ArrayLike<number>[],
  adjustment: Adjustment = 'holm',
): DunnPair[] | Unavailable {
  const refusal = whyNotCompared(groups);
  if (refusal) return refusal;
  const { meanRanks, sizes, variance } = poolRanks(groups);
  const pairs: Omit<DunnPair, 'pAdjusted'>[] = [];
  for (let first = 0; first < groups.length; first++)
    for (let second = first + 1; second < groups.length; second++) {
      const statistic =
        (meanRanks[first] - meanRanks[second]) / Math.sqrt(variance * (1 / sizes[first] + 1 / sizes[second]));
      pairs.push({ first, second, statistic, p: normalTwoSided(statistic) });
    }
  const adjusted = adjustP(
    pairs.map((pair) => pair.p),
    adjustment,
  );
  return pairs.map((pair, index) => ({ ...pair, pAdjusted: adjusted[index] }));
}

function poolRanks(groups: readonly ArrayLike<number>[]) {
  const sizes = groups.map((group) => group.length);
  const n = sizes.reduce((sum, size) => sum + size, 0);
  const { ranks, tieSum } = midranks(groups.flatMap((group) => Array.from(group)));
  let start = 0;
  const meanRanks = sizes.map((size) => {
    let sum = 0;
    for (let i = start; i < start + size; i++) sum += ranks[i];
    start += size;
    return sum / size;
  });
  return { n, sizes, meanRanks, variance: (n * (n + 1)) / 12 - tieSum / (12 * (n - 1)) };
}
