import { describe, expect, it } from 'vitest';
import { takeRecords } from '../../../src/numerics/dissimilarity/condensed.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { medoids } from '../../../src/numerics/grouping/medoids.ts';
import { predictionStrength } from '../../../src/numerics/grouping/prediction-strength.ts';
import { reference } from '../../references/reference.ts';
import { euclidean } from './helpers.ts';

const r = reference<{
  sets: Record<string, { points: number[][] }>;
  predictionStrength: { mean: number[] };
}>('grouping-r');

describe('predictionStrength', () => {
  const matrix = euclidean(r.sets.ruspini.points);
  const run = (splits: number, items = Array.from({ length: matrix.n }, (_, i) => i)) =>
    predictionStrength({
      matrix,
      items,
      counts: [2, 3, 4, 5, 6],
      regroup: (rows, k) => medoids(takeRecords(matrix, rows), k).membership,
      classify: 'medoid',
      splits,
      random: createRandom(6),
    });

  it('agrees with R fpc::prediction.strength on ruspini within sampling error and method', () => {
    const found = run(200);
    // fpc classifies by means and groups by clara, ours by medoids; sd of one split is up to 0.3.
    for (const [place, mean] of found.entries()) {
      expect(Math.abs(mean - r.predictionStrength.mean[place + 1])).toBeLessThan(0.1);
    }
    expect(found[2]).toBeGreaterThan(0.99);
  });

  it('has no answer where a half holds fewer records than groups', () => {
    const items = Array.from({ length: matrix.n }, (_, i) => (i < 3 ? 1 : 0));
    expect(run(3, items)[2]).toBeNaN();
  });
});
