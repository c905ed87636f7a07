import type { DissimilaritySpec } from '../../numerics/dissimilarity/variables.ts';
import type { MergeTree } from '../../numerics/grouping/tree.ts';
import type { Compared } from './compared.ts';
import type { Partition } from './found.ts';

/** Above this many records a full matrix (4 bytes times n squared) is not made: 100 MB at 5,000. */
export const LARGEST_MATRIX = 5000;

/** The records grouped, and those among them whose whole matrix is at hand. */
export interface Core {
  /** Rows of all grouped records, ascending, with the chosen group of each (-1: in none). */
  readonly rows: Int32Array;
  readonly membership: Int32Array;
  readonly k: number;
  /** Silhouette width and next group of each; simplified (medoids in place of groups) where sampled. */
  readonly widths: Float64Array;
  readonly neighbour: Int32Array;
  /** Dissimilarity of each to the medoid of its group; the medoids as places in `rows`, one a group. */
  readonly toMedoid: Float64Array;
  readonly medoids: readonly number[];
  /** Places in `rows` that `compared` is of: all of them, or a sample of a large table. */
  readonly inMatrix: Int32Array;
  readonly compared: Compared;
  readonly spec: DissimilaritySpec;
  readonly tried: readonly Partition[];
  readonly chosen: Partition;
  readonly tree: MergeTree | null;
  /** Rows that could not be compared with the others. */
  readonly setAside: Int32Array;
  readonly sampled: boolean;
}

export function without(n: number, rows: Int32Array): Int32Array {
  const kept = new Uint8Array(n);
  for (const row of rows) kept[row] = 1;
  return Int32Array.from({ length: n }, (_, row) => row).filter((row) => kept[row] === 0);
}
