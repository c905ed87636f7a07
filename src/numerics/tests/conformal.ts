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
 * Members with gaps are taken to be as strange as the new record up to this many times as often as the complete ones
 * are: what lacks may be another draw than what is there (a bound on it as in Rosenbaum's sensitivity analyses, 2002,
 * Observational Studies, ch. 4, from memory). Without a bound a catalogue with gaps could exclude nothing. Two is set by
 * simulation: the least that holds the level where the larger of two values are the ones that lack.
 */
const GAP_RATIO = 2;

/** Members that were recorded alike, and the dissimilarity of each member of the set to the new record as these have it. */
export interface RecordedAlike {
  readonly members: ArrayLike<number>;
  /** Whether they lack nothing that the new record has. */
  readonly complete: boolean;
  readonly toNew: ArrayLike<number>;
}

/**
 * The conformal p value of a new record for one set. Strangeness of a record is its mean dissimilarity
 * to the `neighbours` nearest others of the set *with the new record in it*: so that members and the
 * new record are judged alike, which the guarantee rests on. Not smoothed: ties make p larger.
 *
 * Members with gaps that the new record has not are each set against it *as they were recorded*: without what they lack.
 * Otherwise the better recorded one is judged by what the others could not show, and where the large values are those
 * that lack, a large new one seems stranger than it is. By pairs the guarantee is no longer exact; see
 * docs/methods/placement.md for how it holds.
 *
 * @param toNew dissimilarity of each member to the new record; NaN where unknown.
 * @param alike the members parted by what they lack, each once; one group of all where nothing lacks.
 */
export function conformalP(
  calibration: Calibration,
  toNew: ArrayLike<number>,
  alike: readonly RecordedAlike[] = [{ members: all(calibration.n), complete: true, toNew }],
): ConformalP | Unavailable {
  const { neighbours, nearest } = calibration;
  const score = ownScore(calibration, toNew);
  if (Number.isNaN(score)) return { why: 'nothing in common that could be compared' };
  const list = new Float64Array(neighbours);
  const counts = { complete: { judged: 0, strange: 0 }, short: { judged: 0, strange: 0 } };
  for (const group of alike) {
    const count = group.complete ? counts.complete : counts.short;
    const own = ownScore(calibration, group.toNew);
    for (let place = 0; place < group.members.length; place++) {
      const i = group.members[place];
      list.set(nearest.subarray(i * neighbours, (i + 1) * neighbours));
      keepNearest(list, group.toNew[i]);
      const fellow = meanFinite(list);
      if (Number.isNaN(fellow) || Number.isNaN(own)) continue;
      count.judged++;
      if (fellow >= own - SAME * (1 + own)) count.strange++;
    }
  }
  const { complete, short } = counts;
  const byComplete = (complete.strange + 1) / (complete.judged + 1);
  const credit = Math.min(short.strange, short.judged * GAP_RATIO * byComplete);
  const judged = complete.judged + short.judged;
  return { p: (complete.strange + credit + 1) / (judged + 1), n: judged, score };
}

const all = (n: number) => Int32Array.from({ length: n }, (_, i) => i);

/** Mean dissimilarity of the new record to its nearest members; NaN where none is known. */
function ownScore({ n, neighbours }: Calibration, toNew: ArrayLike<number>): number {
  const own = new Float64Array(neighbours).fill(Infinity);
  for (let i = 0; i < n; i++) keepNearest(own, toNew[i]);
  return meanFinite(own);
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

export type LabelVerdict = 'cannot be excluded' | 'excluded' | 'too few to judge';

/** What a p value says at a level of certainty such as 0.9. */
export function verdictAt(level: number, { p, n }: Pick<ConformalP, 'p' | 'n'>): LabelVerdict {
  if (n < fewestToExclude(level)) return 'too few to judge';
  return p > 1 - level + 1e-12 ? 'cannot be excluded' : 'excluded';
}
