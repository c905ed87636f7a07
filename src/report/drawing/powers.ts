import { ln, pow } from '../../numerics/foundation/elementary.ts';

/** Logarithm to ten, the same on every engine. */
export function log10(value: number): number {
  const found = ln(value) / Math.LN10;
  const whole = Math.round(found);
  return Math.abs(found - whole) < 1e-12 ? whole : found;
}

export function pow10(power: number): number {
  return pow(10, power);
}
