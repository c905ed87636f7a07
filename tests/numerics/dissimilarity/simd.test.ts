import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plainRows } from '../../../src/numerics/dissimilarity/dissimilarity.ts';
import { prepareComparison } from '../../../src/numerics/dissimilarity/prepare.ts';
import { SIMD_FROM, simdRows } from '../../../src/numerics/dissimilarity/simd.ts';
import type { DissimilaritySpec, Variable } from '../../../src/numerics/dissimilarity/variables.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';

type Made = {
  kinds: readonly { kind: 'quantity' | 'kinds'; gaps: number; block: number; weight: number }[];
  extra: number;
  mode: 'blocks' | 'plain';
  seed: number;
};

function specOf({ kinds, extra, mode, seed }: Made): DissimilaritySpec {
  const n = SIMD_FROM + extra;
  const random = createRandom(seed);
  const variables = kinds.map(({ kind, gaps, block, weight }): Variable => {
    if (kind === 'kinds') {
      const levels = 4;
      const between = new Float64Array(levels * levels);
      for (let a = 0; a < levels; a++) {
        for (let b = 0; b < a; b++) between[a * levels + b] = between[b * levels + a] = random.next();
      }
      const codes = Int32Array.from({ length: n }, () =>
        random.next() < gaps ? -1 : random.integer(levels),
      );
      return { kind, codes, between, levels, block, weight };
    }
    const low = Float64Array.from({ length: n }, () =>
      random.next() < gaps ? Number.NaN : 9 * random.next(),
    );
    return { kind, low, high: low, range: 9, block, weight };
  });
  return { variables, blockWeights: [1, 0.7, 2], mode, intervals: 'midpoint', minimumOverlap: 0 };
}

const variable = fc.record({
  kind: fc.constantFrom('quantity' as const, 'kinds' as const),
  gaps: fc.constantFrom(0, 0.1, 0.9, 1),
  block: fc.integer({ min: 0, max: 2 }),
  weight: fc.constantFrom(1, 0.3, 2.5),
});
const made: fc.Arbitrary<Made> = fc.record({
  kinds: fc.array(variable, { minLength: 1, maxLength: 20 }),
  extra: fc.integer({ min: 0, max: 3 }),
  mode: fc.constantFrom('blocks' as const, 'plain' as const),
  seed: fc.integer({ min: 1, max: 1000 }),
});

describe('simdRows', () => {
  it('gives the plain loops to the last bit, unknown pairs included', () => {
    fc.assert(
      fc.property(made, (one) => {
        const prepared = prepareComparison(specOf(one));
        const { n } = prepared;
        const fast = simdRows(prepared);
        if (fast === null) throw new Error('this engine has no SIMD');
        const plain = plainRows(prepared);
        const [a, b] = [new Float64Array(n), new Float64Array(n)];
        for (const i of [0, 1, 2, 57, n - 3, n - 2]) {
          a.fill(-1);
          b.fill(-1);
          fast(i, a, 0);
          plain(i, b, 0);
          expect(a).toEqual(b);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('leaves to the plain loops what it has no code for', () => {
    const kinds = [{ kind: 'quantity', gaps: 0.1, block: 0, weight: 1 }] as const;
    const spec = specOf({ kinds, extra: 0, mode: 'blocks', seed: 1 });
    expect(simdRows(prepareComparison(spec))).not.toBeNull();
    expect(simdRows(prepareComparison({ ...spec, minimumOverlap: 0.5 }))).toBeNull();
    const [number] = spec.variables;
    if (number?.kind !== 'quantity') throw new Error('a quantity was made');
    const ranges = { ...number, high: number.low.map((value) => value + 1) };
    expect(simdRows(prepareComparison({ ...spec, variables: [ranges] }))).not.toBeNull();
    expect(simdRows(prepareComparison({ ...spec, variables: [ranges], intervals: 'expected' }))).toBeNull();
    const codes = new Int32Array(number.low.length).fill(1);
    const presence = { kind: 'presence', codes, block: 0, weight: 1 } as const;
    expect(simdRows(prepareComparison({ ...spec, variables: [number, presence] }))).toBeNull();
  });
});
