import { cutTree, leafOrder, type MergeTree } from '../../numerics/grouping/tree.ts';
import type { GroupedRecord } from './found.ts';

/** One end of a drawn tree: a record, or a cluster where there are too many. */
export interface Leaf {
  /** Records in it, in the order of the tree. */
  readonly members: readonly number[];
  /** Group that it belongs to; -1 for none. */
  readonly group: number;
}

/** Lines of one group, as places across the leaves (0 = first) and heights; null lifts the pen. */
export interface Branches {
  readonly group: number;
  readonly across: readonly (number | null)[];
  readonly height: readonly (number | null)[];
}

export interface TreeLayout {
  readonly leaves: readonly Leaf[];
  /** By group, first those that join groups (-1). */
  readonly branches: readonly Branches[];
}

/** Where leaves and branches lie; of a tree with more than `most` leaves the last merges only. */
export function treeLayout(tree: MergeTree, records: readonly GroupedRecord[], most: number): TreeLayout {
  const { n } = tree;
  const count = Math.min(n, most);
  const clusters = cutTree(tree, count);
  const nodes = leafNodes(tree, count);
  const leaves: { members: number[]; group: number }[] = [];
  const placeOf = new Map<number, number>();
  /** Cluster number -> place across, group; leaves first, merges as they come. */
  const across = new Map<number, number>();
  const groupOf = new Map<number, number>();
  for (const record of leafOrder(tree)) {
    const known = placeOf.get(clusters[record]);
    if (known !== undefined) {
      leaves[known].members.push(record);
      continue;
    }
    const { group } = records[record];
    placeOf.set(clusters[record], leaves.length);
    across.set(nodes[record], leaves.length);
    groupOf.set(nodes[record], group);
    leaves.push({ members: [record], group });
  }
  const lines = new Map<number, { across: (number | null)[]; height: (number | null)[] }>();
  const heightOf = (node: number) => (node < n || node - n < n - count ? 0 : tree.height[node - n]);
  for (let m = n - count; m < tree.height.length; m++) {
    const [a, b] = [tree.first[m], tree.second[m]];
    const [xa, xb] = [across.get(a) ?? 0, across.get(b) ?? 0];
    const group = groupOf.get(a) === groupOf.get(b) ? (groupOf.get(a) ?? -1) : -1;
    across.set(n + m, (xa + xb) / 2);
    groupOf.set(n + m, group);
    const line = lines.get(group) ?? { across: [], height: [] };
    lines.set(group, line);
    line.across.push(xa, xa, xb, xb, null);
    line.height.push(heightOf(a), tree.height[m], tree.height[m], heightOf(b), null);
  }
  const branches = [...lines].sort(([a], [b]) => a - b).map(([group, line]) => ({ group, ...line }));
  return { leaves, branches };
}

/** For each record the cluster number that holds it after the first n - leaves merges. */
function leafNodes(tree: MergeTree, leaves: number): Int32Array {
  const { n } = tree;
  const owner = Int32Array.from({ length: 2 * n - 1 }, (_, node) => node);
  for (let m = n - leaves - 1; m >= 0; m--) {
    owner[tree.first[m]] = owner[n + m];
    owner[tree.second[m]] = owner[n + m];
  }
  return owner.slice(0, n);
}
