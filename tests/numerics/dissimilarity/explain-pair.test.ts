import { describe, expect, it } from 'vitest';
import { dissimilarityAt } from '../../../src/numerics/dissimilarity/condensed.ts';
import { dissimilarities } from '../../../src/numerics/dissimilarity/dissimilarity.ts';
import { explainPair } from '../../../src/numerics/dissimilarity/explain-pair.ts';
import { kindDistances } from '../../../src/numerics/dissimilarity/term-distance.ts';
import type {
  DissimilaritySpec,
  QuantityVariable,
  Variable,
} from '../../../src/numerics/dissimilarity/variables.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';

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

/** Mixed columns with gaps, in three blocks. */
function mixed(seed: number, n: number): DissimilaritySpec {
  const random = createRandom(seed);
  const gap = () => random.next() < 0.25;
  const variables: Variable[] = [];
  for (let k = 0; k < 4; k++) {
    const low = Float64Array.from({ length: n }, () => (gap() ? Number.NaN : random.next() * 10));
    const high = low.map((value) => (random.next() < 0.5 ? value : value + random.next()));
    variables.push({ kind: 'quantity', low, high, range: 11, block: k % 2, weight: 1 + k });
  }
  for (let k = 0; k < 2; k++) {
    const codes = Int32Array.from({ length: n }, () => (gap() ? -1 : random.integer(3)));
    variables.push({ kind: 'kinds', codes, between: kindDistances(3), levels: 3, block: 2, weight: 1 });
    const traits = Int32Array.from({ length: n }, () => (gap() ? -1 : random.integer(2)));
    variables.push({ kind: 'presence', codes: traits, block: 1 + k, weight: 2 });
  }
  return {
    variables,
    blockWeights: [1, 2, 0.5],
    mode: 'blocks',
    intervals: 'expected',
    minimumOverlap: 0,
  };
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
