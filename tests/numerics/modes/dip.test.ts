import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { dip, dipTest } from '../../../src/numerics/modes/dip.ts';
import { available, expectClose } from '../close.ts';
import { r } from '../modes-values.ts';

const sorted = (values: number[]) => Float64Array.from(values).sort();

describe(`dip, as ${r.tool} ${r.version}`, () => {
  it.each(Object.entries(r.dips))('%s', (_, { x, dip: expected }) => {
    expectClose(dip(sorted(x)), expected);
  });

  it.each(Object.entries(r.dips).filter(([, { p }]) => p !== undefined))(
    'p of %s, within the noise of both simulations',
    (_, { x, p }) => {
      const found = available(dipTest(x, createRandom(4), 1999));
      expect(Math.abs(found.p - (p as number))).toBeLessThan(
        5 * Math.sqrt(Math.max(p as number, 5e-4) / 1999),
      );
    },
  );

  it('never gives a p of 0 and needs four values', () => {
    expect(available(dipTest(r.dips.eruptions.x, createRandom(4), 99)).p).toBe(0.01);
    expect(dipTest([1, 2, 3], createRandom(4))).toEqual({
      why: 'a test for several modes needs 4 values, not 3',
    });
  });
});
