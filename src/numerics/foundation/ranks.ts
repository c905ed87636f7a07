/** Ranks of values with the ties that rank tests must correct for. */
export interface Ranks {
  /** Rank of each value, 1 = smallest; tied values share the mean of their ranks. */
  readonly ranks: Float64Array;
  /** Sizes of the groups of equal values, singles left out. */
  readonly ties: readonly number[];
  /** Sum of t^3 - t over the tied groups. */
  readonly tieSum: number;
}

/** Mid-ranks (Kruskal & Wallis 1952, J. Am. Stat. Assoc. 47:583). Values must be finite. */
export function midranks(values: ArrayLike<number>): Ranks {
  const n = values.length;
  const order = Array.from({ length: n }, (_, index) => index).sort((a, b) => values[a] - values[b]);
  const ranks = new Float64Array(n);
  const ties: number[] = [];
  let tieSum = 0;
  for (let start = 0; start < n; ) {
    let end = start + 1;
    while (end < n && values[order[end]] === values[order[start]]) end++;
    const size = end - start;
    for (let i = start; i < end; i++) ranks[order[i]] = (start + 1 + end) / 2;
    if (size > 1) {
      ties.push(size);
      tieSum += size * size * size - size;
    }
    start = end;
  }
  return { ranks, ties, tieSum };
}
