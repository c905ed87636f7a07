import { expect } from 'vitest';

export interface MatrixRows {
  readonly rows: number;
  readonly columns: number;
  readonly values: readonly number[];
}

/**
 * Expects coordinates to be equal axis by axis, each axis free to point either way: signs of axes are
 * arbitrary, and every package has its own.
 */
export function expectUpToSign(
  ours: ArrayLike<number>,
  axes: number,
  theirs: MatrixRows,
  tolerance: number,
  most = theirs.columns,
): void {
  expect(ours.length / axes).toBe(theirs.rows);
  for (let k = 0; k < Math.min(axes, most); k++) {
    let same = 0;
    for (let i = 0; i < theirs.rows; i++) same += ours[i * axes + k] * theirs.values[i * theirs.columns + k];
    const sign = same < 0 ? -1 : 1;
    for (let i = 0; i < theirs.rows; i++) {
      const expected = sign * theirs.values[i * theirs.columns + k];
      expect(Math.abs(ours[i * axes + k] - expected), `row ${i}, axis ${k}`).toBeLessThan(tolerance);
    }
  }
}

export function expectClose(
  ours: ArrayLike<number>,
  theirs: ArrayLike<number>,
  tolerance: number,
  count = theirs.length,
): void {
  for (let k = 0; k < count; k++) expect(Math.abs(ours[k] - theirs[k]), `entry ${k}`).toBeLessThan(tolerance);
}

/** Column j of a matrix given by rows. */
export function columnOf(matrix: MatrixRows, j: number): number[] {
  return Array.from({ length: matrix.rows }, (_, i) => matrix.values[i * matrix.columns + j]);
}

/** The value, or a failed test that says why there is none. */
export function available<T extends object>(value: T | { readonly why: string }): T {
  if ('why' in value) throw new Error(String(value.why));
  return value as T;
}
