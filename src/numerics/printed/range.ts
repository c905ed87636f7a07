import { greatest, least } from '../foundation/lists.ts';
import { numberOf, type PrintedNumber, unitOf } from './printed-number.ts';

/**
 * What a computed value may have been, given its print, and plain interval arithmetic on that. Every
 * result holds each value that the operands allow, ends included, so a check by ranges is never too strict.
 */
export interface Range {
  readonly low: number;
  readonly high: number;
}

/** `rounded`: to the nearest, ties either way; `any`: rounded or cut off. */
export type PrintHabit = 'rounded' | 'any';

/** Binary fractions miss decimal ends by less than this share. */
const NOISE = 1e-12;

export function printRange(printed: PrintedNumber, habit: PrintHabit): Range {
  const step = unitOf(printed);
  const value = numberOf(printed);
  const outward = habit === 'any' ? step : step / 2;
  const noise = NOISE * (Math.abs(value) + step);
  if (printed.digits === 0n) return { low: -outward - noise, high: outward + noise };
  return value > 0
    ? { low: value - step / 2 - noise, high: value + outward + noise }
    : { low: value - outward - noise, high: value + step / 2 + noise };
}

export function exactly(value: number): Range {
  return { low: value, high: value };
}

export function overlap(a: Range, b: Range): boolean {
  const noise = NOISE * Math.max(finite(a.low), finite(a.high), finite(b.low), finite(b.high));
  return a.low <= b.high + noise && b.low <= a.high + noise;
}

function finite(value: number): number {
  return Number.isFinite(value) ? Math.abs(value) : 0;
}

export function plus(a: Range, b: Range): Range {
  return { low: a.low + b.low, high: a.high + b.high };
}

export function minus(a: Range, b: Range): Range {
  return { low: a.low - b.high, high: a.high - b.low };
}

export function times(a: Range, b: Range): Range {
  const ends = [a.low * b.low, a.low * b.high, a.high * b.low, a.high * b.high].map(noughtTimesInfinity);
  return { low: least(ends), high: greatest(ends) };
}

/** Unbounded where the divisor may be 0. */
export function over(a: Range, b: Range): Range {
  if (b.low <= 0 && b.high >= 0) return { low: -Infinity, high: Infinity };
  return times(a, { low: 1 / b.high, high: 1 / b.low });
}

export function size(a: Range): Range {
  const ends = [Math.abs(a.low), Math.abs(a.high)];
  return { low: a.low <= 0 && a.high >= 0 ? 0 : least(ends), high: greatest(ends) };
}

export function square(a: Range): Range {
  const { low, high } = size(a);
  return { low: low * low, high: high * high };
}

/** What lies below 0 is cut off. */
export function root(a: Range): Range {
  return { low: Math.sqrt(Math.max(0, a.low)), high: Math.sqrt(Math.max(0, a.high)) };
}

export function total(ranges: readonly Range[]): Range {
  return ranges.reduce(plus, exactly(0));
}

function noughtTimesInfinity(product: number): number {
  return Number.isNaN(product) ? 0 : product;
}

/** Both ends times a number from 0. */
export function scaled({ low, high }: Range, by: number): Range {
  return { low: low * by, high: high * by };
}
