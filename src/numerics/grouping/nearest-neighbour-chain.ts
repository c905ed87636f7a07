import type { Condensed } from '../condensed.ts';
import type { RawMerge } from './tree.ts';

/** Dissimilarity of cluster i to the union of x and y, from those of its parts and the three sizes. */
export type Update = (dx: number, dy: number, dxy: number, nx: number, ny: number, ni: number) => number;

/**
 * Merges by the nearest-neighbour chain, in the order in which they are found. Valid for linkages that
 * are reducible (a merge never brings a third cluster nearer): complete, average, McQuitty, Ward.
 * Follows scipy's choice among equals step by step, so that trees with ties agree with it too.
 *
 * @param largestSquare most records for which a full square is set up, the faster way
 */
export function chainMerges(matrix: Condensed, update: Update, largestSquare = LARGEST_SQUARE): RawMerge[] {
  const { n } = matrix;
  const store = n <= largestSquare ? squareStore(matrix) : condensedStore(matrix);
  const size = new Int32Array(n).fill(1);
  const active = Int32Array.from({ length: n }, (_, i) => i);
  let left = n;
  const chain = new Int32Array(n);
  let length = 0;
  const merges: RawMerge[] = [];
  while (left > 1) {
    if (length === 0) chain[length++] = active[0];
    let x = chain[length - 1];
    let y = -1;
    let least = Number.POSITIVE_INFINITY;
    for (;;) {
      x = chain[length - 1];
      const row = store.read(x, active, left, 0);
      const previous = length > 1 ? chain[length - 2] : -1;
      least = previous < 0 ? Number.POSITIVE_INFINITY : row[previous];
      y = previous;
      for (let t = 0; t < left; t++) {
        const i = active[t];
        if (row[i] < least && i !== x) {
          least = row[i];
          y = i;
        }
      }
      // Dissimilarities of +Infinity are never "less": the first other cluster stands in.
      if (y < 0) y = active[0] === x ? active[1] : active[0];
      if (y === previous) break;
      chain[length++] = y;
    }
    length -= 2;
    const gone = Math.min(x, y);
    const stays = Math.max(x, y);
    merges.push({ a: gone, b: stays, height: least });
    const goneRow = store.read(gone, active, left, 0);
    const staysRow = store.read(stays, active, left, 1);
    const nx = size[gone];
    const ny = size[stays];
    let kept = 0;
    for (let t = 0; t < left; t++) {
      const i = active[t];
      if (i === gone) continue;
      active[kept++] = i;
      if (i !== stays) staysRow[i] = update(goneRow[i], staysRow[i], least, nx, ny, size[i]);
    }
    left = kept;
    size[stays] = nx + ny;
    size[gone] = 0;
    store.write(stays, staysRow, active, left);
  }
  return merges;
}

/** Above this many records the square (8 n² bytes) would crowd the memory: 288 MB at 6,000. */
const LARGEST_SQUARE = 6000;

/** A working copy of the dissimilarities, read and written a row at a time. */
interface RowStore {
  /** Row x, valid at the active places; `buffer` 0 or 1 says which of two buffers may be used. */
  readonly read: (x: number, active: Int32Array, count: number, buffer: 0 | 1) => Float64Array;
  readonly write: (x: number, row: Float64Array, active: Int32Array, count: number) => void;
}

/** Twice the memory of the triangle, but every row lies in one piece: some five times faster. */
function squareStore(matrix: Condensed): RowStore {
  const { n, values } = matrix;
  const square = new Float64Array(n * n);
  const rows = Array.from({ length: n }, (_, i) => square.subarray(i * n, (i + 1) * n));
  const tile = 64;
  for (let top = 0; top < n; top += tile) {
    const bottom = Math.min(n, top + tile);
    for (let from = top; from < n; from += tile) {
      const to = Math.min(n, from + tile);
      for (let i = top; i < bottom; i++) {
        const start = i * n - (i * (i + 1)) / 2 - i - 1;
        for (let j = Math.max(from, i + 1); j < to; j++) {
          const value = values[start + j];
          square[i * n + j] = value;
          square[j * n + i] = value;
        }
      }
    }
  }
  return {
    read: (x) => rows[x],
    write: (x, row, active, count) => {
      for (let t = 0; t < count; t++) {
        const i = active[t];
        square[i * n + x] = row[i];
      }
    },
  };
}

function condensedStore(matrix: Condensed): RowStore {
  const { n } = matrix;
  const values = matrix.values.slice();
  const buffers = [new Float64Array(n), new Float64Array(n)];
  const startOf = (i: number) => i * n - (i * (i + 1)) / 2 - i - 1;
  return {
    read: (x, active, count, buffer) => {
      const row = buffers[buffer];
      const start = startOf(x);
      for (let t = 0; t < count; t++) {
        const i = active[t];
        if (i > x) row[i] = values[start + i];
        else if (i < x) row[i] = values[startOf(i) + x];
      }
      return row;
    },
    write: (x, row, active, count) => {
      const start = startOf(x);
      for (let t = 0; t < count; t++) {
        const i = active[t];
        if (i > x) values[start + i] = row[i];
        else if (i < x) values[startOf(i) + x] = row[i];
      }
    },
  };
}
