import { greatest } from '../foundation/lists.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { convexMinorant, type Spans, selfConsistent } from './interval-ascent.ts';

/** Where the mass of a distribution lies that is only seen through intervals. */
export interface IntervalDistribution {
  /** Innermost intervals, ascending: the only places where the estimate can put mass. */
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** Share of the distribution in each, summing to 1; where inside it lies cannot be told. */
  readonly share: Float64Array;
  readonly iterations: number;
}

/** Where no share moves by more than this in a self-consistent step, or none is pulled up by more, the maximum is found. */
const STILL = 1e-12;
const LEAST_PULL = 1e-11;
const MOST_STEPS = 20_000;

/**
 * Non-parametric maximum-likelihood distribution from readings that are intervals, exact values among
 * them (low = high) and open ends (±Infinity): Turnbull 1976, J. R. Stat. Soc. B 38:290, by his
 * self-consistent step and the convex minorant in turn (Wellner & Zhan 1997), until no share moves by more than
 * 1e-12 or the log-likelihood of a reading is within 1e-11 of its maximum (Gentleman & Geyer 1994). Intervals are
 * closed. A step takes time in proportion to the number of different intervals.
 *
 * @param onStep called at every step; may throw to cancel.
 */
export function intervalDistribution(
  low: ArrayLike<number>,
  high: ArrayLike<number>,
  onStep: () => void = () => undefined,
): IntervalDistribution | Unavailable {
  if (low.length === 0) return { why: 'no reading' };
  const places = innermostIntervals(low, high);
  const spans = coveredPlaces(low, high, places);
  let share: Float64Array = new Float64Array(places.length).fill(1 / places.length);
  let iterations = 0;
  for (; iterations < MOST_STEPS; iterations++) {
    onStep();
    const next = selfConsistent(share, spans);
    const still = farthest(share, next.share) < STILL || greatest(next.pull) < 1 + LEAST_PULL;
    share = next.share;
    if (still) break;
    share = convexMinorant(share, spans);
  }
  return {
    low: Float64Array.from(places, (place) => place.low),
    high: Float64Array.from(places, (place) => place.high),
    share,
    iterations,
  };
}

function coveredPlaces(
  low: ArrayLike<number>,
  high: ArrayLike<number>,
  places: readonly { readonly low: number; readonly high: number }[],
): Spans {
  const counts = new Map<number, number>();
  for (let i = 0; i < low.length; i++) {
    const first = firstWhere(places.length, (j) => places[j].low >= low[i]);
    const last = firstWhere(places.length, (j) => places[j].high > high[i]) - 1;
    const key = first * places.length + last;
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  const keys = [...counts.keys()];
  return {
    first: Int32Array.from(keys, (key) => Math.floor(key / places.length)),
    last: Int32Array.from(keys, (key) => key % places.length),
    count: Float64Array.from(counts.values()),
    n: low.length,
  };
}

/** The first of `count` places for which a condition holds that holds of all after it too. */
function firstWhere(count: number, holds: (place: number) => boolean): number {
  let [from, to] = [0, count];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (holds(middle)) to = middle;
    else from = middle + 1;
  }
  return from;
}

function farthest(before: Float64Array, after: Float64Array): number {
  let moved = 0;
  for (let j = 0; j < before.length; j++) moved = Math.max(moved, Math.abs(after[j] - before[j]));
  return moved;
}

/** Smallest interval that must hold the given quantile of the estimated distribution. */
export function intervalQuantile(
  distribution: IntervalDistribution,
  probability: number,
): { low: number; high: number } {
  let below = 0;
  for (let j = 0; j < distribution.share.length; j++) {
    below += distribution.share[j];
    if (below > probability + 1e-9) return { low: distribution.low[j], high: distribution.high[j] };
    if (below > probability - 1e-9) {
      // The curve is level at exactly this height: anything up to the next mass serves.
      const next = nextMass(distribution, j + 1);
      return { low: distribution.low[j], high: next === -1 ? distribution.high[j] : distribution.high[next] };
    }
  }
  const last = distribution.share.length - 1;
  return { low: distribution.low[last], high: distribution.high[last] };
}

function nextMass(distribution: IntervalDistribution, from: number): number {
  for (let j = from; j < distribution.share.length; j++) if (distribution.share[j] > 1e-9) return j;
  return -1;
}

/** Intervals from a lower end to the nearest upper end with no other end between. */
function innermostIntervals(low: ArrayLike<number>, high: ArrayLike<number>) {
  const ends = Array.from(low, (at) => ({ at, lower: true }))
    .concat(Array.from(high, (at) => ({ at, lower: false })))
    // At one place lower ends come first, since intervals are closed and touch there.
    .sort((a, b) => (a.at === b.at ? Number(b.lower) - Number(a.lower) : a.at - b.at));
  const places: { low: number; high: number }[] = [];
  ends.forEach((end, i) => {
    if (i > 0 && !end.lower && ends[i - 1].lower) places.push({ low: ends[i - 1].at, high: end.at });
  });
  return places;
}
