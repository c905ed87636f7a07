import type { Random } from '../../numerics/foundation/random.ts';
import { densityGroups } from '../../numerics/grouping/density.ts';
import { kmeans } from '../../numerics/grouping/kmeans.ts';
import { linkage } from '../../numerics/grouping/linkage.ts';
import { medoidsForEach } from '../../numerics/grouping/medoids.ts';
import { groupSizes, silhouette } from '../../numerics/grouping/silhouette.ts';
import { cutTree, type MergeTree } from '../../numerics/grouping/tree.ts';
import type { Compared } from './compared.ts';
import type { Partition } from './found.ts';
import type { GroupingOptions } from './options.ts';

export interface Partitions {
  /** One a number of groups, ascending; by density one alone. */
  readonly partitions: readonly Partition[];
  /** The tree they are cut from, where the method makes one. */
  readonly tree: MergeTree | null;
}

/** The part of the options that says how to group. */
export type How = Pick<GroupingOptions, 'method' | 'smallestGroup' | 'neighbours' | 'starts'>;

/** Groups the records by one method into every number of groups from `least` to `most`. */
export function partitionsOf(
  { matrix, points }: Compared,
  how: How,
  least: number,
  most: number,
  random: Random,
): Partitions {
  const measured = (membership: ArrayLike<number>): Partition => {
    const sorted = bySize(membership);
    return {
      k: groupSizes(sorted).length,
      membership: sorted,
      meanSilhouette: silhouette(matrix, sorted)?.mean ?? null,
    };
  };
  if (how.method === 'density') {
    const { membership } = densityGroups(matrix, how);
    return { partitions: [measured(membership)], tree: null };
  }
  const counts = Array.from({ length: most - least + 1 }, (_, step) => least + step);
  if (how.method === 'medoids') {
    const found = medoidsForEach(matrix, least, most);
    return { partitions: found.map(({ membership }) => measured(membership)), tree: null };
  }
  if (how.method === 'kmeans') {
    if (points === null) throw new RangeError('k-means needs points');
    const partitions = counts.flatMap((k) => {
      const found = kmeans(points, {
        k,
        starts: how.starts,
        untilMetTwice: true,
        random: random.stream(`${k} groups`),
      });
      return 'why' in found ? [] : [{ ...measured(found.membership), starts: found }];
    });
    return { partitions, tree: null };
  }
  const tree = linkage(matrix, how.method);
  return { partitions: counts.map((k) => measured(cutTree(tree, k))), tree };
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
