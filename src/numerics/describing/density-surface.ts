import { exp, pow } from '../foundation/elementary.ts';
import { quantileSorted } from './quantile.ts';

export interface DensitySurface {
  /** Places of the columns and of the rows of `heights`, ascending. */
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** Density at [row of y][column of x]; per unit of x and of y. */
  readonly heights: readonly (readonly number[])[];
}

/**
 * Density of points in a plane by a product of normal kernels, on a regular grid that reaches three bandwidths beyond
 * the points (Venables & Ripley 2002, Modern Applied Statistics with S, section 5.6). Checked against MASS::kde2d of R.
 *
 * @param bandwidths standard deviations of the kernels; by the rule of thumb of each side where not given.
 */
export function densitySurface(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  size: number,
  bandwidths: readonly [number, number] = [ruleOfThumb(x), ruleOfThumb(y)],
): DensitySurface {
  const columns = gridOf(x, size, bandwidths[0]);
  const rows = gridOf(y, size, bandwidths[1]);
  const across = kernels(columns, x, bandwidths[0]);
  const up = kernels(rows, y, bandwidths[1]);
  const n = x.length;
  const heights = up.map((one) =>
    across.map((other) => {
      let sum = 0;
      for (let i = 0; i < n; i++) sum += one[i] * other[i];
      return sum / n;
    }),
  );
  return { x: columns, y: rows, heights };
}

/**
 * Heights above which the densest parts of the plane hold these shares of the points (highest density regions:
 * Hyndman 1996, Am. Stat. 50:120, its section 3.2), read off at the grid place nearest to each point.
 *
 * @param shares between 0 and 1.
 */
export function heightsHolding(
  surface: DensitySurface,
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  shares: readonly number[],
): readonly number[] {
  const own = Float64Array.from(x, (value, i) => {
    const row = surface.heights[nearest(surface.y, y[i])];
    return row[nearest(surface.x, value)];
  }).sort();
  return shares.map((share) => quantileSorted(own, 1 - share));
}

/** 1.06 of the lesser of standard deviation and interquartile range / 1.34, by n to the fifth root (Silverman 1986, p. 45). */
function ruleOfThumb(values: ArrayLike<number>): number {
  const sorted = Float64Array.from(values).sort();
  const mean = sorted.reduce((sum, value) => sum + value, 0) / sorted.length;
  const squares = sorted.reduce((sum, value) => sum + (value - mean) * (value - mean), 0);
  const deviation = Math.sqrt(squares / Math.max(1, sorted.length - 1));
  const middle = (quantileSorted(sorted, 0.75) - quantileSorted(sorted, 0.25)) / 1.34;
  const spread = middle > 0 ? Math.min(deviation, middle) : deviation;
  return spread > 0 ? 1.06 * spread * pow(sorted.length, -0.2) : 1;
}

const REACH = 3;

function gridOf(values: ArrayLike<number>, size: number, bandwidth: number): number[] {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < values.length; i++) {
    if (values[i] < low) low = values[i];
    if (values[i] > high) high = values[i];
  }
  const from = low - REACH * bandwidth;
  const step = (high - low + 2 * REACH * bandwidth) / (size - 1);
  return Array.from({ length: size }, (_, place) => from + place * step);
}

function kernels(grid: readonly number[], values: ArrayLike<number>, bandwidth: number): Float64Array[] {
  const scale = 1 / (bandwidth * Math.sqrt(2 * Math.PI));
  return grid.map((at) =>
    Float64Array.from(values, (value) => {
      const far = (at - value) / bandwidth;
      return scale * exp((-far * far) / 2);
    }),
  );
}

function nearest(grid: readonly number[], value: number): number {
  const step = grid[1] - grid[0];
  return Math.max(0, Math.min(grid.length - 1, Math.round((value - grid[0]) / step)));
}
