import { type Condensed, condensedIndex } from '../dissimilarity/condensed.ts';
import type { RawMerge } from './tree.ts';

/**
 * Merges by always joining the closest pair of all, for linkages where a merge may bring a third cluster
 * nearer (centroid, median). Each cluster caches its nearest neighbour among the later ones; a cached
 * neighbour that has gone or changed is searched anew when its turn comes (Müllner 2011, fig. 3).
 * Equal distances: lowest row first. Heights come in the order of the merges and may fall.
 */
export function closestPairMerges(matrix: Condensed, kind: 'centroid' | 'median'): RawMerge[] {
  const { n } = matrix;
  const values = matrix.values.slice();
  const size = new Int32Array(n).fill(1);
  const neighbour = new Int32Array(n).fill(-1);
  const least = new Float64Array(n).fill(Number.POSITIVE_INFINITY);
  const search = (i: number) => {
    least[i] = Number.POSITIVE_INFINITY;
    neighbour[i] = -1;
    for (let j = i + 1; j < n; j++) {
      if (size[j] === 0) continue;
      const distance = values[condensedIndex(n, i, j)];
      if (neighbour[i] < 0 || distance < least[i]) {
        least[i] = distance;
        neighbour[i] = j;
      }
    }
  };
  for (let i = 0; i < n; i++) search(i);
  const merges: RawMerge[] = [];
  for (let step = 1; step < n; step++) {
    let x = -1;
    for (let i = 0; i < n; i++) {
      if (size[i] > 0 && neighbour[i] >= 0 && (x < 0 || least[i] < least[x])) x = i;
    }
    const y = neighbour[x];
    const height = least[x];
    merges.push({ a: x, b: y, height });
    const nx = size[x];
    const ny = size[y];
    size[x] = 0;
    for (let i = 0; i < n; i++) {
      if (size[i] === 0 || i === y) continue;
      const place = condensedIndex(n, i, y);
      const dx = values[condensedIndex(n, i, x)];
      const dy = values[place];
      values[place] =
        kind === 'median'
          ? 0.5 * (dx + dy) - 0.25 * height
          : (nx * dx + ny * dy - (nx * ny * height) / (nx + ny)) / (nx + ny);
    }
    size[y] = nx + ny;
    for (let i = 0; i < y; i++) {
      if (size[i] === 0) continue;
      const distance = values[condensedIndex(n, i, y)];
      if (neighbour[i] === x || neighbour[i] === y) search(i);
      else if (distance < least[i]) {
        least[i] = distance;
        neighbour[i] = y;
      }
    }
    search(y);
  }
  return merges;
}
