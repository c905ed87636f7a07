import { symmetricEigen } from '../foundation/eigen.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { axisSign } from './axis-signs.ts';
import type { PassivePoint } from './passive-point.ts';

/** Points on axes, with what each does for an axis and how well the axes show it. */
export interface FactorPoints {
  readonly n: number;
  /** Principal coordinates: point i on axis k at i * axes + k. */
  readonly coordinates: Float64Array;
  /** Share of the axis' inertia that the point makes; each axis sums to 1. */
  readonly contributions: Float64Array;
  /** Share of the point's own inertia that the axis shows (squared cosine); all axes sum to 1. */
  readonly cos2: Float64Array;
  readonly weights: Float64Array;
  /** Weight times squared distance from the centre, in all dimensions. */
  readonly inertias: Float64Array;
}

/** The analysis of one table with weights on its rows and columns. */
export interface DualityDiagram {
  readonly axes: number;
  /** Inertia of each axis, largest first. */
  readonly eigenvalues: Float64Array;
  readonly totalInertia: number;
  readonly rows: FactorPoints;
  readonly columns: FactorPoints;
}

/**
 * The common core of correspondence analysis, multiple correspondence analysis and the analysis of
 * mixed data (Escoufier 1987, "The duality diagram"; Dray & Dufour 2007, J. Stat. Software 22(4)): the
 * axes of a centred table X under row weights r and column weights c.
 *
 * @param table rows * columns, row by row, every column with r-weighted mean 0.
 * @param rowWeights, columnWeights above 0; row weights sum to 1.
 * @returns axes with more than 1e-10 of the largest inertia, turned by `axisSign` of the columns.
 */
export function dualityDiagram(
  table: Float64Array,
  rowWeights: Float64Array,
  columnWeights: Float64Array,
): DualityDiagram | Unavailable {
  const n = rowWeights.length;
  const p = columnWeights.length;
  const scaled = new Float64Array(n * p);
  for (let i = 0; i < n; i++) {
    const root = Math.sqrt(rowWeights[i]);
    for (let j = 0; j < p; j++) scaled[i * p + j] = table[i * p + j] * root * Math.sqrt(columnWeights[j]);
  }
  const { values, vectors } = rightVectors(scaled, n, p);
  const totalInertia = scaled.reduce((sum, value) => sum + value * value, 0);
  if (!(totalInertia > 1e-28))
    return { why: 'all rows have the same profile, so there is nothing to spread out' };
  let axes = 0;
  while (axes < Math.min(n, p, values.length) && values[axes] > 1e-10 * values[0]) axes++;
  const eigenvalues = values.slice(0, axes);
  const columnPlaces = new Float64Array(p * axes);
  const rowPlaces = new Float64Array(n * axes);
  for (let k = 0; k < axes; k++) {
    const vector = vectors.subarray(k * p, (k + 1) * p);
    const standard = vector.map((value, j) => value / Math.sqrt(columnWeights[j]));
    const sign = axisSign(standard);
    const root = Math.sqrt(eigenvalues[k]);
    for (let j = 0; j < p; j++) columnPlaces[j * axes + k] = sign * standard[j] * root;
    for (let i = 0; i < n; i++) {
      let place = 0;
      for (let j = 0; j < p; j++) place += table[i * p + j] * columnWeights[j] * standard[j];
      rowPlaces[i * axes + k] = sign * place;
    }
  }
  const squares = { rows: new Float64Array(n), columns: new Float64Array(p) };
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < p; j++) {
      const square = table[i * p + j] * table[i * p + j];
      squares.rows[i] += columnWeights[j] * square;
      squares.columns[j] += rowWeights[i] * square;
    }
  }
  return {
    axes,
    eigenvalues,
    totalInertia,
    rows: factorPoints(rowPlaces, rowWeights, squares.rows, eigenvalues),
    columns: factorPoints(columnPlaces, columnWeights, squares.columns, eigenvalues),
  };
}

/** Eigenvectors of scaled' scaled, by way of the smaller of the two cross products. */
function rightVectors(scaled: Float64Array, n: number, p: number) {
  if (p <= n)
    return symmetricEigen(
      crossProduct(p, (a, b) => columnDot(scaled, n, p, a, b)),
      p,
    );
  const left = symmetricEigen(
    crossProduct(n, (a, b) => rowDot(scaled, p, a, b)),
    n,
  );
  const vectors = new Float64Array(n * p);
  for (let k = 0; k < n; k++) {
    const root = Math.sqrt(Math.max(left.values[k], 0));
    for (let i = 0; root > 0 && i < n; i++) {
      const share = left.vectors[k * n + i] / root;
      for (let j = 0; j < p; j++) vectors[k * p + j] += share * scaled[i * p + j];
    }
  }
  return { values: left.values, vectors };
}

function crossProduct(size: number, of: (a: number, b: number) => number): Float64Array {
  const square = new Float64Array(size * size);
  for (let a = 0; a < size; a++) {
    for (let b = a; b < size; b++) {
      square[a * size + b] = of(a, b);
      square[b * size + a] = square[a * size + b];
    }
  }
  return square;
}

function columnDot(x: Float64Array, n: number, p: number, a: number, b: number): number {
  let sum = 0;
  for (let i = 0; i < n; i++) sum += x[i * p + a] * x[i * p + b];
  return sum;
}

function rowDot(x: Float64Array, p: number, a: number, b: number): number {
  let sum = 0;
  for (let j = 0; j < p; j++) sum += x[a * p + j] * x[b * p + j];
  return sum;
}

function factorPoints(
  coordinates: Float64Array,
  weights: Float64Array,
  squares: Float64Array,
  eigenvalues: Float64Array,
): FactorPoints {
  const axes = eigenvalues.length;
  const contributions = coordinates.map(
    (value, at) => (weights[Math.floor(at / axes)] * value * value) / eigenvalues[at % axes],
  );
  const cos2 = coordinates.map((value, at) => {
    const square = squares[Math.floor(at / axes)];
    return square > 0 ? (value * value) / square : 0;
  });
  const inertias = weights.map((weight, i) => weight * squares[i]);
  return { n: weights.length, coordinates, contributions, cos2, weights, inertias };
}

/** A row that took no part: its centred values against the columns' axes. */
export function supplementaryRow(diagram: DualityDiagram, centredRow: ArrayLike<number>): PassivePoint {
  return supplementary(centredRow, diagram.columns, diagram);
}

/** A column that took no part: its centred values against the rows' axes. */
export function supplementaryColumn(diagram: DualityDiagram, centredColumn: ArrayLike<number>): PassivePoint {
  return supplementary(centredColumn, diagram.rows, diagram);
}

function supplementary(
  centred: ArrayLike<number>,
  against: FactorPoints,
  { axes, eigenvalues }: DualityDiagram,
): PassivePoint {
  const coordinates = new Float64Array(axes);
  let fromCentre = 0;
  for (let j = 0; j < against.n; j++) fromCentre += against.weights[j] * centred[j] * centred[j];
  for (let k = 0; k < axes; k++) {
    for (let j = 0; j < against.n; j++) {
      coordinates[k] += centred[j] * against.weights[j] * against.coordinates[j * axes + k];
    }
    coordinates[k] /= Math.sqrt(eigenvalues[k]);
  }
  return { coordinates, fromCentre };
}
