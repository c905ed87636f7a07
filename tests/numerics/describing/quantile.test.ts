import { describe, expect, it } from 'vitest';
import { type QuantileType, quantile, quantileSorted } from '../../../src/numerics/describing/quantile.ts';
import { reference } from '../../references/reference.ts';

const r = reference<{
  readonly probabilities: readonly number[];
  readonly cases: readonly {
    readonly values: readonly number[];
    readonly type: QuantileType;
    readonly quantiles: readonly number[];
  }[];
}>('quantile');

describe('quantiles', () => {
  it.each(r.cases)('of type $type equal R within 1e-14 relative', ({ values, type, quantiles }) => {
    r.probabilities.forEach((probability, place) => {
      const ours = quantile(values, probability, type) as number;
      expect(Math.abs(ours / quantiles[place] - 1), `p = ${probability}`).toBeLessThan(1e-14);
    });
  });

  it('2.1 to 9.1 has the printed quartiles of types 7, 6, 2 and 8', () => {
    // Hyndman & Fan 1996, Am. Stat. 50:361 for the types; values of R as stated in the trade notes.
    const values = [2.1, 3.7, 4.2, 5.8, 6.3, 7.9, 8.4, 9.1];
    expect([quantile(values, 0.25), quantile(values, 0.75)]).toEqual([4.075, 8.025]);
    expect(quantile(values, 0.25, 6)).toBeCloseTo(3.825, 12);
    expect(quantile(values, 0.75, 2)).toBeCloseTo(8.15, 12);
    expect(quantile(values, 0.25, 8)).toBeCloseTo(3.908333, 6);
    expect(quantile(values, 0.5)).toBeCloseTo(6.05, 12);
  });

  it('leave gaps out, keep open ends, and say when nothing is left', () => {
    expect(quantile([Number.NaN, 4, 2], 0.5)).toBe(3);
    expect(quantile([1, Infinity, 3], 1)).toBe(Infinity);
    expect(quantile([1, Infinity, 3], 0.5)).toBe(3);
    expect(quantile([Number.NaN], 0.5)).toEqual({ why: 'no value to take a quantile of' });
  });

  it('refuse a probability outside 0 to 1, and do not sort the given array', () => {
    expect(() => quantileSorted([1], 1.1)).toThrow('must be 0 to 1');
    const given = Object.freeze([3, 1, 2]);
    expect(quantile(given, 0)).toBe(1);
  });
});
