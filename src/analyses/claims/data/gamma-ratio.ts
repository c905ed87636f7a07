import gammaln from '@stdlib/math-base-special-gammaln';
import { exp, ln } from '../../../numerics/foundation/elementary.ts';

/** Hedges' exact correction for small samples, gamma(m/2) / (sqrt(m/2) gamma((m - 1)/2)) (Hedges 1981, J. Educ. Stat. 6:107). */
export function gammaRatio(df: number): number {
  return df < 2 ? Number.NaN : exp(gammaln(df / 2) - ln(df / 2) / 2 - gammaln((df - 1) / 2));
}
