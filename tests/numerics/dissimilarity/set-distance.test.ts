import { describe, expect, it } from 'vitest';
import { setDistance } from '../../../src/numerics/dissimilarity/set-distance.ts';

// Three kinds: 0 to 1 is 1, 0 to 2 is 1, 1 to 2 is 0.6.
const BETWEEN = [0, 1, 1, 1, 0, 0.6, 1, 0.6, 0];
const apart = (a: readonly number[], b: readonly number[]) => setDistance(BETWEEN, 3, a, b);

// By hand, from the rule: the mean over each set of the distance to the nearest of the other, and the mean of both.
describe('distance of two sets of kinds', () => {
  it.each<[string, readonly number[], readonly number[], number]>([
    ['equal sets', [0, 1], [1, 0], 0],
    ['one kind each', [1], [2], 0.6],
    ['a kind and a set with it: ((1 + 0) / 2 + 0) / 2', [0, 1], [1], 0.25],
    ['two sets that share a kind: ((1 + 0) / 2 + (0.6 + 0) / 2) / 2', [0, 2], [1, 2], 0.4],
    ['nothing shared and nothing near', [0], [1, 2], 1],
    ['a kind and a set of others: (0.6 + (1 + 0.6) / 2) / 2', [1], [0, 2], 0.7],
  ])('%s', (_, a, b, expected) => {
    expect(apart(a, b)).toBeCloseTo(expected, 15);
    expect(apart(b, a)).toBeCloseTo(expected, 15);
  });
});
