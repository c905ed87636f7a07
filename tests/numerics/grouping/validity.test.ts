import { describe, expect, it } from 'vitest';
import { coMembership } from '../../../src/numerics/grouping/co-membership.ts';
import { validity } from '../../../src/numerics/grouping/validity.ts';
import { reference } from '../../references/reference.ts';
import { euclidean } from './helpers.ts';

interface RIndices {
  membership: number[];
  dunn: number;
  calinskiHarabasz: number;
}
const r = reference<{ sets: Record<string, { points: number[][]; indices: RIndices[] }> }>('grouping-r');
const python = reference<{
  indices: {
    points: number[][];
    cases: { membership: number[]; calinskiHarabasz: number; daviesBouldin: number }[];
  };
}>('grouping-python');

describe('validity', () => {
  it.each(Object.keys(r.sets))('gives Calinski-Harabasz and Dunn of R fpc::cluster.stats on %s', (name) => {
    const matrix = euclidean(r.sets[name].points);
    for (const expected of r.sets[name].indices) {
      const found = validity(matrix, expected.membership);
      expect(Math.abs((found.calinskiHarabasz as number) / expected.calinskiHarabasz - 1)).toBeLessThan(1e-9);
      expect(found.dunn).toBeCloseTo(expected.dunn, 9);
    }
  });

  it('gives Calinski-Harabasz and Davies-Bouldin of scikit-learn on iris', () => {
    const matrix = euclidean(python.indices.points);
    for (const expected of python.indices.cases) {
      const found = validity(matrix, expected.membership);
      expect(Math.abs((found.calinskiHarabasz as number) / expected.calinskiHarabasz - 1)).toBeLessThan(1e-9);
      expect(found.daviesBouldin).toBeCloseTo(expected.daviesBouldin, 9);
    }
  });

  it('says why where there is one group, or nothing differs within any', () => {
    const matrix = euclidean([[0], [0], [4], [4]]);
    expect(validity(matrix, [0, 0, 0, -1]).dunn).toEqual({ why: 'there are fewer than two groups' });
    expect(validity(matrix, [0, 0, 1, 1]).dunn).toHaveProperty('why');
    expect(validity(matrix, [0, 0, 1, 1]).calinskiHarabasz).toHaveProperty('why');
    expect(validity(matrix, [0, 1, 0, 1]).daviesBouldin).toEqual({ why: 'two groups share one centre' });
  });
});

describe('coMembership', () => {
  it('is the share of the groupings that put a pair together, among those that place both', () => {
    // Pairs (0,1), (0,2), (1,2): counted by hand.
    const found = coMembership([
      [0, 0, 1],
      [0, 0, 0],
      [0, 1, -1],
      [1, 1, -1],
    ]);
    expect([...found.values]).toEqual([0.75, 0.5, 0.5]);
    expect([...coMembership([[0, -1]]).values]).toEqual([Number.NaN]);
    expect(() => coMembership([])).toThrow(/at least one/);
  });
});
