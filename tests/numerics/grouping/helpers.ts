import type { Condensed } from '../../../src/numerics/dissimilarity/condensed.ts';

/** Euclidean distances in the order of scipy's pdist. */
export function euclidean(points: readonly (readonly number[])[]): Condensed {
  const values: number[] = [];
  for (let i = 0; i < points.length; i++) {
    for (let j = i + 1; j < points.length; j++) {
      let sum = 0;
      for (const [column, value] of points[i].entries()) {
        const difference = value - points[j][column];
        sum += difference * difference;
      }
      values.push(Math.sqrt(sum));
    }
  }
  return { n: points.length, values: Float64Array.from(values) };
}

/** Largest difference relative to the size of the expected value. */
export function relativeError(actual: ArrayLike<number>, expected: ArrayLike<number>): number {
  if (actual.length !== expected.length) return Number.POSITIVE_INFINITY;
  let worst = 0;
  for (let i = 0; i < expected.length; i++) {
    const error = Math.abs(actual[i] - expected[i]) / Math.max(1, Math.abs(expected[i]));
    if (!(error <= worst)) worst = error;
  }
  return worst;
}

/** Group numbers renamed by first appearance, so that two groupings can be compared whatever their numbers. */
export function renumbered(membership: ArrayLike<number>): number[] {
  const names = new Map<number, number>();
  return Array.from(membership, (label) => {
    if (label < 0) return -1;
    const known = names.get(label);
    if (known !== undefined) return known;
    names.set(label, names.size);
    return names.size - 1;
  });
}
