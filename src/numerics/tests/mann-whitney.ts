import { normalTwoSided } from '../foundation/distributions.ts';
import { midranks } from '../foundation/ranks.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { whyNotCompared } from './samples.ts';

/** Do values of the first sample tend to be larger than those of the second? */
export interface MannWhitney {
  /** U of the first sample: pairs in which its value is the larger, ties counting one half. */
  readonly statistic: number;
  /** Two-sided. */
  readonly p: number;
  readonly method: 'exact' | 'normal approximation';
  readonly n: readonly [number, number];
  /** True when equal values occur in the two samples taken together. */
  readonly ties: boolean;
  /** Standard deviation of U under no difference, corrected for ties. */
  readonly sd: number;
}

/** Largest number of states for which the exact distribution is tabled. */
const EXACT_LIMIT = 2e7;

/**
 * Mann-Whitney test (Wilcoxon rank sum). Exact, given the ties, for samples whose distribution can be
 * tabled; otherwise the normal approximation with tie and continuity corrections. Two-sided: the
 * chance of a U at least as far from its mean. A positive `statistic - n1 n2 / 2` favours the first
 * sample. Unavailable when a sample is empty or all values are equal.
 * Source: Mann & Whitney 1947, Ann. Math. Stat. 18:50; ties: Hollander & Wolfe 1999, section 4.1.
 */
export function mannWhitney(first: ArrayLike<number>, second: ArrayLike<number>): MannWhitney | Unavailable {
  const refusal = whyNotCompared([first, second]);
  if (refusal) return refusal;
  const n1 = first.length;
  const n2 = second.length;
  const n = n1 + n2;
  const { ranks, ties, tieSum } = midranks([...Array.from(first), ...Array.from(second)]);
  let rankSum = 0;
  for (let i = 0; i < n1; i++) rankSum += ranks[i];
  const statistic = rankSum - (n1 * (n1 + 1)) / 2;
  const sd = Math.sqrt(((n1 * n2) / 12) * (n + 1 - tieSum / (n * (n - 1))));
  const distance = Math.abs(statistic - (n1 * n2) / 2);
  const smaller = Math.min(n1, n2);
  const exact = n * smaller * n * (n + 1) <= EXACT_LIMIT;
  return {
    statistic,
    p: exact ? exactTwoSided(ranks, smaller, distance) : normalTwoSided(Math.max(0, distance - 0.5) / sd),
    method: exact ? 'exact' : 'normal approximation',
    n: [n1, n2],
    ties: ties.length > 0,
    sd,
  };
}

/**
 * Chance over all splits of the pooled ranks that the rank sum lies at least `distance` from its mean.
 * The same from either sample, so the smaller one may be tabled.
 */
function exactTwoSided(ranks: Float64Array, n1: number, distance: number): number {
  // Shared ranks are halves: doubled they are whole numbers, and the distribution of their sum can be tabled.
  const scale = ranks.every(Number.isInteger) ? 1 : 2;
  const whole = Array.from(ranks, (rank) => Math.round(scale * rank));
  const most = whole.reduce((sum, rank) => sum + rank, 0);
  // share[k][s]: chance that a random split has put k of the ranks seen so far, with sum s, in the first sample.
  const share = Array.from({ length: n1 + 1 }, () => new Float64Array(most + 1));
  share[0][0] = 1;
  const n = ranks.length;
  // Least and largest sum of k of the ranks seen so far: beyond them all chances are still nought.
  const low = new Float64Array(n1 + 1).fill(Number.POSITIVE_INFINITY);
  const high = new Float64Array(n1 + 1).fill(-1);
  low[0] = high[0] = 0;
  for (let seen = 0; seen < n; seen++) {
    const rank = whole[seen];
    for (let k = Math.min(seen + 1, n1); k >= 1; k--) {
      // Drawing without replacement: binomial coefficients enter as running ratios, so nothing overflows.
      const keep = seen + 1 - k;
      const into = share[k];
      const from = share[k - 1];
      low[k] = Math.min(low[k], low[k - 1] + rank);
      if (high[k - 1] >= 0) high[k] = Math.max(high[k], high[k - 1] + rank);
      for (let s = high[k]; s >= low[k]; s--) {
        const stay = (into[s] * keep) / (seen + 1);
        const join = s >= rank ? (from[s - rank] * k) / (seen + 1) : 0;
        into[s] = stay + join;
      }
    }
  }
  const mean = (scale * n1 * (n + 1)) / 2;
  let p = 0;
  for (let s = 0; s <= most; s++) if (Math.abs(s - mean) >= scale * distance - 1e-9) p += share[n1][s];
  return Math.min(1, p);
}

/**
 * Cliff's delta: chance that a value of the first sample exceeds one of the second, minus the reverse.
 * From -1 to 1, positive when the first tends to be larger (Cliff 1993, Psychol. Bull. 114:494).
 */
export function cliffsDelta(first: ArrayLike<number>, second: ArrayLike<number>): number | Unavailable {
  const n1 = first.length;
  const n2 = second.length;
  if (n1 === 0 || n2 === 0) return { why: 'a group has no value' };
  const { ranks } = midranks([...Array.from(first), ...Array.from(second)]);
  let rankSum = 0;
  for (let i = 0; i < n1; i++) rankSum += ranks[i];
  return (2 * (rankSum - (n1 * (n1 + 1)) / 2)) / (n1 * n2) - 1;
}
