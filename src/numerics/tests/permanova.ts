import { type Condensed, condensedIndex } from '../dissimilarity/condensed.ts';
import { greatest } from '../foundation/lists.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { type PermutationOptions, type PermutationTest, permutationTest } from '../resampling/permutation.ts';

export interface PermutationalAnova extends PermutationTest {
  /** Pseudo-F: variation between groups over variation within; without a value where none is within. */
  readonly statistic: number | Unavailable;
  readonly dfBetween: number;
  readonly dfWithin: number;
  /** Share of the squared dissimilarity that lies between the groups. */
  readonly rSquared: number;
  readonly sumOfSquaresWithin: number;
  readonly sumOfSquaresTotal: number;
}

/**
 * Do groups differ in several attributes at once? Permutational analysis of variance on any
 * dissimilarity (Anderson 2001, Austral Ecol. 26:32). A difference of spread can look like one of
 * place: read it beside `dispersionTest`. Unavailable when pairs are unknown or a group is missing.
 *
 * @param labels group 0 … k-1 of each object.
 */
export function permanova(
  dissimilarity: Condensed,
  labels: ArrayLike<number>,
  options: PermutationOptions,
): PermutationalAnova | Unavailable {
  const { n } = dissimilarity;
  const k = greatest(Array.from(labels)) + 1;
  const refusal = whyNot(dissimilarity, labels, k);
  if (refusal) return refusal;
  const squares = squareMatrix(dissimilarity);
  let total = 0;
  for (const value of squares) total += value;
  total /= 2 * n;
  if (total === 0) return { why: 'all objects are alike' };
  const sizes = new Float64Array(k);
  for (let i = 0; i < n; i++) sizes[labels[i]]++;
  const within = insideGroups(squares, sizes);
  const nothing = total * 1e-14;
  const ratioOf = (inside: number) =>
    // Perfect separation leaves nothing within; the largest double keeps the order of the statistics.
    inside <= nothing ? Number.MAX_VALUE : (total - inside) / (k - 1) / (inside / (n - k));
  const inside = within(labels);
  const dealt = k === 2 && n >= MANY ? insideOfTwo(squares, sizes) : within;
  const ratio = (labels: ArrayLike<number>) => ratioOf(dealt(labels));
  const test = permutationTest(labels, ratio, { exactLimit: 20_000, ...options });
  const observed = ratioOf(inside);
  return {
    ...test,
    observed,
    statistic: inside <= nothing ? { why: 'nothing varies within the groups' } : observed,
    dfBetween: k - 1,
    dfWithin: n - k,
    rSquared: (total - inside) / total,
    sumOfSquaresWithin: inside,
    sumOfSquaresTotal: total,
  };
}

/** From so many objects on no random deal parts two groups so well that rounding could make it tie with another. */
const MANY = 200;

/**
 * Sums of squares within the groups. Members are listed by group as they are met, so that no pair of two groups is
 * looked at.
 */
function insideGroups(squares: Float64Array, sizes: Float64Array): (labels: ArrayLike<number>) => number {
  const n = sizes.reduce((sum, size) => sum + size, 0);
  const starts = startsOf(sizes);
  const ends = new Int32Array(sizes.length);
  const members = new Int32Array(n);
  return (labels) => {
    ends.set(starts);
    let sum = 0;
    for (let i = 0; i < n; i++) {
      const label = labels[i];
      const row = i * n;
      const end = ends[label];
      let part = 0;
      for (let at = starts[label]; at < end; at++) part += squares[row + members[at]];
      sum += part / sizes[label];
      members[end] = i;
      ends[label] = end + 1;
    }
    return sum;
  };
}

/**
 * The same of two groups, but for rounding, when they are dealt again and again: only the pairs within the smaller are
 * looked at. What lies within the larger is all that there is, less what the smaller has with anybody.
 */
function insideOfTwo(squares: Float64Array, sizes: Float64Array): (labels: ArrayLike<number>) => number {
  const n = sizes[0] + sizes[1];
  const small = sizes[0] <= sizes[1] ? 0 : 1;
  const rows = new Float64Array(n);
  for (let i = 0; i < n; i++) for (let j = 0; j < n; j++) rows[i] += squares[i * n + j];
  const all = rows.reduce((sum, row) => sum + row, 0) / 2;
  const members = new Int32Array(sizes[small]);
  return (labels) => {
    let count = 0;
    let inside = 0;
    let withAnybody = 0;
    for (let i = 0; i < n; i++) {
      if (labels[i] !== small) continue;
      const row = i * n;
      for (let at = 0; at < count; at++) inside += squares[row + members[at]];
      withAnybody += rows[i];
      members[count++] = i;
    }
    // Pairs within the smaller group are counted from both of their ends.
    return inside / sizes[small] + (all - withAnybody + inside) / sizes[1 - small];
  };
}

export interface SimilarityAnalysis extends PermutationTest {
  /** R: from 0 (groups as mixed as chance) to 1 (every within-group pair nearer than any between). */
  readonly statistic: number;
}

/**
 * Analysis of similarities on the ranks of the dissimilarities (Clarke 1993, Aust. J. Ecol. 18:117).
 *
 * @param ranks condensed mid-ranks of the dissimilarities.
 */
export function similarityAnalysis(
  ranks: Condensed,
  labels: ArrayLike<number>,
  options: PermutationOptions,
): SimilarityAnalysis | Unavailable {
  const { n, values } = ranks;
  const k = greatest(Array.from(labels)) + 1;
  const refusal = whyNot(ranks, labels, k);
  if (refusal) return refusal;
  const difference = (dealt: ArrayLike<number>) => {
    let within = 0;
    let pairsWithin = 0;
    let all = 0;
    let at = 0;
    for (let i = 0; i < n; i++)
      for (let j = i + 1; j < n; j++) {
        const rank = values[at++];
        all += rank;
        if (dealt[i] === dealt[j]) {
          within += rank;
          pairsWithin++;
        }
      }
    const pairs = values.length;
    return ((all - within) / (pairs - pairsWithin) - within / pairsWithin) / (pairs / 2);
  };
  const test = permutationTest(labels, difference, { exactLimit: 20_000, ...options });
  return { ...test, statistic: test.observed };
}

function whyNot(dissimilarity: Condensed, labels: ArrayLike<number>, k: number): Unavailable | undefined {
  if (k < 2) return { why: 'a comparison needs two groups' };
  const sizes = new Array<number>(k).fill(0);
  for (let i = 0; i < dissimilarity.n; i++) sizes[labels[i]]++;
  if (sizes.includes(0)) return { why: `group ${sizes.indexOf(0) + 1} has no object` };
  if (dissimilarity.n <= k) return { why: 'every group has a single object' };
  if (dissimilarity.values.some(Number.isNaN)) return { why: 'some pairs cannot be compared' };
  return undefined;
}

/** Where the list of each group begins in one list of all objects. */
function startsOf(sizes: Float64Array): Int32Array {
  const starts = new Int32Array(sizes.length);
  for (let group = 1; group < sizes.length; group++) starts[group] = starts[group - 1] + sizes[group - 1];
  return starts;
}

/** Squared dissimilarities as a full matrix, row by row: permutations read it in order. */
function squareMatrix({ n, values }: Condensed): Float64Array {
  const squares = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = i + 1; j < n; j++) {
      const value = values[condensedIndex(n, i, j)];
      squares[i * n + j] = value * value;
      squares[j * n + i] = value * value;
    }
  return squares;
}
