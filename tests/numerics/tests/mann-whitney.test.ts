import { describe, expect, it } from 'vitest';
import { kolmogorovSmirnov } from '../../../src/numerics/tests/kolmogorov-smirnov.ts';
import { cliffsDelta, mannWhitney } from '../../../src/numerics/tests/mann-whitney.ts';
import { medianDifference } from '../../../src/numerics/tests/pairwise-median.ts';
import { available, expectClose } from '../close.ts';
import { tool, twoSample, version } from '../rank-values.ts';

describe(`two samples, as ${tool} ${version}`, () => {
  it.each(Object.entries(twoSample))('%s', (_, expected) => {
    const { first, second } = expected;
    const test = available(mannWhitney(first, second));
    expectClose(test.statistic, expected.U);
    expectClose(
      test.p,
      test.method === 'exact' && expected.pExact !== null ? expected.pExact : expected.pNormal,
    );
    if (expected.pExact !== null) expect(test.method).toBe('exact');
    const curves = available(kolmogorovSmirnov(first, second));
    expectClose(curves.statistic, expected.ks.statistic);
    // R takes its small p from one minus the lower tail, which leaves 16 digits after the point.
    expectClose(1 - curves.p, 1 - expected.ks.p);
    expectClose(available(medianDifference(first, second)), expected.shift);
    expectClose(available(cliffsDelta(first, second)), expected.rankCorrelationDelta);
  });

  it('gives the sign to the first sample', () => {
    const test = available(mannWhitney([5, 6, 7], [1, 2, 3]));
    expect(test.statistic).toBe(9);
    expect(available(cliffsDelta([5, 6, 7], [1, 2, 3]))).toBe(1);
    expect(available(medianDifference([5, 6, 7], [1, 2, 3]))).toBe(4);
  });
});
