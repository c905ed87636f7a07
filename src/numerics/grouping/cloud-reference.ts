import { type Condensed, pairCount } from '../dissimilarity/condensed.ts';
import { normalQuantileUpper } from '../foundation/distributions.ts';
import type { Random } from '../foundation/random.ts';
import type { PrincipalCoordinates } from '../ordination/principal-coordinates.ts';
import { oneModeBandwidth } from './one-mode-bandwidth.ts';

/** A table without groups: its dissimilarities, and the drawn coordinates that they come from (row by row). */
export interface Cloud extends Condensed {
  readonly coordinates: Float64Array;
  readonly columns: number;
}

/**
 * How the records lie along each axis.
 *
 * - `box`: evenly between the outermost (Tibshirani, Walther & Hastie 2001, *JRSS B* 63:411, reference b).
 * - `even`: evenly with the spread (standard deviation) of the real ones. Along an axis with long tails the box
 *   is wider than that, and would make the reference looser than the table.
 * - `heap`: as the real ones, smoothed until they form a single heap (Silverman 1981, *JRSS B* 43:97), spread
 *   kept: long tails stay long, only gaps between heaps are gone.
 */
export type CloudShape = 'box' | 'even' | 'heap';

/**
 * A maker of tables that have the spread of a real one but no groups: records are drawn anew along its
 * principal axes, each axis on its own. Axes go together as in the real table, so a long gradient stays long.
 * What the axes leave out is added to every squared distance as a constant.
 *
 * Records of one item keep their likeness: the share of each axis that lies within items is drawn for each
 * record, the rest once an item.
 *
 * @param items item of each record, 0, 1, …
 */
export function cloudMaker(
  axes: PrincipalCoordinates,
  items: ArrayLike<number>,
  shape: CloudShape,
): (random: Random) => Cloud {
  const { n, axes: count, coordinates } = axes;
  const drawers = Array.from({ length: count }, (_, axis) => {
    const values = Float64Array.from({ length: n }, (_, i) => coordinates[i * count + axis]);
    return {
      draw: shape === 'heap' ? heaped(values) : evenly(values, shape === 'box'),
      within: shareWithin(values, items),
    };
  });
  const explained = axes.eigenvalues.reduce((sum, value) => sum + value, 0);
  const rest = (2 * Math.max(0, axes.trace - explained)) / n;
  return (random) => {
    const drawn = new Float64Array(n * count);
    for (const [axis, { draw, within }] of drawers.entries()) {
      const ofItem = new Map<number, number>();
      for (let i = 0; i < n; i++) {
        const item = ofItem.get(items[i]) ?? draw(random);
        ofItem.set(items[i], item);
        const own = within > 0 ? draw(random) * Math.sqrt(within) : 0;
        drawn[i * count + axis] = item * Math.sqrt(1 - within) + own;
      }
    }
    return { n, values: distances(drawn, n, count, rest), coordinates: drawn, columns: count };
  };
}

/** Principal axes have mean 0, so draws of items and records may be scaled and added. */
function evenly(values: Float64Array, overRange: boolean): (random: Random) => number {
  const half = Math.sqrt(3 * variance(values));
  const low = overRange ? values.reduce((least, value) => Math.min(least, value)) : -half;
  const high = overRange ? values.reduce((most, value) => Math.max(most, value)) : half;
  return (random) => low + random.next() * (high - low);
}

/** Of values with mean 0. */
function variance(values: Float64Array): number {
  return values.reduce((sum, value) => sum + (value * value) / values.length, 0);
}

function heaped(values: Float64Array): (random: Random) => number {
  const bandwidth = oneModeBandwidth(values);
  const spread = variance(values);
  const shrink = spread > 0 ? 1 / Math.sqrt(1 + (bandwidth * bandwidth) / spread) : 0;
  return (random) => {
    const value = values[random.integer(values.length)];
    // Half a step above 0, so that the quantile is finite.
    return shrink * (value + bandwidth * normalQuantileUpper(random.next() + 2 ** -54));
  };
}

function distances(points: Float64Array, n: number, columns: number, rest: number): Float64Array {
  const values = new Float64Array(pairCount(n));
  let pair = 0;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      let square = rest;
      for (let c = 0; c < columns; c++) {
        const difference = points[i * columns + c] - points[j * columns + c];
        square += difference * difference;
      }
      values[pair++] = Math.sqrt(square);
    }
  }
  return values;
}

/** Part of the sum of squares that lies within items; 0 where every record is its own item. */
function shareWithin(values: Float64Array, items: ArrayLike<number>): number {
  const sums = new Map<number, { sum: number; count: number }>();
  for (let i = 0; i < values.length; i++) {
    const entry = sums.get(items[i]) ?? { sum: 0, count: 0 };
    sums.set(items[i], { sum: entry.sum + values[i], count: entry.count + 1 });
  }
  if (sums.size === values.length) return 0;
  let total = 0;
  let within = 0;
  const mean = values.reduce((sum, value) => sum + value / values.length, 0);
  for (let i = 0; i < values.length; i++) {
    const entry = sums.get(items[i]) ?? { sum: 0, count: 1 };
    const fromItem = values[i] - entry.sum / entry.count;
    total += (values[i] - mean) * (values[i] - mean);
    within += fromItem * fromItem;
  }
  return total > 0 ? Math.min(1, within / total) : 0;
}
