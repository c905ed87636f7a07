import type { Unavailable } from '../foundation/unavailable.ts';

/**
 * Limits of the shift between two samples: the Mann-Whitney test inverted, exactly (Moses; Hollander & Wolfe 1999,
 * section 4.3; as R's wilcox.test). They hold the Hodges-Lehmann estimate and, for values without ties, cover at least
 * the confidence whatever the spread. Unavailable where so few values could never pass the level, and where equal
 * readings leave the limits no width.
 *
 * @returns limits of first minus second.
 */
export function shiftLimits(
  first: ArrayLike<number>,
  second: ArrayLike<number>,
  confidence: number,
): { readonly low: number; readonly high: number } | Unavailable {
  const [n1, n2] = [first.length, second.length];
  const share = uDistribution(n1, n2);
  const alpha = 1 - confidence;
  // The largest k with 2 P(U < k) within alpha: k differences are cut off at either end.
  let below = 0;
  let cut = 0;
  while (cut < share.length && 2 * (below + share[cut]) <= alpha + 1e-12) below += share[cut++];
  if (cut === 0) return { why: tooFew(n1, n2, confidence) };
  const differences = new Float64Array(n1 * n2);
  for (let i = 0; i < n1; i++) for (let j = 0; j < n2; j++) differences[i * n2 + j] = first[i] - second[j];
  differences.sort();
  const [low, high] = [differences[cut - 1], differences[n1 * n2 - cut]];
  return low < high ? { low, high } : { why: 'the readings are too coarse to give limits a width' };
}

/** Why groups of these sizes allow no limits. */
export const tooFew = (n1: number, n2: number, confidence: number) =>
  `${n1} and ${n2} are too few for limits at ${Number((confidence * 100).toPrecision(6))} %`;

/** Chance of each U from 0 to n1 n2 where the samples do not differ (Mann & Whitney 1947, Ann. Math. Stat. 18:50). */
function uDistribution(n1: number, n2: number): Float64Array {
  const [small, large] = [Math.min(n1, n2), Math.max(n1, n2)];
  // The Gaussian binomial coefficient, factor by factor: multiply by 1 - q^(large + k), divide by 1 - q^k. Scaled as
  // chances at each step, so that nothing overflows.
  let ways = new Float64Array([1]);
  for (let k = 1; k <= small; k++) {
    const next = new Float64Array(k * large + 1);
    const scale = k / (large + k);
    for (let u = 0; u < next.length; u++) {
      const own = u < ways.length ? ways[u] : 0;
      const shifted = u >= large + k && u - large - k < ways.length ? ways[u - large - k] : 0;
      next[u] = (own - shifted) * scale + (u >= k ? next[u - k] : 0);
    }
    ways = next;
  }
  return ways.map((chance) => Math.max(0, chance));
}
