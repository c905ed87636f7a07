import type { Condensed } from '../dissimilarity/condensed.ts';
import { type EigenPairs, leadingEigenpairs, symmetricEigen } from '../foundation/eigen.ts';
import { solveSymmetric } from '../foundation/solve.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { axisSign } from './axis-signs.ts';
import type { PassivePoint } from './passive-point.ts';

/** Records as points whose distances come as near to the dissimilarities as so few axes allow. */
export interface PrincipalCoordinates {
  readonly n: number;
  /** Axes with a positive eigenvalue, at most as many as asked for. */
  readonly axes: number;
  /** Coordinate of record i on axis k at i * axes + k; each axis has mean 0. */
  readonly coordinates: Float64Array;
  /** Sum of squared coordinates of each axis, largest first. */
  readonly eigenvalues: Float64Array;
  /** Sum of all eigenvalues, negative ones included: the sum of squares about the centre. */
  readonly trace: number;
  /**
   * Sum of the positive eigenvalues: what the axes are shares of, since dissimilarities that are not Euclidean have
   * negative ones too, and shares of the trace may then exceed 1. Above 200 records a lower bound of it: the larger of
   * the trace and what the axes given hold.
   */
  readonly positive: number;
  /** Squared distance of each record from the centre, in all dimensions. */
  readonly fromCentre: Float64Array;
  /** Half the mean squared dissimilarity; a new record's distance from the centre needs it. */
  readonly inertia: number;
}

/** Up to this size all eigenpairs are computed at once; above it, the leading ones by iteration. */
const FULL_SOLUTION = 200;

/**
 * Principal coordinates (Gower 1966, Biometrika 53:325; Torgerson's classical scaling), as R's
 * `cmdscale`: the eigenvectors of the doubly centred matrix of -d²/2, scaled to their eigenvalues.
 * Signs by `axisSign`. An axis counts only above 1e-10 of the largest eigenvalue.
 *
 * @param matrix every pair known; at least two records.
 * @throws RangeError on an unknown pair.
 */
export function principalCoordinates(matrix: Condensed, axes: number): PrincipalCoordinates | Unavailable {
  const { n, values } = matrix;
  if (n < 2) return { why: `an ordination needs 2 records, not ${n}` };
  const rowMeans = new Float64Array(n);
  let place = 0;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      const square = values[place] * values[place++];
      if (Number.isNaN(square)) throw new RangeError('principalCoordinates: a dissimilarity is unknown');
      rowMeans[i] += square / n;
      rowMeans[j] += square / n;
    }
  }
  const grandMean = rowMeans.reduce((sum, mean) => sum + mean / n, 0);
  const fromCentre = rowMeans.map((mean) => mean - grandMean / 2);
  const trace = fromCentre.reduce((sum, square) => sum + square, 0);
  if (!(trace > 0)) return { why: 'all records are alike, so there is nothing to spread out' };
  const pairs =
    n <= FULL_SOLUTION
      ? symmetricEigen(centred(matrix, rowMeans, grandMean), n)
      : leadingEigenpairs(centredProduct(matrix, rowMeans, grandMean), n, Math.min(axes, n - 1));
  return scaled(pairs, n, axes, { trace, fromCentre, inertia: grandMean / 2 });
}

function scaled(
  pairs: EigenPairs,
  n: number,
  wanted: number,
  rest: Pick<PrincipalCoordinates, 'trace' | 'fromCentre' | 'inertia'>,
): PrincipalCoordinates | Unavailable {
  const floor = 1e-10 * pairs.values[0];
  let axes = 0;
  while (axes < Math.min(wanted, pairs.values.length) && pairs.values[axes] > floor) axes++;
  if (axes === 0) return { why: 'no axis has a positive eigenvalue' };
  const coordinates = new Float64Array(n * axes);
  for (let k = 0; k < axes; k++) {
    const vector = pairs.vectors.subarray(k * n, (k + 1) * n);
    const factor = axisSign(vector) * Math.sqrt(pairs.values[k]);
    for (let i = 0; i < n; i++) coordinates[i * axes + k] = vector[i] * factor;
  }
  const eigenvalues = pairs.values.slice(0, axes);
  const known = (values: Float64Array) => values.reduce((sum, value) => sum + Math.max(value, 0), 0);
  const positive = pairs.values.length >= n ? known(pairs.values) : Math.max(rest.trace, known(eigenvalues));
  return { n, axes, coordinates, eigenvalues, positive, ...rest };
}

