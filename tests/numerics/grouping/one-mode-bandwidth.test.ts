import { describe, expect, it } from 'vitest';
import { countModes, oneModeBandwidth } from '../../../src/numerics/grouping/one-mode-bandwidth.ts';
import { reference } from '../../references/reference.ts';

const r = reference<{ criticalBandwidth: { name: string; values: number[]; bandwidth: number }[] }>(
  'grouping-r',
);

describe('oneModeBandwidth', () => {
  it.each(r.criticalBandwidth.map((c): [string, (typeof r.criticalBandwidth)[0]] => [c.name, c]))(
    'agrees with a search through R density() on %s',
    (_, { values, bandwidth }) => {
      // R counts on 4,096 points by fast Fourier transform, ours on 128: shallow dips are seen a little differently.
      expect(Math.abs(oneModeBandwidth(values) / bandwidth - 1)).toBeLessThan(0.03);
    },
  );

  it('has two modes just below and one just above', () => {
    const values = [0, 1, 2, 9, 10, 11, 12];
    const h = oneModeBandwidth(values);
    expect(countModes(values, 0, 12, h * 0.98)).toBe(2);
    expect(countModes(values, 0, 12, h)).toBe(1);
  });

  it('is half the distance of two values, where the sum of two normal curves turns flat between them', () => {
    // Two equal normal densities 2 sd apart are the limit of one mode (textbook result, from memory).
    expect(oneModeBandwidth([0, 2])).toBeCloseTo(1, 1);
    expect(oneModeBandwidth([4, 4, 4])).toBe(0);
  });
});
