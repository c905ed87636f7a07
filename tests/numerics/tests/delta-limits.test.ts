import { expect, it } from 'vitest';
import { apartDeltaLimit } from '../../../src/numerics/tests/delta-limits.ts';

/**
 * R 4.2.2: with V(t) = t (1 - t) (1 + h ((1 - t) / (2 - t) + t / (1 + t))) / (m n) and h = (m + n) / 2 - 1, the root
 * of 1 - t - qnorm(1 - (1 - conf) / 2) sqrt(V(t)) by uniroot(tol = 1e-15), as 2 t - 1.
 */
it.each([
  [5, 5, 0.95, 0.285405647862],
  [6, 6, 0.95, 0.378461149461],
  [4, 12, 0.9, 0.536033284441],
])('the least delta that groups of %i and %i wholly apart leave open, by R', (n1, n2, confidence, delta) => {
  expect(apartDeltaLimit(n1, n2, confidence)).toBeCloseTo(delta, 9);
});

it('comes nearer to 1 the more items there are, and is farther the surer it shall be', () => {
  expect(apartDeltaLimit(20, 20, 0.95)).toBeGreaterThan(apartDeltaLimit(5, 5, 0.95));
  expect(apartDeltaLimit(5, 5, 0.99)).toBeLessThan(apartDeltaLimit(5, 5, 0.95));
  expect(apartDeltaLimit(200, 200, 0.95)).toBeLessThan(1);
});
