/**
 * The whole way from a CSV that others made to the numbers, against R 4.2.2 (cluster 2.1.4, stats), which
 * read the same files: tests/references/scripts/open-data.R. Gower's coefficient in `plain` mode is what
 * `daisy` computes. Tolerance 1e-9 absolute on dissimilarities, heights and coordinates (all of order 1),
 * relative on sums and eigenvalues.
 */
import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { compareRecords } from '../../src/fragments/comparison/comparison.ts';
import { takeRows } from '../../src/fragments/subset.ts';
import { type Condensed, pairCount } from '../../src/numerics/dissimilarity/condensed.ts';
import { dissimilarities } from '../../src/numerics/dissimilarity/dissimilarity.ts';
import { linkage } from '../../src/numerics/grouping/linkage.ts';
import { type MedoidGrouping, medoids } from '../../src/numerics/grouping/medoids.ts';
import { silhouette } from '../../src/numerics/grouping/silhouette.ts';
import {
  type PrincipalCoordinates,
  principalCoordinates,
} from '../../src/numerics/ordination/principal-coordinates.ts';
import { loadStudy, studyFiles } from '../../src/study/load.ts';
import { prepareStudy } from '../../src/study/prepare.ts';
import { reference } from '../references/reference.ts';

interface OneSet {
  /** Records without any value, 1 = first. */
  readonly left_out: number | readonly number[];
  readonly n: number;
  readonly every97: readonly number[];
  readonly sum: readonly [number];
  readonly sum_of_squares: readonly [number];
  readonly largest: readonly [number];
  readonly k: number;
  readonly medoids: readonly number[];
  readonly build: readonly [number];
  readonly swap: readonly [number];
  readonly silhouette: readonly [number];
  readonly sizes: readonly number[];
  readonly heights: Readonly<Record<'average' | 'complete', readonly number[]>>;
  readonly eigenvalues: readonly number[];
  readonly points: { readonly first: readonly number[]; readonly second: readonly number[] };
}

type Name = 'iris' | 'penguins' | 'countries';
const expected = reference<Record<Name, OneSet>>('open-data');

const COMPARED: Readonly<Record<Name, readonly string[]>> = {
  iris: ['sepalLength', 'sepalWidth', 'petalLength', 'petalWidth'],
  penguins: ['beakLength', 'beakDepth', 'flipperLength', 'bodyMass', 'sex'],
  countries: ['income', 'lifeExpectancy', 'population'],
};

function matrixOf(name: Name): Condensed {
  const folder = new URL('../../datasets/open/', import.meta.url);
  const study = loadStudy(readFileSync(new URL(`${name}-study.json`, folder), 'utf8'), `${name}-study.json`);
  const files = new Map(
    studyFiles(study).map((file) => [file, new Uint8Array(readFileSync(new URL(file, folder)))] as const),
  );
  const { records, register } = prepareStudy(study, files);
  const empty = new Set([expected[name].left_out].flat().map((row) => row - 1));
  const rows = Int32Array.from(
    Array.from({ length: records.rows }, (_, row) => row).filter((row) => !empty.has(row)),
  );
  const { spec } = compareRecords(takeRows(records, rows), register, {
    of: COMPARED[name],
    weights: {},
    attributeWeights: {},
    mode: 'plain',
    intervals: 'midpoint',
    ordinal: 'ranks',
    scaling: 'range',
    minimumOverlap: 0,
  });
  return dissimilarities(spec);
}

const relative = (value: number, wanted: number) => Math.abs(value / wanted - 1);
const furthest = (values: ArrayLike<number>, wanted: readonly number[]) =>
  wanted.reduce((most, value, i) => Math.max(most, Math.abs(value - values[i]!)), 0);

describe.each(['iris', 'penguins', 'countries'] as const)('%s, from CSV to numbers', (name) => {
  const wanted = expected[name];
  let matrix: Condensed;
  let grouping: MedoidGrouping;
  let axes: PrincipalCoordinates;

  beforeAll(() => {
    matrix = matrixOf(name);
    grouping = medoids(matrix, wanted.k);
    axes = principalCoordinates(matrix, 2) as PrincipalCoordinates;
  });

  it('dissimilarities are those of daisy', () => {
    expect([matrix.n, matrix.values.length]).toEqual([wanted.n, pairCount(wanted.n)]);
    const sampled = wanted.every97.map((_, i) => matrix.values[i * 97]!);
    expect(furthest(sampled, wanted.every97)).toBeLessThan(1e-9);
    const sum = matrix.values.reduce((total, value) => total + value, 0);
    const squares = matrix.values.reduce((total, value) => total + value * value, 0);
    expect(relative(sum, wanted.sum[0])).toBeLessThan(1e-9);
    expect(relative(squares, wanted.sum_of_squares[0])).toBeLessThan(1e-9);
    expect(Math.max(...matrix.values)).toBeCloseTo(wanted.largest[0], 9);
  });

  it('medoids are those of pam', () => {
    expect([...grouping.medoids].map((row) => row + 1)).toEqual([...wanted.medoids].sort((a, b) => a - b));
    expect(relative(grouping.buildCost, wanted.build[0])).toBeLessThan(1e-9);
    expect(relative(grouping.cost, wanted.swap[0])).toBeLessThan(1e-9);
    expect(silhouette(matrix, grouping.membership)!.mean).toBeCloseTo(wanted.silhouette[0], 9);
  });

  it.each(['average', 'complete'] as const)('heights of %s linkage are those of hclust', (method) => {
    const heights = [...linkage(matrix, method).height].sort((a, b) => a - b);
    expect(furthest(heights, wanted.heights[method])).toBeLessThan(1e-9);
  });

  it('principal coordinates are those of cmdscale, but for the sign of an axis', () => {
    expect(relative(axes.eigenvalues[0]!, wanted.eigenvalues[0]!)).toBeLessThan(1e-9);
    expect(relative(axes.eigenvalues[1]!, wanted.eigenvalues[1]!)).toBeLessThan(1e-9);
    for (const [axis, points] of [wanted.points.first, wanted.points.second].entries()) {
      const ours = points.map((_, row) => axes.coordinates[row * axes.axes + axis]!);
      const turned = ours.map((value) => -value);
      expect(Math.min(furthest(ours, points), furthest(turned, points))).toBeLessThan(1e-9);
    }
  });
});
