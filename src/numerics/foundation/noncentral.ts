import betainc from '@stdlib/math-base-special-betainc';
import gammainc from '@stdlib/math-base-special-gammainc';
import { exp, ln } from './elementary.ts';

/**
 * Chance that noncentral chi-squared exceeds `x`: central ones of 2 more degrees of freedom each, weighed by a
 * Poisson of half the noncentrality (Johnson, Kotz & Balakrishnan 1995, Continuous Univariate Distributions 2, 29.3).
 */
export function noncentralChiSquaredUpper(x: number, df: number, noncentrality: number): number {
  return x <= 0 ? 1 : poissonMean(noncentrality / 2, (j) => gammainc(x / 2, df / 2 + j, true, true));
}

/**
 * Chance that noncentral F exceeds the F whose share of the spread between the groups is `share`,
 * df1 F / (df1 F + df2): the same sum of incomplete beta functions (the same, 30.2).
 */
export function noncentralShareUpper(
  share: number,
  [dfBetween, dfWithin]: readonly [number, number],
  noncentrality: number,
): number {
  return share <= 0
    ? 1
    : poissonMean(noncentrality / 2, (j) => betainc(share, dfBetween / 2 + j, dfWithin / 2, true, true));
}

/** The mean of a function of a Poisson variable. */
function poissonMean(mean: number, of: (count: number) => number): number {
  const spread = 12 * Math.sqrt(mean + 1) + 30;
  const from = Math.max(0, Math.floor(mean - spread));
  let logFactorial = 0;
  for (let j = 2; j <= from; j++) logFactorial += ln(j);
  let sum = 0;
  for (let j = from; j <= mean + spread; j++) {
    if (j > from && j > 1) logFactorial += ln(j);
    const weight = mean === 0 ? (j === 0 ? 1 : 0) : exp(-mean + j * ln(mean) - logFactorial);
    if (weight > 0) sum += weight * of(j);
  }
  return Math.min(1, sum);
}

/** The noncentrality of chi-squared under which `x` is exceeded with chance `upper`; 0 where even 0 gives more. */
export function noncentralityAt(x: number, df: number, upper: number): number {
  return noncentralityWhere((at) => noncentralChiSquaredUpper(x, df, at), upper, x);
}

/** The noncentrality at which a chance that rises with it comes to `upper`; 0 where even 0 gives more. */
export function noncentralityWhere(
  chance: (noncentrality: number) => number,
  upper: number,
  near: number,
): number {
  if (chance(0) >= upper) return 0;
  let [low, high] = [0, Math.max(1, near)];
  while (chance(high) < upper) high *= 2;
  for (let step = 0; step < 80; step++) {
    const middle = (low + high) / 2;
    if (chance(middle) < upper) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
