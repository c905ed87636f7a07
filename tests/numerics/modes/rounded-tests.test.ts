import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { dip } from '../../../src/numerics/modes/dip.ts';
import { standardNormal } from '../../../src/numerics/modes/mixture-parts.ts';
import { roundedReadings, spreadEvenly } from '../../../src/numerics/modes/rounded-tests.ts';

describe('readings spread over their steps', () => {
  it('lie within them, as many as there are, and of equal ones evenly', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 4, maxLength: 40 }), (whole) => {
        const values = Float64Array.from(whole);
        const spread = spreadEvenly(
          roundedReadings(
            values,
            values.map(() => 1),
            false,
          ),
        );
        expect([...spread].map((value) => Math.round(value - 1e-9)).sort((a, b) => a - b)).toEqual(
          [...whole].sort((a, b) => a - b),
        );
        expect([...spread]).toEqual([...spread].sort((a, b) => a - b));
      }),
      { seed: 5, numRuns: 50 },
    );
    expect([
      ...spreadEvenly(roundedReadings(Float64Array.of(2, 2, 4), Float64Array.of(1, 1, 1), false)),
    ]).toEqual([1.75, 2.25, 4]);
  });

  it('have a far smaller dip than the rounded readings of one kind, and keep that of two far heaps', () => {
    const random = createRandom(9);
    const one = Float64Array.from({ length: 200 }, () => Math.round(4 + 0.7 * standardNormal(random)));
    const spread = spreadEvenly(
      roundedReadings(
        one,
        one.map(() => 1),
        false,
      ),
    );
    expect(dip(spread)).toBeLessThan(0.3 * dip(one.slice().sort()));
    const two = Float64Array.from({ length: 100 }, (_, i) => (i % 2 === 0 ? 3 : 20));
    expect(
      dip(
        spreadEvenly(
          roundedReadings(
            two,
            two.map(() => 1),
            false,
          ),
        ),
      ),
    ).toBeGreaterThan(0.2);
  });
});
