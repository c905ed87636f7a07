import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Condensed, dissimilarityAt } from '../../../src/numerics/dissimilarity/condensed.ts';
import { LINKAGES, type Linkage, linkage } from '../../../src/numerics/grouping/linkage.ts';
import {
  agglomerativeCoefficient,
  copheneticCorrelation,
  copheneticDissimilarities,
  cutTree,
  leafOrder,
  type MergeTree,
} from '../../../src/numerics/grouping/tree.ts';
import { reference } from '../../references/reference.ts';
import { euclidean, relativeError, renumbered } from './helpers.ts';

interface ScipyTree {
  merges: [number, number, number, number][];
  correlation: number;
  cuts?: Record<string, number[]>;
}
interface Scipy {
  free: { points: number[][]; trees: Record<string, ScipyTree> };
  tied: { points: number[][]; trees: Record<string, ScipyTree> };
}
interface RTree {
  heights: number[];
  cophenetic?: number[];
  correlation?: number;
  cuts?: { k: number; membership: number[] }[];
}
interface RSet {
  points: number[][];
  trees: Record<string, RTree>;
  agglomerativeCoefficient?: Record<string, number>;
}

const scipy = reference<Scipy>('grouping-python');
const r = reference<{
  sets: Record<string, RSet>;
  random: RSet;
  flower: { dissimilarity: number[]; n: number; trees: Record<string, RTree> };
}>('grouping-r');
const large = reference<{
  trees: Record<string, { first: number[]; second: number[]; everyHundredthHeight: number[] }>;
}>('grouping-large');
const scipyName = (method: Linkage) => (method === 'mcquitty' ? 'weighted' : method);
const reducible = ['complete', 'average', 'mcquitty', 'ward', 'ward-squared'] as const;
const methods = LINKAGES.filter((method) => method !== 'ward-squared');

