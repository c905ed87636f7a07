import { describe, expect, it } from 'vitest';
import { dissimilarityAt } from '../../../src/numerics/dissimilarity/condensed.ts';
import { dissimilarities } from '../../../src/numerics/dissimilarity/dissimilarity.ts';
import { explainPair } from '../../../src/numerics/dissimilarity/explain-pair.ts';
import type {
  DissimilaritySpec,
  QuantityVariable,
  Variable,
} from '../../../src/numerics/dissimilarity/variables.ts';
import { mixed } from './mixed-columns.ts';

function quantity(values: readonly number[], block = 0, weight = 1): QuantityVariable {
  const low = Float64Array.from(values);
  const known = low.filter((value) => !Number.isNaN(value));
  return {
    kind: 'quantity',
    low,
    high: low,
    range: Math.max(...known) - Math.min(...known),
    block,
    weight,
  };
}

function plain(variables: readonly Variable[]): DissimilaritySpec {
  return { variables, blockWeights: [1], mode: 'plain', intervals: 'midpoint', minimumOverlap: 0 };
}

describe('why a pair is alike', () => {
  it('the contributions of variables and of blocks sum to the dissimilarity of the matrix', () => {
    const spec = mixed(3, 20);
    const matrix = dissimilarities(spec);
    for (let i = 0; i < 19; i++) {
      const pair = explainPair(spec, i, i + 1);
      const expected = dissimilarityAt(matrix, i, i + 1);
      expect(Number.isNaN(pair.dissimilarity)).toBe(Number.isNaN(expected));
      if (Number.isNaN(expected)) continue;
      expect(pair.dissimilarity).toBeCloseTo(expected, 14);
      const sum = pair.variables.reduce((total, part) => total + part.contribution, 0);
      expect(sum).toBeCloseTo(expected, 14);
    }
  });

  it('names what could not be compared', () => {
    const codes = Int32Array.from([0, 0]);
    const trait: Variable = { kind: 'presence', codes, block: 0, weight: 1 };
    const half = { ...quantity([1, Number.NaN]), range: 2 };
    const pair = explainPair(plain([trait, half]), 0, 1);
    expect(pair.variables.map((part) => part.state)).toEqual(['both absent', 'unknown']);
    expect(pair.dissimilarity).toBeNaN();
  });
});
