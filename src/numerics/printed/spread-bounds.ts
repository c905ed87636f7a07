import type { Range } from './range.ts';

/** What is known, as ranges of print; everything but n may be unknown. */
export interface SpreadEvidence {
  readonly n: number;
  readonly min?: Range;
  readonly max?: Range;
  readonly mean?: Range;
}

/**
 * Between which values must a standard deviation lie, whether it was taken over n - 1 or over n? Undefined
 * where the evidence bounds nothing.
 *
 * Above: variance over n is at most (max - mean)(mean - min) (Bhatia & Davis 2000, Am. Math. Mon. 107:353,
 * theorem 1), without a mean at most a quarter of the squared range (Popoviciu 1935). Below: the two ends
 * alone give a sum of squares of range^2 / 2; with a mean the other n - 2 readings share what is left of it
 * equally (common practice, no source; the least by Cauchy and Schwarz).
 */
export function spreadBounds({ n, min, max, mean }: SpreadEvidence): Range | undefined {
  if (min === undefined || max === undefined || n < 2) return undefined;
  const widest = max.high - min.low;
  if (widest < 0) return undefined;
  const narrowest = Math.max(0, max.low - min.high);
  const most = mean === undefined ? (widest * widest) / 4 : largestProduct(min.low, max.high, mean);
  const least =
    mean === undefined || n === 2
      ? (narrowest * narrowest) / 2
      : Math.max((narrowest * narrowest) / 2, leastSquares(n, min, max, mean));
  return {
    low: Math.sqrt(least / n) * (1 - 1e-9),
    high: Math.sqrt((Math.max(0, most) * n) / (n - 1)) * (1 + 1e-9),
  };
}

/** Largest (max - mean)(mean - min) with the mean anywhere within its print. */
function largestProduct(min: number, max: number, mean: Range): number {
  const best = Math.min(Math.max((min + max) / 2, mean.low), mean.high);
  return (max - best) * (best - min);
}

/**
 * Least a^2 + b^2 + (a + b)^2 / (n - 2) with a = min - mean, b = max - mean anywhere within their ranges:
 * a convex function, found by settling one after the other until nothing moves.
 */
function leastSquares(n: number, min: Range, max: Range, mean: Range): number {
  const within = (value: number, low: number, high: number) => Math.min(Math.max(value, low), high);
  const lowA = min.low - mean.high;
  const highA = min.high - mean.low;
  const lowB = max.low - mean.high;
  const highB = max.high - mean.low;
  let a = within(0, lowA, highA);
  let b = within(0, lowB, highB);
  for (let turn = 0; turn < 100; turn++) {
    a = within(-b / (n - 1), lowA, highA);
    b = within(-a / (n - 1), lowB, highB);
  }
  return a * a + b * b + ((a + b) * (a + b)) / (n - 2);
}
