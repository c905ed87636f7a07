import fc from 'fast-check';
import { expect, it } from 'vitest';
import { nearestFirst } from '../../../src/numerics/dissimilarity/nearest-first.ts';

const distance = fc.oneof(
  fc.constantFrom(0, 0.25, 0.5, Number.NaN),
  fc.double({ min: 0, max: 1, noNaN: true }),
);
const distances = fc.array(distance, { maxLength: 700 }).map((values) => Float64Array.from(values));
const sortedWhole = (values: Float64Array) =>
  [...values.keys()]
    .filter((row) => !Number.isNaN(values[row]))
    .sort((a, b) => values[a] - values[b] || a - b);

it('gives the order of a full sort, however many are asked for and however they tie (property)', () => {
  fc.assert(
    fc.property(distances, fc.integer({ min: 0, max: 800 }), (values, count) => {
      const nearest = nearestFirst(values);
      const whole = sortedWhole(values);
      expect(nearest.first(3)).toEqual(whole.slice(0, 3));
      expect(nearest.first(count)).toEqual(whole.slice(0, count));
      const even = (row: number) => row % 2 === 0;
      expect(nearest.firstWhere(even, 12)).toEqual(whole.filter(even).slice(0, 12));
      expect([...nearest.reached]).toEqual([...whole].sort((a, b) => a - b));
    }),
    { numRuns: 200 },
  );
});

it('looks as far as it must for one that passes', () => {
  const values = Float64Array.from({ length: 5000 }, (_, row) => row / 5000);
  expect(nearestFirst(values).firstWhere((row) => row > 4990, 2)).toEqual([4991, 4992]);
});
