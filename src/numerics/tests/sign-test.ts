import betainc from '@stdlib/math-base-special-betainc';

/**
 * Two-sided p of the exact sign test: the chance of a split of `n` at least as uneven as `k` against `n - k`,
 * if either side were as likely (Conover 1999, Practical Nonparametric Statistics, section 3.4).
 *
 * @param k whole, 0 to n.
 */
export function signTest(k: number, n: number): number {
  const smaller = Math.min(k, n - k);
  if (2 * smaller === n) return 1;
  return Math.min(1, 2 * betainc(0.5, n - smaller, smaller + 1, true, false));
}
