import { expect, it } from 'vitest';
import { pointsOf } from '../../../src/analyses/grouping/compared.ts';
import type { DissimilaritySpec, QuantityVariable } from '../../../src/numerics/dissimilarity/variables.ts';

const quantity = (
  block: number,
  weight: number,
  ends: readonly (readonly [number, number])[],
  range: number,
) =>
  ({
    kind: 'quantity',
    block,
    weight,
    low: Float64Array.from(ends, ([low]) => low),
    high: Float64Array.from(ends, ([, high]) => high),
    range,
  }) satisfies QuantityVariable;

const ENDS = [
  [2, 4],
  [10, 10],
] as const;
const spec = (more: Partial<DissimilaritySpec>): DissimilaritySpec => ({
  variables: [quantity(0, 4, ENDS, 8), quantity(1, 1, ENDS, 2), quantity(1, 0, ENDS, 1)],
  blockWeights: [1, 0.25],
  mode: 'blocks',
  intervals: 'midpoint',
  minimumOverlap: 0,
  ...more,
});

// By hand: the middle of the range times the root of the weights over the range.
it('points are middles on the scale of the comparison, without what weighs nothing', () => {
  expect(pointsOf(spec({}))).toEqual({
    values: Float64Array.of((3 * 2) / 8, (3 * 0.5) / 2, (10 * 2) / 8, (10 * 0.5) / 2),
    n: 2,
    columns: 2,
  });
});

it('a block of no weight is left out where blocks count, and counts where all attributes count alike', () => {
  expect(pointsOf(spec({ blockWeights: [1, 0] })).columns).toBe(1);
  const plain = pointsOf(spec({ blockWeights: [1, 0], mode: 'plain' }));
  expect(plain.columns).toBe(2);
  expect(plain.values[1]).toBe(3 / 2);
});

it('attributes that are alike in all records do not part them', () => {
  const { values } = pointsOf(spec({ variables: [quantity(0, 1, ENDS, 0)] }));
  expect([...values]).toEqual([0, 0]);
});
