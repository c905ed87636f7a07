import { Matrix } from 'ml-matrix';
import { PCA } from 'ml-pca';
import type { Unavailable } from '../foundation/unavailable.ts';
import { axisSign } from './axis-signs.ts';
import type { PassivePoint } from './passive-point.ts';

/** Principal components. Rows and columns that took no part are named; the rest keep their order. */
export interface PrincipalComponents {
  readonly axes: number;
  readonly keptRows: Int32Array;
  readonly keptColumns: readonly number[];
  /** Columns that are the same in all kept rows. */
  readonly constantColumns: readonly number[];
  readonly centre: Float64Array;
  /** Standard deviations (divisor n - 1) that columns were divided by; all 1 without scaling. */
  readonly scale: Float64Array;
  /** Variance of each component, largest first, and its share of all variance. */
  readonly eigenvalues: Float64Array;
  readonly explained: Float64Array;
  /** Row i of keptRows on axis k at i * axes + k. */
  readonly scores: Float64Array;
  /** Column j of keptColumns on axis k at j * axes + k; unit length for each axis. */
  readonly loadings: Float64Array;
  /** Shares of each axis' variance by row, and by column. */
  readonly rowContributions: Float64Array;
  readonly columnContributions: Float64Array;
  /** Share of each row's squared distance from the centre that the axis shows. */
  readonly rowCos2: Float64Array;
  /** Share of each column's variance that the axis shows: its squared correlation with the axis. */
  readonly columnCos2: Float64Array;
}

/**
 * Principal component analysis by singular value decomposition (ml-pca), with the guards that it
 * lacks: rows with a gap are left out and named, constant columns likewise, and signs follow `axisSign`
 * of the loadings. Components below 1e-12 of the first are rounding and are not given.
 *
 * @param columns numbers by column; NaN is a gap.
 * @param scale true: every column has the same say (correlations); false: covariances.
 */
export function principalComponents(
  columns: readonly ArrayLike<number>[],
  { scale = true }: { readonly scale?: boolean } = {},
): PrincipalComponents | Unavailable {
  const rows = columns[0]?.length ?? 0;
  const keptRows = Int32Array.from(
    Array.from({ length: rows }, (_, i) => i).filter((i) =>
      columns.every((column) => Number.isFinite(column[i])),
    ),
  );
  const isConstant = (column: ArrayLike<number>) => keptRows.every((i) => column[i] === column[keptRows[0]]);
  const all = columns.map((_, j) => j);
  const constantColumns = all.filter((j) => isConstant(columns[j]));
  const keptColumns = all.filter((j) => !constantColumns.includes(j));
  if (keptRows.length < 3) return { why: `needs 3 records without gaps, not ${keptRows.length}` };
  if (keptColumns.length < 2) return { why: `needs 2 attributes that vary, not ${keptColumns.length}` };
  const n = keptRows.length;
  const p = keptColumns.length;
  const data = Matrix.zeros(n, p);
  keptRows.forEach((row, i) => {
    keptColumns.forEach((column, j) => {
      data.set(i, j, columns[column][row]);
    });
  });
  const fitted = new PCA(data, { method: 'SVD', center: true, scale }).toJSON();
  const centre = Float64Array.from(fitted.means);
  const spreads = scale ? Float64Array.from(fitted.stdevs) : new Float64Array(p).fill(1);
  const variances = fitted.S;
  let axes = 0;
  while (axes < Math.min(variances.length, n - 1, p) && variances[axes] > 1e-12 * variances[0]) axes++;
  const loadings = new Float64Array(p * axes);
  for (let k = 0; k < axes; k++) {
    const sign = axisSign(Array.from({ length: p }, (_, j) => fitted.U.get(j, k)));
    for (let j = 0; j < p; j++) loadings[j * axes + k] = sign * fitted.U.get(j, k);
  }
  const eigenvalues = Float64Array.from(variances.slice(0, axes));
  const total = variances.reduce((sum, variance) => sum + variance, 0);
  const scaled = new Float64Array(n * p);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < p; j++) scaled[i * p + j] = (data.get(i, j) - centre[j]) / spreads[j];
  }
  const scores = times(scaled, loadings, n, p, axes);
  return {
    axes,
    keptRows,
    keptColumns,
    constantColumns,
    centre,
    scale: spreads,
    eigenvalues,
    explained: eigenvalues.map((value) => value / total),
    scores,
    loadings,
    ...shares(scaled, scores, loadings, eigenvalues, n, p, axes),
  };
}

/** Scores of a record that took no part; values in the order of all columns, those kept without gaps. */
export function projectScores(
  found: PrincipalComponents,
  record: ArrayLike<number>,
): PassivePoint | Unavailable {
  const { keptColumns, centre, scale, loadings, axes } = found;
  const scaled = Float64Array.from(keptColumns, (column, j) => (record[column] - centre[j]) / scale[j]);
  if (scaled.some((value) => !Number.isFinite(value))) return { why: 'a value of it is missing' };
  const fromCentre = scaled.reduce((sum, value) => sum + value * value, 0);
  return { coordinates: times(scaled, loadings, 1, keptColumns.length, axes), fromCentre };
}

function times(a: Float64Array, b: Float64Array, n: number, p: number, axes: number): Float64Array {
  const product = new Float64Array(n * axes);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < p; j++) {
      for (let k = 0; k < axes; k++) product[i * axes + k] += a[i * p + j] * b[j * axes + k];
    }
  }
  return product;
}

function shares(
  scaled: Float64Array,
  scores: Float64Array,
  loadings: Float64Array,
  eigenvalues: Float64Array,
  n: number,
  p: number,
  axes: number,
) {
  const rowSquares = new Float64Array(n);
  const columnSquares = new Float64Array(p);
  scaled.forEach((value, at) => {
    rowSquares[Math.floor(at / p)] += value * value;
    columnSquares[at % p] += value * value;
  });
  const square = (value: number) => value * value;
  return {
    rowContributions: scores.map((value, at) => square(value) / (eigenvalues[at % axes] * (n - 1))),
    columnContributions: loadings.map(square),
    rowCos2: scores.map((value, at) => {
      const whole = rowSquares[Math.floor(at / axes)];
      return whole > 0 ? square(value) / whole : 0;
    }),
    columnCos2: loadings.map(
      (value, at) =>
        (square(value) * eigenvalues[at % axes] * (n - 1)) / columnSquares[Math.floor(at / axes)],
    ),
  };
}
