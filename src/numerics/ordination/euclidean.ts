import { type Condensed, condensedIndex } from '../dissimilarity/condensed.ts';
import { symmetricEigenvalues } from '../foundation/eigen.ts';
import type { Unavailable } from '../foundation/unavailable.ts';

/** How far a table of dissimilarities is from distances that can be drawn in a flat space. */
export interface EuclideanReport {
  /** Size of the negative eigenvalues as a share of all eigenvalues' sizes; 0 = Euclidean. */
  readonly negativeShare: number;
  /** Sum of the positive eigenvalues: all that axes can show. */
  readonly positive: number;
  readonly largest: number;
  readonly smallest: number;
  readonly isEuclidean: boolean;
  /** Triples of records in which one side is longer than the other two together. */
  readonly brokenTriangles: number;
  readonly triangles: number;
}

/** Above this many records the report would take longer than the ordination itself. */
const MOST_RECORDS = 600;

/**
 * Whether the dissimilarities are metric (no triangle broken) and Euclidean (no negative eigenvalue of
 * the doubly centred matrix; Gower & Legendre 1986, J. Classif. 3:5). Every pair must be known.
 */
export function euclideanReport(matrix: Condensed): EuclideanReport | Unavailable {
  const { n } = matrix;
  if (n < 3) return { why: `the report needs 3 records, not ${n}` };
  if (n > MOST_RECORDS) return { why: `not computed above ${MOST_RECORDS} records` };
  const eigenvalues = centredEigenvalues(matrix);
  let size = 0;
  let negative = 0;
  for (const value of eigenvalues) {
    size += Math.abs(value);
    if (value < 0) negative -= value;
  }
  const positive = size - negative;
  const largest = eigenvalues[0];
  const smallest = eigenvalues[n - 1];
  const isEuclidean = smallest >= -1e-9 * Math.max(largest, 0);
  const triangles = (n * (n - 1) * (n - 2)) / 6;
  return {
    positive,
    negativeShare: size > 0 && !isEuclidean ? negative / size : 0,
    largest,
    smallest,
    isEuclidean,
    brokenTriangles: countBroken(matrix),
    triangles,
  };
}

/** Eigenvalues of the doubly centred matrix of -d²/2, largest first. */
export function centredEigenvalues(matrix: Condensed): Float64Array {
  return symmetricEigenvalues(
    doublyCentred(matrix, (d) => -(d * d) / 2),
    matrix.n,
  );
}

/** Double centring of any function of the dissimilarities, n * n. */
export function doublyCentred(matrix: Condensed, of: (d: number) => number): Float64Array {
  const { n, values } = matrix;
  const square = new Float64Array(n * n);
  const means = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      const value = of(values[condensedIndex(n, i, j)]);
      square[i * n + j] = value;
      square[j * n + i] = value;
      means[i] += value / n;
      means[j] += value / n;
    }
  }
  const grand = means.reduce((sum, mean) => sum + mean / n, 0);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) square[i * n + j] += grand - means[i] - means[j];
  }
  return square;
}

function countBroken({ n, values }: Condensed): number {
  let broken = 0;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      const side = values[condensedIndex(n, i, j)];
      for (let k = j + 1; k < n; k++) {
        const a = values[condensedIndex(n, i, k)];
        const b = values[condensedIndex(n, j, k)];
        const slack = 1e-12 * (side + a + b);
        if (side > a + b + slack || a > side + b + slack || b > side + a + slack) broken++;
      }
    }
  }
  return broken;
}
