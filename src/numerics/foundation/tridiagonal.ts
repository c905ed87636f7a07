/**
 * Symmetric matrices by way of tridiagonal ones: Householder's reduction and the implicit QL method
 * (Golub & Van Loan 2013, Matrix Computations, 4th ed., 8.3.1 and 8.3.3; QL as in EISPACK's tql2). Flat
 * arrays read row by row: some twenty times as fast as a general matrix class.
 */

export interface Tridiagonal {
  readonly diagonal: Float64Array;
  /** Entry k stands beside diagonal entries k and k + 1; the last is 0. */
  readonly beside: Float64Array;
  /** Reflection k in row k, from column k + 1 on; scaled so that H = I - v v'. */
  readonly reflections: Float64Array;
}

/** Householder's reduction of a symmetric n * n matrix. O(n³) multiplications; the argument stays as it was. */
export function tridiagonalise(square: Float64Array, n: number): Tridiagonal {
  const a = square.slice();
  const diagonal = new Float64Array(n);
  const beside = new Float64Array(n);
  const reflections = new Float64Array(n * n);
  const p = new Float64Array(n);
  let most = 0;
  for (let place = 0; place < a.length; place++) most = Math.max(most, Math.abs(a[place]));
  // Of a matrix of low rank each reflection leaves rounding of rounding, down to where numbers end.
  const rounding = Number.EPSILON * most;
  for (let k = 0; k < n - 1; k++) {
    const v = reflections.subarray(k * n, (k + 1) * n);
    let squares = 0;
    for (let i = k + 1; i < n; i++) squares += a[k * n + i] * a[k * n + i];
    const length = Math.sqrt(squares);
    const first = a[k * n + k + 1];
    if (k === n - 2 || squares === first * first || squares <= rounding * rounding) {
      beside[k] = first;
      continue;
    }
    beside[k] = first > 0 ? -length : length;
    for (let i = k + 1; i < n; i++) v[i] = a[k * n + i];
    v[k + 1] -= beside[k];
    const factor = Math.sqrt(Math.abs(1 / (beside[k] * v[k + 1])));
    for (let i = k + 1; i < n; i++) v[i] *= factor;
    let along = 0;
    for (let i = k + 1; i < n; i++) {
      p[i] = dotFrom(a, i * n, v, k + 1, n);
      along += p[i] * v[i];
    }
    for (let i = k + 1; i < n; i++) p[i] -= (along / 2) * v[i];
    for (let i = k + 1; i < n; i++) subtractPair(a, i * n, v[i], p[i], v, p, k + 1, n);
  }
  for (let i = 0; i < n; i++) diagonal[i] = a[i * n + i];
  return { diagonal, beside, reflections };
}

function dotFrom(a: Float64Array, row: number, v: Float64Array, from: number, n: number): number {
  let sum = 0;
  for (let j = from; j < n; j++) sum += a[row + j] * v[j];
  return sum;
}

function subtractPair(
  a: Float64Array,
  row: number,
  vi: number,
  pi: number,
  v: Float64Array,
  p: Float64Array,
  from: number,
  n: number,
): void {
  for (let j = from; j < n; j++) a[row + j] -= vi * p[j] + pi * v[j];
}

const MOST_SWEEPS = 60;

/**
 * Eigenvalues of a tridiagonal matrix, unordered, and on request its eigenvectors: `vectors` must
 * hold the identity (n * n) and then holds vector k in row k.
 */
export function tridiagonalEigenvalues(
  diagonal: Float64Array,
  beside: Float64Array,
  vectors?: Float64Array,
): Float64Array {
  const n = diagonal.length;
  const d = diagonal.slice();
  const e = beside.slice();
  // Where many eigenvalues are 0 their neighbours on the diagonal are mere rounding and give no scale.
  const negligible = Number.EPSILON * largest(d, e);
  for (let l = 0; l < n; l++) {
    for (let sweep = 0; ; sweep++) {
      let m = l;
      while (
        m < n - 1 &&
        Math.abs(e[m]) > Math.max(negligible, Number.EPSILON * (Math.abs(d[m]) + Math.abs(d[m + 1])))
      ) {
        m++;
      }
      if (m === l) break;
      if (sweep === MOST_SWEEPS) throw new RangeError('tridiagonalEigenvalues: the QL method did not settle');
      sweepUp(d, e, l, m, vectors, n);
    }
  }
  return d;
}

function largest(d: Float64Array, e: Float64Array): number {
  let most = 0;
  for (let i = 0; i < d.length; i++) most = Math.max(most, Math.abs(d[i]) + Math.abs(e[i] ?? 0));
  return most;
}

/** One implicit QL sweep between entries l and m. */
function sweepUp(
  d: Float64Array,
  e: Float64Array,
  l: number,
  m: number,
  vectors: Float64Array | undefined,
  n: number,
): void {
  let g = (d[l + 1] - d[l]) / (2 * e[l]);
  let r = length(g, 1);
  g = d[m] - d[l] + e[l] / (g + (g >= 0 ? r : -r));
  let sine = 1;
  let cosine = 1;
  let shift = 0;
  for (let i = m - 1; i >= l; i--) {
    const f = sine * e[i];
    const b = cosine * e[i];
    r = length(f, g);
    e[i + 1] = r;
    if (r === 0) {
      d[i + 1] -= shift;
      e[m] = 0;
      return;
    }
    sine = f / r;
    cosine = g / r;
    g = d[i + 1] - shift;
    const t = (d[i] - g) * sine + 2 * cosine * b;
    shift = sine * t;
    d[i + 1] = g + shift;
    g = cosine * t - b;
    if (vectors !== undefined) rotate(vectors, i * n, (i + 1) * n, n, sine, cosine);
  }
  d[l] -= shift;
  e[l] = g;
  e[m] = 0;
}

function rotate(
  vectors: Float64Array,
  low: number,
  high: number,
  n: number,
  sine: number,
  cosine: number,
): void {
  for (let k = 0; k < n; k++) {
    const x = vectors[high + k];
    const y = vectors[low + k];
    vectors[high + k] = sine * y + cosine * x;
    vectors[low + k] = cosine * y - sine * x;
  }
}

/** sqrt(a² + b²) without overflow and without the engine's own hypot. */
function length(a: number, b: number): number {
  const [large, small] = Math.abs(a) > Math.abs(b) ? [Math.abs(a), Math.abs(b)] : [Math.abs(b), Math.abs(a)];
  if (large === 0) return 0;
  const ratio = small / large;
  return large * Math.sqrt(1 + ratio * ratio);
}

/** Turns a vector of the tridiagonal matrix into one of the matrix that was reduced, in place. */
export function reflectBack(reflections: Float64Array, vector: Float64Array): void {
  const n = vector.length;
  for (let k = n - 2; k >= 0; k--) {
    const share = dotFrom(reflections, k * n, vector, k + 1, n);
    if (share !== 0) for (let i = k + 1; i < n; i++) vector[i] -= share * reflections[k * n + i];
  }
}
