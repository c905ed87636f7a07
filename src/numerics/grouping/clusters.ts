import type { Condensed } from '../dissimilarity/condensed.ts';
import { type KernelMemory, withKernels } from '../wasm/kernels.ts';
import { requireKnown } from './known-records.ts';
import type { RawMerge } from './tree.ts';

/**
 * Clusters on their way to becoming one: their dissimilarities, sizes and nearest neighbours, in the order of
 * their first records. Every array but `row` lies in the memory of the compiled loops; those named `…List` and
 * below are room to work in.
 */
export interface Clusters extends KernelMemory<'values' | 'distance' | DoubleRoom, 'nearest' | WholeRoom> {
  /** How many there are. */
  count: number;
  /** Their dissimilarities: those that were given until a first round or a chain writes its own to `values`. */
  triangle: Float64Array;
  /** Records in each. */
  readonly size: Float64Array;
  /** One record of each. */
  readonly row: Int32Array;
  readonly merges: RawMerge[];
}

type DoubleRoom =
  | 'size'
  | 'line'
  | 'first'
  | 'second'
  | 'whole'
  | 'between'
  | 'sizeFirst'
  | 'sizeSecond'
  | 'columns';
type WholeRoom = 'place' | 'firstOf' | 'secondOf' | 'open' | 'end';

/**
 * Starts with every record as a cluster of its own, and the nearest of the others, of equals the first.
 * RangeError where a dissimilarity is unknown.
 */
export function withClusters<Result>(matrix: Condensed, work: (clusters: Clusters) => Result): Result {
  const { n } = matrix;
  const pairs = Math.floor(n / 2);
  const doubles = {
    ...{ values: matrix.values.length, distance: n, size: n, line: n, first: n, second: n, whole: n },
    ...{ between: pairs, sizeFirst: pairs, sizeSecond: pairs },
    // The most that the columns between the two parts of every union can hold; memory not used is not taken.
    columns: pairs * pairs,
  };
  const wholes = { nearest: n, place: pairs, firstOf: n, secondOf: pairs, open: n, end: pairs };
  return withKernels(doubles, wholes, (memory) => {
    const row = Int32Array.from({ length: n }, (_, i) => i);
    const { size } = memory.doubles;
    const clusters = { ...memory, count: n, triangle: matrix.values, size, row, merges: [] };
    size.fill(1);
    if (firstNeighbours(clusters) > 0) requireKnown(matrix, 'linkage');
    return work(clusters);
  });
}

/** Gives how many dissimilarities are unknown. */
function firstNeighbours(clusters: Clusters): number {
  const { count, kernels } = clusters;
  const { distance } = clusters.doubles;
  const { nearest } = clusters.wholes;
  distance.fill(Number.POSITIVE_INFINITY);
  nearest.fill(-1);
  let unknown = 0;
  for (let i = 0; i < count; i++) {
    const row = rowAddress(clusters, i);
    unknown += kernels.nearestInRow(row, i, count, nearest.byteOffset, distance.byteOffset);
  }
  return unknown;
}

/**
 * Where the compiled loops find the pairs of row i with later rows, named as in `wasm/source/rows.ts`. A row of
 * the given dissimilarities is copied to where they can read it: the whole would cost new memory.
 */
export function rowAddress({ count, triangle, doubles }: Clusters, i: number): number {
  const start = rowStart(count, i);
  if (triangle === doubles.values) return triangle.byteOffset + 8 * start;
  doubles.line.set(triangle.subarray(start + i + 1, start + count), i + 1);
  return doubles.line.byteOffset;
}

/** Where the pair of row i with row j > i lies in the triangle of n rows, less j. */
export function rowStart(n: number, i: number): number {
  return i * n - (i * (i + 3)) / 2 - 1;
}
