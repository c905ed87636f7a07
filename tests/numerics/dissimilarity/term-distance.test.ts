import { describe, expect, it } from 'vitest';
import { kindDistances, termDistances } from '../../../src/numerics/dissimilarity/term-distance.ts';

// root 0 > plant 1 > tree bast 2 > (lime 3, willow 4); root 0 > animal 5 > wool 6; another root 7.
const PARENTS = [-1, 0, 1, 2, 2, 0, 5, -1];
const LEVELS = PARENTS.length;
const between = termDistances(PARENTS);
const apart = (a: number, b: number) => between[a * LEVELS + b];

describe('distance of terms, Wu & Palmer 1994, by hand from 1 - 2 N3 / (N1 + N2 + 2 N3)', () => {
  it.each([
    ['two kinds of tree bast: N1 = N2 = 1, N3 = 3', 3, 4, 1 - 6 / 8],
    ['a kind and its parent: N1 = 1, N2 = 0, N3 = 3', 3, 2, 1 - 6 / 7],
    ['lime bast and wool: N1 = 3, N2 = 2, N3 = 1', 3, 6, 1 - 2 / 7],
    ['tree bast and wool: N1 = 2, N2 = 2, N3 = 1', 2, 6, 1 - 2 / 6],
    ['a term and the root: N1 = 3, N2 = 0, N3 = 1', 3, 0, 1 - 2 / 5],
    ['terms without a common root', 3, 7, 1],
    ['a term and itself', 3, 3, 0],
  ])('%s', (_, a, b, expected) => {
    expect(apart(a, b)).toBeCloseTo(expected, 15);
    expect(apart(b, a)).toBe(apart(a, b));
  });

  it('an inner term stands between its own kinds and the rest', () => {
    expect(apart(2, 3)).toBeLessThan(apart(3, 4));
    expect(apart(3, 4)).toBeLessThan(apart(3, 6));
  });

  it('refuses a circle of parents', () => {
    expect(() => termDistances([1, 0])).toThrow('its own ancestor');
  });

  it('kinds without a hierarchy are the same or not', () => {
    expect([...kindDistances(2)]).toEqual([0, 1, 1, 0]);
  });
});
