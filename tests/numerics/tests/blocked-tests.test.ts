import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import {
  blockedSample,
  blockMedians,
  blockMembers,
  gatherBlocks,
  sharesBlocks,
} from '../../../src/numerics/tests/blocked-sample.ts';
import {
  blockedRankTest,
  blockedShapeTest,
  blockedSmirnovTest,
  blockedSpreadTest,
} from '../../../src/numerics/tests/blocked-tests.ts';
import { kolmogorovSmirnov } from '../../../src/numerics/tests/kolmogorov-smirnov.ts';
import { mannWhitney } from '../../../src/numerics/tests/mann-whitney.ts';
import { available, expectClose } from '../close.ts';

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
