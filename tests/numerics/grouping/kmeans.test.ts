import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { kmeans, type Points } from '../../../src/numerics/grouping/kmeans.ts';
import { reference } from '../../references/reference.ts';
import { renumbered } from './helpers.ts';

const r = reference<{ sets: Record<string, { points: number[][]; withinSquares: number[] }> }>('grouping-r');
const pointsOf = (rows: readonly (readonly number[])[]): Points => ({
  values: Float64Array.from(rows.flat()),
  n: rows.length,
  columns: rows[0].length,
});
const run = (
  points: Points,
  k: number,
  more: { starts?: number; largeFrom?: number; seed?: number } = {},
) => {
  const found = kmeans(points, { k, starts: 30, random: createRandom(more.seed ?? 2), ...more });
  if ('why' in found) throw new Error(found.why);
  return found;
};

describe('kmeans', () => {
  it.each(Object.keys(r.sets))('finds the least sum of squares of R kmeans with 200 starts on %s', (name) => {
    const points = pointsOf(r.sets[name].points);
    for (const [step, expected] of r.sets[name].withinSquares.entries()) {
      const found = run(points, step + 2, { starts: 100 });
      expect(Math.abs(found.withinSquares / expected - 1)).toBeLessThan(1e-9);
    }
  });

  it('gives the published 12881.0512361 on ruspini with four groups (trade table, data of R cluster)', () => {
    expect(run(pointsOf(r.sets.ruspini.points), 4).withinSquares).toBeCloseTo(12881.0512361, 7);
  });

  it('takes the same steps through ml-kmeans and through its own kernel', () => {
    const random = createRandom(5);
    const rows = Array.from({ length: 400 }, () =>
      [0, 1, 2].map((c) => (random.integer(3) + c) * 2 + random.next() + random.next()),
    );
    for (const k of [2, 5, 9]) {
      const library = run(pointsOf(rows), k, { largeFrom: 1e9, starts: 5 });
      const kernel = run(pointsOf(rows), k, { largeFrom: 0, starts: 5 });
      expect(kernel.membership).toEqual(library.membership);
      expect(Math.abs(kernel.withinSquares / library.withinSquares - 1)).toBeLessThan(1e-12);
      expect(kernel.iterations).toBe(library.iterations);
    }
  });

  it('is the same for the same seed and leaves its input unchanged', () => {
    const points = pointsOf(r.sets.iris.points);
    const before = points.values.slice();
    expect(run(points, 3)).toEqual(run(points, 3));
    expect(points.values).toEqual(before);
  });

  it('says why when fewer records differ than groups are asked for, and refuses gaps', () => {
    const points = pointsOf([
      [1, 2],
      [1, 2],
      [3, 4],
    ]);
    const settings = { starts: 3, random: createRandom(1) };
    expect(kmeans(points, { k: 3, ...settings })).toEqual({
      why: 'only 2 records differ, too few for 3 groups',
    });
    expect(renumbered(run(points, 2).membership)).toEqual([0, 0, 1]);
    expect(() => kmeans(pointsOf([[1], [Number.NaN]]), { k: 1, ...settings })).toThrow(/finite/);
    expect(run(pointsOf([[1], [3]]), 1).centres[0]).toBe(2);
  });
});
