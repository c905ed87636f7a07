import { describe, expect, it } from 'vitest';
import { fewestForMedian, medianLimits } from '../../../src/numerics/tests/median-limits.ts';
import { expectClose } from '../close.ts';

describe('limits of a median by order statistics', () => {
  const values = [1, 2, 4, 8, 16, 32, 64, 128, 256, 512];

  it('lie between the order statistics of R 4.2.2 qbinom(0.025, 10, 0.5) = 2: the 2nd and the 3rd from either end', () => {
    const limits = medianLimits(values, 0.95);
    if ('why' in limits) throw new Error(limits.why);
    expect(limits.low).toBeGreaterThan(2);
    expect(limits.low).toBeLessThan(4);
    expect(limits.high).toBeGreaterThan(128);
    expect(limits.high).toBeLessThan(256);
  });

  it('are those values themselves where the confidence is theirs: 1 - 2 pbinom(1, 10, 0.5) = 0.978515625', () => {
    const limits = medianLimits(values, 0.978515625);
    expect(limits).toEqual({ low: 2, high: 256 });
  });

  it('turn round with the values, and do not depend on their order', () => {
    const plain = medianLimits(values, 0.9);
    const turned = medianLimits(
      [...values].reverse().map((value) => -value),
      0.9,
    );
    if ('why' in plain || 'why' in turned) throw new Error('expected limits');
    expectClose(turned.low, -plain.high);
    expectClose(turned.high, -plain.low);
  });

  it('need 6 values at 95 % (2 / 2^6 = 0.03), 8 at 99 %, 5 at 90 %; fewer are refused', () => {
    expect([0.9, 0.95, 0.99].map(fewestForMedian)).toEqual([5, 6, 8]);
    expect(medianLimits([1, 2, 3], 0.95)).toEqual({
      why: 'fewer than 6 values allow no limits of a median at 95 %',
    });
  });
});
