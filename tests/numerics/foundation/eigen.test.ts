import { EigenvalueDecomposition, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import {
  leadingEigenpairs,
  symmetricEigen,
  symmetricEigenvalues,
} from '../../../src/numerics/foundation/eigen.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { expectClose } from '../compare-up-to-sign.ts';

function symmetric(n: number, seed: number): Float64Array {
  const random = createRandom(seed);
  const square = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      square[i * n + j] = random.next() - 0.5;
      square[j * n + i] = square[i * n + j];
    }
  }
  return square;
}

function product(square: Float64Array, n: number) {
  return (x: Float64Array, out: Float64Array): void => {
    for (let i = 0; i < n; i++) {
      out[i] = 0;
      for (let j = 0; j < n; j++) out[i] += square[i * n + j] * x[j];
    }
  };
}

describe('eigenvalues of symmetric matrices', () => {
  it.each([1, 2, 3, 8, 40])('n = %i equal those of ml-matrix, and the vectors fulfil A x = lambda x', (n) => {
    const square = symmetric(n, n);
    const { values, vectors } = symmetricEigen(square, n);
    const theirs = new EigenvalueDecomposition(Matrix.from1DArray(n, n, square), { assumeSymmetric: true })
      .realEigenvalues;
    expectClose(
      values,
      theirs.sort((a, b) => b - a),
      1e-12,
    );
    expectClose(symmetricEigenvalues(square, n), values, 1e-12);
    for (let k = 0; k < n; k++) {
      const vector = vectors.slice(k * n, (k + 1) * n);
      const image = new Float64Array(n);
      product(square, n)(vector, image);
      expectClose(
        image,
        vector.map((value) => value * values[k]),
        1e-12,
      );
      expect(vector.reduce((sum, value) => sum + value * value, 0)).toBeCloseTo(1, 12);
    }
  });

  it('second differences have the eigenvalues 2 - 2 cos(k pi / (n + 1))', () => {
    // Textbook result, e.g. Golub & Van Loan 2013, section 4.8.
    const n = 25;
    const square = new Float64Array(n * n);
    for (let i = 0; i < n; i++) {
      square[i * n + i] = 2;
      if (i > 0) {
        square[i * n + i - 1] = -1;
        square[(i - 1) * n + i] = -1;
      }
    }
    const expected = Array.from({ length: n }, (_, k) => 2 - 2 * Math.cos(((n - k) * Math.PI) / (n + 1)));
    expectClose(symmetricEigenvalues(square, n), expected, 1e-13);
  });

  it('equal and zero eigenvalues are found: identity, a matrix of ones, all zeros', () => {
    const identity = Float64Array.of(1, 0, 0, 0, 1, 0, 0, 0, 1);
    expect([...symmetricEigen(identity, 3).values]).toEqual([1, 1, 1]);
    expectClose(symmetricEigen(new Float64Array(16).fill(1), 4).values, [4, 0, 0, 0], 1e-14);
    expect([...symmetricEigenvalues(new Float64Array(9), 3)]).toEqual([0, 0, 0]);
  });

  it('the leading ones by iteration equal the full solution within 1e-10', () => {
    const n = 260;
    const square = symmetric(n, 9);
    const full = symmetricEigen(square, n);
    const leading = leadingEigenpairs(product(square, n), n, 4);
    expectClose(leading.values, full.values, 1e-10, 4);
    for (let k = 0; k < 4; k++) {
      let same = 0;
      for (let i = 0; i < n; i++) same += leading.vectors[k * n + i] * full.vectors[k * n + i];
      expect(Math.abs(same)).toBeCloseTo(1, 10);
    }
  });

  it('the iteration ends on a matrix of low rank', () => {
    const n = 50;
    const ones = new Float64Array(n * n).fill(1);
    const { values } = leadingEigenpairs(product(ones, n), n, 3);
    expectClose(values, [50, 0, 0], 1e-12);
  });

  it('on a matrix of low rank the iteration ends soon, and misses no copy of a repeated eigenvalue', () => {
    const n = 500;
    const diagonal = [7, 5, 5, 5, 2, 2, 1];
    let products = 0;
    const multiply = (x: Float64Array, out: Float64Array) => {
      products++;
      for (let i = 0; i < n; i++) out[i] = (diagonal[i] ?? 0) * x[i];
    };
    const { values, vectors } = leadingEigenpairs(multiply, n, 6);
    expectClose(values, [7, 5, 5, 5, 2, 2], 1e-12);
    expect(products).toBeLessThan(40);
    for (let k = 1; k < 4; k++) {
      const inside = [1, 2, 3].reduce((sum, i) => sum + vectors[k * n + i] * vectors[k * n + i], 0);
      expect(inside).toBeCloseTo(1, 12);
    }
  });
});
