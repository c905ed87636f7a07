import type { Condensed } from '../dissimilarity/condensed.ts';
import type { RawMerge } from './tree.ts';

/**
 * Edges of a minimum spanning tree by Prim's method, in the order in which they are found from record 0;
 * sorted by length they are the merges of single linkage (Gower & Ross 1969, *Applied Statistics* 18:54).
 * Of equally near records the lowest row comes first. O(n²) time, O(n) memory; the input is only read.
 *
 * @param core where given, the distance of a pair is the greatest of its own and the two core distances
 *   (mutual reachability; Campello, Moulavi & Sander 2013, def. 4)
 */
export function spanningMerges(matrix: Condensed, core?: Float64Array): RawMerge[] {
  const { n, values } = matrix;
  const nearest = new Float64Array(n).fill(Number.POSITIVE_INFINITY);
  const waiting = Int32Array.from({ length: n }, (_, i) => i);
  let left = n;
  const merges: RawMerge[] = [];
  let x = 0;
  let removed = 0;
  while (left > 1) {
    waiting.copyWithin(removed, removed + 1, left);
    left--;
    const start = x * n - (x * (x + 1)) / 2 - x - 1;
    let best = 0;
    for (let t = 0; t < left; t++) {
      const i = waiting[t];
      let distance = i > x ? values[start + i] : values[i * n - (i * (i + 1)) / 2 - i - 1 + x];
      if (core !== undefined) distance = Math.max(distance, core[x], core[i]);
      if (distance < nearest[i]) nearest[i] = distance;
      if (nearest[i] < nearest[waiting[best]]) best = t;
    }
    const y = waiting[best];
    merges.push({ a: x, b: y, height: nearest[y] });
    x = y;
    removed = best;
  }
  return merges;
}
