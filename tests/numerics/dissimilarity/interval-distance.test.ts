import { describe, expect, it } from 'vitest';
import { intervalDistance } from '../../../src/numerics/dissimilarity/interval-distance.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';

describe('distance of two intervals', () => {
  it('two equal intervals of length 1 are expected a third apart, at least 0, at most 1', () => {
    // Mean of |x - y| for two independent uniforms is 1/3 (standard probability, no source needed).
    expect(intervalDistance('expected', 0, 1, 0, 1)).toBeCloseTo(1 / 3, 15);
    expect(intervalDistance('least', 0, 1, 0, 1)).toBe(0);
    expect(intervalDistance('greatest', 0, 1, 0, 1)).toBe(1);
    expect(intervalDistance('midpoint', 0, 1, 0, 1)).toBe(0);
  });

  it('a point within an interval: mean distance by hand', () => {
    // x = 1 in [0, 4]: (1/4)(1/2) + (3/4)(3/2) = 1.25.
    expect(intervalDistance('expected', 1, 1, 0, 4)).toBeCloseTo(1.25, 15);
    expect(intervalDistance('expected', 0, 4, 1, 1)).toBeCloseTo(1.25, 15);
  });

  it('every rule is the plain distance for exact readings', () => {
    for (const rule of ['midpoint', 'expected', 'least', 'greatest'] as const) {
      expect(intervalDistance(rule, 3, 3, 7.5, 7.5)).toBe(4.5);
      expect(intervalDistance(rule, 7.5, 7.5, 3, 3)).toBe(4.5);
      expect(intervalDistance(rule, 2, 2, 2, 2)).toBe(0);
    }
  });

  it('the expected distance agrees with a fine grid of values, and lies between least and greatest', () => {
    const random = createRandom(11);
    for (let run = 0; run < 40; run++) {
      const [a, c] = [random.next() * 4, random.next() * 4];
      const [b, d] = [a + random.next() * 3, c + random.next() * 3];
      const steps = 400;
      let sum = 0;
      for (let i = 0; i < steps; i++) {
        for (let j = 0; j < steps; j++) {
          sum += Math.abs(a + ((b - a) * (i + 0.5)) / steps - c - ((d - c) * (j + 0.5)) / steps);
        }
      }
      const expected = intervalDistance('expected', a, b, c, d);
      expect(expected).toBeCloseTo(sum / (steps * steps), 4);
      expect(expected).toBeGreaterThanOrEqual(intervalDistance('least', a, b, c, d) - 1e-12);
      expect(expected).toBeLessThanOrEqual(intervalDistance('greatest', a, b, c, d) + 1e-12);
      expect(expected).toBeCloseTo(intervalDistance('expected', c, d, a, b), 14);
    }
  });
});
