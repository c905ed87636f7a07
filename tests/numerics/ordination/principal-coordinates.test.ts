import { describe, expect, it } from 'vitest';
import { condensedIndex, dissimilarityAt } from '../../../src/numerics/dissimilarity/condensed.ts';
import { dissimilarities } from '../../../src/numerics/dissimilarity/dissimilarity.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { centredEigenvalues } from '../../../src/numerics/ordination/euclidean.ts';
import {
  principalCoordinates,
  projector,
  projectRecord,
} from '../../../src/numerics/ordination/principal-coordinates.ts';
import { available, columnOf, expectClose, expectUpToSign } from '../compare-up-to-sign.ts';
import { r } from './scaling-values.ts';

const matrixOf = (distances: readonly number[]) => ({
  n: (1 + Math.sqrt(1 + 8 * distances.length)) / 2,
  values: Float64Array.from(distances),
});

const rowOf = (matrix: ReturnType<typeof matrixOf>, i: number) =>
  Float64Array.from({ length: matrix.n }, (_, j) => dissimilarityAt(matrix, i, j));

describe('principal coordinates', () => {
  it.each(r.scalings)('equal R cmdscale on $name within 1e-9 of the size of the data', (given) => {
    const matrix = matrixOf(given.distances);
    const found = available(principalCoordinates(matrix, given.points.columns));
    const scale = Math.max(...given.distances);
    expectUpToSign(found.coordinates, found.axes, given.points, 1e-9 * scale);
    expectClose(found.eigenvalues, given.eigenvalues, 1e-9 * given.eigenvalues[0], found.axes);
    expectClose(centredEigenvalues(matrix), given.eigenvalues, 1e-9 * given.eigenvalues[0]);
    const trace = given.eigenvalues.reduce((sum, value) => sum + value, 0);
    expect(Math.abs(found.trace - trace)).toBeLessThan(1e-9 * given.eigenvalues[0]);
  });

  it('of eurodist have the eigenvalues printed for it: 19538377.0895, 11856555.3340, 1528844.4680', () => {
    // R 4.2.2, cmdscale(eurodist, k = 3, eig = TRUE)$eig, as stated in the project's trade notes.
    const found = available(principalCoordinates(matrixOf(r.scalings[0].distances), 3));
    expectClose(found.eigenvalues, [19538377.0895, 11856555.334, 1528844.468], 1e-4);
  });

  it('by iteration equal R cmdscale on 300 quakes within 1e-9', () => {
    const { data, points, eigenvalues } = r.iterative;
    const variables = Array.from({ length: data.columns }, (_, j) => {
      const low = Float64Array.from(columnOf(data, j));
      return {
        kind: 'quantity' as const,
        low,
        high: low,
        range: Math.max(...low) - Math.min(...low),
        block: 0,
        weight: 1,
      };
    });
    const matrix = dissimilarities({
      variables,
      blockWeights: [1],
      mode: 'plain',
      intervals: 'midpoint',
      minimumOverlap: 0,
    });
    const found = available(principalCoordinates(matrix, 4));
    expectUpToSign(found.coordinates, 4, points, 1e-9);
    expectClose(found.eigenvalues, eigenvalues, 1e-9);
  });

  it('say why there is nothing to draw', () => {
    expect(principalCoordinates({ n: 1, values: new Float64Array(0) }, 2)).toEqual({
      why: 'an ordination needs 2 records, not 1',
    });
    expect(principalCoordinates({ n: 3, values: new Float64Array(3) }, 2)).toEqual({
      why: 'all records are alike, so there is nothing to spread out',
    });
    expect(() => principalCoordinates({ n: 3, values: Float64Array.of(1, Number.NaN, 1) }, 2)).toThrow(
      'unknown',
    );
  });
});

