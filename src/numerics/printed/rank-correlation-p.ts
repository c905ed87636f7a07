import { normalTwoSided, normalUpper, studentTwoSided } from '../foundation/distributions.ts';
import { exp } from '../foundation/elementary.ts';
import type { PWay } from './u-test.ts';

/**
 * Two-sided p of a printed rank correlation of n pairs, in the usual ways. Ties change the exact ones; the
 * approximations are printed with ties too.
 */

/** Largest n whose orders are counted one by one. */
const COUNTED = 8;

/**
 * Spearman: Student's t, the normal approximation, and the exact distribution, for more than a few pairs by its
 * Edgeworth series (Best & Roberts 1975, Appl. Stat. 24:377, algorithm AS 89). Checked against R's cor.test.
 */
export function spearmanWays(rho: number, n: number): readonly PWay[] {
  const rest = 1 - rho * rho;
  const t = rest <= 0 ? Number.POSITIVE_INFINITY : rho * Math.sqrt((n - 2) / rest);
  const ways = [
    { method: "Student's t", p: Number.isFinite(t) ? studentTwoSided(t, n - 2) : 0 },
    { method: 'normal approximation', p: normalTwoSided(rho * Math.sqrt(n - 1)) },
  ];
  if (n < 3) return ways;
  return [{ method: 'exact', p: exactSpearman(rho, n) }, ...ways];
}

function exactSpearman(rho: number, n: number): number {
  const most = (n * (n * n - 1)) / 3;
  const squares = Math.round(((1 - rho) * most) / 2);
  const upperTail = squares > most / 2;
  const s = upperTail ? squares + ((squares % 2) as number) : squares;
  const p = upperTail ? spearmanUpper(s, n) : 1 - spearmanUpper(s + 2, n);
  return Math.min(1, 2 * p);
}

/** Chance that the summed squared differences of ranks are at least `s`, an even number. */
function spearmanUpper(s: number, n: number): number {
  const most = (n * (n * n - 1)) / 3;
  if (s <= 0) return 1;
  if (s > most) return 0;
  if (n <= COUNTED) return counted(s, n);
  const b = 1 / n;
  const x = ((6 * (s - 1) * b) / (n * n - 1) - 1) * Math.sqrt(n - 1);
  const y = x * x;
  const series =
    x *
    b *
    (0.2274 +
      b * (0.2531 + 0.1745 * b) +
      y *
        (-0.0758 +
          b * (0.1033 + 0.3932 * b) -
          y * b * (0.0879 + 0.0151 * b - y * (0.0072 - 0.0831 * b + y * b * (0.0131 - 4.6e-4 * y)))));
  return Math.min(1, Math.max(0, series / exp(y / 2) + normalUpper(x)));
}

const tails = new Map<string, number>();

function counted(s: number, n: number): number {
  const key = `${s}/${n}`;
  const known = tails.get(key);
  if (known !== undefined) return known;
  let [all, above] = [0, 0];
  const used = new Array<boolean>(n).fill(false);
  const place = (at: number, sum: number): void => {
    if (at === n) {
      all++;
      if (sum >= s) above++;
      return;
    }
    for (let rank = 0; rank < n; rank++) {
      if (used[rank]) continue;
      used[rank] = true;
      place(at + 1, sum + (rank - at) * (rank - at));
      used[rank] = false;
    }
  };
  place(0, 0);
  tails.set(key, above / all);
  return above / all;
}

/** Above this many pairs only approximations are printed. */
const KENDALL_EXACT = 60;

/** Kendall: exact by the counts of inversions, and the normal approximation with and without continuity. Checked against R's cor.test. */
export function kendallWays(tau: number, n: number): readonly PWay[] {
  const pairs = (n * (n - 1)) / 2;
  const score = tau * pairs;
  const sd = Math.sqrt((n * (n - 1) * (2 * n + 5)) / 18);
  const ways = [
    { method: 'normal approximation', p: normalTwoSided(score / sd) },
    {
      method: 'normal approximation with continuity correction',
      p: normalTwoSided(Math.max(0, Math.abs(score) - 1) / sd),
    },
  ];
  if (n > KENDALL_EXACT || n < 2) return ways;
  const concordant = Math.round(((tau + 1) * pairs) / 2);
  const chance = inversions(n);
  const below = (k: number) => {
    let sum = 0;
    for (let i = 0; i <= Math.min(k, pairs); i++) sum += chance[i];
    return sum;
  };
  return [
    { method: 'exact', p: Math.min(1, 2 * Math.min(below(concordant), 1 - below(concordant - 1))) },
    ...ways,
  ];
}

/** Chance of each number of inversions of n things in random order. */
function inversions(n: number): Float64Array {
  let chance = Float64Array.of(1);
  for (let size = 2; size <= n; size++) {
    const next = new Float64Array(chance.length + size - 1);
    for (let k = 0; k < chance.length; k++)
      for (let more = 0; more < size; more++) next[k + more] += chance[k] / size;
    chance = next;
  }
  return chance;
}
