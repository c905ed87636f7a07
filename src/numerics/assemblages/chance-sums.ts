/** A sum less likely than this is taken for impossible: millions of them together are no more than rounding. */
const NEVER = 1e-30;

/**
 * Counts of things each of which is there with a chance of its own: how likely is every sum? With sizes of 1 the
 * Poisson-binomial distribution (Hong 2013, Comput. Stat. Data Anal. 59:41, by direct convolution); things that come and
 * go together have a greater size. Exact but for rounding and for sums that come once in 10^30 times, which are left out
 * at either end: of very many things only the sums near the mean are then reckoned with.
 *
 * @param sizes whole numbers of 1 or more; @param chances one each, 0 to 1.
 * @returns the chance of each sum from 0 to the sum of the sizes.
 *
 * Example: chanceSums([1, 1], [0.5, 0.5]) is 0.25, 0.5, 0.25.
 */
export function chanceSums(sizes: ArrayLike<number>, chances: ArrayLike<number>): Float64Array {
  let most = 0;
  for (let i = 0; i < sizes.length; i++) most += sizes[i];
  const chance = new Float64Array(most + 1);
  chance[0] = 1;
  let least = 0;
  let greatest = 0;
  for (let i = 0; i < sizes.length; i++) {
    const [size, p] = [sizes[i], chances[i]];
    if (p <= 0) continue;
    greatest += size;
    // From above, so that each sum is still what it was before this one.
    for (let sum = greatest; sum >= least; sum--)
      chance[sum] = chance[sum] * (1 - p) + (sum >= least + size ? chance[sum - size] * p : 0);
    while (chance[least] < NEVER) chance[least++] = 0;
    while (chance[greatest] < NEVER) chance[greatest--] = 0;
  }
  return chance;
}

export interface CountRange {
  readonly low: number;
  readonly high: number;
}

/** Below this a rest is rounding. */
const ROUNDING = 1e-12;

/**
 * The least and the greatest count beside which no more than half of what the level leaves lies on either side: it holds
 * the count at least as often as the level says.
 *
 * @param chance of each count from 0 on; @param level between 0 and 1.
 */
export function centralCounts(chance: ArrayLike<number>, level: number): CountRange {
  const tail = (1 - level) / 2 + ROUNDING;
  let low = 0;
  for (let below = chance[0]; below <= tail && low < chance.length - 1; below += chance[low]) low++;
  let high = chance.length - 1;
  for (let above = chance[high]; above <= tail && high > low; above += chance[high]) high--;
  return { low, high };
}
