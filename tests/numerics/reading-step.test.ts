import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stepOf } from '../../src/numerics/describing/reading-step.ts';
import { fitsLogarithm } from '../../src/numerics/describing/scale-by-fit.ts';
import { exp } from '../../src/numerics/foundation/elementary.ts';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { dip } from '../../src/numerics/modes/dip.ts';
import { otherCrossing, standardNormal } from '../../src/numerics/modes/mixture-parts.ts';
import { roundedReadings, spreadEvenly } from '../../src/numerics/modes/rounded-tests.ts';

describe('the step of readings', () => {
  const random = createRandom(4);
  const drawn = (n: number) => Array.from({ length: n }, () => 3 + 9 * random.next());

  it.each([0.1, 0.25, 0.5, 1, 2, 5])('of %d is found where all are rounded to it', (step) => {
    expect(stepOf(drawn(80).map((value) => Math.round((3 * value) / step) * step))).toBeCloseTo(step, 9);
  });

  it('is found where one reading in twenty is finer, and in inches turned into cm', () => {
    expect(stepOf([...drawn(57).map((value) => Math.round(value)), 3.3, 4.7, 8.2])).toBe(1);
    expect(stepOf(drawn(60).map((value) => Math.round(value) / 2.54))).toBeCloseTo(1 / 2.54, 6);
  });

  it('is 0 for exact readings, and for too few', () => {
    expect(stepOf(drawn(200))).toBe(0);
    expect(stepOf([1, 2, 3])).toBe(0);
    expect(stepOf(Array.from({ length: 20 }, () => 4))).toBe(0);
  });
});

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

describe('the scale that readings fit', () => {
  it('is the logarithm for a lognormal and not for a normal, nor with a value at nought', () => {
    const random = createRandom(2);
    const normal = Array.from({ length: 80 }, () => standardNormal(random));
    expect(fitsLogarithm(normal.map((z) => 5 * exp(0.8 * z)))).toBe(true);
    expect(fitsLogarithm(normal.map((z) => 50 + 5 * z))).toBe(false);
    expect(fitsLogarithm([0, ...normal.map((z) => 5 * exp(0.8 * z))])).toBe(false);
  });
});

describe('the second crossing of two parts', () => {
  it('is where the wider part takes over again, by hand, and absent for one spread', () => {
    const narrow = { share: 0.5, mean: 0, sd: 1 };
    const wide = { share: 0.5, mean: 0, sd: 2 };
    // Equal means and shares: ln 2 = x² (1/2 - 1/8), so x = ±sqrt(8 ln 2 / 3).
    expect(Math.abs(otherCrossing(narrow, wide)!)).toBeCloseTo(Math.sqrt((8 * Math.log(2)) / 3), 10);
    expect(otherCrossing(narrow, { ...narrow, mean: 4 })).toBeNull();
  });
});
