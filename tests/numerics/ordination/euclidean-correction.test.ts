import { describe, expect, it } from 'vitest';
import { centredEigenvalues, euclideanReport } from '../../../src/numerics/ordination/euclidean.ts';
import { correctDissimilarities } from '../../../src/numerics/ordination/euclidean-correction.ts';
import { principalCoordinates } from '../../../src/numerics/ordination/principal-coordinates.ts';
import { available, expectClose, expectUpToSign } from '../compare-up-to-sign.ts';
import { r } from './scaling-values.ts';

const matrixOf = (distances: readonly number[]) => ({
  n: (1 + Math.sqrt(1 + 8 * distances.length)) / 2,
  values: Float64Array.from(distances),
});

describe('Euclidean or not', () => {
  it.each(r.corrections)('Lingoes and Cailliez on $name equal ape::pcoa and ade4', (given) => {
    const matrix = matrixOf(given.distances);
    const scale = Math.max(...given.distances);
    for (const correction of ['lingoes', 'cailliez'] as const) {
      const made = available(correctDissimilarities(matrix, correction));
      const theirs = given[correction];
      // ape prints its constant to 15 digits.
      expect(Math.abs(made.constant / theirs.constant[0] - 1)).toBeLessThan(1e-9);
      expectClose(made.matrix.values, given[`${correction}Distances`], 1e-7 * scale);
      const found = available(principalCoordinates(made.matrix, 3));
      expectClose(found.eigenvalues, theirs.eigenvalues, 1e-8 * theirs.eigenvalues[0], 3);
      expectUpToSign(found.coordinates, 3, theirs.points, 1e-7 * scale);
      expect(centredEigenvalues(made.matrix)[matrix.n - 1]).toBeGreaterThan(-1e-8 * theirs.eigenvalues[0]);
    }
  });

  it('road distances are not Euclidean; the report counts the share of negative eigenvalues as R does', () => {
    const { distances, eigenvalues } = r.scalings[0];
    const report = available(euclideanReport(matrixOf(distances)));
    const size = eigenvalues.reduce((sum, value) => sum + Math.abs(value), 0);
    const negative = eigenvalues.reduce((sum, value) => sum + Math.max(0, -value), 0);
    expect(report.negativeShare).toBeCloseTo(negative / size, 9);
    expect(report.positive / (size - negative)).toBeCloseTo(1, 9);
    expect(report.isEuclidean).toBe(false);
  });

  it('the root of Gower distances without gaps is Euclidean (Gower & Legendre 1986)', () => {
    const flower = matrixOf(r.scalings[2].distances);
    const rooted = available(correctDissimilarities(flower, 'square-root')).matrix;
    const report = available(euclideanReport(rooted));
    expect(report.isEuclidean).toBe(true);
    expect(report.negativeShare).toBe(0);
    expect(report.brokenTriangles).toBe(0);
  });

  it('counts broken triangles: 1, 1, 3 is one', () => {
    expect(available(euclideanReport({ n: 3, values: Float64Array.of(1, 1, 3) })).brokenTriangles).toBe(1);
    expect(available(euclideanReport({ n: 3, values: Float64Array.of(1, 1, 2) })).brokenTriangles).toBe(0);
  });
});
