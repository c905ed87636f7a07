import { select } from '../tests/pairwise-median.ts';

/** Records in the order of their distance from one, found only as far as they are asked for. */
export interface NearestFirst {
  /** Records with a known distance, in their own order. */
  readonly reached: Int32Array;
  /** The nearest ones, nearest first; of equally near ones the first. */
  readonly first: (count: number) => readonly number[];
  /** The nearest ones that pass a test. */
  readonly firstWhere: (test: (record: number) => boolean, count: number) => readonly number[];
}

/** Fewer are not worth a second search. */
const LEAST_SORTED = 256;

/**
 * Who is nearest? Sorting all records takes far longer than finding the few that are shown, so that only as many
 * are put in order as are asked for. Records of unknown distance (NaN) are left out.
 */
export function nearestFirst(distances: Float64Array): NearestFirst {
  const rows = new Int32Array(distances.length);
  let count = 0;
  for (let row = 0; row < distances.length; row++) if (!Number.isNaN(distances[row])) rows[count++] = row;
  const reached = rows.slice(0, count);
  let sorted: readonly number[] = [];
  const first = (wanted: number): readonly number[] => {
    const size = Math.min(wanted, reached.length);
    if (size > 0 && sorted.length < size)
      sorted = smallest(distances, reached, Math.min(reached.length, Math.max(size, LEAST_SORTED)));
    return sorted.slice(0, size);
  };
  return {
    reached,
    first,
    firstWhere: (test, wanted) => {
      for (let size = LEAST_SORTED; ; size *= 8) {
        const found = first(size).filter(test);
        if (found.length >= wanted || size >= reached.length) return found.slice(0, wanted);
      }
    },
  };
}

function smallest(distances: Float64Array, reached: Int32Array, count: number): readonly number[] {
  const limit = limitFor(distances, reached, count);
  const nearer: number[] = [];
  for (let i = 0; i < reached.length; i++) if (distances[reached[i]] < limit) nearer.push(reached[i]);
  if (nearer.length < count) {
    // Too few lie below what the sample promised, or many are equally near.
    const exact = exactLimit(distances, reached, count);
    nearer.length = 0;
    const equal: number[] = [];
    for (const row of reached) {
      if (distances[row] < exact) nearer.push(row);
      else if (distances[row] === exact && equal.length < count) equal.push(row);
    }
    return [...inOrder(nearer, distances), ...equal].slice(0, count);
  }
  return inOrder(nearer, distances).slice(0, count);
}

function inOrder(rows: number[], distances: Float64Array): readonly number[] {
  return rows.sort((a, b) => distances[a] - distances[b] || a - b);
}

/** Records looked at to guess how near the nearest are. */
const SAMPLE = 2048;

/** A distance below which twice the number wanted should lie, judged by a sample. */
function limitFor(distances: Float64Array, reached: Int32Array, count: number): number {
  const step = Math.max(1, Math.floor(reached.length / SAMPLE));
  const sample = new Float64Array(Math.floor((reached.length - 1) / step) + 1);
  for (let i = 0; i < sample.length; i++) sample[i] = distances[reached[i * step]];
  sample.sort();
  const place = Math.ceil((2 * count) / step) + 8;
  return place < sample.length ? sample[place] : Number.POSITIVE_INFINITY;
}

function exactLimit(distances: Float64Array, reached: Int32Array, count: number): number {
  const values = new Float64Array(reached.length);
  for (let i = 0; i < values.length; i++) values[i] = distances[reached[i]];
  return select(values, count - 1);
}
