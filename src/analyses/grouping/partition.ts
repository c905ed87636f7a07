import type { Condensed } from '../../numerics/condensed.ts';
import { linkage } from '../../numerics/grouping/linkage.ts';
import { medoidsForEach } from '../../numerics/grouping/medoids.ts';
import { silhouette } from '../../numerics/grouping/silhouette.ts';
import { cutTree, type MergeTree } from '../../numerics/grouping/tree.ts';
import type { Method } from './options.ts';

/** One way of putting the records into k groups. */
export interface Partition {
  readonly k: number;
  /** Group of each record, 0 … k - 1, -1 for none. */
  readonly membership: Int32Array;
  /** Mean silhouette width; null where it has none (fewer than two groups). */
  readonly meanSilhouette: number | null;
}

export interface Partitions {
  /** One a number of groups, ascending. */
  readonly partitions: readonly Partition[];
  /** The tree they are cut from, where the method makes one. */
  readonly tree: MergeTree | null;
}

/** Groups the records by one method into every number of groups from `least` to `most`. */
export function partitionsOf(matrix: Condensed, method: Method, least: number, most: number): Partitions {
  if (method === 'medoids') {
    const found = medoidsForEach(matrix, least, most);
    return { partitions: found.map(({ membership }) => measured(matrix, membership)), tree: null };
  }
  const tree = linkage(matrix, method);
  const cuts = Array.from({ length: most - least + 1 }, (_, step) => cutTree(tree, least + step));
  return { partitions: cuts.map((membership) => measured(matrix, membership)), tree };
}

function measured(matrix: Condensed, membership: Int32Array): Partition {
  const sorted = bySize(membership);
  return {
    k: sorted.reduce((most, group) => Math.max(most, group + 1), 0),
    membership: sorted,
    meanSilhouette: silhouette(matrix, sorted)?.mean ?? null,
  };
}

/** The partition with the greatest mean silhouette width; of equals the one with fewer groups. */
export function bestPartition(partitions: readonly Partition[]): Partition {
  return partitions.reduce((best, next) =>
    (next.meanSilhouette ?? -2) > (best.meanSilhouette ?? -2) ? next : best,
  );
}

/** Numbers groups by size, largest first; of equal sizes the one with the earlier first record. */
export function bySize(membership: ArrayLike<number>): Int32Array {
  const sizes = new Map<number, number>();
  for (let i = 0; i < membership.length; i++) {
    if (membership[i] >= 0) sizes.set(membership[i], (sizes.get(membership[i]) ?? 0) + 1);
  }
  const order = [...sizes].sort((a, b) => b[1] - a[1]).map(([group]) => group);
  const numbers = new Map(order.map((group, number) => [group, number]));
  return Int32Array.from(membership, (group) => numbers.get(group) ?? -1);
}
