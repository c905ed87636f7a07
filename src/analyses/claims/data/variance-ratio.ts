import { standardDeviation } from '../../../numerics/describing/moments.ts';
import { fisherUpper } from '../../../numerics/foundation/distributions.ts';
import { isUnavailable } from '../../../numerics/foundation/unavailable.ts';
import type { TestResult } from './two-groups.ts';

/** F of two variances, of the first group over the second and the other way round (Fisher 1924; as R's var.test). */
export function varianceRatios(groups: readonly Float64Array[]): readonly TestResult[] {
  if (groups.length !== 2) return [];
  const [a, b] = groups.map(standardDeviation);
  if (isUnavailable(a) || isUnavailable(b) || a === 0 || b === 0) return [];
  const degrees = groups.map(({ length }) => length - 1);
  return [
    ['ratio of two variances', (a * a) / (b * b), degrees] as const,
    ['ratio of two variances, the other way round', (b * b) / (a * a), [degrees[1], degrees[0]]] as const,
  ].map(([said, statistic, df]) => {
    const upper = fisherUpper(statistic, df[0], df[1]);
    return { said, statistic, df, p: 2 * Math.min(upper, 1 - upper) };
  });
}
