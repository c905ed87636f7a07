import { midpoint } from '../../fragments/accessors.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { type Condensed, dissimilarityAt } from '../../numerics/dissimilarity/condensed.ts';
import { ln } from '../../numerics/foundation/elementary.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { discriminant } from '../../numerics/ordination/discriminant.ts';
import { permutationTest } from '../../numerics/resampling/permutation.ts';
import { cohenKappa } from '../../numerics/tests/kappa.ts';
import type { Unavailable } from '../contract.ts';
import type { Prediction } from './apart-found.ts';

export interface PredictionRequest {
  readonly labels: Int32Array;
  readonly fold: Int32Array;
  /** Number of types in the typology. */
  readonly count: number;
  readonly relabellings: number;
  readonly random: Random;
}

/** By the types of the nearest records of other folds; a nearer one breaks a tie. */
export function predictByNeighbours(
  matrix: Condensed,
  request: PredictionRequest,
  neighbours: number,
  by: readonly string[],
): Prediction | Unavailable {
  const refusal = whyNot(request);
  if (refusal !== undefined) return refusal;
  const { fold, count } = request;
  const orders = Array.from({ length: matrix.n }, (_, i) => {
    const others = Array.from({ length: matrix.n }, (__, j) => j).filter((j) => fold[j] !== fold[i]);
    others.sort((a, b) => dissimilarityAt(matrix, i, a) - dissimilarityAt(matrix, i, b) || a - b);
    return Int32Array.from(others.slice(0, neighbours));
  });
  const votes = new Float64Array(count);
  const vote = (labels: ArrayLike<number>) =>
    Int32Array.from(orders, (near) => {
      votes.fill(0);
      near.forEach((j, rank) => {
        votes[labels[j]] += 1 - rank * 1e-6;
      });
      return votes.indexOf(votes.reduce((most, vote) => Math.max(most, vote)));
    });
  return judged(vote, request, by);
}

/** Shuffles of the linear discriminant: each learns anew. */
const SHUFFLES = 199;

/** By linear discriminant analysis on the numbers that most records have; records with gaps take no part. */
export function predictByDiscriminant(
  table: FragmentTable,
  free: readonly string[],
  request: PredictionRequest,
): Prediction | Unavailable {
  const numbers = free.flatMap((id) => {
    const column = table.columns.get(id);
    if (column?.kind !== 'numeric') return [];
    const log = column.attribute.transform === 'log';
    const values = Float64Array.from({ length: table.rows }, (_, row) => {
      const value = midpoint(column, row);
      return !log ? value : value > 0 ? ln(value) : Number.NaN;
    });
    return values.filter((value) => !Number.isNaN(value)).length >= 0.6 * table.rows ? [{ id, values }] : [];
  });
  if (numbers.length === 0)
    return { why: 'no number that does not define the types is recorded often enough' };
  const complete = Int32Array.from({ length: table.rows }, (_, row) => row).filter((row) =>
    numbers.every(({ values }) => !Number.isNaN(values[row])),
  );
  const own = Int32Array.from(complete, (row) => request.labels[row]);
  const fold = Int32Array.from(complete, (row) => request.fold[row]);
  const present = [...new Set(own)].sort((a, b) => a - b);
  const part = { ...request, labels: own, fold, relabellings: Math.min(SHUFFLES, request.relabellings) };
  const refusal = whyNot(part);
  if (refusal !== undefined) return refusal;
  const records = Array.from(complete, (row) => numbers.map(({ values }) => values[row]));
  const learn = (labels: ArrayLike<number>) =>
    discriminant(
      records,
      Int32Array.from(labels, (label) => present.indexOf(label)),
      fold,
    );
  const first = learn(own);
  if ('why' in first) return first;
  const predict = (labels: ArrayLike<number>) => {
    const found = learn(labels);
    // A shuffle that leaves a type without a teacher counts as reached, which errs on the careful side.
    return 'why' in found ? Int32Array.from(labels) : found.predicted.map((place) => present[place]);
  };
  const found = judged(
    predict,
    part,
    numbers.map(({ id }) => id),
  );
  const predicted = new Int32Array(table.rows).fill(-1);
  complete.forEach((row, place) => {
    predicted[row] = found.predicted[place];
  });
  return { ...found, predicted };
}

function whyNot({ labels, fold }: PredictionRequest): Unavailable | undefined {
  if (new Set(fold).size < 2) return { why: 'nothing to leave out: all records are of one assemblage' };
  if (new Set(labels).size < 2) return { why: 'only one type has records to compare' };
  return undefined;
}

function judged(
  predict: (labels: ArrayLike<number>) => Int32Array,
  { labels, fold, count, relabellings, random }: PredictionRequest,
  by: readonly string[],
): Prediction {
  const test = permutationTest(labels, (dealt) => balancedShare(dealt, predict(dealt), count), {
    random,
    relabellings,
    exactLimit: 1,
  });
  const predicted = predict(labels);
  const confusion = crossed(labels, predicted, count);
  return {
    confusion,
    predicted,
    n: labels.length,
    balanced: test.observed,
    p: test.p,
    chance: 1 / new Set(labels).size,
    folds: new Set(fold).size,
    kappa: cohenKappa(confusion),
    by,
  };
}

function crossed(labels: ArrayLike<number>, predicted: ArrayLike<number>, count: number): number[][] {
  const counts = Array.from({ length: count }, () => new Array<number>(count).fill(0));
  for (let i = 0; i < labels.length; i++) counts[labels[i]][predicted[i]]++;
  return counts;
}

function balancedShare(labels: ArrayLike<number>, predicted: ArrayLike<number>, count: number): number {
  const right = new Float64Array(count);
  const total = new Float64Array(count);
  for (let i = 0; i < labels.length; i++) {
    total[labels[i]]++;
    if (labels[i] === predicted[i]) right[labels[i]]++;
  }
  let sum = 0;
  let kinds = 0;
  for (let type = 0; type < count; type++) {
    if (total[type] === 0) continue;
    sum += right[type] / total[type];
    kinds++;
  }
  return sum / kinds;
}
