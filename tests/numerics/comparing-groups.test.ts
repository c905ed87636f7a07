import { describe, expect, it } from 'vitest';
import { chaoInterval } from '../../src/numerics/assemblages/chao.ts';
import { densityCurve } from '../../src/numerics/describing/density.ts';
import { chordDistance, EARTH_RADIUS } from '../../src/numerics/dissimilarity/great-circle.ts';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { expandedLevel } from '../../src/numerics/resampling/bootstrap.ts';
import {
  blockedSample,
  blockMedians,
  blockMembers,
  gatherBlocks,
  sharesBlocks,
} from '../../src/numerics/tests/blocked-sample.ts';
import {
  blockedRankTest,
  blockedShapeTest,
  blockedSmirnovTest,
  blockedSpreadTest,
} from '../../src/numerics/tests/blocked-tests.ts';
import { kolmogorovSmirnov } from '../../src/numerics/tests/kolmogorov-smirnov.ts';
import { mannWhitney } from '../../src/numerics/tests/mann-whitney.ts';
import { medianDifference } from '../../src/numerics/tests/pairwise-median.ts';
import { reference } from '../references/reference.ts';
import { available, expectClose } from './close.ts';

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

describe('samples in blocks', () => {
  const sample = blockedSample([5, 1, 3, 9], ['x', 'y', 'x', 'y']);
  it('do not hang on the order of rows or the names of blocks', () => {
    const other = blockedSample([9, 3, 1, 5], ['b', 'a', 'b', 'a']);
    expect(blockMembers(other)).toEqual(blockMembers(sample));
  });
  it('keep the values of a block together', () => {
    expect(blockMembers(sample).map((values) => Array.from(values))).toEqual([
      [1, 9],
      [3, 5],
    ]);
    expect(Array.from(gatherBlocks(blockMembers(sample), [0, 0]))).toEqual([1, 9, 1, 9]);
    expect(Array.from(blockMedians(sample))).toEqual([5, 4]);
    expect([sharesBlocks(sample), sharesBlocks(blockedSample([1, 2], ['a', 'b']))]).toEqual([true, false]);
  });

  const singles = (values: readonly number[]) =>
    blockedSample(
      values,
      values.map((_, i) => `${i}`),
    );
  const first = [1.2, 3.4, 2.2, 5.1, 4.4, 0.3];
  const second = [2.9, 6.1, 7.7, 8.2, 5.6];
  const options = { random: createRandom(3) };

  it('of one value each are tested as by the exact tests for independent values', () => {
    const pair = [singles(first), singles(second)] as const;
    expectClose(available(blockedRankTest(pair, options)).p, available(mannWhitney(first, second)).p);
    const curves = available(blockedSmirnovTest(pair, options));
    const exact = available(kolmogorovSmirnov(first, second));
    expectClose(curves.observed, exact.statistic);
    expectClose(curves.p, exact.p);
  });

  it('whose blocks are repeated whole give the same p as one value each', () => {
    const tripled = (values: readonly number[]) =>
      blockedSample(
        values.flatMap((value) => [value, value, value]),
        values.flatMap((_, i) => [`${i}`, `${i}`, `${i}`]),
      );
    for (const test of [blockedRankTest, blockedShapeTest, blockedSpreadTest]) {
      const one = available(test([singles(first), singles(second)], options)).p;
      const three = available(test([tripled(first), tripled(second)], options)).p;
      expectClose(three, one);
    }
  });

  it('refuse one group and equal values', () => {
    expect(blockedRankTest([singles(first)], options)).toEqual({ why: 'a comparison needs two groups' });
    expect(blockedSpreadTest([singles([1, 1]), singles([1, 1])], options)).toEqual({
      why: 'all values are equal',
    });
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

describe('straight distance through the sphere', () => {
  it('is the diameter between the poles, root two radii for a quarter turn, and symmetric', () => {
    expectClose(chordDistance([90, 0], [-90, 0]), 2 * EARTH_RADIUS, 1e-12);
    expectClose(chordDistance([0, 0], [0, 90]), Math.SQRT2 * EARTH_RADIUS, 1e-12);
    expectClose(chordDistance([50, 10], [48, 11]), chordDistance([48, 11], [50, 10]), 1e-12);
  });
  it('agrees with the formula of haversines to 1 in 100,000 over 100 km', () => {
    const rad = (degrees: number) => (degrees * Math.PI) / 180;
    const h = Math.sin(rad(0.5)) ** 2 + Math.cos(rad(47)) * Math.cos(rad(48)) * Math.sin(rad(0.25)) ** 2;
    expectClose(chordDistance([47, 8], [48, 8.5]), 2 * EARTH_RADIUS * Math.sqrt(h), 1e-12);
    expectClose(chordDistance([47, 8], [48, 8.5]), 2 * EARTH_RADIUS * Math.asin(Math.sqrt(h)), 2e-5);
  });
});
