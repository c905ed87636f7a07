import { describe, expect, it } from 'vitest';
import { silhouette } from '../../../src/numerics/grouping/silhouette.ts';
import { reference } from '../../references/reference.ts';
import { euclidean, relativeError } from './helpers.ts';

interface Widths {
  k: number;
  membership: number[];
  widths: number[];
  neighbour: number[];
  meanWidth: number;
  groupWidths: number[];
}
const r = reference<{
  sets: Record<string, { points: number[][]; medoids: Widths[] }>;
  flower: { dissimilarity: number[]; n: number; medoids: Widths[] };
}>('grouping-r');

describe('silhouette', () => {
  it.each(Object.keys(r.sets))(
    'gives the widths, neighbours and means of R cluster::silhouette on %s',
    (name) => {
      const matrix = euclidean(r.sets[name].points);
      for (const expected of r.sets[name].medoids) {
        const found = silhouette(matrix, expected.membership);
        expect(relativeError(found?.widths ?? [], expected.widths)).toBeLessThan(1e-9);
        expect(relativeError(found?.groups ?? [], expected.groupWidths)).toBeLessThan(1e-9);
        expect(found?.mean).toBeCloseTo(expected.meanWidth, 9);
        expect([...(found?.neighbour ?? [])]).toEqual(expected.neighbour);
      }
    },
  );

  it('gives the published means of ruspini for k = 2 … 6 (Rousseeuw 1987, data of R cluster)', () => {
    const matrix = euclidean(r.sets.ruspini.points);
    const means = r.sets.ruspini.medoids.map((m) => silhouette(matrix, m.membership)?.mean ?? 0);
    expect(relativeError(means, [0.5827264, 0.6327047, 0.737657, 0.7134788, 0.5993529])).toBeLessThan(1e-7);
  });

  it('gives 0 to a record alone in its group and to equal records, and has no answer for one group', () => {
    const matrix = euclidean([[0], [1], [9]]);
    expect(silhouette(matrix, [0, 0, 1])?.widths[2]).toBe(0);
    expect([...(silhouette(euclidean([[3], [3], [3], [3]]), [0, 0, 1, 1])?.widths ?? [])]).toEqual([
      0, 0, 0, 0,
    ]);
    expect(silhouette(matrix, [0, 0, 0])).toBeNull();
    expect(silhouette(matrix, [-1, -1, -1])).toBeNull();
  });

  it('leaves records in no group out of every mean', () => {
    const all = euclidean([[0], [1], [9], [10], [500]]);
    const found = silhouette(all, [0, 0, 1, 1, -1]);
    const without = silhouette(euclidean([[0], [1], [9], [10]]), [0, 0, 1, 1]);
    expect(found?.mean).toBe(without?.mean);
    expect(found?.widths[4]).toBeNaN();
  });
});
