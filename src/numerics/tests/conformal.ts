import { type Condensed, dissimilarityAt } from '../dissimilarity/condensed.ts';
import type { Unavailable } from '../foundation/unavailable.ts';

/**
 * How typical a new record is of a set of known ones, with a guarantee: if it comes from where they
 * come from, its p value is at most e with probability at most e, whatever the dissimilarity and however
 * the records are spread (Vovk, Gammerman & Shafer 2005, Algorithmic Learning in a Random World, ch. 2;
 * per label: ch. 4.5; Shafer & Vovk 2008, J. Mach. Learn. Res. 9:371).
 */

/** For each member of a set, its nearest fellows, so that adding one more record costs little. */
export interface Calibration {
  readonly n: number;
  readonly neighbours: number;
  /** Dissimilarities to the nearest fellows, ascending, `neighbours` a member; Infinity where fewer. */
  readonly nearest: Float64Array;
}

/** The nearest fellows of each member; unknown pairs are passed over. */
export function calibrate(within: Condensed, neighbours: number): Calibration {
  const { n } = within;
  const nearest = new Float64Array(n * neighbours).fill(Infinity);
  for (let i = 0; i < n; i++) {
    const list = nearest.subarray(i * neighbours, (i + 1) * neighbours);
    for (let j = 0; j < n; j++) if (j !== i) keepNearest(list, dissimilarityAt(within, i, j));
  }
  return { n, neighbours, nearest };
}

/** Puts a dissimilarity in its place of an ascending list, if it is known and near enough. */
function keepNearest(list: Float64Array, d: number): void {
  let place = list.length - 1;
  if (!(d < list[place])) return;
  for (; place > 0 && list[place - 1] > d; place--) list[place] = list[place - 1];
  list[place] = d;
}

export interface ConformalP {
  /** (number of members at least as strange as the new record + 1) / (n + 1). */
  readonly p: number;
  /** Members that could be judged. */
  readonly n: number;
  /** Mean dissimilarity of the new record to its nearest members. */
  readonly score: number;
}

/** Scores that differ by rounding alone are equal; equal ones count as strange, so that p is never too low. */
const SAME = 1e-12;

/**
 * The conformal p value of a new record for one set. Strangeness of a record is its mean dissimilarity
 * to the `neighbours` nearest others of the set *with the new record in it*: so that members and the
 * new record are judged alike, which the guarantee rests on. Not smoothed: ties make p larger.
 *
 * @param toNew dissimilarity of each member to the new record; NaN where unknown.
 */
export function conformalP(calibration: Calibration, toNew: ArrayLike<number>): ConformalP | Unavailable {
  const { n, neighbours, nearest } = calibration;
  const own = new Float64Array(neighbours).fill(Infinity);
  for (let i = 0; i < n; i++) keepNearest(own, toNew[i]);
  const score = meanFinite(own);
  if (Number.isNaN(score)) return { why: 'nothing in common that could be compared' };
  const list = new Float64Array(neighbours);
  let judged = 0;
  let strange = 0;
  for (let i = 0; i < n; i++) {
    list.set(nearest.subarray(i * neighbours, (i + 1) * neighbours));
    keepNearest(list, toNew[i]);
    const fellow = meanFinite(list);
    if (Number.isNaN(fellow)) continue;
    judged++;
    if (fellow >= score - SAME * (1 + score)) strange++;
  }
  return { p: (strange + 1) / (judged + 1), n: judged, score };
}

function meanFinite(list: Float64Array): number {
  let sum = 0;
  let count = 0;
  while (count < list.length && list[count] < Infinity) sum += list[count++];
  return count > 0 ? sum / count : Number.NaN;
}

/** Least number of members with which a label can be excluded at this level: p is never below 1 / (n + 1). */
export function fewestToExclude(level: number): number {
  return Math.ceil(1 / (1 - level) - 1 - 1e-9);
}

export type Verdict = 'cannot be excluded' | 'excluded' | 'too few to judge';

/** What a p value says at a level of certainty such as 0.9. */
export function verdictAt(level: number, { p, n }: Pick<ConformalP, 'p' | 'n'>): Verdict {
  if (n < fewestToExclude(level)) return 'too few to judge';
  return p > 1 - level + 1e-12 ? 'cannot be excluded' : 'excluded';
}
