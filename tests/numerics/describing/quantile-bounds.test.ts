import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quantile } from '../../../src/numerics/describing/quantile.ts';
import { quantileBounds } from '../../../src/numerics/describing/quantile-bounds.ts';
import { available } from '../close.ts';

describe('bounds of a quantile under interval readings', () => {
  it('meet in one value where censoring cannot move it', () => {
    // 2, <1, 3.5, <0.5, 1.5 with 0 as the lowest possible: median exactly 1.5 (order statistics; cf. Helsel
    // 2012, Statistics for Censored Environmental Data Using Minitab and R, on medians of censored data).
    expect(quantileBounds([2, 0, 3.5, 0, 1.5], [2, 1, 3.5, 0.5, 1.5], 0.5)).toEqual({ low: 1.5, high: 1.5 });
  });

  it('are infinite only where an open end decides', () => {
    expect(quantileBounds([1, 2, 30], [1, 2, Infinity], 0.5)).toEqual({ low: 2, high: 2 });
    expect(quantileBounds([1, 30, 30], [1, Infinity, Infinity], 0.5)).toEqual({ low: 30, high: Infinity });
    expect(quantileBounds([-Infinity, 5], [3, 5], 0.5)).toEqual({ low: -Infinity, high: 4 });
  });

  it('hold every quantile that values within the intervals can have', () => {
    const interval = fc.tuple(
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      fc.double({ min: 0, max: 1e3, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
    );
    fc.assert(
      fc.property(
        fc.array(interval, { minLength: 1, maxLength: 20 }),
        fc.constantFrom(0, 0.1, 0.25, 0.5, 0.75, 1),
        (parts, share) => {
          const low = parts.map(([start]) => start);
          const high = parts.map(([start, size]) => start + size);
          const inside = parts.map(([start, size, where]) => Math.min(start + size * where, start + size));
          const bounds = available(quantileBounds(low, high, share));
          const value = available(quantile(inside, share));
          expect(bounds.low).toBeLessThanOrEqual(value + 1e-9);
          expect(bounds.high).toBeGreaterThanOrEqual(value - 1e-9);
        },
      ),
    );
  });
});
