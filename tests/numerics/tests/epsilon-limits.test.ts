import { describe, expect, it } from 'vitest';
import { epsilonSquaredLimits } from '../../../src/numerics/tests/epsilon-limits.ts';

/**
 * R 4.2.2: e <- kruskal.test(x)$statistic / (n - 1), f <- (e / (k - 1)) / ((1 - e) / (n - k)), and for each tail the
 * root over ncp of pf(f, k - 1, n - k, ncp, lower.tail = FALSE) - tail, by uniroot(tol = 1e-13); ncp / (ncp + n). The tails are 0.02.
 * For the upper limit e is at least (k - 1) / (n - 1), its mean where nothing differs.
 */
describe('limits of epsilon squared', () => {
  it('are those by R of three groups well apart', () => {
    const limits = epsilonSquaredLimits(
      [
        [2.1, 3.4, 1.9, 4.0, 2.8],
        [3.9, 5.1, 4.4, 2.9, 6.0],
        [5.2, 6.6, 4.9, 7.1, 5.5],
      ],
      0.95,
    );
    if ('why' in limits) throw new Error(limits.why);
    expect(limits.low).toBeCloseTo(0.16411170952, 8);
    expect(limits.high).toBeCloseTo(0.793629347745, 8);
  });

  it('reach 0 where the groups hardly differ', () => {
    const steps = [0, 1, 2, 3, 4, 5];
    const limits = epsilonSquaredLimits(
      [1, 1.5, 1.2].map((from) => steps.map((step) => from + step)),
      0.95,
    );
    if ('why' in limits) throw new Error(limits.why);
    expect(limits.low).toBe(0);
    expect(limits.high).toBeCloseTo(0.374594753797, 8);
  });

  it('stay wide where the groups are more alike than chance makes them', () => {
    const limits = epsilonSquaredLimits(
      [
        [1, 6, 8, 3],
        [2, 5, 7, 4],
        [1.5, 5.5, 7.5, 3.5],
      ],
      0.95,
    );
    if ('why' in limits) throw new Error(limits.why);
    expect(limits.low).toBe(0);
    expect(limits.high).toBeCloseTo(0.478475143489, 8);
  });

  it('are none where all values are equal, or equal within each group', () => {
    expect(epsilonSquaredLimits([[1, 1], [1], [1]], 0.95)).toHaveProperty('why');
    expect(
      epsilonSquaredLimits(
        [
          [1, 1],
          [2, 2],
          [3, 3],
        ],
        0.95,
      ),
    ).toHaveProperty('why');
  });
});
