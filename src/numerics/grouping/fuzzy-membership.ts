import { type Condensed, dissimilarityAt } from '../dissimilarity/condensed.ts';
import { pow } from '../foundation/elementary.ts';
import { least } from '../foundation/lists.ts';

/**
 * How much does each record belong to each medoid's group, when it may belong to several?
 *
 * Fuzzy membership for given medoids (Krishnapuram, Joshi, Nasraoui & Yi 2001, *IEEE Trans. Fuzzy Systems*
 * 9:595, eq. 4): in proportion to dissimilarity to the power -1 / (exponent - 1), each record's memberships
 * summing to 1. A record equal to a medoid belongs to it wholly; equal to several, to them in equal parts.
 *
 * @param exponent above 1 (RangeError otherwise); 2 by default; towards 1 membership becomes all or nothing,
 *   large values make it even
 * @returns n * medoids.length memberships, row by row
 */
export function fuzzyMembership(matrix: Condensed, medoids: ArrayLike<number>, exponent = 2): Float64Array {
  if (!(exponent > 1)) throw new RangeError('fuzzyMembership needs an exponent above 1');
  const { n } = matrix;
  const k = medoids.length;
  const membership = new Float64Array(n * k);
  for (let i = 0; i < n; i++) {
    const distances = Array.from(medoids, (medoid) => dissimilarityAt(matrix, i, medoid));
    const nearest = least(distances);
    // Relative to the least one, so that no power overflows.
    const weights = distances.map((distance) => {
      if (nearest === 0) return distance === 0 ? 1 : 0;
      return pow(nearest / distance, 1 / (exponent - 1));
    });
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    for (let group = 0; group < k; group++) membership[i * k + group] = weights[group] / total;
  }
  return membership;
}
