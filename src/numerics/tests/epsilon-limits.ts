import { noncentralityWhere, noncentralShareUpper } from '../foundation/noncentral.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { kruskalWallis } from './kruskal-wallis.ts';

const TAIL = 0.8;

/**
 * Between which values epsilon squared plausibly lies. It is the share of the spread of the ranks that lies between
 * the groups, so its limits are those of such a share: the noncentralities of F under which the one found would be as
 * rare as the tails, each over itself plus n (test inversion; Steiger 2004, Psychol. Methods 9:164, from memory; that
 * it holds for ranks: tests/simulations/limits-of-few.ts). Noncentral chi-squared knows nothing of the spread within,
 * which shrinks as groups part, and gives limits half as wide again. The tails are taken a fifth smaller than asked,
 * since ranks of groups that differ somewhat vary a little more than F does (by the same simulation). Drawing again cannot do it: drawn samples differ
 * more than their whole, so that no limit would ever reach 0, and of groups wholly apart every draw lies above the
 * value found.
 *
 * @param samples one value an item in each group.
 */
export function epsilonSquaredLimits(
  samples: readonly ArrayLike<number>[],
  confidence: number,
): { readonly low: number; readonly high: number } | Unavailable {
  const found = kruskalWallis(samples);
  if ('why' in found) return found;
  const { n, epsilonSquared } = found;
  const [between, within] = [samples.length - 1, n - samples.length];
  // One item a group leaves nothing within; nor do groups in each of which all values are one.
  if (within < 1 || 1 - epsilonSquared < 1e-12)
    return { why: 'nothing varies within the groups, so that nobody knows how far chance carries' };
  const tail = (TAIL * (1 - confidence)) / 2;
  const at = (share: number, upper: number) => {
    const noncentrality = noncentralityWhere(
      (one) => noncentralShareUpper(share, [between, within], one),
      upper,
      (share * within) / (1 - share),
    );
    return noncentrality / (noncentrality + n);
  };
  // Groups more alike than chance makes them would have an upper limit of next to nothing: it is never below the
  // one of what unrelated groups have on average (power-constrained limits, Cowan et al. 2011, from memory).
  const chance = between / (n - 1);
  return { low: at(epsilonSquared, tail), high: at(Math.max(epsilonSquared, chance), 1 - tail) };
}
