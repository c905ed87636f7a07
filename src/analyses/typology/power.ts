import { dip } from '../../numerics/modes/dip.ts';
import { standardNormal } from '../../numerics/modes/mixture-parts.ts';
import { quantileSorted } from '../../numerics/quantile.ts';
import type { Random } from '../../numerics/random.ts';
import type { Unavailable } from '../contract.ts';

/** Distances between two equal heaps that are tried, in standard deviations within a heap. */
const DISTANCES = [2, 2.5, 3, 3.5, 4, 4.5, 5, 6, 8] as const;
const TRIALS = 100;
const POWER = 0.8;

/**
 * How far apart must two equal heaps of readings lie for the dip to find them in 8 samples of 10 of this
 * size, at 5 %? In standard deviations within a heap, by simulation; needs 12 readings.
 */
export function smallestVisibleSplit(n: number, random: Random): number | Unavailable {
  if (n < 12) return { why: `with ${n} readings no split could be seen` };
  const size = Math.min(n, 500);
  const draw = (make: (i: number) => number) =>
    dip(Float64Array.from({ length: size }, (_, i) => make(i)).sort());
  const none = Float64Array.from({ length: 399 }, () => draw(() => random.next())).sort();
  const limit = quantileSorted(none, 0.95);
  for (const distance of DISTANCES) {
    let seen = 0;
    for (let trial = 0; trial < TRIALS; trial++)
      if (draw((i) => standardNormal(random) + (i % 2 === 0 ? 0 : distance)) > limit) seen++;
    if (seen / TRIALS >= POWER) return distance;
  }
  return { why: `with ${n} readings even heaps 8 standard deviations apart could be missed` };
}
