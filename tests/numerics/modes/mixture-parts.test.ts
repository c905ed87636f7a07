import { describe, expect, it } from 'vitest';
import { otherCrossing } from '../../../src/numerics/modes/mixture-parts.ts';

describe('the second crossing of two parts', () => {
  it('is where the wider part takes over again, by hand, and absent for one spread', () => {
    const narrow = { share: 0.5, mean: 0, sd: 1 };
    const wide = { share: 0.5, mean: 0, sd: 2 };
    // Equal means and shares: ln 2 = x² (1/2 - 1/8), so x = ±sqrt(8 ln 2 / 3).
    expect(Math.abs(otherCrossing(narrow, wide)!)).toBeCloseTo(Math.sqrt((8 * Math.log(2)) / 3), 10);
    expect(otherCrossing(narrow, { ...narrow, mean: 4 })).toBeNull();
  });
});
