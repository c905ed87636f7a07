import type { Unavailable } from '../foundation/unavailable.ts';

/**
 * Median of all differences between a value of the first sample and one of the second, the estimate
 * of Hodges & Lehmann 1963, Ann. Math. Stat. 34:598: positive when the first is larger. The middle is
 * found by selection (Hoare 1961, Commun. ACM 4:321), so that it can be asked for thousands of times.
 */
export function medianDifference(first: ArrayLike<number>, second: ArrayLike<number>): number | Unavailable {
  if (first.length === 0 || second.length === 0) return { why: 'a group has no value' };
  const differences = new Float64Array(first.length * second.length);
  let at = 0;
  for (let i = 0; i < first.length; i++)
    for (let j = 0; j < second.length; j++) differences[at++] = first[i] - second[j];
  const upper = differences.length >> 1;
  const high = select(differences, upper);
  if (differences.length % 2 === 1) return high;
  let low = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < upper; i++) low = Math.max(low, differences[i]);
  return (low + high) / 2;
}

/** The value of rank `k` (0 = smallest), the smaller ones moved before it; changes `values`. */
export function select(values: Float64Array, k: number): number {
  let left = 0;
  let right = values.length - 1;
  while (left < right) {
    const pivot = values[(left + right) >> 1];
    let i = left;
    let j = right;
    while (i <= j) {
      while (values[i] < pivot) i++;
      while (values[j] > pivot) j--;
      if (i <= j) {
        const kept = values[i];
        values[i++] = values[j];
        values[j--] = kept;
      }
    }
    if (k <= j) right = j;
    else if (k >= i) left = i;
    else break;
  }
  return values[k];
}
