import { describe, expect, it } from 'vitest';
import { densityGroups } from '../../../src/numerics/grouping/density.ts';
import { reference } from '../../references/reference.ts';
import { euclidean, relativeError, renumbered } from './helpers.ts';

interface Case {
  name: string;
  points: number[][];
  smallestGroup: number;
  neighbours: number;
  labels: number[];
  strength: number[];
}
const { cases } = reference<{ cases: Case[] }>('grouping-density');

describe('densityGroups', () => {
  it.each(cases.map((c): [string, number, number, Case] => [c.name, c.smallestGroup, c.neighbours, c]))(
    'gives the groups, noise and strengths of scikit-learn HDBSCAN on %s (smallest %i, neighbours %i)',
    (_, smallestGroup, neighbours, expected) => {
      const found = densityGroups(euclidean(expected.points), { smallestGroup, neighbours });
      expect(renumbered(found.membership)).toEqual(renumbered(expected.labels));
      expect(relativeError(found.strength, expected.strength)).toBeLessThan(1e-9);
    },
  );

  it('finds two heaps and calls the lone record far from both noise', () => {
    const points = [0, 1, 2, 3, 1000, 100, 101, 102, 103].map((x) => [x]);
    const found = densityGroups(euclidean(points), { smallestGroup: 3, neighbours: 2 });
    expect(renumbered(found.membership)).toEqual([0, 0, 0, 0, -1, 1, 1, 1, 1]);
    expect(found.strength[4]).toBe(0);
  });

  it('takes equal records, and finds no group where all are equal or too few', () => {
    const heaps = euclidean([0, 0, 0, 0, 9, 9, 9, 9].map((x) => [x]));
    expect(renumbered(densityGroups(heaps, { smallestGroup: 3, neighbours: 2 }).membership)).toEqual([
      0, 0, 0, 0, 1, 1, 1, 1,
    ]);
    const equal = densityGroups(euclidean([[1], [1], [1], [1]]), { smallestGroup: 2, neighbours: 1 });
    expect(equal.strength.every((value) => value >= 0 && value <= 1)).toBe(true);
    expect(densityGroups(euclidean([[1]]), { smallestGroup: 2, neighbours: 1 }).k).toBe(0);
  });

  it('refuses settings that have no meaning', () => {
    expect(() => densityGroups(euclidean([[1], [2]]), { smallestGroup: 1, neighbours: 1 })).toThrow(
      /2 or more/,
    );
  });
});
