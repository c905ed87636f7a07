import { type Clusters, rowStart } from './clusters.ts';
import { type Reducible, UNIONS } from './recurrence.ts';

/**
 * Merges one after the other along the nearest-neighbour chain until one cluster is left, noted in the order
 * in which they are found. A chain prefers its previous link, then the first row, as in scipy.
 *
 * A nearest neighbour once found is kept until it is merged itself: by reducibility no merge elsewhere can
 * bring a nearer one. A merged cluster stands under the row of its later part.
 */
export function chainMerges(clusters: Clusters, kind: Reducible): void {
  const work = startWork(clusters);
  const { base, place, row } = work;
  const { values, distance } = clusters.doubles;
  const { nearest } = clusters.wholes;
  const chain = new Int32Array(work.left);
  let length = 0;
  while (work.left > 1) {
    if (length === 0) chain[length++] = work.active[0];
    let x: number;
    let y: number;
    for (;;) {
      x = chain[length - 1];
      const previous = length > 1 ? chain[length - 2] : -1;
      if (nearest[x] < 0) search(work, x);
      y = nearest[x];
      if (previous >= 0) {
        const back = previous > x ? values[base[place[x]] + previous] : values[base[place[previous]] + x];
        if (back <= distance[x]) y = previous;
      }
      if (y === previous) break;
      chain[length++] = y;
    }
    length -= 2;
    const gone = Math.min(x, y);
    const stays = Math.max(x, y);
    const height = values[base[place[gone]] + stays];
    clusters.merges.push({ a: row[gone], b: row[stays], height });
    combine(work, kind, place[gone], place[stays], height);
    remove(work, gone, stays);
  }
  clusters.count = work.left;
}

interface Work extends Pick<Clusters, 'doubles' | 'wholes' | 'kernels' | 'row'> {
  /** Clusters still there, ascending, each under the row of its last part. */
  readonly active: Int32Array;
  /** base[place] + j is where the pair of the active cluster at that place with a later row j lies. */
  readonly base: Int32Array;
  /** Row -> place in `active`. */
  readonly place: Int32Array;
  left: number;
}

function startWork(clusters: Clusters): Work {
  const { doubles, wholes, kernels, row, count } = clusters;
  if (clusters.triangle !== doubles.values) doubles.values.set(clusters.triangle);
  clusters.triangle = doubles.values;
  const active = Int32Array.from({ length: count }, (_, i) => i);
  const base = active.map((i) => rowStart(count, i));
  return { doubles, wholes, kernels, row, active, base, place: active.slice(), left: count };
}

function search({ doubles, wholes, active, base, place, left }: Work, x: number): void {
  const { values, distance } = doubles;
  const own = place[x];
  const start = base[own];
  let least = Number.POSITIVE_INFINITY;
  let best = -1;
  for (let t = 0; t < own; t++) {
    const value = values[base[t] + x];
    if (value < least) {
      least = value;
      best = t;
    }
  }
  for (let t = own + 1; t < left; t++) {
    const value = values[start + active[t]];
    if (value < least) {
      least = value;
      best = t;
    }
  }
  // Where every other cluster is infinitely far, nothing is "less": the first other one stands in.
  wholes.nearest[x] = best >= 0 ? active[best] : active[own === 0 ? 1 : 0];
  distance[x] = least;
}

/** Writes the dissimilarities of the union of the clusters at two places over those of the later one. */
function combine(work: Work, kind: Reducible, gone: number, stays: number, height: number): void {
  const { kernels, left } = work;
  const { first, second, size } = work.doubles;
  gather(work, gone, first);
  gather(work, stays, second);
  kernels.unite(
    UNIONS[kind],
    first.byteOffset,
    second.byteOffset,
    size.byteOffset,
    0,
    left,
    height,
    size[gone],
    size[stays],
  );
  scatter(work, stays, first);
  size[stays] += size[gone];
}

/** Dissimilarities of the cluster at a place to all others, by their places; its own entry is left alone. */
function gather({ doubles, active, base, left }: Work, own: number, out: Float64Array): void {
  const { values } = doubles;
  const x = active[own];
  const start = base[own];
  for (let t = 0; t < own; t++) out[t] = values[base[t] + x];
  for (let t = own + 1; t < left; t++) out[t] = values[start + active[t]];
}

function scatter({ doubles, active, base, left }: Work, own: number, row: Float64Array): void {
  const { values } = doubles;
  const x = active[own];
  const start = base[own];
  for (let t = 0; t < own; t++) values[base[t] + x] = row[t];
  for (let t = own + 1; t < left; t++) values[start + active[t]] = row[t];
}

/** Closes the gap that a cluster leaves; `size` is kept by place. */
function remove(work: Work, gone: number, stays: number): void {
  const { active, base, place } = work;
  const { nearest } = work.wholes;
  const from = place[gone];
  active.copyWithin(from, from + 1, work.left);
  base.copyWithin(from, from + 1, work.left);
  work.doubles.size.copyWithin(from, from + 1, work.left);
  work.left--;
  for (let t = 0; t < work.left; t++) {
    const i = active[t];
    place[i] = t;
    if (nearest[i] === gone || nearest[i] === stays) nearest[i] = -1;
  }
  nearest[stays] = -1;
}