/** The doubly centred matrix of -d²/2, n * n. */
function centred(matrix: Condensed, rowMeans: Float64Array, grandMean: number): Float64Array {
  const { n, values } = matrix;
  const square = new Float64Array(n * n);
  let place = 0;
  for (let i = 0; i < n; i++) {
    square[i * n + i] = rowMeans[i] - grandMean / 2;
    for (let j = i + 1; j < n; j++) {
      const squared = values[place] * values[place++];
      const value = -(squared - rowMeans[i] - rowMeans[j] + grandMean) / 2;
      square[i * n + j] = value;
      square[j * n + i] = value;
    }
  }
  return square;
}

/** The same matrix times a vector, straight from the condensed dissimilarities. */
function centredProduct(matrix: Condensed, rowMeans: Float64Array, grandMean: number) {
  const { n, values } = matrix;
  return (x: Float64Array, out: Float64Array): void => {
    let sum = 0;
    let weighted = 0;
    for (let i = 0; i < n; i++) {
      sum += x[i];
      weighted += rowMeans[i] * x[i];
    }
    out.fill(0);
    let place = 0;
    for (let i = 0; i < n; i++) {
      const own = x[i];
      let total = 0;
      for (let j = i + 1; j < n; j++) {
        const squared = values[place] * values[place++];
        total += squared * x[j];
        out[j] += squared * own;
      }
      out[i] += total;
    }
    for (let i = 0; i < n; i++) out[i] = -(out[i] - rowMeans[i] * sum - weighted + grandMean * sum) / 2;
  };
}

/** Where a new record falls among known ones. */
export interface Projection extends PassivePoint {
  /** Squared distance from the plane of the axes; negative where the dissimilarities are not Euclidean. */
  readonly offPlane: number;
  /** Records whose dissimilarity to the new one was known. */
  readonly used: number;
}

/**
 * Adds a record to finished principal coordinates (Gower 1968, Biometrika 55:582, eq. 10): y = X'(b -
 * d²) / (2 lambda), where b holds the squared distances from the centre. A record that is among the known
 * ones falls on its own place.
 *
 * Where some dissimilarities are unknown, the same equation is solved by least squares over the known
 * ones, b - d² = 2 X y - c, which is Gower's formula when all are known.
 */
export function projectRecord(
  found: PrincipalCoordinates,
  dissimilarities: Float64Array,
): Projection | Unavailable {
  return projector(found)(dissimilarities);
}

/** `projectRecord` for many records: what does not depend on the record is summed once. */
export function projector(
  found: PrincipalCoordinates,
): (dissimilarities: Float64Array) => Projection | Unavailable {
  const { n, axes, coordinates, fromCentre } = found;
  const size = axes + 1;
  const rows = new Float64Array(n * size);
  for (let i = 0; i < n; i++) {
    for (let a = 0; a < axes; a++) rows[i * size + a] = 2 * coordinates[i * axes + a];
    rows[i * size + axes] = -1;
  }
  let whole: Float64Array | undefined;
  return (dissimilarities) => {
    const right = new Float64Array(size);
    let used = 0;
    for (let i = 0; i < n; i++) {
      const d = dissimilarities[i];
      if (Number.isNaN(d)) continue;
      used++;
      const target = fromCentre[i] - d * d;
      for (let a = 0; a < size; a++) right[a] += rows[i * size + a] * target;
    }
    if (used < size) return { why: `only ${used} records could be compared, too few to place it` };
    const normal = used === n && whole !== undefined ? whole : crossProducts(rows, size, dissimilarities);
    if (used === n) whole = normal;
    const solution = solveSymmetric(normal, right);
    if (solution === null) return { why: 'the records that could be compared do not span the axes' };
    const place = solution.slice(0, axes);
    const onPlane = place.reduce((sum, value) => sum + value * value, 0);
    return { coordinates: place, fromCentre: solution[axes], offPlane: solution[axes] - onPlane, used };
  };
}

/** Sums of products of the columns, over the rows whose dissimilarity is known. */
function crossProducts(rows: Float64Array, size: number, dissimilarities: Float64Array): Float64Array {
  const normal = new Float64Array(size * size);
  for (let i = 0; i < dissimilarities.length; i++) {
    if (Number.isNaN(dissimilarities[i])) continue;
    for (let a = 0; a < size; a++)
      for (let b = 0; b < size; b++) normal[a * size + b] += rows[i * size + a] * rows[i * size + b];
  }
  return normal;
}
