/**
 * Solves A x = b for a small symmetric positive definite A (n * n, row by row) by Cholesky's method
 * (Golub & Van Loan 2013, 4.2). Null when A is not positive definite to working precision.
 */
export function solveSymmetric(a: Float64Array, b: Float64Array): Float64Array | null {
  const n = b.length;
  const lower = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = a[i * n + j];
      for (let k = 0; k < j; k++) sum -= lower[i * n + k] * lower[j * n + k];
      if (i > j) lower[i * n + j] = sum / lower[j * n + j];
      else if (sum > 1e-12 * a[i * n + i]) lower[i * n + i] = Math.sqrt(sum);
      else return null;
    }
  }
  const x = b.slice();
  for (let i = 0; i < n; i++) {
    for (let k = 0; k < i; k++) x[i] -= lower[i * n + k] * x[k];
    x[i] /= lower[i * n + i];
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let k = i + 1; k < n; k++) x[i] -= lower[k * n + i] * x[k];
    x[i] /= lower[i * n + i];
  }
  return x;
}
