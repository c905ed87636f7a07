import { describe, expect, it } from 'vitest';
import { percentileBounds } from '../../../src/numerics/describing/percentile.ts';
import { available } from '../compare-up-to-sign.ts';

describe('percentiles of a range among ranges', () => {
  it('by hand: 4 to 6 among 1, 5, 7-9, a gap and >3', () => {
    const low = [1, 5, 7, Number.NaN, 3];
    const high = [1, 5, 9, Number.NaN, Infinity];
    // Surely below: 1. Surely above: 7-9. Undecided: 5 and >3.
    expect(percentileBounds(4, 6, low, high)).toEqual({ low: 0.25, high: 0.75, n: 4, outside: null });
  });

  it('says when it lies outside the observed range, and when there is nothing to compare', () => {
    expect(available(percentileBounds(9, 9, [1, 2], [1, 2])).outside).toBe('above');
    expect(available(percentileBounds(0, 0.5, [1, 2], [1, 2])).outside).toBe('below');
    expect(percentileBounds(1, 1, [Number.NaN], [Number.NaN])).toEqual({
      why: 'no known value to compare with',
    });
  });
});
