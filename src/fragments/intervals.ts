import { greatest, least } from '../numerics/foundation/lists.ts';

/** A number known to lie between two ends; NaN ends stand for no number at all. */
export type Interval = readonly [low: number, high: number];

/** Arithmetic on intervals: every result holds each value that the operands allow (Moore 1966, chapter 3). */

export const NOTHING: Interval = [Number.NaN, Number.NaN];

export function isNothing([low]: Interval): boolean {
  return Number.isNaN(low);
}

/** 10 / x, which turns a count per cm into a spacing in mm and back; ends swap, 0 and infinity change places. */
export function tenOver([low, high]: Interval): Interval {
  return [high === Infinity ? 0 : 10 / high, low <= 0 ? Infinity : 10 / low];
}

export function difference(a: Interval, b: Interval): Interval {
  return [a[0] - b[1], a[1] - b[0]];
}

/** Product of intervals that lie at or above 0. */
export function product(a: Interval, b: Interval): Interval {
  return [finiteProduct(a[0], b[0]), finiteProduct(a[1], b[1])];
}

/** Quotient of two intervals, the divisor above 0. */
export function quotient(a: Interval, b: Interval): Interval {
  const ends = [a[0] / b[0], a[0] / b[1], a[1] / b[0], a[1] / b[1]].filter((end) => !Number.isNaN(end));
  return ends.length === 0 ? NOTHING : [least(ends), greatest(ends)];
}

/** 0 times an open end is 0: an element without width covers nothing, however many there are. */
function finiteProduct(a: number, b: number): number {
  return a === 0 || b === 0 ? 0 : a * b;
}
