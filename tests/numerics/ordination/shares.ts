import { expect } from 'vitest';

export const sum = (values: ArrayLike<number>) =>
  Array.from(values).reduce((total, value) => total + value, 0);

/** Contributions to each axis and squared cosines of each point are shares of a whole. */
export function expectSharesToSumToOne(
  points: { n: number; contributions: Float64Array; cos2: Float64Array },
  axes: number,
) {
  for (let k = 0; k < axes; k++) {
    let share = 0;
    for (let i = 0; i < points.n; i++) share += points.contributions[i * axes + k];
    expect(share).toBeCloseTo(1, 9);
  }
  for (let i = 0; i < points.n; i++)
    expect(sum(points.cos2.slice(i * axes, (i + 1) * axes))).toBeCloseTo(1, 8);
}
