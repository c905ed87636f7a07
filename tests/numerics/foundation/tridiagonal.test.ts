import { describe, expect, it } from 'vitest';
import { symmetricEigenvalues } from '../../../src/numerics/foundation/eigen.ts';

describe('tridiagonalEigenvalues', () => {
  it('settles where nearly all eigenvalues are 0, as for many equal records', () => {
    // Rows u u' + v v' with u, v orthogonal: eigenvalues |u|² and |v|², all others 0 (algebra).
    const n = 60;
    const u = Array.from({ length: n }, (_, i) => (i % 2 === 0 ? 0.3 : 0));
    const v = Array.from({ length: n }, (_, i) => (i % 2 === 0 ? 0 : (i % 7) / 9));
    const square = Float64Array.from({ length: n * n }, (_, place) => {
      const [i, j] = [Math.floor(place / n), place % n];
      return u[i] * u[j] + v[i] * v[j];
    });
    const norm = (x: number[]) => x.reduce((sum, value) => sum + value * value, 0);
    const values = [...symmetricEigenvalues(square, n)].sort((a, b) => b - a);
    expect(values[0]).toBeCloseTo(Math.max(norm(u), norm(v)), 12);
    expect(values[1]).toBeCloseTo(Math.min(norm(u), norm(v)), 12);
    expect(Math.max(...values.slice(2).map(Math.abs))).toBeLessThan(1e-12);
  });
});
