import type { Random } from '../foundation/random.ts';
import { doubledSum } from '../foundation/sums.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { type BootstrapOptions, correctedInterval, type ResampledInterval } from './bootstrap.ts';
import { drawnAgain, MANY_THINGS } from './drawn-counts.ts';

/** Blocks (items with all their readings) by what they hold, and how many hold the very same. */
export interface BlockKinds {
  readonly kinds: readonly Float64Array[];
  readonly counts: Float64Array;
}

/** @param blocks the readings of each, in an order that equal blocks share. */
export function kindsOfBlocks(blocks: readonly Float64Array[]): BlockKinds {
  const places = new Map<string, number>();
  const kinds: Float64Array[] = [];
  const counts: number[] = [];
  for (const block of blocks) {
    const key = block.join();
    const known = places.get(key);
    if (known === undefined) {
      places.set(key, kinds.length);
      kinds.push(block);
      counts.push(1);
    } else counts[known]++;
  }
  return { kinds, counts: Float64Array.from(counts) };
}

/** Drawing how often a kind comes costs as much as drawing so many blocks. */
const COST_OF_KIND = 8;

/** The kinds of very many blocks, where they are so few that drawing them by their counts is the quicker way. */
export function kindsToCount(blocks: readonly Float64Array[]): BlockKinds | null {
  if (blocks.length <= MANY_THINGS) return null;
  const found = kindsOfBlocks(blocks);
  return COST_OF_KIND * found.kinds.length <= blocks.length ? found : null;
}

/** The mean of the readings of blocks that come so often, of twice the precision: a function of the counts. */
export function countedMean(kinds: readonly Float64Array[]): (times: ArrayLike<number>) => number {
  const sums = kinds.map((block) => {
    const { high, low } = doubledSum(block);
    return high + low;
  });
  const held = new Float64Array(kinds.length);
  return (times) => {
    let n = 0;
    for (let kind = 0; kind < sums.length; kind++) {
      held[kind] = sums[kind] * times[kind];
      n += kinds[kind].length * times[kind];
    }
    const { high, low } = doubledSum(held);
    return (high + low) / n;
  };
}

/**
 * `bootstrapInterval` (BCa) of very many blocks: how often each kind of block comes is drawn at once, with the same
 * chances, in a time that does not grow with the blocks; the acceleration leaves out one block of each kind.
 *
 * @param strata how many blocks there are of each kind, in each stratum.
 * @param statistic value from how often each kind comes in each stratum; NaN for none.
 */
export function countedInterval(
  strata: readonly Float64Array[],
  statistic: (times: readonly Float64Array[]) => number,
  { random, resamples = 1999, level = 0.95 }: Omit<BootstrapOptions, 'method'> & { readonly random: Random },
): ResampledInterval | Unavailable {
  const sizes = strata.map((counts) => counts.reduce((sum, count) => sum + count, 0));
  const observed = statistic(strata);
  if (Number.isNaN(observed)) return { why: 'the statistic itself has no value' };
  const values = Float64Array.from({ length: resamples }, () =>
    statistic(strata.map((counts, which) => drawnAgain(counts, sizes[which], random))),
  ).filter((value) => !Number.isNaN(value));
  if (values.length < resamples / 2) return { why: 'most resamples gave no value' };
  return correctedInterval(observed, values, countedAcceleration(strata, statistic), level);
}

/** As `jackknifeAcceleration`, each kind of block left out once and counted as often as it comes. */
export function countedAcceleration(
  strata: readonly Float64Array[],
  statistic: (times: readonly Float64Array[]) => number,
): number | undefined {
  let [squares, cubes] = [0, 0];
  for (const [which, counts] of strata.entries()) {
    const n = counts.reduce((sum, count) => sum + count, 0);
    if (n < 2) continue;
    const values = counts.map((count, kind) => {
      if (count === 0) return 0;
      const without = counts.slice();
      without[kind]--;
      return statistic(strata.map((own, other) => (other === which ? without : own)));
    });
    const mean = values.reduce((sum, value, kind) => sum + value * counts[kind], 0) / n;
    for (const [kind, value] of values.entries()) {
      const influence = ((n - 1) * (mean - value)) / n;
      squares += counts[kind] * influence * influence;
      cubes += counts[kind] * influence * influence * influence;
    }
  }
  return squares > 0 ? cubes / (6 * squares * Math.sqrt(squares)) : undefined;
}
