import { EigenvalueDecomposition, Matrix } from 'ml-matrix';
import type { Condensed } from '../dissimilarity/condensed.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { centredEigenvalues, doublyCentred } from './euclidean.ts';

/** Ways to make dissimilarities Euclidean, so that no axis has a negative eigenvalue. */
export type Correction = 'none' | 'square-root' | 'lingoes' | 'cailliez';

export interface Corrected {
  readonly matrix: Condensed;
  readonly correction: Correction;
  /** Lingoes: added twice to every squared dissimilarity; Cailliez: added to every dissimilarity. */
  readonly constant: number;
}

/** Cailliez' constant is an eigenvalue of a matrix of twice this size. */
const MOST_FOR_CAILLIEZ = 250;
const MOST_FOR_LINGOES = 600;

/**
 * Corrects all dissimilarities between different records (records that are 0 apart included, as in the
 * originals).
 *
 * - `square-root`: the root of each; enough for Gower's coefficient without gaps (Gower & Legendre 1986).
 * - `lingoes`: sqrt(d² + 2c), c the size of the lowest eigenvalue (Lingoes 1971, Psychometrika 36:195).
 * - `cailliez`: d + c, the least c that suffices (Cailliez 1983, Psychometrika 48:305).
 */
export function correctDissimilarities(matrix: Condensed, correction: Correction): Corrected | Unavailable {
  if (correction === 'none') return { matrix, correction, constant: 0 };
  let constant = 0;
  if (correction === 'lingoes') {
    if (matrix.n > MOST_FOR_LINGOES) return { why: `not computed above ${MOST_FOR_LINGOES} records` };
    constant = Math.max(0, -centredEigenvalues(matrix)[matrix.n - 1]);
  }
  if (correction === 'cailliez') {
    if (matrix.n > MOST_FOR_CAILLIEZ) return { why: `not computed above ${MOST_FOR_CAILLIEZ} records` };
    constant = cailliezConstant(matrix);
  }
  const values = correctValues(matrix.values, correction, constant);
  return { matrix: { n: matrix.n, values }, correction, constant };
}

/** Applies a correction found for the known records to the dissimilarities of a new one. */
export function correctValues(values: Float64Array, correction: Correction, constant: number): Float64Array {
  if (correction === 'none') return values;
  if (correction === 'square-root') return values.map((d) => Math.sqrt(d));
  if (correction === 'cailliez') return values.map((d) => d + constant);
  return values.map((d) => Math.sqrt(d * d + 2 * constant));
}

/** Largest real eigenvalue of [[0, 2 B(d²)], [-I, -4 B(d)]], B the doubly centred -x/2. */
function cailliezConstant(matrix: Condensed): number {
  const { n } = matrix;
  const squares = doublyCentred(matrix, (d) => -(d * d) / 2);
  const plain = doublyCentred(matrix, (d) => -d / 2);
  const special = Matrix.zeros(2 * n, 2 * n);
  for (let i = 0; i < n; i++) {
    special.set(n + i, i, -1);
    for (let j = 0; j < n; j++) {
      special.set(i, n + j, 2 * squares[i * n + j]);
      special.set(n + i, n + j, -4 * plain[i * n + j]);
    }
  }
  const solved = new EigenvalueDecomposition(special);
  let largest = 0;
  solved.realEigenvalues.forEach((value, k) => {
    const isReal = Math.abs(solved.imaginaryEigenvalues[k]) <= 1e-9 * Math.abs(value);
    if (isReal && value > largest) largest = value;
  });
  return largest;
}
