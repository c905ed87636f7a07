import { type Condensed, takeRecords } from '../../numerics/condensed.ts';
import { type DissimilaritySpec, dissimilarities } from '../../numerics/dissimilarity.ts';
import { knownRecords } from '../../numerics/grouping/known-records.ts';
import { permutedVariables } from '../../numerics/grouping/permuted.ts';
import { type GroupStability, groupStability } from '../../numerics/grouping/stability.ts';
import { quantileSorted, sortedValues } from '../../numerics/quantile.ts';
import type { Random } from '../../numerics/random.ts';
import type { Unavailable } from '../contract.ts';
import type { Method } from './options.ts';
import { bestPartition, type Partition, partitionsOf } from './partition.ts';

/** What the same method makes of tables whose attributes were shuffled one by one. */
export interface ShuffledReference {
  /** Greatest mean silhouette width over the numbers of groups tried, in the table as it is. */
  readonly observed: number;
  /** Share of tables, the real one included, whose groups are as good or better: (b + 1) / (m + 1). */
  readonly p: number;
  readonly tables: number;
  /** Median and 95 % quantile of what shuffled tables reach at their best. */
  readonly median: number;
  readonly high: number;
  /** For each number of groups tried: median and 95 % quantile of the shuffled tables' mean width. */
  readonly byCount: readonly { readonly k: number; readonly median: number; readonly high: number }[];
}

export interface ReferenceRequest {
  readonly spec: DissimilaritySpec;
  readonly items: Int32Array;
  readonly method: Method;
  readonly tried: readonly Partition[];
  readonly tables: number;
  readonly random: Random;
  readonly onProgress: (share: number) => void;
}

/**
 * Would noise give groups as good? Groups as many tables in which every attribute has been shuffled on its
 * own among the items, and compares the best mean silhouette width. Needs two attributes: shuffling one
 * alone only renames the records.
 */
export function shuffledReference(request: ReferenceRequest): ShuffledReference | Unavailable {
  const { spec, tried } = request;
  if (spec.variables.length < 2) {
    return { why: 'with one attribute, shuffling changes nothing but the names of the records' };
  }
  const observed = bestPartition(tried).meanSilhouette;
  if (observed === null) return { why: 'fewer than two groups were found' };
  const least = tried[0].k;
  const most = tried[tried.length - 1].k;
  const bests: number[] = [];
  const widths = tried.map((): number[] => []);
  for (let table = 0; table < request.tables; table++) {
    const variables = permutedVariables(spec.variables, request.items, request.random);
    const all = dissimilarities({ ...spec, variables });
    const { kept } = knownRecords(all);
    if (kept.length > most) {
      const matrix = kept.length === all.n ? all : takeRecords(all, kept);
      const { partitions } = partitionsOf(matrix, request.method, least, most);
      for (const [place, partition] of partitions.entries()) {
        if (partition.meanSilhouette !== null) widths[place].push(partition.meanSilhouette);
      }
      bests.push(bestPartition(partitions).meanSilhouette ?? -1);
    }
    request.onProgress((table + 1) / request.tables);
  }
  if (bests.length === 0) return { why: 'no shuffled table had enough records that can be compared' };
  const asGood = bests.filter((best) => best >= observed).length;
  return {
    observed,
    p: (asGood + 1) / (bests.length + 1),
    tables: bests.length,
    ...middleAndHigh(bests),
    byCount: tried.map(({ k }, place) => ({ k, ...middleAndHigh(widths[place]) })),
  };
}

function middleAndHigh(values: readonly number[]): { median: number; high: number } {
  const sorted = sortedValues(values);
  return { median: quantileSorted(sorted, 0.5), high: quantileSorted(sorted, 0.95) };
}

/** Stability of each group of a partition under resampling of items, by the same method and number of groups. */
export function partitionStability(
  matrix: Condensed,
  partition: Partition,
  method: Method,
  items: Int32Array,
  resamples: number,
  random: Random,
  onProgress: (share: number) => void,
): GroupStability[] {
  return groupStability({
    membership: partition.membership,
    items,
    resamples,
    regroup: (rows) => {
      const k = Math.min(partition.k, rows.length);
      return partitionsOf(takeRecords(matrix, rows), method, k, k).partitions[0].membership;
    },
    random,
    onProgress,
  });
}
