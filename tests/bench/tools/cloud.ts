import type { Condensed } from '../../../src/numerics/dissimilarity/condensed.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';

/** n points about a few centres, row by row. */
export function cloud(n: number, columns: number, centres: number, seed: number): Float64Array {
  const random = createRandom(seed);
  const at = Array.from({ length: centres * columns }, () => 6 * random.next());
  const points = new Float64Array(n * columns);
  for (let i = 0; i < n; i++) {
    const centre = random.integer(centres);
    for (let c = 0; c < columns; c++) {
      const spread = random.next() + random.next() + random.next() + random.next() - 2;
      points[i * columns + c] = at[centre * columns + c] + spread;
    }
  }
  return points;
}

/** Plain Euclidean distances of all pairs. */
export function distances(points: Float64Array, n: number): Condensed {
  const columns = points.length / n;
  const values = new Float64Array((n * (n - 1)) / 2);
  let pair = 0;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      let square = 0;
      for (let c = 0; c < columns; c++) {
        const difference = points[i * columns + c] - points[j * columns + c];
        square += difference * difference;
      }
      values[pair++] = Math.sqrt(square);
    }
  }
  return { n, values };
}
