import { describe, expect, it } from 'vitest';
import { takeRecords } from '../../../src/numerics/dissimilarity/condensed.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { medoids } from '../../../src/numerics/grouping/medoids.ts';
import { groupStability } from '../../../src/numerics/grouping/stability.ts';
import { reference } from '../../references/reference.ts';
import { euclidean } from './helpers.ts';

interface Reference {
  sets: Record<string, { points: number[][] }>;
  stability: Record<
    'ruspini4' | 'ruspini5' | 'iris3' | 'ruspini4Sizes' | 'ruspini5Sizes' | 'iris3Sizes',
    number[]
  >;
}
const r = reference<Reference>('grouping-r');

function stabilityOf(points: number[][], k: number, resamples: number, items = points.map((_, i) => i)) {
  const matrix = euclidean(points);
  const { membership } = medoids(matrix, k);
  const found = groupStability({
    membership,
    items,
    resamples,
    regroup: (rows) => medoids(takeRecords(matrix, rows), k).membership,
    random: createRandom(12),
  });
  const sizes = found.map((_, group) => membership.filter((m) => m === group).length);
  return { found, sizes };
}

describe('groupStability', () => {
  it.each([
    ['ruspini', 4, 'ruspini4', 'ruspini4Sizes'],
    ['ruspini', 5, 'ruspini5', 'ruspini5Sizes'],
    ['iris', 3, 'iris3', 'iris3Sizes'],
  ] as const)(
    'on %s, k = %i, agrees with R fpc::clusterboot within sampling error',
    (name, k, means, sizes) => {
      const { found, sizes: ours } = stabilityOf(r.sets[name].points, k, 400);
      for (const [group, size] of r.stability[sizes].entries()) {
        // Both are means of 400 draws between 0 and 1: their difference has a standard error below 0.036.
        expect(Math.abs(found[ours.indexOf(size)].mean - r.stability[means][group])).toBeLessThan(0.1);
      }
    },
  );

  it('draws the records of one item together', () => {
    const points = [[0], [0.1], [0.2], [9], [9.1], [9.2]];
    const seen = new Set<number>();
    groupStability({
      membership: [0, 0, 0, 1, 1, 1],
      items: [0, 0, 0, 1, 1, 2],
      resamples: 50,
      regroup: (rows) => {
        seen.add(rows.filter((row) => row < 3).length);
        return rows.map((row) => (points[row][0] > 5 ? 1 : 0));
      },
      random: createRandom(1),
    });
    expect([...seen].sort()).toEqual([0, 3]);
  });

  it('counts a group as found again in every resample that holds it, when grouping is sure', () => {
    const { found } = stabilityOf([[0], [0.1], [0.2], [50], [50.1], [50.2]], 2, 200);
    for (const group of found) {
      expect(group.recovered + group.dissolved).toBeLessThanOrEqual(group.resamples);
      expect(group.resamples).toBeLessThan(201);
      expect(group.mean).toBeGreaterThan(0.8);
    }
  });

  it('is the same for the same seed', () => {
    const points = r.sets.agriculture.points;
    expect(stabilityOf(points, 2, 20)).toEqual(stabilityOf(points, 2, 20));
  });
});
