import { describe, expect, it } from 'vitest';
import { noncentralChiSquaredUpper, noncentralityAt } from '../../../src/numerics/foundation/noncentral.ts';
import { shiftLimits } from '../../../src/numerics/tests/shift-limits.ts';
import { expectClose } from '../close.ts';

describe('noncentral chi-squared, against R 4.2.2 pchisq(x, df, ncp, lower.tail = FALSE)', () => {
  it.each([
    [3, 2, 0, 0.223130160148],
    [20, 4, 7, 0.0821869325938],
    [300, 35, 200, 0.0181236685201],
    [50, 12, 3.5, 6.79143525906e-5],
    [5, 1, 25, 0.997144528227],
  ])('x = %d, df = %d, noncentrality %d', (x, df, ncp, upper) =>
    expectClose(noncentralChiSquaredUpper(x, df, ncp), upper, 1e-9),
  );

  it('is turned round by its noncentrality, which is 0 where x is small', () => {
    expectClose(noncentralityAt(20, 4, noncentralChiSquaredUpper(20, 4, 7)), 7, 1e-8);
    expect(noncentralityAt(1, 4, 0.025)).toBe(0);
  });
});

describe('limits of a shift, against R 4.2.2 wilcox.test(conf.int = TRUE, exact = TRUE)$conf.int', () => {
  it.each([
    [
      [0.8, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46],
      [1.15, 0.88, 0.9, 0.74, 1.21],
      0.95,
      -0.15,
      0.76,
    ],
    [[1.1, 2.3, 3.7, 5.2], [2.05, 4.4, 6.6, 9.3], 0.95, -8.2, 3.15],
    [[1.1, 2.3, 3.7, 5.2, 8.8, 9.9, 11.3], [2.05, 4.4, 6.6, 9.3, 15.1], 0.9, -6.3, 4.4],
  ] as const)('%j and %j at %d', (first, second, confidence, low, high) => {
    const limits = shiftLimits(first, second, confidence);
    if ('why' in limits) throw new Error(limits.why);
    expectClose(limits.low, low);
    expectClose(limits.high, high);
  });

  it('3 and 3 values could never pass 95 % (2 / 20 = 0.1), and are refused', () => {
    expect(shiftLimits([1, 2, 3], [7, 8, 9], 0.95)).toEqual({
      why: '3 and 3 are too few for limits at 95 %',
    });
  });
});
