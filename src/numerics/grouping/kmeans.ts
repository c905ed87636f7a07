import { kmeans as mlKmeans } from 'ml-kmeans';
import type { Random } from '../foundation/random.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { lloyd, type Start } from './lloyd.ts';
import { plusPlus } from './plus-plus.ts';
import { narrow, type Records, widen, withRecords } from './records.ts';

export interface Points {
  /** n * columns finite numbers, row by row, already on scales that may be compared. */
  readonly values: Float64Array;
  readonly n: number;
  readonly columns: number;
}

export interface KMeansGrouping {
  readonly k: number;
  readonly membership: Int32Array;
  /** k * columns means, row by row. */
  readonly centres: Float64Array;
  /** Sum of squared distances to the own centre. */
  readonly withinSquares: number;
  /** Starts that ended with every group filled; the best of them is given. */
  readonly starts: number;
  /** Whether two of them came to the best sum of squares; otherwise another start might find a better one. */
  readonly metTwice: boolean;
  readonly iterations: number;
}

export interface KMeansSettings {
  readonly k: number;
  /** Most seeded starts that are tried; the one with the least sum of squares is kept. */
  readonly starts: number;
  readonly random: Random;
  /** Whether to stop when the best has been met twice, before the starts are spent. */
  readonly untilMetTwice?: boolean;
  /** Records from which the own kernel is used in place of ml-kmeans; both take the same steps. */
  readonly largeFrom?: number;
}

/** ml-kmeans holds rows as arrays and measures every distance: from here on it takes minutes. */
const LARGE_FROM = 2000;
const MOST_ITERATIONS = 300;
/** Two starts that end within this share of each other's sum of squares have met the same groups. */
const SAME = 1e-3;
/**
 * Squared movement of a centre, relative to the mean variance, below which a start counts as settled; the
 * best start is then carried on until nothing moves at all.
 */
const TOLERANCE = 1e-5;

/**
 * Into which k groups around their means do numeric records fall?
 *
 * k-means: Lloyd's iteration (Lloyd 1982, *IEEE Trans. Inf. Theory* 28:129) from several seeded k-means++
 * starts, the best kept. It minimises squared Euclidean distance
 * to means: for complete numeric columns on comparable scales and round groups of like size; not for kinds,
 * gaps or outliers, for which medoids are. Small tables go through ml-kmeans, large ones through a typed-array
 * kernel that takes the same steps from the same starts. A start that ends with an empty group is dropped.
 *
 * @returns groups, or why there are none: fewer distinct records than groups. RangeError for gaps or k < 1.
 */
export function kmeans(points: Points, settings: KMeansSettings): KMeansGrouping | Unavailable {
  const { values, n, columns } = points;
  const { k, starts } = settings;
  if (values.length !== n * columns) throw new RangeError('kmeans needs n * columns numbers');
  if (!values.every(Number.isFinite)) throw new RangeError('kmeans needs complete, finite numbers');
  if (!Number.isInteger(k) || k < 1 || starts < 1)
    throw new RangeError('kmeans needs k and starts of 1 or more');
  const distinct = countDistinct(points, k);
  if (distinct < k) {
    return {
      why: `${distinct === 1 ? 'all records are equal' : `only ${distinct} records differ`}, too few for ${k} groups`,
    };
  }
  const large = n >= (settings.largeFrom ?? LARGE_FROM);
  const tolerance = TOLERANCE * meanVariance(points);
  return withRecords(points, k, (records) => {
    const run = (least: number, assigned: boolean) =>
      large
        ? lloyd(records, least, MOST_ITERATIONS, assigned)
        : viaLibrary(points, startOf(records), least, MOST_ITERATIONS);
    let best: Start | null = null;
    let filled = 0;
    let met = 0;
    for (let start = 0; start < starts; start++) {
      plusPlus(records, settings.random.stream(`start ${start}`));
      const found = run(tolerance, true);
      if (found.emptied) continue;
      filled++;
      const same =
        best !== null && Math.abs(found.withinSquares - best.withinSquares) <= SAME * best.withinSquares;
      if (same) met++;
      else if (best === null || found.withinSquares < best.withinSquares) met = 1;
      if (best === null || found.withinSquares < best.withinSquares) best = found;
      if (settings.untilMetTwice === true && met >= 2) break;
    }
    if (best === null) return { why: `every start left a group empty; ask for fewer than ${k} groups` };
    widen(best.centres, columns, records.stride, records.doubles.centres);
    const polished = run(0, false);
    const { membership, centres, withinSquares } = polished.emptied ? best : polished;
    const iterations = best.iterations + polished.iterations;
    return { k, membership, centres, withinSquares, iterations, starts: filled, metTwice: met >= 2 };
  });
}

function startOf({ doubles, columns, stride }: Records): Float64Array {
  return narrow(doubles.centres, columns, stride);
}

/** One start through ml-kmeans, guarded: it keeps a stale centre for a group that has emptied and says nothing. */
function viaLibrary(points: Points, start: Float64Array, tolerance: number, mostIterations: number): Start {
  const { values, n, columns } = points;
  const rowsOf = (flat: Float64Array, count: number) =>
    Array.from({ length: count }, (_, i) => Array.from(flat.subarray(i * columns, (i + 1) * columns)));
  const k = start.length / columns;
  const found = mlKmeans(rowsOf(values, n), k, {
    initialization: rowsOf(start, k),
    maxIterations: mostIterations,
    tolerance,
  });
  const membership = Int32Array.from(found.clusters);
  const centres = Float64Array.from(found.centroids.flat());
  const sizes = new Int32Array(k);
  let withinSquares = 0;
  for (let i = 0; i < n; i++) {
    sizes[membership[i]]++;
    for (let c = 0; c < columns; c++) {
      const difference = values[i * columns + c] - centres[membership[i] * columns + c];
      withinSquares += difference * difference;
    }
  }
  return { membership, centres, withinSquares, iterations: found.iterations, emptied: sizes.includes(0) };
}

/** Number of different records, counted no further than `enough`. */
function countDistinct({ values, n, columns }: Points, enough: number): number {
  const kinds: number[] = [];
  for (let i = 0; i < n && kinds.length < enough; i++) {
    const known = kinds.some((j) => {
      for (let c = 0; c < columns; c++) if (values[i * columns + c] !== values[j * columns + c]) return false;
      return true;
    });
    if (!known) kinds.push(i);
  }
  return kinds.length;
}

function meanVariance({ values, n, columns }: Points): number {
  let total = 0;
  for (let c = 0; c < columns; c++) {
    let mean = 0;
    for (let i = 0; i < n; i++) mean += values[i * columns + c] / n;
    for (let i = 0; i < n; i++) {
      const difference = values[i * columns + c] - mean;
      total += (difference * difference) / n;
    }
  }
  return total / columns;
}
