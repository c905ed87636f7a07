import { type Clusters, rowAddress, rowStart } from './clusters.ts';
import { type Reducible, UNIONS } from './recurrence.ts';

/** Rounds end when fewer than this share of the clusters are joined in one: single merges are then cheaper. */
const LEAST_SHARE = 1 / 24;

/**
 * Merges in rounds: every two clusters that are nearest to each other are joined at once, and the triangle is
 * closed up. Valid for reducible linkages, where nothing that happens elsewhere can part such a pair, so that
 * the tree is that of single merges (Murtagh 1983, *Computer Journal* 26:354, "multiple nearest neighbours").
 * A round reads and writes rows from end to end, where single merges jump from row to row: many times faster
 * on triangles that no processor's cache holds.
 *
 * Of equally near neighbours the first that is free and has this one among its nearest is taken.
 */
export function mutualRounds(clusters: Clusters, kind: Reducible): void {
  while (clusters.count > 1) {
    const { partner, pairs } = mutualNeighbours(clusters);
    if (pairs < clusters.count * LEAST_SHARE) return;
    const unions = nameUnions(clusters, partner, pairs);
    takeColumns(clusters, partner, unions);
    joinAll(clusters, kind, unions);
  }
}

interface Partners {
  /** The cluster that each is joined with, or -1. */
  readonly partner: Int32Array;
  readonly pairs: number;
}

function mutualNeighbours({ count, triangle, doubles, wholes }: Clusters): Partners {
  const { distance } = doubles;
  const { nearest } = wholes;
  const partner = new Int32Array(count).fill(-1);
  let pairs = 0;
  for (let i = 0; i < count; i++) {
    if (partner[i] >= 0) continue;
    let found = nearest[i];
    if (found < 0 || distance[found] !== distance[i]) continue;
    if (partner[found] >= 0) {
      const start = rowStart(count, i);
      found = i + 1;
      while (
        found < count &&
        (triangle[start + found] !== distance[i] || partner[found] >= 0 || distance[found] !== distance[i])
      ) {
        found++;
      }
      if (found === count) continue;
    }
    partner[i] = found;
    partner[found] = i;
    pairs++;
  }
  return { partner, pairs };
}

/** What the clusters of a round become. */
interface Unions {
  readonly pairs: number;
  readonly before: number;
  /** Clusters after the round. */
  readonly after: number;
  /** Records in each cluster before it. */
  readonly sizes: Float64Array;
  /** Where the column of each union begins in `columns`. */
  readonly columnOf: Int32Array;
}

/** Numbers what is left by first parts, and says of each union which two parts it has and how far apart. */
function nameUnions(clusters: Clusters, partner: Int32Array, pairs: number): Unions {
  const { count: before, size, row, merges } = clusters;
  const { distance, between, sizeFirst, sizeSecond } = clusters.doubles;
  const { place, firstOf, secondOf } = clusters.wholes;
  const sizes = size.slice(0, before);
  const columnOf = new Int32Array(pairs);
  let after = 0;
  let union = 0;
  let column = 0;
  for (let i = 0; i < before; i++) {
    const other = partner[i];
    if (other >= 0 && other < i) continue;
    firstOf[after] = i;
    size[after] = sizes[i];
    if (other >= 0) {
      merges.push({ a: row[i], b: row[other], height: distance[i] });
      place[union] = after;
      secondOf[union] = other;
      between[union] = distance[i];
      sizeFirst[union] = sizes[i];
      sizeSecond[union] = sizes[other];
      size[after] += sizes[other];
      columnOf[union++] = column;
      column += other - i - 1;
    }
    row[after++] = row[i];
  }
  return { pairs, before, after, sizes, columnOf };
}

/**
 * A triangle holds half of each row; the other half is a column. What a union needs of its second part's column
 * are the rows between its two parts: they are collected in one pass over the triangle, row by row.
 */
function takeColumns(clusters: Clusters, partner: Int32Array, unions: Unions): void {
  const { columns } = clusters.doubles;
  const { secondOf, open, end } = clusters.wholes;
  end.set(unions.columnOf);
  // Unions whose first part has been passed, in the order of their second parts, so that rows are read forward.
  let head = 0;
  let tail = 0;
  let union = 0;
  for (let j = 0; j < unions.before; j++) {
    if (partner[j] >= 0 && partner[j] < j) head++;
    clusters.kernels.append(
      rowAddress(clusters, j),
      secondOf.byteOffset,
      open.byteOffset,
      head,
      tail,
      columns.byteOffset,
      end.byteOffset,
    );
    if (partner[j] > j) {
      let t = tail++;
      for (; t > head && secondOf[open[t - 1]] > partner[j]; t--) open[t] = open[t - 1];
      open[t] = union++;
    }
  }
}

/** Closes up the triangle in place: a row is written over rows that have been read. */
function joinAll(clusters: Clusters, kind: Reducible, unions: Unions): void {
  const { doubles, wholes, kernels, size, triangle } = clusters;
  const { values, distance, first, second, whole, between, sizeFirst, sizeSecond, columns } = doubles;
  const { nearest, place, firstOf, secondOf } = wholes;
  const { before, after, pairs, sizes, columnOf } = unions;
  nearest.fill(-1, 0, after);
  distance.fill(Number.POSITIVE_INFINITY, 0, after);
  let union = 0;
  let write = 0;
  /** Dissimilarities of one old cluster to those left after number a, written to `out`. */
  const toUnions = (old: number, row: number, a: number, out: Float64Array) => {
    kernels.pick(row, firstOf.byteOffset, a + 1, after, out.byteOffset);
    kernels.uniteColumns(
      UNIONS[kind],
      out.byteOffset,
      row,
      sizes[old],
      place.byteOffset,
      secondOf.byteOffset,
      between.byteOffset,
      sizeFirst.byteOffset,
      sizeSecond.byteOffset,
      union,
      pairs,
    );
  };
  for (let a = 0; a < after; a++) {
    const i = firstOf[a];
    const own = union < pairs && place[union] === a ? union++ : -1;
    toUnions(i, rowAddress(clusters, i), a, first);
    if (own >= 0) {
      const j = secondOf[own];
      const start = rowStart(before, j);
      whole.set(columns.subarray(columnOf[own], columnOf[own] + j - i - 1), i + 1);
      whole.set(triangle.subarray(start + j + 1, start + before), j + 1);
      toUnions(j, whole.byteOffset, a, second);
      kernels.unite(
        UNIONS[kind],
        first.byteOffset,
        second.byteOffset,
        size.byteOffset,
        a + 1,
        after,
        between[own],
        sizeFirst[own],
        sizeSecond[own],
      );
    }
    kernels.nearestInRow(first.byteOffset, a, after, nearest.byteOffset, distance.byteOffset);
    values.set(first.subarray(a + 1, after), write);
    write += after - a - 1;
  }
  clusters.count = after;
  clusters.triangle = values;
}
