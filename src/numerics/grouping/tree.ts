import { type Condensed, condensedIndex, pairCount } from '../dissimilarity/condensed.ts';

/**
 * A tree of merges in the layout of scipy: cluster 0 … n - 1 are the records, cluster n + m is made by
 * merge m. `first` < `second`; merges come in the order of their heights.
 */
export interface MergeTree {
  readonly n: number;
  readonly first: Int32Array;
  readonly second: Int32Array;
  readonly height: Float64Array;
  /** Records in the new cluster. */
  readonly size: Int32Array;
}

/** A merge of the clusters that hold the records a and b, before numbering. */
export interface RawMerge {
  readonly a: number;
  readonly b: number;
  readonly height: number;
}

/**
 * Numbers merges as scipy does: sorted by height, of equal heights the one found first; each merge then
 * joins the clusters in which its two records lie at that moment.
 */
export function numberMerges(n: number, merges: readonly RawMerge[], sort = true): MergeTree {
  const ordered = sort ? [...merges].sort((x, y) => x.height - y.height) : merges;
  const parent = Int32Array.from({ length: 2 * n - 1 }, (_, i) => i);
  const root = (start: number) => {
    let node = start;
    while (parent[node] !== node) node = parent[node];
    for (let walk = start; parent[walk] !== node; ) {
      const next = parent[walk];
      parent[walk] = node;
      walk = next;
    }
    return node;
  };
  const tree = {
    n,
    first: new Int32Array(ordered.length),
    second: new Int32Array(ordered.length),
    height: new Float64Array(ordered.length),
    size: new Int32Array(ordered.length),
  };
  for (const [m, merge] of ordered.entries()) {
    const x = root(merge.a);
    const y = root(merge.b);
    tree.first[m] = Math.min(x, y);
    tree.second[m] = Math.max(x, y);
    tree.height[m] = merge.height;
    tree.size[m] = (x < n ? 1 : tree.size[x - n]) + (y < n ? 1 : tree.size[y - n]);
    parent[x] = n + m;
    parent[y] = n + m;
  }
  return tree;
}

/**
 * The k groups that stand after the first n - k merges, numbered by their first record. With equal heights
 * at the cut the merges numbered first are the ones made. RangeError unless k is 1 … n.
 */
export function cutTree(tree: MergeTree, k: number): Int32Array {
  const { n } = tree;
  if (!Number.isInteger(k) || k < 1 || k > n) {
    throw new RangeError(`cutTree needs a whole number of groups from 1 to ${n}, got ${k}`);
  }
  const owner = Int32Array.from({ length: 2 * n - 1 }, (_, i) => i);
  for (let m = n - k - 1; m >= 0; m--) {
    owner[tree.first[m]] = owner[n + m];
    owner[tree.second[m]] = owner[n + m];
  }
  const numbers = new Map<number, number>();
  return Int32Array.from({ length: n }, (_, i) => {
    const known = numbers.get(owner[i]);
    if (known !== undefined) return known;
    numbers.set(owner[i], numbers.size);
    return numbers.size - 1;
  });
}

/** Records from left to right so that no two branches cross: the first of the two clusters comes first. */
export function leafOrder(tree: MergeTree): Int32Array {
  const { n } = tree;
  const order = new Int32Array(n);
  const stack = [n === 1 ? 0 : 2 * n - 2];
  let next = 0;
  while (stack.length > 0) {
    const node = stack.pop() as number;
    if (node < n) order[next++] = node;
    else stack.push(tree.second[node - n], tree.first[node - n]);
  }
  return order;
}

/** Height at which two records first lie in one cluster, for every pair (Sokal & Rohlf 1962, *Taxon* 11:33). */
export function copheneticDissimilarities(tree: MergeTree): Condensed {
  const { n } = tree;
  const values = new Float64Array(pairCount(n));
  const members: number[][] = Array.from({ length: n }, (_, i) => [i]);
  for (let m = 0; m < tree.height.length; m++) {
    const left = members[tree.first[m]];
    const right = members[tree.second[m]];
    for (const i of left) for (const j of right) values[condensedIndex(n, i, j)] = tree.height[m];
    members.push(left.concat(right));
    members[tree.first[m]] = [];
    members[tree.second[m]] = [];
  }
  return { n, values };
}

/**
 * How faithfully does the tree keep the dissimilarities? Pearson's r between them and the heights at which
 * pairs meet (Sokal & Rohlf 1962). Null where all dissimilarities, or all heights, are equal.
 */
export function copheneticCorrelation(matrix: Condensed, tree: MergeTree): number | null {
  const x = matrix.values;
  const y = copheneticDissimilarities(tree).values;
  const count = x.length;
  let meanX = 0;
  let meanY = 0;
  for (let i = 0; i < count; i++) {
    meanX += x[i];
    meanY += y[i];
  }
  meanX /= count;
  meanY /= count;
  let xx = 0;
  let yy = 0;
  let xy = 0;
  for (let i = 0; i < count; i++) {
    const dx = x[i] - meanX;
    const dy = y[i] - meanY;
    xx += dx * dx;
    yy += dy * dy;
    xy += dx * dy;
  }
  return xx > 0 && yy > 0 ? xy / Math.sqrt(xx * yy) : null;
}

/**
 * How much structure does the tree find? Mean over records of 1 - (height of its first merge / height of
 * the last merge) (agglomerative coefficient, Kaufman & Rousseeuw 1990, ch. 5). It grows with n, so compare
 * it between methods, not between tables of different size. Null where the last height is 0.
 */
export function agglomerativeCoefficient(tree: MergeTree): number | null {
  const { n, height } = tree;
  const last = height[height.length - 1];
  if (!(last > 0)) return null;
  let sum = 0;
  for (let m = 0; m < height.length; m++) {
    const records = (tree.first[m] < n ? 1 : 0) + (tree.second[m] < n ? 1 : 0);
    sum += records * (1 - height[m] / last);
  }
  return sum / n;
}
