import { describe, expect, it } from 'vitest';
import { intervalDistribution, intervalQuantile } from '../../../src/numerics/describing/turnbull.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { available, expectClose } from '../close.ts';
import { r } from '../counts-and-trends-values.ts';

describe('readings that are intervals', () => {
  const { low } = r.turnbull;
  const high = r.turnbull.high.map(Number);
  const found = available(intervalDistribution(low, high));

  // Gentleman & Geyer 1994, Biometrika 81:618: the conditions that only the maximum meets.
  it('reaches the maximum of the likelihood', () => {
    const chance = low.map((l, i) => {
      let sum = 0;
      found.share.forEach((share, j) => {
        if (found.low[j] >= l && found.high[j] <= high[i]) sum += share;
      });
      return sum;
    });
    found.share.forEach((share, j) => {
      let gradient = 0;
      low.forEach((l, i) => {
        if (found.low[j] >= l && found.high[j] <= high[i]) gradient += 1 / chance[i];
      });
      expect(gradient).toBeLessThan(low.length * (1 + 1e-6));
      if (share > 1e-6) expectClose(gradient, low.length, 1e-6);
    });
    expectClose(
      found.share.reduce((sum, share) => sum + share, 0),
      1,
    );
  });

  // The same conditions for thousands of readings known to a tenth, which overlap one another in long chains.
  it('reaches it of many overlapping readings in few steps', () => {
    const draw = createRandom(5);
    const values = Array.from({ length: 3000 }, () => 4 + 8 * draw.next() * draw.next());
    const [lows, highs] = [values.map((value) => 0.9 * value), values.map((value) => 1.1 * value)];
    const many = available(intervalDistribution(lows, highs));
    expect(many.iterations).toBeLessThan(1000);
    const pull = new Float64Array(many.share.length);
    for (const [i, from] of lows.entries()) {
      const covered = [...many.share.keys()].filter(
        (j) => many.low[j]! >= from && many.high[j]! <= highs[i]!,
      );
      const chance = covered.reduce((sum, j) => sum + many.share[j]!, 0);
      for (const j of covered) pull[j] += 1 / chance / lows.length;
    }
    many.share.forEach((share, j) => {
      expect(pull[j]).toBeLessThan(1 + 1e-9);
      if (share > 1e-6) expectClose(pull[j], 1, 1e-6);
    });
  });

  // survfit 3.5 stops as soon as no share moves by more than 5e-5 in a step, well short of the maximum.
  it('agrees with R’s survfit as far as that iterates', () => {
    let compared = 0;
    let below = 0;
    found.share.forEach((share, j) => {
      below += share;
      const middle = (found.low[j] + found.high[j]) / 2;
      const at = r.turnbull.time.findIndex((time) => Math.abs(time - middle) < 1e-9);
      if (at < 0) return;
      compared++;
      expect(Math.abs(1 - below - r.turnbull.surv[at])).toBeLessThan(5e-3);
    });
    expect(compared).toBeGreaterThan(15);
  });

  it('exact readings give the ordinary distribution', () => {
    const exact = available(intervalDistribution([1, 2, 2, 5], [1, 2, 2, 5]));
    expect([...exact.low]).toEqual([1, 2, 5]);
    expect([...exact.share]).toEqual([0.25, 0.5, 0.25]);
    expect(intervalQuantile(exact, 0.5)).toEqual({ low: 2, high: 2 });
  });

  // Readings 2, <1, 3.5, <0.5, 1.5 with lower limit 0: the median is 1.5 whatever the censored ones are.
  it('the median of 2, <1, 3.5, <0.5, 1.5 is 1.5', () => {
    const mixed = available(intervalDistribution([2, 0, 3.5, 0, 1.5], [2, 1, 3.5, 0.5, 1.5]));
    expect(intervalQuantile(mixed, 0.5)).toEqual({ low: 1.5, high: 1.5 });
  });
});