describe('linkage', () => {
  it.each(methods)('%s gives the merges, heights and sizes of scipy where nothing ties', (method) => {
    const tree = linkage(euclidean(scipy.free.points), method);
    const expected = scipy.free.trees[scipyName(method)].merges;
    expect([...tree.first]).toEqual(expected.map((merge) => merge[0]));
    expect([...tree.second]).toEqual(expected.map((merge) => merge[1]));
    expect([...tree.size]).toEqual(expected.map((merge) => merge[3]));
    expect(
      relativeError(
        tree.height,
        expected.map((merge) => merge[2]),
      ),
    ).toBeLessThan(1e-9);
  });

  it.each(['single', 'complete', 'average', 'mcquitty', 'ward'] as const)(
    '%s breaks ties as scipy does',
    (method) => {
      const tree = linkage(euclidean(scipy.tied.points), method);
      const expected = scipy.tied.trees[scipyName(method)].merges;
      expect([...tree.first]).toEqual(expected.map((merge) => merge[0]));
      expect([...tree.second]).toEqual(expected.map((merge) => merge[1]));
      expect(
        relativeError(
          tree.height,
          expected.map((merge) => merge[2]),
        ),
      ).toBeLessThan(1e-9);
    },
  );

  const rMethods: [name: string, method: Linkage, squared: boolean, root: boolean][] = [
    ['single', 'single', false, false],
    ['complete', 'complete', false, false],
    ['average', 'average', false, false],
    ['mcquitty', 'mcquitty', false, false],
    ['wardD2', 'ward', false, false],
    ['wardD', 'ward-squared', false, false],
    ['wardDofSquared', 'ward-squared', true, false],
    ['centroidOfSquared', 'centroid', false, true],
    ['medianOfSquared', 'median', false, true],
  ];
  it.each(rMethods)(
    '%s of R hclust: heights, cophenetic correlation and cuts',
    (name, method, squared, root) => {
      for (const set of [r.random, r.sets.agriculture]) {
        const plain = euclidean(set.points);
        const matrix = squared ? squares(plain) : plain;
        const tree = linkage(matrix, method);
        const expected = set.trees[name];
        const heights = root ? [...tree.height].map((h) => h * h) : tree.height;
        expect(relativeError(heights, expected.heights)).toBeLessThan(1e-9);
        if (expected.cophenetic === undefined) continue;
        expect(relativeError(copheneticDissimilarities(tree).values, expected.cophenetic)).toBeLessThan(1e-9);
        for (const cut of expected.cuts ?? []) {
          expect(renumbered(cutTree(tree, cut.k))).toEqual(cut.membership);
        }
        if (!squared) {
          expect(copheneticCorrelation(matrix, tree)).toBeCloseTo(expected.correlation as number, 9);
        }
      }
    },
  );

  it.each(['single', 'complete', 'average', 'mcquitty', 'ward'] as const)(
    '%s gives the heights of R hclust on ruspini, iris and USArrests',
    (method) => {
      for (const name of ['ruspini', 'iris', 'usarrests']) {
        const expected = r.sets[name].trees[method === 'ward' ? 'wardD2' : method];
        const tree = linkage(euclidean(r.sets[name].points), method);
        expect(relativeError(tree.height, expected.heights)).toBeLessThan(1e-9);
      }
    },
  );

  it('gives the agglomerative coefficients of R agnes', () => {
    for (const name of ['ruspini', 'agriculture', 'usarrests']) {
      const { points, agglomerativeCoefficient: expected } = r.sets[name];
      for (const method of ['single', 'complete', 'average', 'ward'] as const) {
        const tree = linkage(euclidean(points), method);
        expect(agglomerativeCoefficient(tree)).toBeCloseTo(expected?.[method] as number, 9);
      }
    }
  });

  it('gives the heights of R hclust on the mixed flower data', () => {
    const matrix = { n: r.flower.n, values: Float64Array.from(r.flower.dissimilarity) };
    for (const method of ['average', 'complete'] as const) {
      expect(relativeError(linkage(matrix, method).height, r.flower.trees[method].heights)).toBeLessThan(
        1e-9,
      );
    }
  });

  it('leaves its input unchanged and takes one record or two', () => {
    const matrix = euclidean(scipy.free.points);
    const before = matrix.values.slice();
    for (const method of LINKAGES) linkage(matrix, method);
    expect(matrix.values).toEqual(before);
    expect(linkage(euclidean([[1]]), 'average').height).toHaveLength(0);
    expect([...leafOrder(linkage(euclidean([[1]]), 'average'))]).toEqual([0]);
    expect([...linkage(euclidean([[1], [4]]), 'ward').height]).toEqual([3]);
  });

  it('draws without crossings: every cluster lies in one piece of the leaf order', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 20 }), { minLength: 2, maxLength: 20 }), (xs) => {
        const tree = linkage(euclidean(xs.map((x) => [x])), 'average');
        const order = leafOrder(tree);
        expect([...order].sort((a, b) => a - b)).toEqual(xs.map((_, i) => i));
        for (let k = 1; k <= tree.n; k++) {
          const groups = cutTree(tree, k);
          expect(new Set(groups).size).toBe(k);
          const changes = [...order].filter((row, t) => t > 0 && groups[row] !== groups[order[t - 1]]).length;
          expect(changes).toBe(k - 1);
        }
      }),
      { numRuns: 60, seed: 2 },
    );
  });

  it.each(reducible)(
    '%s in rounds is the same tree as one merge after the other where nothing ties',
    (method) => {
      for (const points of [scipy.free.points, r.random.points]) {
        const matrix = euclidean(points);
        const single = linkage(matrix, method, Number.POSITIVE_INFINITY);
        const rounds = linkage(matrix, method, 2);
        expect([...rounds.first]).toEqual([...single.first]);
        expect([...rounds.second]).toEqual([...single.second]);
        expect(relativeError(rounds.height, single.height)).toBeLessThan(1e-12);
      }
    },
  );

  it.each(['complete', 'average', 'mcquitty', 'ward'] as const)(
    '%s gives the merges of scipy on 1,200 records',
    (method) => {
      // The fractions of i √2, i² √3 and i³ √5: spread without order, and equal to the last bit on both sides.
      const points = Array.from({ length: 1200 }, (_, i) => [
        (i * Math.sqrt(2)) % 1,
        (i * i * Math.sqrt(3)) % 1,
        (i * i * i * Math.sqrt(5)) % 1,
      ]);
      const tree = linkage(euclidean(points), method);
      const expected = large.trees[scipyName(method)];
      expect([...tree.first]).toEqual(expected.first);
      expect([...tree.second]).toEqual(expected.second);
      const heights = tree.height.filter((_, merge) => merge % 100 === 0);
      expect(relativeError(heights, expected.everyHundredthHeight)).toBeLessThan(1e-9);
    },
  );

  it.each(reducible)(
    '%s joins two of the nearest clusters at every merge, whatever ties, either way',
    (method) => {
      fc.assert(
        fc.property(
          fc.array(fc.tuple(fc.integer({ min: 0, max: 6 }), fc.integer({ min: 0, max: 6 })), {
            minLength: 2,
            maxLength: 24,
          }),
          fc.constantFrom(2, Number.POSITIVE_INFINITY),
          (points, roundsFrom) => {
            const matrix = euclidean(points);
            expect(worstMerge(matrix, method, linkage(matrix, method, roundsFrom))).toBeLessThan(1e-9);
          },
        ),
        { numRuns: 150, seed: 5 },
      );
    },
  );

  it('gives the same tree in memory that was used before', () => {
    const matrix = euclidean(scipy.free.points);
    const before = linkage(matrix, 'ward');
    linkage(euclidean(scipy.tied.points), 'complete');
    expect(linkage(matrix, 'ward')).toEqual(before);
  });

  it('refuses unknown pairs', () => {
    expect(() => linkage({ n: 3, values: Float64Array.of(1, Number.NaN, 2) }, 'average')).toThrow(/known/);
  });
});

