import type { Unavailable } from '../foundation/unavailable.ts';

/** The nine sample quantiles of Hyndman & Fan 1996, Am. Stat. 50:361, by their numbers there. */
export type QuantileType = 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9;

/**
 * The value below which a given share of a sample lies.
 *
 * @param values any order; gaps (NaN) are left out, ±Infinity counts as a value.
 * @param probability the share, 0 to 1.
 * @param type Hyndman & Fan's number; 7 by default (linear between order statistics, h = (n - 1) p).
 * @returns the quantile, or why there is none (no value left). One value is its own every quantile.
 *
 * Example: quantile([2.1, 3.7, 4.2, 5.8, 6.3, 7.9, 8.4, 9.1], 0.25) is 4.075.
 */
export function quantile(
  values: ArrayLike<number>,
  probability: number,
  type: QuantileType = 7,
): number | Unavailable {
  const sorted = sortedValues(values);
  if (sorted.length === 0) return { why: 'no value to take a quantile of' };
  return quantileSorted(sorted, probability, type);
}

/** The values without gaps, smallest first. */
export function sortedValues(values: ArrayLike<number>): Float64Array {
  return Float64Array.from(values)
    .filter((value) => !Number.isNaN(value))
    .sort();
}

/** As `quantile`, for values that are already sorted, without gaps, at least one. */
export function quantileSorted(
  sorted: ArrayLike<number>,
  probability: number,
  type: QuantileType = 7,
): number {
  if (!(probability >= 0 && probability <= 1)) {
    throw new RangeError(`quantile: the probability must be 0 to 1, not ${probability}`);
  }
  const { whole, part } = position(sorted.length, probability, type);
  const at = (rank: number) => sorted[Math.min(Math.max(rank, 1), sorted.length) - 1];
  const lower = at(whole);
  if (part === 0) return lower;
  const upper = at(whole + 1);
  if (part === 1 || lower === upper) return upper;
  return (1 - part) * lower + part * upper;
}

/** Shares that differ from a whole rank by rounding alone are that rank, as in R. */
const FUZZ = 4 * Number.EPSILON;

/** Rank (1 = smallest) and the share of the way to the next rank: Hyndman & Fan's j and gamma. */
function position(n: number, p: number, type: QuantileType): { whole: number; part: number } {
  if (type === 1 || type === 2 || type === 3) {
    const exact = type === 3 ? n * p - 0.5 : n * p;
    const whole = Math.floor(exact);
    const between = exact > whole;
    if (type === 1) return { whole, part: between ? 1 : 0 };
    if (type === 2) return { whole, part: between ? 1 : 0.5 };
    return { whole, part: between || Math.abs(whole % 2) === 1 ? 1 : 0 };
  }
  if (type === 7) {
    const exact = 1 + (n - 1) * p;
    const whole = Math.floor(exact);
    return { whole, part: exact - whole };
  }
  const [a, b] = plottingConstants(type);
  const exact = a + p * (n + 1 - a - b);
  const whole = Math.floor(exact + FUZZ);
  const rest = exact - whole;
  return { whole, part: Math.abs(rest) < FUZZ ? 0 : rest };
}

/** alpha and beta of p(k) = (k - alpha) / (n + 1 - alpha - beta). */
function plottingConstants(type: 4 | 5 | 6 | 8 | 9): readonly [a: number, b: number] {
  if (type === 4) return [0, 1];
  if (type === 5) return [0.5, 0.5];
  if (type === 6) return [0, 0];
  return type === 8 ? [1 / 3, 1 / 3] : [3 / 8, 3 / 8];
}
