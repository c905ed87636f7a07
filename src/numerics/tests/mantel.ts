import { type Condensed, condensedIndex } from '../dissimilarity/condensed.ts';
import { midranks } from '../foundation/ranks.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { type PermutationOptions, type PermutationTest, permutationTest } from '../resampling/permutation.ts';

export interface MantelTest extends PermutationTest {
  /** Correlation of the two sets of distances, -1 to 1. */
  readonly statistic: number;
  readonly n: number;
}

export interface MantelOptions extends PermutationOptions {
  /** `rank`: Spearman's, `linear`: Pearson's. */
  readonly correlation?: 'linear' | 'rank';
  /** Distances whose part is taken out of both sides first (partial test). */
  readonly apartFrom?: Condensed;
}

/**
 * Do objects that are far apart in one way lie far apart in another? Correlation of two distance
 * matrices; p, one-sided for a positive one, by permuting the objects of the first (Mantel 1967, Cancer
 * Res. 27:209). With `apartFrom`, the partial correlation (Smouse, Long & Sokal 1986, Syst. Zool.
 * 35:627). Needs 4 objects, all distances known and not all equal.
 */
export function mantelTest(
  first: Condensed,
  second: Condensed,
  options: MantelOptions,
): MantelTest | Unavailable {
  const { n } = first;
  if (n < 4) return { why: `a comparison of distances needs 4 objects, not ${n}` };
  const sides = [first, second, ...(options.apartFrom ? [options.apartFrom] : [])];
  if (sides.some((side) => side.values.some(Number.isNaN))) return { why: 'some distances are unknown' };
  const rank = options.correlation === 'rank';
  const [a, b, c] = sides.map((side) => standardised(rank ? midranks(side.values).ranks : side.values));
  if (a === undefined || b === undefined || (options.apartFrom && c === undefined))
    return { why: 'all distances of one side are equal' };
  const bc = c === undefined ? 0 : product(b, c);
  const correlate = (order: ArrayLike<number>) => {
    const moved = reordered(a, n, order);
    const ab = product(moved, b);
    if (c === undefined) return ab;
    const ac = product(moved, c);
    return (ab - ac * bc) / Math.sqrt((1 - ac * ac) * (1 - bc * bc));
  };
  const identity = Int32Array.from({ length: n }, (_, i) => i);
  const test = permutationTest(identity, correlate, { exactLimit: 6000, ...options });
  return { ...test, statistic: test.observed, n };
}

/** Centred and scaled so that the product of two is their correlation; undefined when all are equal. */
function standardised(values: Float64Array): Float64Array | undefined {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const centred = values.map((value) => value - mean);
  const length = Math.sqrt(product(centred, centred));
  return length > 1e-12 * Math.max(1, Math.abs(mean)) ? centred.map((value) => value / length) : undefined;
}

function product(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum;
}

function reordered(values: Float64Array, n: number, order: ArrayLike<number>): Float64Array {
  const moved = new Float64Array(values.length);
  let at = 0;
  for (let i = 0; i < n; i++)
    for (let j = i + 1; j < n; j++) moved[at++] = values[condensedIndex(n, order[i], order[j])];
  return moved;
}
