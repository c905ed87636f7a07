import betainc from '@stdlib/math-base-special-betainc';
import betaincinv from '@stdlib/math-base-special-betaincinv';
import erfc from '@stdlib/math-base-special-erfc';
import erfcinv from '@stdlib/math-base-special-erfcinv';
import gammainc from '@stdlib/math-base-special-gammainc';

/**
 * Tail areas and quantiles of the distributions that the tests lean on. Upper tails are computed as
 * such, never as one minus the lower, so that they keep their digits down to 1e-300.
 * Checked against R's pnorm, pt, pf, pchisq and their quantiles in tests/numerics/foundation/distributions.test.ts.
 */

/** Chance that a standard normal exceeds `z`. */
export function normalUpper(z: number): number {
  return erfc(z / Math.SQRT2) / 2;
}

/** The `z` that a standard normal exceeds with chance `upper`, 0 < upper < 1. */
export function normalQuantileUpper(upper: number): number {
  return Math.SQRT2 * erfcinv(2 * upper);
}

/** Chance that a standard normal lies further from 0 than `z`, on either side. */
export function normalTwoSided(z: number): number {
  return erfc(Math.abs(z) / Math.SQRT2);
}

/** Chance that Student's t with `df` degrees of freedom lies further from 0 than `t`. */
export function studentTwoSided(t: number, df: number): number {
  return betainc(df / (df + t * t), df / 2, 0.5, true, false);
}

/** Chance that Student's t with `df` degrees of freedom exceeds `t`. */
export function studentUpper(t: number, df: number): number {
  const half = studentTwoSided(t, df) / 2;
  return t >= 0 ? half : 1 - half;
}

/** The t that Student's t exceeds with chance `upper`, 0 < upper < 1. */
export function studentQuantileUpper(upper: number, df: number): number {
  if (upper === 0.5) return 0;
  if (upper > 0.5) return -studentQuantileUpper(1 - upper, df);
  const share = betaincinv(2 * upper, df / 2, 0.5, false);
  return Math.sqrt((df * (1 - share)) / share);
}

/** Chance that Fisher's F exceeds `f`. */
export function fisherUpper(f: number, dfBetween: number, dfWithin: number): number {
  if (f <= 0) return 1;
  return betainc(dfWithin / (dfWithin + dfBetween * f), dfWithin / 2, dfBetween / 2, true, false);
}

/** Chance that chi-squared with `df` degrees of freedom exceeds `x`. */
export function chiSquaredUpper(x: number, df: number): number {
  if (x <= 0) return 1;
  return gammainc(x / 2, df / 2, true, true);
}

/** Value below which a beta(a, b) variable lies with chance `lower`. */
export function betaQuantile(lower: number, a: number, b: number): number {
  return betaincinv(lower, a, b, false);
}
