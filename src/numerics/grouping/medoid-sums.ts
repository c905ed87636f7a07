import type { Condensed } from '../dissimilarity/condensed.ts';
import { withKernels } from '../wasm/kernels.ts';

/** Every dissimilarity twice, row by row, and the sums over it that k-medoids asks for again and again. */
export interface FullMatrix {
  readonly n: number;
  /** Dissimilarities of one record to all. */
  row(record: number): Float64Array;
  /** Of each record minus the sum of its dissimilarities. */
  negativeSums(): Float64Array;
  /** What each record would save as a further medoid, given what each is away from the nearest so far. */
  gains(nearest: Float64Array): Float64Array;
  /** What a swap for each record would change; to be used before the next call. */
  swaps(now: Nearest, k: number): SwapSums;
}

export interface Nearest {
  /** Which of the medoids is the nearest, and how far it and the second nearest are. */
  readonly place: Int32Array;
  readonly first: Float64Array;
  readonly second: Float64Array;
}

export interface SwapSums {
  /** Change of cost that a candidate brings whichever medoid leaves … */
  readonly shared: Float64Array;
  /** … and what is added when it is the medoid m that leaves: extra[m * stride + candidate]. */
  readonly extra: Float64Array;
  readonly stride: number;
}

/**
 * Lays the matrix out for the kernels and hands it to `work`. Each sum adds up the records in their order, whatever the
 * machine, so that its last bit is the same everywhere.
 *
 * @param most medoids at most.
 */
export function withFullMatrix<Result>(
  { n, values }: Condensed,
  most: number,
  work: (full: FullMatrix) => Result,
): Result {
  // Kernels take two numbers at a time.
  const stride = n + (n % 2);
  const lengths = { matrix: n * stride, nearest: n, second: n, sums: stride, extra: most * stride };
  return withKernels(lengths, { place: n }, ({ kernels, doubles, wholes: { place } }) => {
    const { matrix, nearest, second, sums, extra } = doubles;
    let pair = 0;
    for (let i = 0; i < n; i++) {
      matrix[i * stride + i] = 0;
      if (stride > n) matrix[i * stride + n] = 0;
      for (let j = i + 1; j < n; j++) {
        const value = values[pair++];
        matrix[i * stride + j] = value;
        matrix[j * stride + i] = value;
      }
    }
    const row = (record: number) => matrix.subarray(record * stride, record * stride + n);
    return work({
      n,
      row,
      negativeSums: () => {
        sums.fill(0);
        for (let i = 0; i < n; i++) {
          const own = row(i);
          for (let j = 0; j < n; j++) sums[j] -= own[j];
        }
        return sums;
      },
      gains: (now) => {
        nearest.set(now);
        sums.fill(0);
        kernels.addGains(matrix.byteOffset, n, stride, nearest.byteOffset, sums.byteOffset);
        return sums;
      },
      swaps: (now, k) => {
        place.set(now.place);
        nearest.set(now.first);
        second.set(now.second);
        sums.fill(0);
        extra.fill(0, 0, k * stride);
        kernels.addSwaps(
          matrix.byteOffset,
          n,
          stride,
          place.byteOffset,
          nearest.byteOffset,
          second.byteOffset,
          sums.byteOffset,
          extra.byteOffset,
        );
        return { shared: sums, extra, stride };
      },
    });
  });
}
