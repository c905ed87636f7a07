import { normalTwoSided } from '../foundation/distributions.ts';

/** One way to compute p, and what it gives. */
export interface PWay {
  readonly method: string;
  readonly p: number;
}

/** Largest number of steps for which the exact distribution is tabled. */
const EXACT_STEPS = 2e7;

/**
 * Two-sided p of Mann and Whitney's U for two samples without ties, in the three usual ways: exact, and by
 * the normal approximation with and without continuity correction.
 * Source: Mann & Whitney 1947, Ann. Math. Stat. 18:50 (recurrence of the counts, eq. 1). Checked against R.
 *
 * @param n1 and @param n2 at least 1.
 */
export function mannWhitneyFromU(u: number, n1: number, n2: number): readonly PWay[] {
  const mean = (n1 * n2) / 2;
  const sd = Math.sqrt((n1 * n2 * (n1 + n2 + 1)) / 12);
  const distance = Math.abs(u - mean);
  const approximations = [
    {
      method: 'normal approximation with continuity correction',
      p: normalTwoSided(Math.max(0, distance - 0.5) / sd),
    },
    { method: 'normal approximation', p: normalTwoSided(distance / sd) },
  ];
  if ((n1 + n2) * Math.min(n1, n2) * n1 * n2 > EXACT_STEPS) return approximations;
  return [{ method: 'exact', p: exactTwoSided(Math.min(u, n1 * n2 - u), n1, n2) }, ...approximations];
}

/** Twice the chance of a U no larger, over all orders of the two samples. */
function exactTwoSided(u: number, n1: number, n2: number): number {
  const [fewer, more] = n1 <= n2 ? [n1, n2] : [n2, n1];
  // Each chance is made of those of smaller U alone: what lies above `most` is never asked for.
  const most = Math.floor(u + 1e-9);
  // share[k][s]: chance that k of the ranks seen so far fell to the smaller sample, with U = s from them.
  const share = Array.from({ length: fewer + 1 }, () => new Float64Array(most + 1));
  share[0][0] = 1;
  for (let seen = 1; seen <= fewer + more; seen++) {
    for (let k = Math.min(seen, fewer); k >= 1; k--) {
      const passed = seen - k;
      const into = share[k];
      const from = share[k - 1];
      for (let s = Math.min(most, k * passed); s >= 0; s--) {
        const join = s >= passed ? (from[s - passed] * k) / seen : 0;
        into[s] = (into[s] * passed) / seen + join;
      }
    }
  }
  let below = 0;
  for (let s = 0; s <= most; s++) below += share[fewer][s];
  return Math.min(1, 2 * below);
}
