/** Linkages whose merges never bring a third cluster nearer, by their recurrence (Lance & Williams 1967). */
export type Reducible = 'complete' | 'average' | 'mcquitty' | 'ward' | 'ward-squared';

/**
 * Dissimilarities of every cluster to the union of two, written over `toY`.
 *
 * The choice of linkage stands outside the loops, and rows lie in one piece: inside, it would cost more than
 * the sums themselves.
 *
 * @param toX dissimilarities of each of `count` clusters to the first part; `toY` to the second
 * @param sizes records in each of those clusters
 * @param between dissimilarity of the two parts, of nx and ny records
 */
export function combineRows(
  kind: Reducible,
  toX: Float64Array,
  toY: Float64Array,
  sizes: Float64Array,
  count: number,
  between: number,
  nx: number,
  ny: number,
): void {
  const both = nx + ny;
  switch (kind) {
    case 'complete':
      for (let t = 0; t < count; t++) toY[t] = Math.max(toX[t], toY[t]);
      return;
    case 'average':
      for (let t = 0; t < count; t++) toY[t] = (nx * toX[t] + ny * toY[t]) / both;
      return;
    case 'mcquitty':
      for (let t = 0; t < count; t++) toY[t] = 0.5 * (toX[t] + toY[t]);
      return;
    case 'ward':
      for (let t = 0; t < count; t++) {
        const ni = sizes[t];
        const share = 1 / (both + ni);
        const dx = toX[t];
        const dy = toY[t];
        toY[t] = Math.sqrt(
          (ni + nx) * share * dx * dx + (ni + ny) * share * dy * dy - ni * share * between * between,
        );
      }
      return;
    case 'ward-squared':
      for (let t = 0; t < count; t++) {
        const ni = sizes[t];
        toY[t] = ((ni + nx) * toX[t] + (ni + ny) * toY[t] - ni * between) / (both + ni);
      }
  }
}
