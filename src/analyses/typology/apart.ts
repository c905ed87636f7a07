import type { Register } from '../../attributes/definition.ts';
import {
  type Comparison,
  type ComparisonSettings,
  compareRecords,
  defaultAttributes,
} from '../../fragments/comparison.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { type Condensed, dissimilarityAt, takeRecords } from '../../numerics/condensed.ts';
import { type DispersionTest, dispersionTest } from '../../numerics/dispersion.ts';
import { dissimilarities } from '../../numerics/dissimilarity.ts';
import { adjustedRand, contingency, matchGroups } from '../../numerics/grouping/agreement.ts';
import { knownRecords } from '../../numerics/grouping/known-records.ts';
import { medoids } from '../../numerics/grouping/medoids.ts';
import { silhouette } from '../../numerics/grouping/silhouette.ts';
import { type PermutationalAnova, permanova } from '../../numerics/permanova.ts';
import { permutationTest } from '../../numerics/permutation.ts';
import type { Random } from '../../numerics/random.ts';
import type { Unavailable } from '../contract.ts';

/** How the types stand in attributes that did not define them. */
export interface Apart {
  /** Attributes compared, none of them defining. */
  readonly compared: readonly string[];
  /** Attributes that were asked to be compared although they define the types. */
  readonly usedTwice: readonly string[];
  /** Places (in the assignment) of the records compared. */
  readonly places: Int32Array;
  readonly difference: PermutationalAnova | Unavailable;
  readonly dispersion: DispersionTest | Unavailable;
  /** Mean silhouette width of each type, in the order of the typology; NaN where it has no record. */
  readonly silhouettes: readonly number[];
  readonly meanSilhouette: number | Unavailable;
  readonly prediction: Prediction | Unavailable;
  readonly freeGroups: FreeGroups | Unavailable;
}

/** Types predicted for each fold from all the others. */
export interface Prediction {
  /** confusion[true type][predicted type] */
  readonly confusion: readonly (readonly number[])[];
  /** Mean share of each type's records that were predicted rightly: large types do not drown small ones. */
  readonly balanced: number;
  /** The same under shuffled types. */
  readonly p: number;
  readonly chance: number;
  readonly folds: number;
}

/** Groups found without the types, set against them. */
export interface FreeGroups {
  /** counts[type][group] */
  readonly counts: readonly (readonly number[])[];
  readonly match: readonly number[];
  readonly adjustedRand: number | Unavailable;
}

export interface ApartRequest {
  readonly table: FragmentTable;
  readonly register: Register;
  readonly settings: ComparisonSettings;
  readonly defining: readonly string[];
  /** Rows and types of the records that have a type. */
  readonly rows: Int32Array;
  readonly types: Int32Array;
  readonly count: number;
  /** Fold of each record. */
  readonly fold: Int32Array;
  readonly neighbours: number;
  readonly relabellings: number;
  readonly random: Random;
}

/** Measurements that say the same in another form; a rule on one defines the other too. */
const ONE_MEASUREMENT: readonly (readonly string[])[] = [
  [
    'rowSpacing',
    'density2',
    'rowGap',
    'gapRatio',
    'spacingClass',
    'cover2',
    'openness',
    'balance',
    'logBalance',
  ],
];

/** The defining attributes with everything that is arithmetic on them. */
export function entangled(defining: readonly string[]): ReadonlySet<string> {
  const all = new Set(defining);
  for (const family of ONE_MEASUREMENT)
    if (family.some((id) => all.has(id))) for (const id of family) all.add(id);
  return all;
}

/**
 * Compares the types in attributes that did not define them; a test on a defining attribute would be
 * circular. Needs two types with two records each and one free attribute.
 */
