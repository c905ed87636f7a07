import { describe, expect, it } from 'vitest';
import { stepOf } from '../../../src/numerics/describing/reading-step.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';

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
