import { describe, expect, it } from 'vitest';
import { fuzzyMembership } from '../../../src/numerics/grouping/fuzzy-membership.ts';
import { medoids } from '../../../src/numerics/grouping/medoids.ts';
import { reference } from '../../references/reference.ts';
import { euclidean, renumbered } from './helpers.ts';

const sets = reference<{ sets: Record<string, { points: number[][] }> }>('grouping-r').sets;
const given = reference<{ ruspini: { membership: number[] } }>('graded-and-sampled');

/** The group of the greatest share of each record. */
function foremost(name: string, k: number): number[] {
  const matrix = euclidean(sets[name].points);
  const shares = fuzzyMembership(matrix, medoids(matrix, k).medoids, 1.5);
  return Array.from({ length: matrix.n }, (_, i) => {
    const own = [...shares.slice(i * k, (i + 1) * k)];
    return own.indexOf(Math.max(...own));
  });
}

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

  it('comes to the groups of R cluster::fanny on ruspini, whose shares differ as they rest on no medoid', () => {
    expect(renumbered(foremost('ruspini', 4))).toEqual(renumbered(given.ruspini.membership));
  });
});
