import type { Condensed } from '../condensed.ts';
import { type KernelMemory, withKernels } from '../wasm/kernels.ts';
import type { RawMerge } from './tree.ts';

/**
 * Clusters on their way to becoming one: their dissimilarities, sizes and nearest neighbours, in the order of
 * their first records. Every array but `row` lies in the memory of the compiled loops; those named `…List` and
 * below are room to work in.
 */
export interface Clusters extends KernelMemory<'values' | 'distance' | DoubleRoom, 'nearest' | WholeRoom> {
  /** How many there are; `values` holds the triangle of so many. */
  count: number;
  /** Records in each. */
  readonly size: Float64Array;
  /** One record of each. */
  readonly row: Int32Array;
  readonly merges: RawMerge[];
}

type DoubleRoom = 'size' | 'first' | 'second' | 'whole' | 'between' | 'sizeFirst' | 'sizeSecond' | 'columns';
type WholeRoom = 'place' | 'firstOf' | 'secondOf' | 'open' | 'end';

/** Starts with every record as a cluster of its own, and the nearest of the others, of equals the first. */
export function withClusters<Result>(matrix: Condensed, work: (clusters: Clusters) => Result): Result {
  const { n } = matrix;
  const pairs = Math.floor(n / 2);
  const doubles = {
    ...{ values: matrix.values.length, distance: n, size: n, first: n, second: n, whole: n },
    ...{ between: pairs, sizeFirst: pairs, sizeSecond: pairs },
    // The most that the columns between the two parts of every union can hold; memory not used is not taken.
    columns: pairs * pairs,
  };
  const wholes = { nearest: n, place: pairs, firstOf: n, secondOf: pairs, open: n, end: pairs };
  return withKernels(doubles, wholes, (memory) => {
    const row = Int32Array.from({ length: n }, (_, i) => i);
    const clusters = { ...memory, count: n, size: memory.doubles.size, row, merges: [] };
    clusters.size.fill(1);
    clusters.doubles.values.set(matrix.values);
    firstNeighbours(clusters);
    return work(clusters);
  });
}

function firstNeighbours({ count, doubles, wholes, kernels }: Clusters): void {
  const { values, distance } = doubles;
  const { nearest } = wholes;
  distance.fill(Number.POSITIVE_INFINITY);
  nearest.fill(-1);
  for (let i = 0; i < count; i++) {
    const row = values.byteOffset + 8 * rowStart(count, i);
    kernels.nearestInRow(row, i, count, nearest.byteOffset, distance.byteOffset);
  }
}

/** Where the pair of row i with row j > i lies in the triangle of n rows, less j. */
export function rowStart(n: number, i: number): number {
  return i * n - (i * (i + 3)) / 2 - 1;
}
