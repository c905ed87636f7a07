import { placeAmong } from './pair-order.ts';

/** Ranks of values with the ties that rank tests must correct for. */
export interface Ranks {
  /** Rank of each value, 1 = smallest; tied values share the mean of their ranks. */
  readonly ranks: Float64Array;
  /** Sizes of the groups of equal values, singles left out. */
  readonly ties: readonly number[];
  /** Sum of t^3 - t over the tied groups. */
  readonly tieSum: number;
}

/**
 * Mid-ranks (Kruskal & Wallis 1952, J. Am. Stat. Assoc. 47:583). Values must be finite. Plain numbers are put in order
 * and each value is looked up among them, which is far quicker than putting places in order by what stands there.
 */
export function midranks(values: ArrayLike<number>): Ranks {
  const n = values.length;
  const sorted = Float64Array.from(values).sort();
  const distinct = new Float64Array(n);
  const shared = new Float64Array(n);
  const ties: number[] = [];
  let tieSum = 0;
  let groups = 0;
  for (let start = 0; start < n; groups++) {
    let end = start + 1;
    while (end < n && sorted[end] === sorted[start]) end++;
    const size = end - start;
    distinct[groups] = sorted[start];
    shared[groups] = (start + 1 + end) / 2;
    if (size > 1) {
      ties.push(size);
      tieSum += size * size * size - size;
    }
    start = end;
  }
  const ranks = new Float64Array(n);
  for (let i = 0; i < n; i++) ranks[i] = shared[placeAmong(values[i], distinct, groups)];
  return { ranks, ties, tieSum };
}