describe('a record added to finished coordinates (Gower 1968)', () => {
  it.each(r.scalings)('of $name: each known record falls on its own place within 1e-9', (given) => {
    const matrix = matrixOf(given.distances);
    const scale = Math.max(...given.distances);
    const found = available(principalCoordinates(matrix, 3));
    for (let i = 0; i < matrix.n; i++) {
      const place = available(projectRecord(found, rowOf(matrix, i)));
      expectClose(
        place.coordinates,
        found.coordinates.slice(i * found.axes, (i + 1) * found.axes),
        1e-9 * scale,
      );
    }
  });

  it('a point left out of a flat picture is put back where it was, even when some distances are unknown', () => {
    const random = createRandom(5);
    const points = Array.from({ length: 20 }, () => [random.next(), random.next()]);
    const apart = (a: number[], b: number[]) => Math.sqrt((a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2);
    const known = points.slice(0, 19);
    const values = new Float64Array((19 * 18) / 2);
    for (let i = 0; i < 19; i++) {
      for (let j = i + 1; j < 19; j++) values[condensedIndex(19, i, j)] = apart(known[i], known[j]);
    }
    const found = available(principalCoordinates({ n: 19, values }, 2));
    const to = Float64Array.from(known, (point) => apart(point, points[19]));
    const gappy = to.map((d, i) => (i % 3 === 0 ? Number.NaN : d));
    for (const distances of [to, gappy]) {
      const { coordinates, offPlane } = available(projectRecord(found, distances));
      expect(Math.abs(offPlane)).toBeLessThan(1e-12);
      known.forEach((_, i) => {
        const drawn = apart([...coordinates], [...found.coordinates.slice(2 * i, 2 * i + 2)]);
        expect(Math.abs(drawn - to[i])).toBeLessThan(1e-12);
      });
    }
  });

  it('says when too few records could be compared', () => {
    const found = available(principalCoordinates(matrixOf(r.scalings[0].distances), 3));
    const nothing = new Float64Array(found.n).fill(Number.NaN);
    expect(projectRecord(found, nothing)).toEqual({
      why: 'only 0 records could be compared, too few to place it',
    });
  });
});

describe('what the axes are shares of', () => {
  /** Two pairs far apart within, near across: no points in any space lie so. */
  const n = 6;
  const unEuclidean = (size: number) => ({
    n: size,
    values: Float64Array.from({ length: (size * (size - 1)) / 2 }, (_, i) => (i % 3 === 0 ? 1 : 0.35)),
  });

  it('is the sum of the positive eigenvalues, so that no map shows more than there is', () => {
    const matrix = unEuclidean(n);
    const all = available(centredEigenvalues(matrix));
    expect(Math.min(...all)).toBeLessThan(-0.01);
    const found = available(principalCoordinates(matrix, 2));
    const positive = Array.from(all).reduce((sum, value) => sum + Math.max(0, value), 0);
    expect(found.positive).toBeCloseTo(positive, 12);
    expect(found.positive).toBeGreaterThan(found.trace);
  });

  it('is no less than what the axes hold where not all eigenvalues are looked for', () => {
    const found = available(principalCoordinates(unEuclidean(240), 2));
    const held = found.eigenvalues[0] + found.eigenvalues[1];
    expect(found.positive).toBeGreaterThanOrEqual(held);
    expect(found.positive).toBeGreaterThanOrEqual(found.trace);
  });
});

it('many records added by one projector fall where each falls by itself, also when some of their distances are unknown', () => {
  const random = createRandom(6);
  const points = Array.from({ length: 30 }, () => [random.next(), random.next(), random.next()]);
  const apart = (a: readonly number[], b: readonly number[]) => Math.hypot(...a.map((x, k) => x - b[k]!));
  const matrix = matrixOf(points.flatMap((a, i) => points.slice(i + 1).map((b) => apart(a, b))));
  const found = available(principalCoordinates(matrix, 2));
  const project = projector(found);
  for (const gaps of [0, 5, 0, 29, 12, 0]) {
    const fresh = [random.next(), random.next(), random.next()];
    const distances = Float64Array.from(points, (point, i) => (i < gaps ? Number.NaN : apart(fresh, point)));
    expect(project(distances)).toEqual(projectRecord(found, distances));
  }
});
