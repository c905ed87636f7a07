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
  const starts = startsOf(sizes);
  const ends = new Int32Array(k);
  const members = new Int32Array(n);
  // Members are listed by group as they are met, so that no pair of two groups is looked at.
  const within = (dealt: ArrayLike<number>) => {
    ends.set(starts);
    let sum = 0;
    for (let i = 0; i < n; i++) {
      const label = dealt[i];
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
  const nothing = total * 1e-14;
  const ratio = (dealt: ArrayLike<number>) => {
    const inside = within(dealt);
    // Perfect separation leaves nothing within; the largest double keeps the order of the statistics.
    return inside <= nothing ? Number.MAX_VALUE : (total - inside) / (k - 1) / (inside / (n - k));
  };
  const test = permutationTest(labels, ratio, { exactLimit: 20_000, ...options });
  const inside = within(labels);
  return {
    ...test,
    statistic: inside <= nothing ? { why: 'nothing varies within the groups' } : test.observed,
    dfBetween: k - 1,
    dfWithin: n - k,
    rSquared: (total - inside) / total,
    sumOfSquaresWithin: inside,
    sumOfSquaresTotal: total,
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
