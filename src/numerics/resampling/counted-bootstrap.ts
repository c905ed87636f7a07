import type { Random } from '../foundation/random.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { type BootstrapOptions, correctedInterval, type ResampledInterval } from './bootstrap.ts';
import { drawnAgain } from './drawn-counts.ts';

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
