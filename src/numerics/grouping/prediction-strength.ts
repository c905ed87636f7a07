import { type Condensed, dissimilarityAt } from '../dissimilarity/condensed.ts';
import type { Random } from '../foundation/random.ts';

/** Groups some of the records into k groups; labels 0, 1, … run alongside `rows`. */
export type Regroup = (rows: Int32Array, k: number) => ArrayLike<number>;

export interface PredictionStrengthRequest {
  readonly matrix: Condensed;
  /** Item of each record, 0, 1, … : the records of an item stay in one half. */
  readonly items: ArrayLike<number>;
  readonly counts: readonly number[];
  readonly regroup: Regroup;
  /** By which the other half's records are classified: nearest medoid of a group, or least mean dissimilarity. */
  readonly classify: 'medoid' | 'average';
  readonly splits: number;
  readonly random: Random;
}

/**
 * Do groups found in one half of the records predict which records of the other half belong together?
 *
 * Prediction strength (Tibshirani & Walther 2005, *J. Comput. Graph. Stat.* 14:511): both halves are grouped,
 * the records of one are classified by the groups of the other, and for its worst group the share of pairs
 * is taken that the classification keeps together; averaged over both directions and all splits. 0.8 and
 * more is usually asked for. A group of one record has no pairs and counts 0.
 *
 * @returns for each count of `counts` the mean over the splits; NaN where a half has fewer records than groups
 */
export function predictionStrength(request: PredictionStrengthRequest): number[] {
  const { matrix, items, counts, random } = request;
  const sums = counts.map(() => 0);
  for (let split = 0; split < request.splits; split++) {
    const halves = halve(items, matrix.n, random);
    for (const [place, k] of counts.entries()) {
      if (halves.some((half) => half.length < k)) sums[place] = Number.NaN;
      else {
        const groups = halves.map((half) => request.regroup(half, k));
        const first = strength(request, halves[0], groups[0], halves[1], groups[1]);
        const second = strength(request, halves[1], groups[1], halves[0], groups[0]);
        sums[place] += (first + second) / 2;
      }
    }
  }
  return sums.map((sum) => sum / request.splits);
}

/** Two halves of the items at random, as rows ascending. */
function halve(items: ArrayLike<number>, n: number, random: Random): Int32Array[] {
  let count = 0;
  for (let i = 0; i < n; i++) count = Math.max(count, items[i] + 1);
  const order = Int32Array.from({ length: count }, (_, item) => item);
  for (let last = count - 1; last > 0; last--) {
    const other = random.integer(last + 1);
    [order[last], order[other]] = [order[other], order[last]];
  }
  const inFirst = new Uint8Array(count);
  for (let place = 0; place < count / 2; place++) inFirst[order[place]] = 1;
  const rows = Int32Array.from({ length: n }, (_, row) => row);
  return [rows.filter((row) => inFirst[items[row]] === 1), rows.filter((row) => inFirst[items[row]] === 0)];
}

/** Share of pairs of the worst test group that the training groups keep together. */
function strength(
  { matrix, classify }: PredictionStrengthRequest,
  test: Int32Array,
  testGroups: ArrayLike<number>,
  train: Int32Array,
  trainGroups: ArrayLike<number>,
): number {
  const training = listsOf(train, trainGroups);
  const standing = classify === 'medoid' ? training.map((rows) => [medoidOf(matrix, rows)]) : training;
  let worst = 1;
  for (const members of listsOf(test, testGroups)) {
    const counts = standing.map(() => 0);
    for (const row of members) {
      let best = 0;
      let least = Number.POSITIVE_INFINITY;
      for (const [group, rows] of standing.entries()) {
        const mean = rows.reduce((sum, other) => sum + dissimilarityAt(matrix, row, other), 0) / rows.length;
        if (mean < least) {
          least = mean;
          best = group;
        }
      }
      counts[best]++;
    }
    const pairs = members.length * (members.length - 1);
    const kept = counts.reduce((sum, count) => sum + count * (count - 1), 0);
    worst = Math.min(worst, pairs === 0 ? 0 : kept / pairs);
  }
  return worst;
}

function listsOf(rows: Int32Array, groups: ArrayLike<number>): number[][] {
  const lists: number[][] = [];
  for (const [place, row] of rows.entries()) {
    if (groups[place] < 0) continue;
    lists[groups[place]] ??= [];
    lists[groups[place]].push(row);
  }
  return lists.filter((list) => list !== undefined);
}

function medoidOf(matrix: Condensed, rows: readonly number[]): number {
  let best = rows[0];
  let least = Number.POSITIVE_INFINITY;
  for (const row of rows) {
    const sum = rows.reduce((total, other) => total + dissimilarityAt(matrix, row, other), 0);
    if (sum < least) {
      least = sum;
      best = row;
    }
  }
  return best;
}