function squares(matrix: Condensed): Condensed {
  return { n: matrix.n, values: matrix.values.map((value) => value * value) };
}

/** Coefficients of the recurrence (Lance & Williams 1967, table 1), for parts of nx and ny records and another of n. */
const COEFFICIENTS: Record<(typeof reducible)[number], (nx: number, ny: number, n: number) => number[]> = {
  complete: () => [0.5, 0.5, 0, 0.5],
  average: (nx, ny) => [nx / (nx + ny), ny / (nx + ny), 0, 0],
  mcquitty: () => [0.5, 0.5, 0, 0],
  ward: (nx, ny, n) => [(nx + n) / (nx + ny + n), (ny + n) / (nx + ny + n), -n / (nx + ny + n), 0],
  'ward-squared': (nx, ny, n) => [(nx + n) / (nx + ny + n), (ny + n) / (nx + ny + n), -n / (nx + ny + n), 0],
};

/** How far, at worst, a merge of the tree is from joining two of the nearest clusters, or its height from theirs. */
function worstMerge(matrix: Condensed, method: (typeof reducible)[number], tree: MergeTree): number {
  const square = method === 'ward';
  const between = new Map<string, number>();
  const key = (a: number, b: number) => `${Math.min(a, b)} ${Math.max(a, b)}`;
  const { n } = matrix;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      const value = dissimilarityAt(matrix, i, j);
      between.set(key(i, j), square ? value * value : value);
    }
  }
  const sizes = new Map(Array.from({ length: n }, (_, i) => [i, 1]));
  let worst = 0;
  for (let m = 0; m < tree.height.length; m++) {
    const [x, y] = [tree.first[m], tree.second[m]];
    const joined = between.get(key(x, y)) ?? Number.NaN;
    worst = Math.max(worst, joined - Math.min(...between.values()));
    worst = Math.max(worst, Math.abs((square ? tree.height[m] ** 2 : tree.height[m]) - joined));
    const [nx, ny] = [sizes.get(x) ?? 0, sizes.get(y) ?? 0];
    between.delete(key(x, y));
    sizes.delete(x);
    sizes.delete(y);
    for (const [other, size] of sizes) {
      const [toX, toY] = [between.get(key(x, other)) ?? Number.NaN, between.get(key(y, other)) ?? Number.NaN];
      const [alphaX, alphaY, beta, gamma] = COEFFICIENTS[method](nx, ny, size);
      between.set(
        key(n + m, other),
        alphaX * toX + alphaY * toY + beta * joined + gamma * Math.abs(toX - toY),
      );
      between.delete(key(x, other));
      between.delete(key(y, other));
    }
    sizes.set(n + m, nx + ny);
  }
  return worst;
}
