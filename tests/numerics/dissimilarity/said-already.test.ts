import { describe, expect, it } from 'vitest';
import { dissimilarityAt } from '../../../src/numerics/dissimilarity/condensed.ts';
import {
  dissimilarities,
  dissimilaritiesTo,
  pickVariables,
} from '../../../src/numerics/dissimilarity/dissimilarity.ts';
import { explainPair } from '../../../src/numerics/dissimilarity/explain-pair.ts';
import {
  type DissimilaritySpec,
  type QuantityVariable,
  valueAt,
} from '../../../src/numerics/dissimilarity/variables.ts';

const NONE = Number.NaN;
const numbers = (values: number[], insteadOf?: number[][]): QuantityVariable => ({
  kind: 'quantity',
  low: Float64Array.from(values),
  high: Float64Array.from(values),
  range: 10,
  block: 0,
  weight: 1,
  ...(insteadOf === undefined ? {} : { insteadOf }),
});
// Spacing, width and the gap between them. Records 0 and 1 have all three, 2 and 3 the gap alone.
const SPEC: DissimilaritySpec = {
  variables: [
    numbers([9, 5, NONE, NONE]),
    numbers([3, 3, NONE, NONE]),
    numbers([6, 2, 4, 1], [[0, 1]]),
    numbers([0, 0, 0, 10]),
  ],
  blockWeights: [1],
  mode: 'blocks',
  intervals: 'midpoint',
  minimumOverlap: 0,
};

// By hand: Gower 1971 over the variables that the rule leaves.
describe('a variable that follows from others', () => {
  it('is not counted of two records that have those, and is of every other pair', () => {
    const matrix = dissimilarities(SPEC);
    expect(dissimilarityAt(matrix, 0, 1)).toBeCloseTo((0.4 + 0 + 0) / 3, 12);
    expect(dissimilarityAt(matrix, 0, 2)).toBeCloseTo((0.2 + 0) / 2, 12);
    expect(dissimilarityAt(matrix, 2, 3)).toBeCloseTo((0.3 + 1) / 2, 12);
  });

  it('one record against all, the matrix and the reasons of a pair agree, in both modes and with a least overlap', () => {
    for (const mode of ['blocks', 'plain'] as const)
      for (const minimumOverlap of [0, 0.6]) {
        const spec = { ...SPEC, mode, minimumOverlap };
        const matrix = dissimilarities(spec);
        for (let i = 0; i < 4; i++) {
          const to = dissimilaritiesTo(
            spec,
            spec.variables.map((variable) => valueAt(variable, i)),
          );
          for (let j = 0; j < 4; j++) {
            if (i === j) continue;
            const of = dissimilarityAt(matrix, Math.min(i, j), Math.max(i, j));
            const why = explainPair(spec, i, j).dissimilarity;
            expect([Number.isNaN(to[j]), Number.isNaN(why)]).toEqual([Number.isNaN(of), Number.isNaN(of)]);
            if (Number.isNaN(of)) continue;
            expect(to[j]).toBeCloseTo(of, 12);
            expect(why).toBeCloseTo(of, 12);
          }
        }
      }
  });

  it('a pair says so, and its parts add up', () => {
    const { variables, dissimilarity } = explainPair(SPEC, 0, 1);
    expect(variables.map(({ state }) => state)).toEqual(['compared', 'compared', 'said already', 'compared']);
    expect(variables.reduce((sum, { contribution }) => sum + contribution, 0)).toBeCloseTo(dissimilarity, 12);
  });

  it('is compared for itself where what it follows from takes no part', () => {
    expect(dissimilarityAt(dissimilarities(pickVariables(SPEC, [2, 3])), 0, 1)).toBeCloseTo(0.4 / 2, 12);
    expect(dissimilarityAt(dissimilarities(pickVariables(SPEC, [3, 2, 1, 0])), 0, 1)).toBeCloseTo(
      0.4 / 3,
      12,
    );
    const [spacing, width, gap, other] = SPEC.variables;
    const unweighed = { ...SPEC, variables: [spacing, { ...width, weight: 0 }, gap, other] };
    expect(dissimilarityAt(dissimilarities(unweighed), 0, 1)).toBeCloseTo((0.4 + 0.4 + 0) / 3, 12);
  });
});
