import { describe, expect, it } from 'vitest';
import { chaoInterval } from '../../../src/numerics/assemblages/chao.ts';
import { densityCurve } from '../../../src/numerics/describing/density.ts';
import { expandedLevel } from '../../../src/numerics/resampling/bootstrap.ts';
import { medianDifference } from '../../../src/numerics/tests/pairwise-median.ts';
import { reference } from '../../references/reference.ts';
import { available, expectClose } from '../close.ts';

interface Values {
  readonly density: { values: number[]; bandwidth: number[]; at: number[]; density: number[] };
  readonly chao: { counts: Record<string, number[]>; estimates: number[]; errors: number[] };
  readonly shift: { first: number[]; second: number[]; estimate: number[] };
}

const { density, chao, shift, tool, version } = reference<Values>('comparing-groups');

describe(`against ${tool} (${version}), relative 1e-9`, () => {
  it('the bandwidth is bw.nrd0 and the curve the sum of its kernels', () => {
    const curve = available(densityCurve(density.values, 401));
    expectClose(curve.bandwidth, density.bandwidth[0]);
    const step = curve.at[1] - curve.at[0];
    density.at.forEach((place, i) => {
      // Between two places of the grid the curve is all but straight: tolerance 1e-3 for that alone.
      const left = Math.floor((place - curve.at[0]) / step);
      const part = (place - curve.at[left]) / step;
      expectClose(
        (1 - part) * curve.density[left] + part * curve.density[left + 1],
        density.density[i],
        1e-3,
      );
    });
    const mass = curve.density.reduce((sum, value) => sum + value * step, 0);
    expectClose(mass, 1, 0.01);
  });

  it('Chao 1 and its standard error are those of estimateR', () => {
    Object.values(chao.counts).forEach((counts, i) => {
      const found = available(chaoInterval(counts));
      expectClose(found.estimate, chao.estimates[i]);
      expectClose(found.standardError, chao.errors[i]);
      expect(found.low).toBeGreaterThan(counts.length);
      expect(found.high).toBeGreaterThan(found.estimate);
    });
  });

  it('the median of all differences is found by selection', () => {
    expectClose(available(medianDifference(shift.first, shift.second)), shift.estimate[0]);
    expectClose(available(medianDifference(shift.second, shift.first)), -shift.estimate[0]);
    expect(medianDifference([], [1])).toEqual({ why: 'a group has no value' });
  });
});

describe('widening for few blocks', () => {
  it('asks for 98.3 % where 95 % is wanted from 10 blocks (Hesterberg 2015: sqrt(n/(n-1)) t)', () => {
    // t(0.975, 9) = 2.262157 (table of Student's t, from memory); 2 * pnorm(-2.262157 * sqrt(10/9)) = 0.0171.
    expectClose(1 - expandedLevel(0.95, 10), 0.0171, 5e-3);
    expectClose(expandedLevel(0.95, 100_000), 0.95, 1e-4);
    expect(expandedLevel(0.95, 2)).toBe(0.999);
  });
});
