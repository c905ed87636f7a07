import { createRandom } from './random.ts';
import { reflectBack, tridiagonalEigenvalues, tridiagonalise } from './tridiagonal.ts';

/** Eigenvalues, largest first, each with its vector of length 1. */
export interface EigenPairs {
  readonly values: Float64Array;
  /** One vector after the other: component i of vector k stands at k * n + i. */
  readonly vectors: Float64Array;
}

/**
 * All eigenpairs of a symmetric matrix by Householder's reduction and the QL method. O(n³): about a
 * second for n = 500.
 *
 * @param square n * n values, symmetric.
 */
export function symmetricEigen(square: Float64Array, n: number): EigenPairs {
  const { diagonal, beside, reflections } = tridiagonalise(square, n);
  const solved = tridiagonalEigen(diagonal, beside);
  for (let k = 0; k < n; k++) reflectBack(reflections, solved.vectors.subarray(k * n, (k + 1) * n));
  return solved;
}

/** All eigenvalues of a symmetric matrix, largest first; a quarter of the work of `symmetricEigen`. */
export function symmetricEigenvalues(square: Float64Array, n: number): Float64Array {
  const { diagonal, beside } = tridiagonalise(square, n);
  return tridiagonalEigenvalues(diagonal, beside).sort().reverse();
}

function tridiagonalEigen(diagonal: Float64Array, beside: Float64Array): EigenPairs {
  const n = diagonal.length;
  const identity = new Float64Array(n * n);
  for (let i = 0; i < n; i++) identity[i * n + i] = 1;
  const values = tridiagonalEigenvalues(diagonal, beside, identity);
  const order = Array.from(values, (_, k) => k).sort((a, b) => values[b] - values[a] || a - b);
  const vectors = new Float64Array(n * n);
  order.forEach((from, to) => {
    vectors.set(identity.subarray(from * n, (from + 1) * n), to * n);
  });
  return { values: Float64Array.from(order, (k) => values[k]), vectors };
}

/** Residual |A x - lambda x| allowed, as a share of the largest eigenvalue by size. */
const TOLERANCE = 1e-12;
const CHECK_EVERY = 10;

/**
 * The `count` largest eigenvalues of a symmetric matrix too large for `symmetricEigen`, by Lanczos'
 * method with full reorthogonalisation (Golub & Van Loan 2013, Matrix Computations, 4th ed., 10.3).
 * The start vector is fixed, so that the answer is always the same. The search ends when the residuals of all
 * `count` are at rest. Where it has come to the end of all directions that its start vector leads to (a matrix of
 * low rank), a fresh one is followed until it, too, ends without anything larger: so that no copy of a repeated
 * eigenvalue is missed there. Otherwise one copy may be found late.
 *
 * @param multiply writes the matrix times `x` to `out`.
 * @returns the leading pairs; fewer when the matrix has lower rank than asked for.
 */
export function leadingEigenpairs(
  multiply: (x: Float64Array, out: Float64Array) => void,
  n: number,
  count: number,
): EigenPairs {
  const most = Math.min(n, Math.max(20 * count, 400));
  const random = createRandom(1);
  const basis: Float64Array[] = [];
  const diagonal: number[] = [];
  const beside: number[] = [];
  let next = freshVector(n, basis, random.next);
  let scale = 0;
  let blockStart = 0;
  while (next !== null && basis.length < most) {
    basis.push(next);
    const image = new Float64Array(n);
    multiply(next, image);
    diagonal.push(dot(image, next));
    orthogonalise(image, basis);
    const rest = Math.sqrt(dot(image, image));
    scale = Math.max(scale, Math.abs(diagonal[diagonal.length - 1]), rest);
    const exhausted = rest <= 1e-14 * scale;
    beside.push(exhausted ? 0 : rest);
    if (basis.length === n) break;
    if (exhausted) {
      if (blockStart > 0 && basis.length >= count && !addsToLeading(diagonal, beside, blockStart, count))
        break;
      blockStart = basis.length;
    }
    next = exhausted ? freshVector(n, basis, random.next) : image.map((value) => value / rest);
    const due = basis.length >= 2 * count && basis.length % CHECK_EVERY === 0;
    if (due && !exhausted && isAtRest(diagonal, beside, count)) break;
  }
  return ritzPairs(basis, diagonal, beside, n, Math.min(count, basis.length));
}

/** Whether the steps from `blockStart` on have found an eigenvalue among the `count` largest. */
function addsToLeading(
  diagonal: readonly number[],
  beside: readonly number[],
  blockStart: number,
  count: number,
): boolean {
  if (blockStart < count) return true;
  const valuesOf = (from: number, to?: number) =>
    tridiagonalEigenvalues(
      Float64Array.from(diagonal.slice(from, to)),
      Float64Array.from(beside.slice(from, to)),
    );
  const before = valuesOf(0, blockStart).sort().reverse();
  return valuesOf(blockStart).some((value) => value > before[count - 1]);
}

function isAtRest(diagonal: readonly number[], beside: readonly number[], count: number): boolean {
  const m = diagonal.length;
  const { values, vectors } = tridiagonalEigen(Float64Array.from(diagonal), Float64Array.from(beside));
  const limit = TOLERANCE * Math.max(Math.abs(values[0]), Math.abs(values[m - 1]));
  for (let k = 0; k < count; k++) {
    if (Math.abs(beside[m - 1] * vectors[k * m + m - 1]) > limit) return false;
  }
  return true;
}

function ritzPairs(
  basis: readonly Float64Array[],
  diagonal: readonly number[],
  beside: readonly number[],
  n: number,
  count: number,
): EigenPairs {
  const m = basis.length;
  const small = tridiagonalEigen(Float64Array.from(diagonal), Float64Array.from(beside));
  const vectors = new Float64Array(count * n);
  for (let k = 0; k < count; k++) {
    const vector = vectors.subarray(k * n, (k + 1) * n);
    for (let step = 0; step < m; step++) {
      const weight = small.vectors[k * m + step];
      const direction = basis[step];
      for (let i = 0; i < n; i++) vector[i] += weight * direction[i];
    }
    const length = Math.sqrt(dot(vector, vector));
    for (let i = 0; i < n; i++) vector[i] /= length;
  }
  return { values: small.values.slice(0, count), vectors };
}

function freshVector(n: number, basis: readonly Float64Array[], next: () => number): Float64Array | null {
  const vector = Float64Array.from({ length: n }, () => next() - 0.5);
  orthogonalise(vector, basis);
  const length = Math.sqrt(dot(vector, vector));
  return length > 1e-10 ? vector.map((value) => value / length) : null;
}

/** Twice is enough (Parlett 1998, The Symmetric Eigenvalue Problem, 6.9). */
function orthogonalise(vector: Float64Array, basis: readonly Float64Array[]): void {
  for (let pass = 0; pass < 2; pass++) {
    for (const direction of basis) {
      const share = dot(vector, direction);
      for (let i = 0; i < vector.length; i++) vector[i] -= share * direction[i];
    }
  }
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum;
}
