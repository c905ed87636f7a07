import { expect } from 'vitest';
import type { Unavailable } from '../../src/numerics/foundation/unavailable.ts';

/** Fails unless `computed` equals `expected` within a relative tolerance (absolute below 1e-300). */
export function expectClose(computed: number, expected: number, relative = 1e-9): void {
  const error = Math.abs(computed - expected) / Math.max(Math.abs(expected), 1e-300);
  if (computed === expected) return;
  expect(error, `computed ${computed}, expected ${expected}`).toBeLessThan(relative);
}

/** The value itself; fails with the reason when there is none. */
export function available<T>(value: T | Unavailable): T {
  if (typeof value === 'object' && value !== null && 'why' in value) {
    throw new Error(`expected a value, but: ${String(value.why)}`);
  }
  return value as T;
}
