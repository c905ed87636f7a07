import type { Condensed } from '../condensed.ts';
import { combineRows, type Reducible } from './recurrence.ts';
import type { RawMerge } from './tree.ts';

/**
 * Merges by the nearest-neighbour chain, in the order in which they are found. Valid for linkages that
 * are reducible (a merge never brings a third cluster nearer): complete, average, McQuitty, Ward.
 * A chain prefers its previous link, then the lowest row, as in scipy.
 *
 * Works in one copy of the triangle (8 bytes a pair). A nearest neighbour once found is kept until it is
 * merged itself: by reducibility no merge elsewhere can bring a nearer one.
 *
 * @param copy memory for the copy, so that repeated runs need no new memory; its content is lost
 */
export function chainMerges(matrix: Condensed, kind: Reducible, copy?: Float64Array): RawMerge[] {
  const { n } = matrix;
  const work = startWork(matrix, copy);
  const { values, base, place, neighbour, distance, size } = work;
  const chain = new Int32Array(n);
  let length = 0;
  const merges: RawMerge[] = [];
  while (work.left > 1) {
    if (length === 0) chain[length++] = work.active[0];
    let x: number;
    let y: number;
    for (;;) {
      x = chain[length - 1];
      const previous = length > 1 ? chain[length - 2] : -1;
      if (neighbour[x] < 0) search(work, x);
      y = neighbour[x];
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
    merges.push({ a: gone, b: stays, height });
    combine(work, kind, place[gone], place[stays], height);
    size[stays] += size[gone];
    remove(work, gone, stays);
  }
  return merges;
}

interface Work {
  readonly values: Float64Array;
  /** Clusters still there, ascending, each under the row of its last member. */
  readonly active: Int32Array;
  /** base[place] + j is where the pair of the active cluster at that place with a later row j lies. */
  readonly base: Int32Array;
  /** Row -> place in `active`. */
  readonly place: Int32Array;
  readonly size: Int32Array;
  /** Nearest other cluster, the lowest row of equals; -1 where it must be searched. */
  readonly neighbour: Int32Array;
  readonly distance: Float64Array;
  /** Rows being worked on, by place. */
  readonly first: Float64Array;
  readonly second: Float64Array;
  readonly sizes: Float64Array;
  left: number;
}

function startWork(matrix: Condensed, copy?: Float64Array): Work {
  const { n } = matrix;
  const values = copy ?? new Float64Array(matrix.values.length);
  values.set(matrix.values);
  const active = Int32Array.from({ length: n }, (_, row) => row);
  const work: Work = {
    values,
    active,
    base: active.map((row) => row * n - (row * (row + 3)) / 2 - 1),
    place: active.slice(),
    size: new Int32Array(n).fill(1),
    neighbour: new Int32Array(n).fill(-1),
    distance: new Float64Array(n).fill(Number.POSITIVE_INFINITY),
    first: new Float64Array(n),
    second: new Float64Array(n),
    sizes: new Float64Array(n),
    left: n,
  };
  firstNeighbours(work, n);
  return work;
}

/** Nearest neighbours of all records in one pass over the triangle. */
function firstNeighbours({ values, neighbour, distance }: Work, n: number): void {
  let pair = 0;
  for (let i = 0; i < n; i++) {
    let nearest = neighbour[i];
    let least = distance[i];
    for (let j = i + 1; j < n; j++) {
      const value = values[pair++];
      if (value < least) {
        least = value;
        nearest = j;
      }
      if (value < distance[j]) {
        distance[j] = value;
        neighbour[j] = i;
      }
    }
    neighbour[i] = nearest;
    distance[i] = least;
  }
}

function search({ values, active, base, place, left, neighbour, distance }: Work, x: number): void {
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
  neighbour[x] = best >= 0 ? active[best] : active[own === 0 ? 1 : 0];
  distance[x] = least;
}

/** Writes the dissimilarities of the union of the clusters at two places over those of the later one. */
function combine(work: Work, kind: Reducible, gone: number, stays: number, height: number): void {
  const { active, size, left, first, second, sizes } = work;
  gather(work, gone, first);
  gather(work, stays, second);
  for (let t = 0; t < left; t++) sizes[t] = size[active[t]];
  combineRows(kind, first, second, sizes, left, height, sizes[gone], sizes[stays]);
  scatter(work, stays, second);
}

/** Dissimilarities of the cluster at a place to all others, by their places; its own entry is left alone. */
function gather({ values, active, base, left }: Work, own: number, row: Float64Array): void {
  const x = active[own];
  const start = base[own];
  for (let t = 0; t < own; t++) row[t] = values[base[t] + x];
  for (let t = own + 1; t < left; t++) row[t] = values[start + active[t]];
}

function scatter({ values, active, base, left }: Work, own: number, row: Float64Array): void {
  const x = active[own];
  const start = base[own];
  for (let t = 0; t < own; t++) values[base[t] + x] = row[t];
  for (let t = own + 1; t < left; t++) values[start + active[t]] = row[t];
}

function remove(work: Work, gone: number, stays: number): void {
  const { active, base, place, neighbour } = work;
  const from = place[gone];
  active.copyWithin(from, from + 1, work.left);
  base.copyWithin(from, from + 1, work.left);
  work.left--;
  for (let t = 0; t < work.left; t++) {
    const i = active[t];
    place[i] = t;
    if (neighbour[i] === gone || neighbour[i] === stays) neighbour[i] = -1;
  }
  neighbour[stays] = -1;
}
