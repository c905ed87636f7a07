import { append } from '../foundation/lists.ts';
import type { MergeTree } from './tree.ts';

export interface DensityGrouping {
  readonly k: number;
  /** Group of each record, -1 for noise. */
  readonly membership: Int32Array;
  /** How deep in its group each record lies: 0 (noise) to 1 (in the densest part). */
  readonly strength: Float64Array;
}

/** A cluster of the condensed tree: it lives from the density `birth` until it splits or is used up. */
interface Cluster {
  readonly birth: number;
  readonly parent: number;
  readonly children: number[];
  /** Records that left this cluster, with the density at which they did. */
  readonly records: number[];
  readonly leaving: number[];
  /** Sum over its records of (density at which they left - birth): the excess of mass. */
  stability: number;
  /** Greatest density reached within it before it splits. */
  peak: number;
}

/**
 * Takes from a single-linkage tree the clusters with the greatest excess of mass (Campello, Moulavi & Sander
 * 2013, alg. 2), after runts smaller than `smallestGroup` have been counted as records leaving their cluster.
 * Density is 1 / distance; merges at distance 0 (equal records) count as those at the least distance above 0.
 */
export function excessOfMass(tree: MergeTree, smallestGroup: number): DensityGrouping {
  const clusters = condense(tree, smallestGroup);
  const chosen = choose(clusters);
  const membership = new Int32Array(tree.n).fill(-1);
  const strength = new Float64Array(tree.n);
  for (const [number, top] of chosen.entries()) {
    const peak = clusters[top].peak;
    for (const cluster of below(clusters, top)) {
      for (const [place, record] of clusters[cluster].records.entries()) {
        membership[record] = number;
        strength[record] = Math.min(clusters[cluster].leaving[place], peak) / peak;
      }
    }
  }
  return { k: chosen.length, membership, strength };
}

function condense(tree: MergeTree, smallestGroup: number): Cluster[] {
  const { n, first, second, height, size } = tree;
  const least = height.find((value) => value > 0) ?? 1;
  const sizeOf = (node: number) => (node < n ? 1 : size[node - n]);
  const start = (birth: number, parent: number): Cluster => ({
    birth,
    parent,
    children: [],
    records: [],
    leaving: [],
    stability: 0,
    peak: 0,
  });
  const clusters = [start(0, -1)];
  /** Nodes still to be opened, in the order of breadth, with the cluster they belong to. */
  const queue: [node: number, cluster: number][] = [[2 * n - 2, 0]];
  for (let next = 0; next < queue.length; next++) {
    const [node, owner] = queue[next];
    const cluster = clusters[owner];
    const density = 1 / Math.max(height[node - n], least);
    const parts = [first[node - n], second[node - n]];
    const large = parts.map((part) => sizeOf(part) >= smallestGroup);
    cluster.peak = Math.max(cluster.peak, density);
    cluster.stability += parts.reduce(
      (sum, part, side) =>
        sum + (large[side] && !large[1 - side] ? 0 : (density - cluster.birth) * sizeOf(part)),
      0,
    );
    for (const [side, part] of parts.entries()) {
      if (large[0] && large[1]) {
        cluster.children.push(clusters.length);
        queue.push([part, clusters.length]);
        clusters.push(start(density, owner));
      } else if (large[side]) queue.push([part, owner]);
      else {
        for (const record of recordsUnder(tree, part)) {
          cluster.records.push(record);
          cluster.leaving.push(density);
        }
      }
    }
  }
  return clusters;
}

function recordsUnder({ n, first, second }: MergeTree, node: number): number[] {
  const records: number[] = [];
  const stack = [node];
  while (stack.length > 0) {
    const at = stack.pop() as number;
    if (at < n) records.push(at);
    else stack.push(second[at - n], first[at - n]);
  }
  return records;
}

/** From the deepest clusters up: a cluster stands if it outweighs what its parts are worth together. */
function choose(clusters: readonly Cluster[]): number[] {
  const worth = clusters.map((cluster) => cluster.stability);
  const stands = clusters.map(() => true);
  for (let at = clusters.length - 1; at > 0; at--) {
    const parts = clusters[at].children.reduce((sum, child) => sum + worth[child], 0);
    if (parts > worth[at]) {
      stands[at] = false;
      worth[at] = parts;
    } else for (const under of below(clusters, at)) stands[under] = under === at;
  }
  return [...clusters.keys()].filter((at) => at > 0 && stands[at]);
}

function below(clusters: readonly Cluster[], top: number): number[] {
  const list = [top];
  for (let next = 0; next < list.length; next++) append(list, clusters[list[next]].children);
  return list;
}
