import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Condensed,
  dissimilarityAt,
  takeRecords,
} from '../../../src/numerics/dissimilarity/condensed.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { medoids } from '../../../src/numerics/grouping/medoids.ts';
import { sampledMedoids, sampleRows } from '../../../src/numerics/grouping/sampled-medoids.ts';
import { reference } from '../../references/reference.ts';
import { euclidean, renumbered } from './helpers.ts';

const r = reference<{ sets: Record<string, { points: number[][] }> }>('grouping-r');
interface Sampled {
  readonly k: number;
  readonly medoids: readonly number[];
  readonly membership: readonly number[];
  readonly mean: readonly [number];
}
const { clara } = reference<{ clara: Record<'ruspini' | 'iris', readonly Sampled[]> }>('graded-and-sampled');
const sourceOf = (matrix: Condensed) => ({
  n: matrix.n,
  among: (rows: Int32Array) => takeRecords(matrix, rows),
  to: (row: number) => Float64Array.from({ length: matrix.n }, (_, i) => dissimilarityAt(matrix, i, row)),
});

describe('sampledMedoids', () => {
  it('equals medoids of the whole table when the sample is the whole table', () => {
    const matrix = euclidean(r.sets.iris.points);
    const all = Int32Array.from({ length: matrix.n }, (_, i) => i);
    for (const found of sampledMedoids(sourceOf(matrix), [all], 2, 5)) {
      const whole = medoids(matrix, found.k);
      expect(found.medoids).toEqual(whole.medoids);
      expect(found.membership).toEqual(whole.membership);
      expect(found.cost * matrix.n).toBeCloseTo(whole.cost, 9);
    }
  });

  it.each(['ruspini', 'iris'] as const)(
    'of %s is what R cluster::clara finds with samples as large as the table',
    (name) => {
      const matrix = euclidean(r.sets[name].points);
      const all = Int32Array.from({ length: matrix.n }, (_, i) => i);
      for (const theirs of clara[name]) {
        const [ours] = sampledMedoids(sourceOf(matrix), [all], theirs.k, theirs.k);
        expect(Math.abs(ours.cost - theirs.mean[0])).toBeLessThan(1e-9);
        expect([...ours.medoids].sort((a, b) => a - b)).toEqual([...theirs.medoids].sort((a, b) => a - b));
        expect(renumbered(ours.membership)).toEqual(renumbered(theirs.membership));
      }
    },
  );

  it('keeps the sample that costs least over all records, close to the optimum of ruspini', () => {
    const matrix = euclidean(r.sets.ruspini.points);
    const random = createRandom(4);
    const samples = Array.from({ length: 5 }, () => sampleRows(matrix.n, 48, random));
    const [found] = sampledMedoids(sourceOf(matrix), samples, 4, 4);
    const single = samples.map((rows) => sampledMedoids(sourceOf(matrix), [rows], 4, 4)[0].cost);
    expect(found.cost).toBe(Math.min(...single));
    expect((found.cost * matrix.n) / medoids(matrix, 4).cost).toBeLessThan(1.05);
  });

  it('leaves a record in no group that no medoid can be compared with', () => {
    const matrix = euclidean([[0], [1], [9], [10], [5]]);
    const source = sourceOf(matrix);
    const blind = {
      ...source,
      to: (row: number) => source.to(row).map((d, i) => (i === 4 ? Number.NaN : d)),
    };
    const [found] = sampledMedoids(blind, [Int32Array.of(0, 1, 2, 3)], 2, 2);
    expect([...found.membership]).toEqual([0, 0, 1, 1, -1]);
  });

  it('draws samples of the right size without repeats, ascending', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.nat(1000), (size, seed) => {
        const rows = [...sampleRows(60, size, createRandom(seed))];
        expect(new Set(rows).size).toBe(size);
        expect(rows).toEqual([...rows].sort((a, b) => a - b));
        expect(rows.every((row) => row >= 0 && row < 60)).toBe(true);
      }),
      { seed: 5, numRuns: 50 },
    );
  });
});
