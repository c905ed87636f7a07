import gammainc from '@stdlib/math-base-special-gammainc';
import { exp, ln } from './elementary.ts';

/**
 * Chance that noncentral chi-squared exceeds `x`: central ones of 2 more degrees of freedom each, weighed by a
 * Poisson of half the noncentrality (Johnson, Kotz & Balakrishnan 1995, Continuous Univariate Distributions 2, 29.3).
 */
export function noncentralChiSquaredUpper(x: number, df: number, noncentrality: number): number {
  if (x <= 0) return 1;
  const half = noncentrality / 2;
  const spread = 12 * Math.sqrt(half + 1) + 30;
  const from = Math.max(0, Math.floor(half - spread));
  let logFactorial = 0;
  for (let j = 2; j <= from; j++) logFactorial += ln(j);
  let sum = 0;
  for (let j = from; j <= half + spread; j++) {
    if (j > from && j > 1) logFactorial += ln(j);
    const weight = half === 0 ? (j === 0 ? 1 : 0) : exp(-half + j * ln(half) - logFactorial);
    if (weight > 0) sum += weight * gammainc(x / 2, df / 2 + j, true, true);
  }
  return Math.min(1, sum);
}

/** The noncentrality under which `x` is exceeded with chance `upper`; 0 where even 0 gives more. */
export function noncentralityAt(x: number, df: number, upper: number): number {
  if (noncentralChiSquaredUpper(x, df, 0) >= upper) return 0;
  let [low, high] = [0, Math.max(1, x)];
  while (noncentralChiSquaredUpper(x, df, high) < upper) high *= 2;
  for (let step = 0; step < 80; step++) {
    const middle = (low + high) / 2;
    if (noncentralChiSquaredUpper(x, df, middle) < upper) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
