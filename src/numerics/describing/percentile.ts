import type { Unavailable } from '../foundation/unavailable.ts';

export interface PercentileBounds {
  /** Share of the known values that lie surely below the reading. */
  readonly low: number;
  /** Share of the known values that may lie below it or be equal to it. */
  readonly high: number;
  readonly n: number;
  /** Surely below or above every known value. */
  readonly outside: 'below' | 'above' | null;
}

/**
 * Where a reading stands among known ones, all of them intervals: its percentile is at least `low` and
 * at most `high`. Exact readings give the share below and the share at or below, so that ties show as a
 * width. Gaps are left out; ends may be open.
 */
export function percentileBounds(
  low: number,
  high: number,
  knownLow: ArrayLike<number>,
  knownHigh: ArrayLike<number>,
): PercentileBounds | Unavailable {
  let n = 0;
  let surelyBelow = 0;
  let surelyAbove = 0;
  for (let i = 0; i < knownLow.length; i++) {
    if (Number.isNaN(knownLow[i])) continue;
    n++;
    if (knownHigh[i] < low) surelyBelow++;
    if (knownLow[i] > high) surelyAbove++;
  }
  if (n === 0) return { why: 'no known value to compare with' };
  const outside = surelyAbove === n ? 'below' : surelyBelow === n ? 'above' : null;
  return { low: surelyBelow / n, high: 1 - surelyAbove / n, n, outside };
}

/** Known intervals put in order once, for readings that are asked for often. */
export interface KnownEnds {
  readonly low: Float64Array;
  readonly high: Float64Array;
}

/** The ends of the intervals in order, gaps left out. */
export function knownEnds(low: ArrayLike<number>, high: ArrayLike<number>): KnownEnds {
  const known = (values: ArrayLike<number>) =>
    Float64Array.from(values).filter((value) => !Number.isNaN(value));
  return { low: known(low).sort(), high: known(high).sort() };
}

/** As `percentileBounds`, from ends in order. */
export function percentileAmong(low: number, high: number, known: KnownEnds): PercentileBounds | Unavailable {
  const n = known.low.length;
  if (n === 0) return { why: 'no known value to compare with' };
  const surelyBelow = countBelow(known.high, low);
  const surelyAbove = n - countBelow(known.low, high, true);
  const outside = surelyAbove === n ? 'below' : surelyBelow === n ? 'above' : null;
  return { low: surelyBelow / n, high: 1 - surelyAbove / n, n, outside };
}

/** How many of the ascending values are below this one, or equal to it as well. */
function countBelow(sorted: Float64Array, value: number, orEqual = false): number {
  let from = 0;
  let to = sorted.length;
  while (from < to) {
    const middle = (from + to) >> 1;
    if (sorted[middle] < value || (orEqual && sorted[middle] === value)) from = middle + 1;
    else to = middle;
  }
  return from;
}
