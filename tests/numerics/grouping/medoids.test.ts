import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Condensed, dissimilarityAt } from '../../../src/numerics/dissimilarity/condensed.ts';
import { medoids, medoidsForEach } from '../../../src/numerics/grouping/medoids.ts';
import { reference } from '../../references/reference.ts';
import { euclidean, relativeError, renumbered } from './helpers.ts';

interface MedoidReference {
  readonly k: number;
  readonly medoids: number[];
  readonly membership: number[];
  readonly build: number;
  readonly swap: number;
}
interface Reference {
  readonly sets: Record<string, { points: number[][]; medoids: MedoidReference[] }>;
  readonly random: { points: number[][]; medoids: MedoidReference[] };
  readonly flower: { dissimilarity: number[]; n: number; medoids: MedoidReference[] };
}

const r = reference<Reference>('grouping-r');
const cases: [name: string, matrix: Condensed, expected: MedoidReference][] = [
  ...Object.entries({ ...r.sets, random: r.random }).flatMap(([name, set]) =>
    set.medoids.map((m): [string, Condensed, MedoidReference] => [name, euclidean(set.points), m]),
  ),
  ...r.flower.medoids.map((m): [string, Condensed, MedoidReference] => [
    'flower',
    { n: r.flower.n, values: Float64Array.from(r.flower.dissimilarity) },
    m,
  ]),
];

describe('medoids', () => {
  it.each(cases)('reaches the optimum of R cluster::pam on %s (case %#)', (_, matrix, expected) => {
    const found = medoids(matrix, expected.k);
    // pam reports the mean per record; 1e-9 relative.
    expect(Math.abs(found.buildCost / matrix.n / expected.build - 1)).toBeLessThan(1e-9);
    expect(Math.abs(found.cost / matrix.n / expected.swap - 1)).toBeLessThan(1e-9);
    // Either member of a pair may stand for it: medoids are compared in groups of three and more.
    const decided = (chosen: ArrayLike<number>) =>
      Array.from(chosen)
        .filter((row) => expected.membership.filter((m) => m === expected.membership[row]).length > 2)
        .sort((a, b) => a - b);
    expect(decided(found.medoids)).toEqual(decided(expected.medoids));
    expect(renumbered(found.membership)).toEqual(renumbered(expected.membership));
  });

  it('finds the four published medoids and sizes of ruspini (Kaufman & Rousseeuw 1990)', () => {
    const { points } = r.sets.ruspini;
    const found = medoids(euclidean(points), 4);
    expect([...found.medoids].map((row) => points[row])).toEqual([
      [19, 65],
      [44, 149],
      [99, 119],
      [69, 21],
    ]);
    const sizes = [0, 1, 2, 3].map((group) => found.membership.filter((m) => m === group).length);
    expect(sizes).toEqual([20, 23, 17, 15]);
  });

  it('is left with no swap that lowers the cost, by trying every one', () => {
    fc.assert(
      fc.property(pointSets, fc.integer({ min: 2, max: 4 }), (points, k) => {
        const matrix = euclidean(points);
        const found = medoids(matrix, k);
        for (let place = 0; place < k; place++) {
          for (let candidate = 0; candidate < matrix.n; candidate++) {
            const tried = [...found.medoids];
            tried[place] = candidate;
            expect(costOf(matrix, tried)).toBeGreaterThanOrEqual(found.cost * (1 - 1e-12));
          }
        }
        expect(costOf(matrix, [...found.medoids])).toBeCloseTo(found.cost, 9);
      }),
      { numRuns: 60, seed: 1 },
    );
  });

  it('costs the same whatever the order of the records, where BUILD has no ties to break', () => {
    const matrix = euclidean(r.random.points);
    const turned = euclidean([...r.random.points].reverse());
    expect(relativeError([medoids(turned, 4).cost], [medoids(matrix, 4).cost])).toBeLessThan(1e-12);
  });

  it('gives the same for a row of k as for each k alone, and leaves its input unchanged', () => {
    const matrix = euclidean(r.random.points);
    const before = matrix.values.slice();
    expect(medoidsForEach(matrix, 2, 7)).toEqual([2, 3, 4, 5, 6, 7].map((k) => medoids(matrix, k)));
    expect(matrix.values).toEqual(before);
  });

  it('makes every record its own medoid at k = n and takes equal records as they come', () => {
    expect(medoids(euclidean([[1], [2], [4]]), 3).cost).toBe(0);
    const equal = medoids(euclidean([[1], [1], [1]]), 2);
    expect(equal.cost).toBe(0);
    expect(new Set(equal.medoids).size).toBe(2);
    expect([...medoids(euclidean([[5]]), 1).membership]).toEqual([0]);
  });

  it('refuses unknown pairs and impossible k', () => {
    expect(() => medoids({ n: 3, values: Float64Array.of(1, Number.NaN, 2) }, 2)).toThrow(/known/);
    for (const k of [0, 4, 1.5, Number.NaN])
      expect(() => medoids(euclidean([[1], [2], [3]]), k)).toThrow(/from 1 to 3/);
  });
});

const pointSets = fc.array(fc.tuple(fc.integer({ min: 0, max: 50 }), fc.integer({ min: 0, max: 50 })), {
  minLength: 5,
  maxLength: 14,
});

function costOf(matrix: Condensed, chosen: readonly number[]): number {
  let cost = 0;
  for (let i = 0; i < matrix.n; i++)
    cost += Math.min(...chosen.map((row) => dissimilarityAt(matrix, i, row)));
  return cost;
}
