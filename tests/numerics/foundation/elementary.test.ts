import { describe, expect, it } from 'vitest';
import { exp, ln, pow } from '../../../src/numerics/foundation/elementary.ts';

describe('elementary functions', () => {
  it.each([1e-300, 1e-5, 0.1, 0.5, 1, 2, 10, 12345.678, 1e300])(
    'ln and exp of %d agree with the engine to one unit in the last place',
    (x) => {
      expect(Math.abs(ln(x) - Math.log(x))).toBeLessThanOrEqual(2.3e-16 * Math.abs(Math.log(x)));
      const y = ln(x);
      expect(Math.abs(exp(y) / Math.exp(y) - 1)).toBeLessThan(4.5e-16);
      expect(Math.abs(pow(x, 0.5) / Math.sqrt(x) - 1)).toBeLessThan(4.5e-16);
    },
  );

  it('keep the conventions of IEEE 754 at the edges', () => {
    expect([ln(0), ln(1), exp(0), exp(-Infinity), pow(0, 0), pow(2, 10)]).toEqual([
      -Infinity,
      0,
      1,
      0,
      1,
      1024,
    ]);
    expect(ln(-1)).toBeNaN();
  });
});
