import { describe, expect, it } from 'vitest';
import { visibleSplit } from '../../../src/analyses/typology/power.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { isUnavailable } from '../../../src/numerics/foundation/unavailable.ts';
import { reference } from '../../references/reference.ts';

/** Powers simulated with R `diptest` and `mclust`: tests/references/scripts/split-power.R. */
const { powers } = reference<{
  readonly powers: readonly {
    readonly n: number;
    readonly share: number;
    readonly distances: readonly number[];
    readonly dip: readonly number[];
    readonly ratio: readonly number[];
  }[];
}>('split-power');

/** Three standard errors of a share near 0.8 over our 100 or 40 samples, and over those of R. */
const NOISE = { dip: 0.13, ratio: 0.21 };

/** Readings of which this share lies below the cut at 0. */
const readings = (n: number, share: number) =>
  Array.from({ length: n }, (_, i) => (i < Math.round(share * n) ? -1 - i / n : 1 + i / n));

describe('the smallest split that could have been seen', () => {
  it.each(powers)('of $n readings, $share below the cut, is where R finds it in 8 of 10', (one) => {
    const { n, share, distances } = one;
    const found = visibleSplit(readings(n, share), [0], createRandom(7));
    expect(found.share).toBeCloseTo(share, 10);
    for (const test of ['dip', 'ratio'] as const) {
      const at = found[test];
      const place = isUnavailable(at) ? distances.length : distances.indexOf(at);
      expect(place).toBeGreaterThanOrEqual(0);
      // There R finds it, and one step nearer it does not: each within the noise of both simulations.
      if (place < distances.length) expect(one[test][place]).toBeGreaterThan(0.8 - NOISE[test]);
      if (place > 0) expect(one[test][place - 1]).toBeLessThan(0.8 + NOISE[test]);
    }
  });

  it('says so where there are too few readings, or next to none on one side of the cut', () => {
    expect(visibleSplit(readings(11, 0.5), [0], createRandom(1)).halves).toEqual({
      why: 'with 11 readings no split could be seen',
    });
    const { halves, dip } = visibleSplit(readings(40, 0.025), [0], createRandom(1));
    expect(isUnavailable(halves)).toBe(false);
    expect(dip).toEqual({ why: 'the rules leave fewer than two readings on one side' });
  });
});
