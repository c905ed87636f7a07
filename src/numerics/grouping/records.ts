import { type KernelMemory, withKernels } from '../wasm/kernels.ts';

/** Numeric records and their groups on the way, as the loops of k-means take them. */
export interface Records
  extends KernelMemory<
    'records' | 'centres' | 'sums' | 'upper' | 'lower' | 'halfway' | 'moved',
    'membership' | 'sizes'
  > {
  readonly n: number;
  readonly columns: number;
  readonly k: number;
  /** Numbers from one row of `records`, `centres` or `sums` to the next: the columns, made even by one of zeros. */
  readonly stride: number;
}

/** Lays n * columns numbers out for k groups. */
export function withRecords<Result>(
  { values, n, columns }: { readonly values: Float64Array; readonly n: number; readonly columns: number },
  k: number,
  work: (records: Records) => Result,
): Result {
  const stride = columns + (columns % 2);
  const doubles = {
    ...{ records: n * stride, centres: k * stride, sums: k * stride },
    ...{ upper: n, lower: n, halfway: k, moved: k },
  };
  return withKernels(doubles, { membership: n, sizes: k }, (memory) => {
    widen(values, columns, stride, memory.doubles.records);
    return work({ ...memory, n, columns, k, stride });
  });
}

/** Rows of so many columns as rows of `stride` numbers; what is too many is 0. */
export function widen(rows: Float64Array, columns: number, stride: number, out: Float64Array): void {
  if (columns === stride) out.set(rows);
  else {
    out.fill(0);
    for (let row = 0; row * columns < rows.length; row++) {
      out.set(rows.subarray(row * columns, (row + 1) * columns), row * stride);
    }
  }
}

/** The rows without what is too many. */
export function narrow(rows: Float64Array, columns: number, stride: number): Float64Array {
  if (columns === stride) return rows.slice();
  const out = new Float64Array((rows.length / stride) * columns);
  for (let row = 0; row * stride < rows.length; row++) {
    out.set(rows.subarray(row * stride, row * stride + columns), row * columns);
  }
  return out;
}
