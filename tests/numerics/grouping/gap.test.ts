import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { cloudMaker } from '../../../src/numerics/grouping/cloud-reference.ts';
import { gapStatistic, groupsByGap, logDispersion } from '../../../src/numerics/grouping/gap.ts';
import { medoids } from '../../../src/numerics/grouping/medoids.ts';
import { principalCoordinates } from '../../../src/numerics/ordination/principal-coordinates.ts';
import { reference } from '../../references/reference.ts';
import { euclidean } from './helpers.ts';

const r = reference<{
  sets: Record<string, { points: number[][] }>;
  gap: { logW: number[]; table: [number, number, number, number][]; draws: number };
}>('grouping-r');

const grouped = (matrix: ReturnType<typeof euclidean>) =>
  [1, 2, 3, 4, 5, 6].map((k) => logDispersion(matrix, medoids(matrix, k).membership));

describe('gap statistic', () => {
  const matrix = euclidean(r.sets.ruspini.points);
  const axes = principalCoordinates(matrix, 2);
  if ('why' in axes) throw new Error(axes.why);
  const single = [...Array(matrix.n).keys()];
  const draw = cloudMaker(axes, single, 'box');
  const random = createRandom(31);
  const references = Array.from({ length: 200 }, () => grouped(draw(random)));
  const found = gapStatistic(grouped(matrix), references);

  it('gives the log dispersions of R cluster::clusGap on ruspini', () => {
    // clusGap halves each sum over unordered pairs once more than the paper's eq. 2, hence the ln 2.
    for (const [place, logW] of r.gap.logW.entries()) {
      expect(grouped(matrix)[place]).toBeCloseTo(logW + Math.LN2, 9);
    }
  });

  it('gives the gaps of clusGap within sampling error', () => {
    for (const [place, row] of r.gap.table.entries()) {
      // sd of one table near 0.1: standard error of the difference of means (200 and 500 tables) below 0.009.
      expect(Math.abs(found[place].gap - row[2])).toBeLessThan(0.035);
      expect(Math.abs(found[place].error / row[3] - 1)).toBeLessThan(0.3);
    }
  });

  it('finds the four groups of ruspini, and one in an even cloud', () => {
    expect(groupsByGap(found)).toBe(4);
    const even = draw(createRandom(77));
    expect(groupsByGap(gapStatistic(grouped(even), references))).toBe(1);
  });

  it('draws single heaps with the spread of the real axes, whatever heaps those have', () => {
    const make = cloudMaker(axes, single, 'heap');
    const chance = createRandom(8);
    let sum = 0;
    for (let table = 0; table < 200; table++) {
      const { coordinates, columns } = make(chance);
      for (const i of single) sum += coordinates[i * columns] * coordinates[i * columns];
    }
    // Mean sum of squares over 200 tables of 75: relative standard error below 1.5 %.
    expect(Math.abs(sum / 200 / axes.eigenvalues[0] - 1)).toBeLessThan(0.05);
  });

  it('keeps records of one item together in the reference', () => {
    const twins = euclidean(r.sets.ruspini.points.slice(0, 20).flatMap((point) => [point, point]));
    const both = principalCoordinates(twins, 2);
    if ('why' in both) throw new Error(both.why);
    const pairs = Array.from({ length: 40 }, (_, i) => i >> 1);
    const cloud = cloudMaker(both, pairs, 'heap')(createRandom(3));
    expect(cloud.values[0]).toBeLessThan(1e-6);
    expect(cloud.values[1]).toBeGreaterThan(1e-6);
  });
});
