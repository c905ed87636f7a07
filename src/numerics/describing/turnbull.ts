import type { Unavailable } from '../foundation/unavailable.ts';

/** Where the mass of a distribution lies that is only seen through intervals. */
export interface IntervalDistribution {
  /** Innermost intervals, ascending: the only places where the estimate can put mass. */
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** Share of the distribution in each, summing to 1; where inside it lies cannot be told. */
  readonly share: Float64Array;
  readonly iterations: number;
}

/**
 * Non-parametric maximum-likelihood distribution from readings that are intervals, exact values among
 * them (low = high) and open ends (±Infinity): Turnbull 1976, J. R. Stat. Soc. B 38:290, by its
 * self-consistent iteration, run until no share moves by more than 1e-12. Intervals are closed.
 */
export function intervalDistribution(
  low: ArrayLike<number>,
  high: ArrayLike<number>,
): IntervalDistribution | Unavailable {
  const n = low.length;
  if (n === 0) return { why: 'no reading' };
  const places = innermostIntervals(low, high);
  const m = places.length;
  const covers = Array.from({ length: n }, (_, i) => {
    const first = places.findIndex((place) => place.low >= low[i]);
    let last = first;
    while (last + 1 < m && places[last + 1].high <= high[i]) last++;
    return [first, last] as const;
  });
  let share = new Float64Array(m).fill(1 / m);
  let iterations = 0;
  for (; iterations < 100_000; iterations++) {
    const next = new Float64Array(m);
    for (const [first, last] of covers) {
      let total = 0;
      for (let j = first; j <= last; j++) total += share[j];
      for (let j = first; j <= last; j++) next[j] += share[j] / total / n;
    }
    let moved = 0;
    for (let j = 0; j < m; j++) moved = Math.max(moved, Math.abs(next[j] - share[j]));
    share = next;
    if (moved < 1e-12) break;
  }
  return {
    low: Float64Array.from(places, (place) => place.low),
    high: Float64Array.from(places, (place) => place.high),
    share,
    iterations,
  };
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
  const ends = [
    ...Array.from(low, (at) => ({ at, lower: true })),
    ...Array.from(high, (at) => ({ at, lower: false })),
    // At one place lower ends come first, since intervals are closed and touch there.
  ].sort((a, b) => (a.at === b.at ? Number(b.lower) - Number(a.lower) : a.at - b.at));
  const places: { low: number; high: number }[] = [];
  ends.forEach((end, i) => {
    if (i > 0 && !end.lower && ends[i - 1].lower) places.push({ low: ends[i - 1].at, high: end.at });
  });
  return places;
}