export function howApart(request: ApartRequest): Apart | Unavailable {
  const { table, register, settings, rows, types, count } = request;
  const bound = entangled(request.defining);
  const wanted = settings.of.length > 0 ? settings.of : defaultAttributes(table);
  const free = wanted.filter((id) => !bound.has(id));
  const usedTwice = settings.of.filter((id) => bound.has(id));
  if (free.length === 0)
    return { why: 'every attribute that could be compared defines the types, so any test would be circular' };
  const taken = takeComparable(compareRecords(table, register, { ...settings, of: free }), rows);
  if ('why' in taken) return taken;
  const { places, matrix } = taken;
  const labels = Int32Array.from(places, (place) => types[place]);
  const present = [...new Set(labels)].sort((a, b) => a - b);
  const dense = labels.map((type) => present.indexOf(type));
  const widths = silhouette(matrix, labels);
  const options = { random: request.random.stream('difference'), relabellings: request.relabellings };
  return {
    compared: free,
    usedTwice,
    places,
    difference: permanova(matrix, dense, options),
    dispersion:
      present.length < 2
        ? { why: 'a comparison needs two groups' }
        : dispersionTest(matrix, dense, { ...options, random: request.random.stream('dispersion') }),
    silhouettes: Array.from({ length: count }, (_, type) =>
      present.includes(type) && widths !== null ? widths.groups[type] : Number.NaN,
    ),
    meanSilhouette: widths === null ? { why: 'only one type has records to compare' } : widths.mean,
    prediction: predict(
      matrix,
      labels,
      Int32Array.from(places, (place) => request.fold[place]),
      request,
    ),
    freeGroups: groupFreely(matrix, labels, count, present.length),
  };
}

function takeComparable(
  comparison: Comparison,
  rows: Int32Array,
): { places: Int32Array; matrix: Condensed } | Unavailable {
  const all = dissimilarities(comparison.spec);
  const among: Condensed = takeRecords(all, rows);
  const { kept } = knownRecords(among);
  if (kept.length < 4)
    return { why: `only ${kept.length} records can be compared in attributes that do not define the types` };
  return { places: Int32Array.from(kept), matrix: takeRecords(among, kept) };
}

function predict(
  matrix: Condensed,
  labels: Int32Array,
  fold: Int32Array,
  { count, neighbours, relabellings, random }: ApartRequest,
): Prediction | Unavailable {
  const folds = new Set(fold).size;
  if (folds < 2) return { why: 'nothing to leave out: all records are of one assemblage' };
  if (new Set(labels).size < 2) return { why: 'only one type has records to compare' };
  const orders = nearestOutside(matrix, fold, neighbours);
  const vote = (dealt: ArrayLike<number>) => confusionOf(orders, dealt, count);
  const test = permutationTest(labels, (dealt) => balancedShare(vote(dealt)), {
    random: random.stream('prediction'),
    relabellings,
    exactLimit: 1,
  });
  const kinds = new Set(labels).size;
  return { confusion: vote(labels), balanced: test.observed, p: test.p, chance: 1 / kinds, folds };
}

/** For each record its nearest ones of other folds, nearest first. */
function nearestOutside(matrix: Condensed, fold: Int32Array, neighbours: number): Int32Array[] {
  return Array.from({ length: matrix.n }, (_, i) => {
    const others = Array.from({ length: matrix.n }, (__, j) => j).filter((j) => fold[j] !== fold[i]);
    others.sort((a, b) => dissimilarityAt(matrix, i, a) - dissimilarityAt(matrix, i, b) || a - b);
    return Int32Array.from(others.slice(0, neighbours));
  });
}

function confusionOf(orders: readonly Int32Array[], labels: ArrayLike<number>, count: number): number[][] {
  const confusion = Array.from({ length: count }, () => new Array<number>(count).fill(0));
  orders.forEach((near, i) => {
    const votes = new Float64Array(count);
    // A nearer neighbour breaks a tie, so its vote weighs a little more.
    near.forEach((j, rank) => {
      votes[labels[j]] += 1 - rank * 1e-6;
    });
    confusion[labels[i]][votes.indexOf(Math.max(...votes))]++;
  });
  return confusion;
}

function balancedShare(confusion: readonly (readonly number[])[]): number {
  const shares = confusion.flatMap((line, type) => {
    const total = line.reduce((sum, value) => sum + value, 0);
    return total === 0 ? [] : [line[type] / total];
  });
  return shares.reduce((sum, share) => sum + share, 0) / shares.length;
}

function groupFreely(
  matrix: Condensed,
  labels: Int32Array,
  count: number,
  k: number,
): FreeGroups | Unavailable {
  if (k < 2) return { why: 'only one type has records to compare' };
  if (matrix.n > 3000)
    return { why: `${matrix.n} records are too many to group here; use the analysis "grouping"` };
  const { membership } = medoids(matrix, k);
  const table = contingency(labels, membership);
  return {
    counts: Array.from({ length: count }, (_, type) =>
      Array.from({ length: k }, (__, group) =>
        type < table.rows ? (table.counts[type * table.columns + group] ?? 0) : 0,
      ),
    ),
    match: Array.from(matchGroups(table)),
    adjustedRand: adjustedRand(table),
  };
}
