import { describe, expect, it } from 'vitest';
import { SPLIT_POWER } from '../../../src/analyses/shared/simulated/split-power.ts';
import { visibleSplit } from '../../../src/analyses/typology/power.ts';
import { fallsApart, heapsOf } from '../../../src/analyses/typology/split.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { isUnavailable } from '../../../src/numerics/foundation/unavailable.ts';
import { sampleMixture } from '../../../src/numerics/modes/mixture-parts.ts';
import { roundedReadings } from '../../../src/numerics/modes/rounded-tests.ts';

/** Readings of which this share lies below the cut at 0. */
const readings = (n: number, share: number) =>
  Array.from({ length: n }, (_, i) => (i < Math.round(share * n) ? -1 - i / n : 1 + i / n));

const SAMPLES = 30;

/** How many of so many samples of two heaps the tests that decide find divided. */
function found(n: number, share: number, distance: number): number {
  let count = 0;
  for (let sample = 0; sample < SAMPLES; sample++) {
    const random = createRandom(81 + sample);
    const heaps = [
      { share, mean: 0, sd: 1 },
      { share: 1 - share, mean: distance, sd: 1 },
    ];
    const values = sampleMixture(heaps, n, random);
    const steps = values.map(() => 0);
    if (fallsApart(heapsOf(roundedReadings(values, steps, false), random.stream('tests')), 0.95)) count++;
  }
  return count;
}

describe('the smallest split that could have been seen', () => {
  it.each(SPLIT_POWER.cells.filter(({ n, share }) => n === 60 && share > 0.2))(
    'is simulated with the rule that decides: $n readings, $share in the smaller heap, $distance apart',
    (cell) => {
      const rate = cell.found / cell.samples;
      const error = Math.sqrt((rate * (1 - rate) + 0.01) * (1 / SAMPLES + 1 / cell.samples));
      expect(Math.abs(found(cell.n, cell.share, cell.distance) / SAMPLES - rate)).toBeLessThan(3.3 * error);
    },
  );

  it('is the least distance found in 8 of 10 samples, of the next smaller number of readings and heap', () => {
    const least = (n: number, share: number) =>
      SPLIT_POWER.cells
        .filter((cell) => cell.n === n && cell.share === share && cell.found / cell.samples >= 0.8)
        .map(({ distance }) => distance)
        .sort((a, b) => a - b)[0];
    expect(visibleSplit(readings(60, 0.5), [0]).halves).toBe(least(60, 0.5));
    expect(visibleSplit(readings(119, 0.5), [0]).halves).toBe(least(60, 0.5));
    expect(visibleSplit(readings(120, 0.5), [0]).halves).toBe(least(120, 0.5));
    expect(visibleSplit(readings(120, 0.3), [0])).toEqual({
      share: 0.3,
      halves: least(120, 0.5),
      asCut: (least(120, 0.5) + 4 * least(120, 0.25)) / 5,
    });
    expect(visibleSplit(readings(120, 0.25), [0]).asCut).toBe(least(120, 0.25));
  });

  it('never shrinks with fewer readings or a smaller heap', () => {
    const at = (n: number, share: number) => {
      const { asCut } = visibleSplit(readings(n, share), [0]);
      return isUnavailable(asCut) ? Number.POSITIVE_INFINITY : asCut;
    };
    for (const share of [0.5, 0.25])
      for (const [few, many] of [
        [30, 60],
        [60, 120],
        [120, 250],
      ])
        expect(at(few, share)).toBeGreaterThanOrEqual(at(many, share));
    expect(at(120, 0.25)).toBeGreaterThan(at(120, 0.5));
    expect(at(250, 0.1)).toBe(Number.POSITIVE_INFINITY);
  });

  it('says so where there are too few readings, or next to none on one side of the cut', () => {
    expect(visibleSplit(readings(14, 0.5), [0]).halves).toEqual({
      why: 'how a split shows in 14 readings was not simulated',
    });
    const { halves, asCut } = visibleSplit(readings(40, 0.025), [0]);
    expect(isUnavailable(halves)).toBe(false);
    expect(asCut).toEqual({ why: 'how heaps of 3 and 97 % show was not simulated' });
  });
});
