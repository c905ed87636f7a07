/** Linkages whose dissimilarities follow from those of the two joined parts (Lance & Williams 1967). */
export type Recurrence =
  | 'complete'
  | 'average'
  | 'mcquitty'
  | 'ward'
  | 'ward-squared'
  | 'centroid'
  | 'median';

/**
 * Dissimilarity of a cluster of ni records to the union of two, from its dissimilarities dx and dy to the
 * parts, theirs to each other (dxy) and their sizes. One function with a switch rather than one a linkage,
 * because it stands in the innermost loop, where calling through a variable costs more than the sum itself.
 */
export function combined(
  kind: Recurrence,
  dx: number,
  dy: number,
  dxy: number,
  nx: number,
  ny: number,
  ni: number,
): number {
  switch (kind) {
    case 'complete':
      return Math.max(dx, dy);
    case 'average':
      return (nx * dx + ny * dy) / (nx + ny);
    case 'mcquitty':
      return 0.5 * (dx + dy);
    case 'ward': {
      const share = 1 / (nx + ny + ni);
      return Math.sqrt((ni + nx) * share * dx * dx + (ni + ny) * share * dy * dy - ni * share * dxy * dxy);
    }
    case 'ward-squared':
      return ((ni + nx) * dx + (ni + ny) * dy - ni * dxy) / (nx + ny + ni);
    case 'centroid':
      return (nx * dx + ny * dy - (nx * ny * dxy) / (nx + ny)) / (nx + ny);
    case 'median':
      return 0.5 * (dx + dy) - 0.25 * dxy;
  }
}
