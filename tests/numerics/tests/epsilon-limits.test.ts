import { describe, expect, it } from 'vitest';
import { epsilonSquaredLimits } from '../../../src/numerics/tests/epsilon-limits.ts';

/**
 * R 4.2.2: h <- kruskal.test(x)$statistic, and for each tail the root over ncp of
 * pchisq(h, df, ncp, lower.tail = FALSE) - tail, by uniroot(tol = 1e-13), over n - 1.
 */
describe('limits of epsilon squared', () => {
  it('are those by R of three groups well apart, cut at 1', () => {
    const limits = epsilonSquaredLimits(
      [
        [2.1, 3.4, 1.9, 4.0, 2.8],
        [3.9, 5.1, 4.4, 2.9, 6.0],
        [5.2, 6.6, 4.9, 7.1, 5.5],
      ],
      0.95,
    );
    if ('why' in limits) throw new Error(limits.why);
    expect(limits.low).toBeCloseTo(0.040665503996, 8);
    expect(limits.high).toBe(1);
  });

  it('reach 0 where the groups hardly differ', () => {
    const steps = [0, 1, 2, 3, 4, 5];
    const limits = epsilonSquaredLimits(
      [1, 1.5, 1.2].map((from) => steps.map((step) => from + step)),
      0.95,
    );
    if ('why' in limits) throw new Error(limits.why);
    expect(limits.low).toBe(0);
    expect(limits.high).toBeCloseTo(0.264450198488, 8);
  });

  it('are none where all values are equal', () => {
    expect(epsilonSquaredLimits([[1, 1], [1], [1]], 0.95)).toHaveProperty('why');
  });
});
