import { type Condensed, dissimilarityAt } from '../dissimilarity/condensed.ts';
import { greatest } from '../foundation/lists.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { type PermutationOptions, type PermutationTest, permutationTest } from '../resampling/permutation.ts';
import { oneWayAnova } from './analysis-of-variance.ts';

export interface DispersionTest extends PermutationTest {
  /** F of the distances to the groups' centroids. */
  readonly statistic: number;
  /** Mean distance of the objects of each group to its centroid. */
  readonly meanDistance: readonly number[];
}

/**
 * Distance of each object to the centroid of its group, from dissimilarities alone:
 * z^2 = mean d^2 to its group - half the mean d^2 within it. Where the dissimilarity is not Euclidean
 * z^2 may be negative; its absolute value is taken (Anderson 2006, Biometrics 62:245, equation 6).
 */
export function centroidDistances(dissimilarity: Condensed, labels: ArrayLike<number>): Float64Array {
  const { n } = dissimilarity;
  const k = greatest(Array.from(labels)) + 1;
  const members = Array.from({ length: k }, (_, label) =>
    Array.from({ length: n }, (__, i) => i).filter((i) => labels[i] === label),
  );
  const distances = new Float64Array(n);
  for (const group of members) {
    const means = group.map((i) => {
      let sum = 0;
      for (const j of group) {
        const value = dissimilarityAt(dissimilarity, i, j);
        sum += value * value;
      }
      return sum / group.length;
    });
    const half = means.reduce((sum, mean) => sum + mean, 0) / group.length / 2;
    group.forEach((i, place) => {
      distances[i] = Math.sqrt(Math.abs(means[place] - half));
    });
  }
  return distances;
}

/**
 * Do groups differ in spread, whatever their places? Analysis of variance of the distances to the
 * groups' centroids, p by permuting the distances' labels (Anderson 2006, Biometrics 62:245).
 * Stands beside `permanova`, which cannot tell a difference of spread from one of place.
 */
export function dispersionTest(
  dissimilarity: Condensed,
  labels: ArrayLike<number>,
  options: PermutationOptions,
): DispersionTest | Unavailable {
  if (dissimilarity.values.some(Number.isNaN)) return { why: 'some pairs cannot be compared' };
  const k = greatest(Array.from(labels)) + 1;
  const distances = centroidDistances(dissimilarity, labels);
  const split = (dealt: ArrayLike<number>) =>
    Array.from({ length: k }, (_, label) => Array.from(distances).filter((__, i) => dealt[i] === label));
  const groups = split(labels);
  const observed = oneWayAnova(groups);
  if ('why' in observed) return observed;
  const ratio = (dealt: ArrayLike<number>) => {
    const found = oneWayAnova(split(dealt));
    return 'why' in found ? 0 : found.statistic;
  };
  const test = permutationTest(labels, ratio, { relabellings: 999, exactLimit: 1000, ...options });
  return {
    ...test,
    statistic: observed.statistic,
    meanDistance: groups.map((group) => group.reduce((sum, value) => sum + value, 0) / group.length),
  };
}
