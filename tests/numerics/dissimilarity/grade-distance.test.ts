import { describe, expect, it } from 'vitest';
import { dissimilarities } from '../../../src/numerics/dissimilarity/dissimilarity.ts';
import { rankDistances } from '../../../src/numerics/dissimilarity/grade-distance.ts';
import type { DissimilaritySpec, Variable } from '../../../src/numerics/dissimilarity/variables.ts';
import { daisy } from './daisy-values.ts';

function plain(variables: readonly Variable[]): DissimilaritySpec {
  return { variables, blockWeights: [1], mode: 'plain', intervals: 'midpoint', minimumOverlap: 0 };
}

describe('grades by rank', () => {
  it("equal ade4::dist.ktab with Podani's formula", () => {
    const { grades, distances } = daisy.podani;
    const counts = new Float64Array(6);
    for (const grade of grades) counts[grade - 1]++;
    const codes = Int32Array.from(grades, (grade) => grade - 1);
    const variable: Variable = {
      kind: 'kinds',
      codes,
      between: rankDistances(counts),
      levels: 6,
      block: 0,
      weight: 1,
    };
    const { values } = dissimilarities(plain([variable]));
    distances.forEach((expected, pair) => {
      expect(values[pair]).toBeCloseTo(expected, 12);
    });
  });
});
