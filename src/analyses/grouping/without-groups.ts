import { quantileSorted, sortedValues } from '../../numerics/describing/quantile.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { logDispersion } from '../../numerics/grouping/gap.ts';
import type { Unavailable } from '../contract.ts';
import { toldAt } from '../verdicts.ts';
import type { Compared } from './compared.ts';
import type { Partition } from './found.ts';
import { bestPartition, type How, partitionsOf } from './partition.ts';
import type { Reference } from './trust-found.ts';

export interface ReferenceRequest {
  readonly tried: readonly Partition[];
  readonly how: How;
  readonly tables: number;
  readonly confidence: number;
  /** A table without groups; null where it has too few records that can be compared. */
  readonly draw: (random: Random) => Compared | null;
  readonly random: Random;
  readonly onProgress: (share: number) => void;
}

/**
 * Would tables without groups give groups as good? Groups as many as are asked for by the same method and
 * numbers of groups, and compares the best mean silhouette width (-1 where fewer than two groups come out).
 */
export function referenceTables(request: ReferenceRequest): Reference | Unavailable {
  const { tried, how, random, confidence } = request;
  const observed = tried.length === 0 ? null : bestPartition(tried).meanSilhouette;
  if (observed === null) return { why: 'fewer than two groups were found' };
  const least = tried[0].k;
  const most = tried[tried.length - 1].k;
  const bests: number[] = [];
  const widths = new Map<number, number[]>();
  const dispersions: number[][] = [];
  for (let table = 0; table < request.tables; table++) {
    const compared = request.draw(random);
    if (compared !== null && compared.matrix.n > most) {
      const { partitions } = partitionsOf(compared, how, least, most, random.stream(`table ${table}`));
      for (const { k, meanSilhouette } of partitions) {
        if (meanSilhouette !== null) widths.set(k, [...(widths.get(k) ?? []), meanSilhouette]);
      }
      bests.push(partitions.length === 0 ? -1 : (bestPartition(partitions).meanSilhouette ?? -1));
      dispersions.push(dispersionsOf(compared, partitions));
    }
    request.onProgress((table + 1) / request.tables);
  }
  if (bests.length === 0) return { why: 'no reference table had enough records that can be compared' };
  const asGood = bests.filter((best) => best >= observed).length;
  const p = (asGood + 1) / (bests.length + 1);
  // So few tables could not tell anything apart at this confidence, however good the groups.
  const enough = toldAt(1 / (bests.length + 1), confidence) === 'told apart';
  return {
    observed,
    p,
    told: enough || asGood > 0 ? toldAt(p, confidence) : 'cannot be told',
    tables: bests.length,
    ...middleAndHigh(bests),
    byCount: [...widths].sort(([a], [b]) => a - b).map(([k, list]) => ({ k, ...middleAndHigh(list) })),
    dispersions,
  };
}

/** Log dispersions of one table: undivided, then for each partition. */
export function dispersionsOf({ matrix }: Compared, partitions: readonly Partition[]): number[] {
  return [
    logDispersion(matrix, new Int32Array(matrix.n)),
    ...partitions.map(({ membership }) => logDispersion(matrix, membership)),
  ];
}

function middleAndHigh(values: readonly number[]): { median: number; high: number } {
  const sorted = sortedValues(values);
  return { median: quantileSorted(sorted, 0.5), high: quantileSorted(sorted, 0.95) };
}
