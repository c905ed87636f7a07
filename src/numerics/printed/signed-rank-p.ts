import { normalTwoSided } from '../foundation/distributions.ts';
import type { PWay } from './u-test.ts';

/** Above this many pairs only the approximation is printed. */
const EXACT = 200;

/**
 * Two-sided p of Wilcoxon's signed-rank statistic of n pairs without ties or zeros, in the usual ways: exact, and
 * by the normal approximation with and without continuity correction (Wilcoxon 1945, Biom. Bull. 1:80). The
 * statistic may be the sum of either sign. Checked against R's wilcox.test.
 *
 * @param ties sum of t³ − t over the groups of equal differences, where the differences are known: the approximation
 *   is then corrected for them (Lehmann 1975, Nonparametrics, p. 130).
 */
export function signedRankWays(v: number, n: number, ties = 0): readonly PWay[] {
  const mean = (n * (n + 1)) / 4;
  const sd = Math.sqrt((n * (n + 1) * (2 * n + 1)) / 24 - ties / 48);
  const distance = Math.abs(v - mean);
  const ways = [
    {
      method: 'normal approximation with continuity correction',
      p: normalTwoSided(Math.max(0, distance - 0.5) / sd),
    },
    { method: 'normal approximation', p: normalTwoSided(distance / sd) },
  ];
  if (n > EXACT) return ways;
  const most = (n * (n + 1)) / 2;
  let chance = new Float64Array(most + 1);
  chance[0] = 1;
  for (let rank = 1; rank <= n; rank++) {
    const next = new Float64Array(most + 1);
    for (let sum = 0; sum <= most; sum++)
      next[sum] = (chance[sum] + (sum >= rank ? chance[sum - rank] : 0)) / 2;
    chance = next;
  }
  let below = 0;
  for (let sum = 0; sum <= Math.floor(Math.min(v, most - v) + 1e-9); sum++) below += chance[sum];
  return [{ method: 'exact', p: Math.min(1, 2 * below) }, ...ways];
}
