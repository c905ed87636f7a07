import { describe, expect, it } from 'vitest';
import { ln } from '../../../src/numerics/foundation/elementary.ts';
import {
  equivalentMeans,
  findsNeeded,
  smallestDetectableDelta,
} from '../../../src/numerics/tests/equivalence.ts';
import { available, expectClose } from '../close.ts';
import { r } from '../counts-and-trends-values.ts';

describe('alike within a margin', () => {
  it('two one-sided Welch tests, as R', () => {
    const { first, second, margin, p, interval } = r.equivalence;
    const found = available(equivalentMeans(first, second, margin));
    expectClose(found.p, p, 1e-7);
    expectClose(found.low, interval[0]);
    expectClose(found.high, interval[1]);
  });

  it('equal samples are alike within 20 %, distant ones are not', () => {
    const near = [10, 11, 9, 10, 10.5].map(ln);
    const far = [20, 22, 18, 21, 19].map(ln);
    expect(available(equivalentMeans(near, near, ln(1.2))).p).toBeLessThan(0.05);
    expect(available(equivalentMeans(near, far, ln(1.2))).p).toBeGreaterThan(0.5);
  });

  // Noether 1987, equation 5, by hand: z(0.025) + z(0.2) = 2.801585; 2 x 2.801585 / sqrt(12 x 0.25 x 40) = 0.511497.
  it('twenty against twenty finds deltas from 0.51', () => {
    expect(available(smallestDetectableDelta(20, 20))).toBeCloseTo(0.5115, 4);
    expect(smallestDetectableDelta(3, 3)).toEqual({
      why: 'with 3 and 3 items even complete separation could be missed',
    });
  });

  // The same by hand the other way: 2 x 2.801585^2 / (3 x 0.4^2) = 32.70.
  it('a delta of 0.4 takes 33 of each, and that many would find it', () => {
    expect(findsNeeded(0.4)).toBe(33);
    expect(findsNeeded(-0.4)).toBe(33);
    expect(available(smallestDetectableDelta(33, 33))).toBeLessThanOrEqual(0.4);
    expect(available(smallestDetectableDelta(32, 32))).toBeGreaterThan(0.4);
    expect(findsNeeded(1, { power: 0.5 })).toBe(3);
    expect(findsNeeded(0)).toEqual({ why: 'no number of finds tells apart what does not differ' });
  });
});
