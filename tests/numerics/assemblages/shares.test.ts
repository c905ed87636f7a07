import { describe, expect, it } from 'vitest';
import { exactShareLimits, jeffreysShareLimits } from '../../../src/numerics/assemblages/shares.ts';
import { available, expectClose } from '../close.ts';
import { r } from '../counts-and-trends-values.ts';

describe(`limits of shares, as ${r.tool}`, () => {
  it.each(r.limits)('$count of $n', ({ count, n, exact, jeffreys }) => {
    const clopper = available(exactShareLimits(count, n));
    expectClose(clopper.low, exact[0], 1e-8);
    expectClose(clopper.high, exact[1], 1e-8);
    const posterior = available(jeffreysShareLimits(count, n));
    if (count > 0) expectClose(posterior.low, jeffreys[0], 1e-8);
    else expect(posterior.low).toBe(0);
    if (count < n) expectClose(posterior.high, jeffreys[1], 1e-8);
    else expect(posterior.high).toBe(1);
  });

  // Newcombe 1998, Stat. Med. 17:857, Table I, method 5 (Clopper-Pearson).
  it('Newcombe’s table: 81/263 lies between 0.2527 and 0.3676, 0/20 below 0.1684', () => {
    expect(available(exactShareLimits(81, 263)).low).toBeCloseTo(0.2527, 4);
    expect(available(exactShareLimits(81, 263)).high).toBeCloseTo(0.3676, 4);
    expect(available(exactShareLimits(0, 20)).high).toBeCloseTo(0.1684, 4);
  });
});
