import stdlibExp from '@stdlib/math-base-special-exp';
import stdlibLn from '@stdlib/math-base-special-ln';
import { describe, expect, it } from 'vitest';
import { exp, ln, pow } from '../../../src/numerics/foundation/elementary.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';

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

  it('exp gives the very double of the package whose steps it takes, to the ends of the range', () => {
    const random = createRandom(3);
    const asked = [0, -0, NaN, Infinity, -Infinity, 690, -690, 2 ** -28, -(2 ** -28), 709.78, -745.2, 1, -1];
    for (let i = 0; i < 20_000; i++)
      asked.push(
        (random.next() - 0.5) * 1500,
        (random.next() - 0.5) * 4,
        (random.next() - 0.5) * 2 ** -(i % 60),
      );
    // Where one power of 2 gives way to the next.
    for (let k = -2000; k <= 2000; k++)
      for (const off of [0, 1e-16, -1e-16]) asked.push((k / 2) * Math.LN2 * (1 + off));
    expect(asked.filter((x) => !Object.is(exp(x), stdlibExp(x)))).toEqual([]);
  });

  it('ln gives the very double of the package whose steps it takes, beside powers of two as well', () => {
    const random = createRandom(5);
    const asked = [0, -0, -1, NaN, Infinity, -Infinity, 1, 2.3e-308, 2.2e-308, 1e-320, 1e300, 1e-300];
    for (const most of [1e-320, 1e-9, 0.01, 1, 30, 1e9, 1e300])
      for (let i = 0; i < 20_000; i++) asked.push(random.next() * most);
    for (let power = -1074; power < 1024; power++)
      for (const share of [0, 1e-16, 2e-16, 1e-10, 9e-7, 1e-6, 0.38, 0.414, 0.42, 0.5])
        asked.push(2 ** power * (1 + share), 2 ** power * (1 - share));
    expect(asked.filter((x) => !Object.is(ln(x), stdlibLn(x)))).toEqual([]);
  });

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
