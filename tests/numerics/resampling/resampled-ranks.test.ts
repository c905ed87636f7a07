import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quantileSorted } from '../../../src/numerics/describing/quantile.ts';
import {
  drawnDelta,
  drawnMedian,
  drawnMedianDifference,
} from '../../../src/numerics/resampling/resampled-ranks.ts';
import { gatherBlocks } from '../../../src/numerics/tests/blocked-sample.ts';
import { cliffsDelta } from '../../../src/numerics/tests/mann-whitney.ts';
import { medianDifference } from '../../../src/numerics/tests/pairwise-median.ts';

/** Values that tie often, and values that hardly do. */
const value = fc.oneof(
  fc.integer({ min: -3, max: 3 }),
  // No reading is -0, which sorts as 0 and would come out as either.
  fc.double({ min: -50, max: 50, noNaN: true }).map((one) => one + 0),
  fc.constantFrom(0.1, 0.2, 0.30000000000000004),
);
const block = fc
  .array(value, { minLength: 1, maxLength: 4 })
  .map((values) => Float64Array.from(values).sort());
const sample = fc.array(block, { minLength: 1, maxLength: 8 }).chain((blocks) =>
  fc.record({
    blocks: fc.constant(blocks),
    draw: fc.array(fc.integer({ min: 0, max: blocks.length - 1 }), { minLength: 1, maxLength: 9 }),
  }),
);
const gather = ({ blocks, draw }: { blocks: Float64Array[]; draw: number[] }) => gatherBlocks(blocks, draw);

describe('statistics of drawn blocks equal those of the values drawn, bit for bit', () => {
  it('Cliff’s delta and the median difference', () => {
    fc.assert(
      fc.property(sample, sample, (a, b) => {
        const draws = [a.draw, b.draw];
        expect(drawnDelta(a.blocks, b.blocks)(draws)).toBe(cliffsDelta(gather(a), gather(b)));
        expect(drawnMedianDifference(a.blocks, b.blocks)?.(draws)).toBe(
          medianDifference(gather(a), gather(b)),
        );
      }),
      { numRuns: 500 },
    );
  });
  it('the median', () => {
    fc.assert(
      fc.property(sample, (one) => {
        expect(drawnMedian(one.blocks)(one.draw)).toBe(quantileSorted(gather(one).sort(), 0.5));
      }),
      { numRuns: 500 },
    );
  });
  it('the median difference is left to the plain function where there are too many pairs', () => {
    const many = [Float64Array.from({ length: 1001 }, (_, i) => i)];
    expect(drawnMedianDifference(many, many)).toBeNull();
  });
});
