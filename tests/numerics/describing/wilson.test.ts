import { describe, expect, it } from 'vitest';
import { wilsonLimits } from '../../../src/numerics/describing/wilson.ts';

// Newcombe 1998, Stat. Med. 17:857, Table I: the four worked cases (from memory); limits recomputed in
// R 4.2.2 with prop.test(x, n, correct = FALSE), printed to six decimals. 23/60 by the same call.
const cases: [count: number, n: number, low: number, high: number][] = [
  [81, 263, 0.255289, 0.36621],
  [15, 148, 0.062386, 0.160487],
  [0, 20, 0, 0.161125],
  [1, 29, 0.006113, 0.171755],
  [23, 60, 0.270883, 0.509824],
];

describe('score limits of a share', () => {
  it.each(cases)('%i of %i', (count, n, low, high) => {
    const limits = wilsonLimits(count, n);
    if ('why' in limits) throw new Error(limits.why);
    expect(limits.low).toBeCloseTo(low, 6);
    expect(limits.high).toBeCloseTo(high, 6);
  });

  it('mirror each other for a share and its complement', () => {
    const some = wilsonLimits(3, 11, 0.9);
    const rest = wilsonLimits(8, 11, 0.9);
    if ('why' in some || 'why' in rest) throw new Error('expected limits');
    expect(some.low).toBeCloseTo(1 - rest.high, 14);
    expect(some.high).toBeCloseTo(1 - rest.low, 14);
  });

  it('say why there are none without records', () => {
    expect(wilsonLimits(0, 0)).toEqual({ why: 'no record to take a share of' });
  });
});
