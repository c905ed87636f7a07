import { type Condensed, pairCount } from '../condensed.ts';
import type { PrincipalCoordinates } from '../principal-coordinates.ts';
import type { Random } from '../random.ts';

/** The reference's dissimilarities, and the drawn coordinates that they come from (row by row). */
export interface BoxReference extends Condensed {
  readonly coordinates: Float64Array;
  readonly columns: number;
}

/**
 * Dissimilarities of a table with no groups but the same spread: records drawn evenly from the box that
 * the real ones fill along their principal axes (Tibshirani, Walther & Hastie 2001, *JRSS B* 63:411,
 * reference b). Axes go together as in the real table, so a long gradient stays long; only gaps between
 * heaps are gone. What the axes leave out is added to every squared distance as a constant.
 *
 * Records of one item keep their likeness: the share of each axis that lies within items is drawn for each
 * record, the rest once an item.
 *
 * @param items item of each record, 0, 1, …
 */
export function boxReference(
  axes: PrincipalCoordinates,
  items: ArrayLike<number>,
  random: Random,
): BoxReference {
  const { n, axes: count, coordinates } = axes;
  const drawn = new Float64Array(n * count);
  for (let axis = 0; axis < count; axis++) {
    const values = Float64Array.from({ length: n }, (_, i) => coordinates[i * count + axis]);
    let low = values[0];
    let high = values[0];
    for (const value of values) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    const within = shareWithin(values, items);
    const fromItem = (high - low) * Math.sqrt(1 - within);
    const fromRecord = (high - low) * Math.sqrt(within);
    const itemDraws = new Map<number, number>();
    for (let i = 0; i < n; i++) {
      let item = itemDraws.get(items[i]);
      if (item === undefined) {
        item = random.next();
        itemDraws.set(items[i], item);
      }
      drawn[i * count + axis] = item * fromItem + (within > 0 ? random.next() * fromRecord : 0);
    }
  }
  const explained = axes.eigenvalues.reduce((sum, value) => sum + value, 0);
  const rest = (2 * Math.max(0, axes.trace - explained)) / n;
  const values = new Float64Array(pairCount(n));
  let pair = 0;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      let square = rest;
      for (let axis = 0; axis < count; axis++) {
        const difference = drawn[i * count + axis] - drawn[j * count + axis];
        square += difference * difference;
      }
      values[pair++] = Math.sqrt(square);
    }
  }
  return { n, values, coordinates: drawn, columns: count };
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
