import { noncentralityAt } from '../foundation/noncentral.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { kruskalWallis } from './kruskal-wallis.ts';

/**
 * Between which values epsilon squared plausibly lies: the noncentralities of chi-squared under which the Kruskal-Wallis
 * statistic found would be as rare as the tails, over n - 1 (test inversion, as is done for Cramér's V; Smithson 2003,
 * Confidence Intervals, ch. 5, from memory). Drawing again cannot do it: drawn samples differ more than their whole, so
 * that no limit would ever reach 0, and of groups wholly apart every draw lies above the value found. Near 1 the limits
 * are wider than they need be, since ranks that are wholly apart vary less than chi-squared does.
 *
 * @param samples one value an item in each group.
 */
export function epsilonSquaredLimits(
  samples: readonly ArrayLike<number>[],
  confidence: number,
): { readonly low: number; readonly high: number } | Unavailable {
  const found = kruskalWallis(samples);
  if ('why' in found) return found;
  const n = samples.reduce((sum, { length }) => sum + length, 0);
  const tail = (1 - confidence) / 2;
  const at = (upper: number) =>
    Math.min(1, noncentralityAt(found.statistic, samples.length - 1, upper) / (n - 1));
  return { low: at(tail), high: at(1 - tail) };
}
