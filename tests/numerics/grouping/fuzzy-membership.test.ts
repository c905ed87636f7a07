import { describe, expect, it } from 'vitest';
import { fuzzyMembership } from '../../../src/numerics/grouping/fuzzy-membership.ts';
import { euclidean } from './helpers.ts';

describe('fuzzyMembership', () => {
  it('is in inverse proportion to the dissimilarities at exponent 2, by hand', () => {
    // At 1 on a line between medoids at 0 and 4: 1/1 against 1/3.
    const found = fuzzyMembership(euclidean([[0], [1], [4]]), [0, 2]);
    expect([...found]).toEqual([1, 0, 0.75, 0.25, 0, 1]);
  });

  it('sharpens towards exponent 1, and shares a record equal to two medoids', () => {
    const matrix = euclidean([[0], [1], [4]]);
    // 1 / (1.5 - 1) = 2: squares of 1/1 and 1/3.
    expect(fuzzyMembership(matrix, [0, 2], 1.5)[2]).toBeCloseTo(0.9, 12);
    expect([...fuzzyMembership(euclidean([[2], [2], [2]]), [0, 1]).slice(4)]).toEqual([0.5, 0.5]);
    expect(() => fuzzyMembership(matrix, [0], 1)).toThrow(/above 1/);
  });
});
