/**
 * A symmetric matrix of dissimilarities with a zero diagonal, stored once: the upper triangle row by
 * row (0,1), (0,2) … (0,n-1), (1,2) …, the order of scipy's `pdist`. NaN means *unknown*: nothing in
 * the two records could be compared.
 */
export interface Condensed {
  readonly n: number;
  readonly values: Float64Array;
}

/** Number of pairs among n records. */
export function pairCount(n: number): number {
  return (n * (n - 1)) / 2;
}

/** Place of the pair in `values`; i and j in either order, but not equal. */
export function condensedIndex(n: number, i: number, j: number): number {
  const low = Math.min(i, j);
  const high = Math.max(i, j);
  return low * n - (low * (low + 1)) / 2 + (high - low - 1);
}

/** Dissimilarity of two records; 0 of a record with itself, NaN where unknown. */
export function dissimilarityAt(matrix: Condensed, i: number, j: number): number {
  return i === j ? 0 : matrix.values[condensedIndex(matrix.n, i, j)];
}

/** The records at `rows`, in that order, with their dissimilarities among each other. */
export function takeRecords(matrix: Condensed, rows: ArrayLike<number>): Condensed {
  const n = rows.length;
  const values = new Float64Array(pairCount(n));
  let place = 0;
  for (let a = 0; a < n; a++) {
    for (let b = a + 1; b < n; b++) values[place++] = dissimilarityAt(matrix, rows[a], rows[b]);
  }
  return { n, values };
}
