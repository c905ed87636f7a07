import { normalTwoSided, studentTwoSided } from '../foundation/distributions.ts';
import { midranks } from '../foundation/ranks.ts';
import type { Unavailable } from '../foundation/unavailable.ts';

export interface RankCorrelation {
  /** Spearman's rho, -1 to 1: positive when both rise together. */
  readonly statistic: number;
  /** Two-sided, from Student's t; for fewer than 10 pairs take the p of permutationTest. */
  readonly p: number;
  readonly n: number;
}

/**
 * Spearman's rank correlation, ties by mid-ranks (Spearman 1904, Am. J. Psychol. 15:72). Unavailable
 * below 3 pairs or when one side does not vary.
 */
export function spearman(x: ArrayLike<number>, y: ArrayLike<number>): RankCorrelation | Unavailable {
  const n = x.length;
  if (n < 3) return { why: `a correlation needs 3 pairs, not ${n}` };
  const a = midranks(x).ranks;
  const b = midranks(y).ranks;
  const middle = (n + 1) / 2;
  let product = 0;
  let left = 0;
  let right = 0;
  for (let i = 0; i < n; i++) {
    product += (a[i] - middle) * (b[i] - middle);
    left += (a[i] - middle) * (a[i] - middle);
    right += (b[i] - middle) * (b[i] - middle);
  }
  if (left === 0 || right === 0) return { why: 'one of the two does not vary' };
  const statistic = product / Math.sqrt(left * right);
  const rest = 1 - statistic * statistic;
  const p = rest <= 0 ? 0 : studentTwoSided(statistic * Math.sqrt((n - 2) / rest), n - 2);
  return { statistic, p, n };
}

export interface OrderedTrend {
  /** Pairs of values from different groups that rise with the order of the groups, ties one half. */
  readonly statistic: number;
  /** Standardised, positive for a rise along the order. */
  readonly z: number;
  /** Two-sided, from the normal approximation with the correction for ties. */
  readonly p: number;
  readonly n: number;
}

/**
 * Jonckheere-Terpstra test: do values rise or fall along groups in a stated order (phases)?
 * Source: Jonckheere 1954, Biometrika 41:133; variance with ties: Hollander & Wolfe 1999, equation 6.19.
 */
export function jonckheereTerpstra(groups: readonly ArrayLike<number>[]): OrderedTrend | Unavailable {
  const filled = groups.filter((group) => group.length > 0);
  if (filled.length < 2) return { why: 'a trend needs two groups with values' };
  const pooled = filled.flatMap((group) => Array.from(group));
  const { ties } = midranks(pooled);
  if (ties[0] === pooled.length) return { why: 'all values are equal' };
  let statistic = 0;
  for (let early = 0; early < filled.length; early++)
    for (let late = early + 1; late < filled.length; late++)
      for (const a of Array.from(filled[early]))
        for (const b of Array.from(filled[late])) statistic += b > a ? 1 : b === a ? 0.5 : 0;
  const n = pooled.length;
  const sizes = filled.map((group) => group.length);
  const mean = (n * n - total(sizes, (s) => s * s)) / 4;
  const cubic = (s: number) => s * (s - 1) * (2 * s + 5);
  const triple = (s: number) => s * (s - 1) * (s - 2);
  const pair = (s: number) => s * (s - 1);
  let variance = (cubic(n) - total(sizes, cubic) - total(ties, cubic)) / 72;
  if (n > 2) variance += (total(sizes, triple) * total(ties, triple)) / (36 * triple(n));
  variance += (total(sizes, pair) * total(ties, pair)) / (8 * pair(n));
  if (variance <= 0) return { why: 'the ties leave no order to test' };
  const z = (statistic - mean) / Math.sqrt(variance);
  return { statistic, z, p: normalTwoSided(z), n };
}

function total(values: readonly number[], of: (value: number) => number): number {
  return values.reduce((sum, value) => sum + of(value), 0);
}
