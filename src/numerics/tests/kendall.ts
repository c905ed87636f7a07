import { normalTwoSided } from '../foundation/distributions.ts';
import type { Unavailable } from '../foundation/unavailable.ts';

export interface KendallCorrelation {
  /** Kendall's tau-b, -1 to 1: positive when both rise together. */
  readonly statistic: number;
  /** Two-sided, from the normal approximation with the correction for ties. */
  readonly p: number;
  readonly ties: boolean;
  readonly n: number;
}

/**
 * Kendall's rank correlation with ties (tau-b). Unavailable below 3 pairs or when one side does not vary.
 * Source: Kendall 1945, Biometrika 33:239; variance with ties: Kendall 1970, Rank Correlation Methods, ch. 4.
 * Checked against R's cor.test.
 */
export function kendall(x: ArrayLike<number>, y: ArrayLike<number>): KendallCorrelation | Unavailable {
  const n = x.length;
  if (n < 3) return { why: `a correlation needs 3 pairs, not ${n}` };
  let score = 0;
  for (let i = 0; i < n; i++)
    for (let j = 0; j < i; j++) score += Math.sign(x[i] - x[j]) * Math.sign(y[i] - y[j]);
  const [a, b] = [tieSums(x), tieSums(y)];
  const pairs = (n * (n - 1)) / 2;
  const scale = Math.sqrt((pairs - a.pairs) * (pairs - b.pairs));
  if (scale === 0) return { why: 'one of the two does not vary' };
  const variance =
    (n * (n - 1) * (2 * n + 5) - a.cubic - b.cubic) / 18 +
    (2 * a.pairs * 2 * b.pairs) / (2 * n * (n - 1)) +
    (n > 2 ? (a.triples * b.triples) / (9 * n * (n - 1) * (n - 2)) : 0);
  return {
    statistic: score / scale,
    p: normalTwoSided(score / Math.sqrt(variance)),
    ties: a.pairs + b.pairs > 0,
    n,
  };
}

function tieSums(values: ArrayLike<number>): {
  readonly pairs: number;
  readonly triples: number;
  readonly cubic: number;
} {
  const times = new Map<number, number>();
  for (let i = 0; i < values.length; i++) times.set(values[i], (times.get(values[i]) ?? 0) + 1);
  let [pairs, triples, cubic] = [0, 0, 0];
  for (const t of times.values()) {
    pairs += (t * (t - 1)) / 2;
    triples += t * (t - 1) * (t - 2);
    cubic += t * (t - 1) * (2 * t + 5);
  }
  return { pairs, triples, cubic };
}
