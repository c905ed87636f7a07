import { quantileSorted } from '../../numerics/describing/quantile.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { dip } from '../../numerics/modes/dip.ts';
import { type GaussianPart, sampleMixture } from '../../numerics/modes/mixture-parts.ts';
import type { Unavailable } from '../contract.ts';
import type { Visible } from './split-found.ts';
import { likelihoodRatio } from './two-parts.ts';

/** Distances between two heaps that are tried, in standard deviations within a heap. */
const DISTANCES: readonly number[] = [1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 6, 8];
const POWER = 0.8;
const FEWEST = 12;
/** More readings than this would take long, and see nothing that so many do not. */
const MOST = 500;

/**
 * What split could have been seen at all with so many readings? In standard deviations within a heap, by
 * simulation: the limit of each test from samples of one kind (even for the dip, its worst case; Gaussian for
 * the ratio), the distance by halving the list of distances, since a wider gap is never harder to see.
 *
 * @param cuts where the rules part the values; the cut that parts them most evenly counts.
 */
export function visibleSplit(values: ArrayLike<number>, cuts: readonly number[], random: Random): Visible {
  const n = values.length;
  const share = n === 0 ? 0 : Math.max(0, ...cuts.map((cut) => smallerShare(values, cut)));
  if (n < FEWEST) {
    const why = { why: `with ${n} readings no split could be seen` };
    return { share, halves: why, dip: why, ratio: why };
  }
  const size = Math.min(n, MOST);
  const sorted = (sample: Float64Array) => dip(sample.sort());
  const even = () => Float64Array.from({ length: size }, () => random.next());
  const limit = limitOf(399, () => sorted(even()));
  const single: readonly GaussianPart[] = [{ share: 1, mean: 0, sd: 1 }];
  const byDip = (part: number) =>
    smallest(n, 100, limit, (distance) => sorted(sampleMixture(heaps(part, distance), size, random)));
  const halves = byDip(0.5);
  const ratio = (sample: Float64Array) => likelihoodRatio(sample, QUICK) ?? 0;
  return {
    share,
    halves,
    // Heaps of which one holds next to nothing cannot be seen as such.
    dip: share * n < 2 ? TOO_SMALL : byDip(share),
    ratio:
      share * n < 2
        ? TOO_SMALL
        : smallest(
            n,
            40,
            limitOf(99, () => ratio(sampleMixture(single, size, random))),
            (distance) => ratio(sampleMixture(heaps(share, distance), size, random)),
          ),
  };
}

const QUICK = 1e-6;
const TOO_SMALL = { why: 'the rules leave fewer than two readings on one side' };

function smallerShare(values: ArrayLike<number>, cut: number): number {
  const below = Array.from(values).filter((value) => value < cut).length / values.length;
  return Math.min(below, 1 - below);
}

function heaps(share: number, distance: number): readonly GaussianPart[] {
  return [
    { share, mean: 0, sd: 1 },
    { share: 1 - share, mean: distance, sd: 1 },
  ];
}

function limitOf(draws: number, draw: () => number): number {
  return quantileSorted(Float64Array.from({ length: draws }, draw).sort(), 0.95);
}

function smallest(
  n: number,
  trials: number,
  limit: number,
  statisticAt: (distance: number) => number,
): number | Unavailable {
  const found = (distance: number) => {
    let seen = 0;
    for (let trial = 0; trial < trials; trial++) if (statisticAt(distance) > limit) seen++;
    return seen / trials >= POWER;
  };
  let [low, high] = [0, DISTANCES.length];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (found(DISTANCES[middle])) high = middle;
    else low = middle + 1;
  }
  return (
    DISTANCES[low] ?? {
      why: `with ${n} readings even heaps ${DISTANCES.at(-1)} standard deviations apart could be missed`,
    }
  );
}
