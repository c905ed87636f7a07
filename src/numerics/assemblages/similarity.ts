import type { Condensed } from '../dissimilarity/condensed.ts';

/**
 * Ways to say how alike two assemblages are in the counts of their kinds. All but Brainerd-Robinson
 * run from 0 to 1; `chi-square` is a distance without an upper end.
 */
export type SimilarityCoefficient =
  | 'brainerd-robinson'
  | 'bray-curtis'
  | 'morisita-horn'
  | 'jaccard'
  | 'chi-square';

/** True where larger means less alike. */
export function isDistance(coefficient: SimilarityCoefficient): boolean {
  return coefficient === 'chi-square';
}

/** Value of two equal assemblages; 0 for a distance. */
export function mostAlike(coefficient: SimilarityCoefficient): number {
  if (isDistance(coefficient)) return 0;
  return coefficient === 'brainerd-robinson' ? 200 : 1;
}

/** Likeness turned into unlikeness, 0 to 1 (chi-square as it is). */
export function unlikeness(likeness: Condensed, coefficient: SimilarityCoefficient): Condensed {
  if (isDistance(coefficient)) return likeness;
  const most = mostAlike(coefficient);
  return { n: likeness.n, values: likeness.values.map((value) => 1 - value / most) };
}

/**
 * Likeness of every pair of rows of a table of counts; NaN where a row is empty.
 * - `brainerd-robinson`: 200 minus the summed differences of percentages, 0 to 200 (Brainerd 1951, Am.
 *   Antiquity 16:301; Robinson 1951, 16:293);
 * - `bray-curtis`: 2 sum min / sum of both, on counts, so that size matters (Bray & Curtis 1957, Ecol. Monogr. 27:325);
 * - `morisita-horn`: overlap of shares, led by the common kinds (Horn 1966, Am. Nat. 100:419);
 * - `jaccard`: kinds in both over kinds in either, presence alone (Jaccard 1901);
 * - `chi-square`: distance of row profiles weighted by the rarity of columns (Greenacre 1984, chapter 2).
 */
export function assemblageSimilarity(
  counts: readonly ArrayLike<number>[],
  coefficient: SimilarityCoefficient,
): Condensed {
  const n = counts.length;
  const values = new Float64Array((n * (n - 1)) / 2);
  const totals = counts.map((row) => Array.from(row).reduce((sum, count) => sum + count, 0));
  const columnMasses = coefficient === 'chi-square' ? massesOf(counts, totals) : [];
  let at = 0;
  for (let i = 0; i < n; i++)
    for (let j = i + 1; j < n; j++)
      values[at++] =
        totals[i] === 0 || totals[j] === 0
          ? Number.NaN
          : pairSimilarity(counts[i], counts[j], totals[i], totals[j], coefficient, columnMasses);
  return { n, values };
}

function massesOf(counts: readonly ArrayLike<number>[], totals: readonly number[]): number[] {
  const all = totals.reduce((sum, total) => sum + total, 0);
  return Array.from(
    { length: counts[0]?.length ?? 0 },
    (_, column) => counts.reduce((sum, row) => sum + row[column], 0) / all,
  );
}

function pairSimilarity(
  a: ArrayLike<number>,
  b: ArrayLike<number>,
  totalA: number,
  totalB: number,
  coefficient: SimilarityCoefficient,
  columnMasses: readonly number[],
): number {
  let shared = 0;
  let least = 0;
  let product = 0;
  let squareA = 0;
  let squareB = 0;
  let both = 0;
  let either = 0;
  let weighted = 0;
  for (let k = 0; k < a.length; k++) {
    const shareA = a[k] / totalA;
    const shareB = b[k] / totalB;
    shared += Math.min(shareA, shareB);
    least += Math.min(a[k], b[k]);
    product += shareA * shareB;
    squareA += shareA * shareA;
    squareB += shareB * shareB;
    if (a[k] > 0 && b[k] > 0) both++;
    if (a[k] > 0 || b[k] > 0) either++;
    if (columnMasses[k] > 0) weighted += ((shareA - shareB) * (shareA - shareB)) / columnMasses[k];
  }
  switch (coefficient) {
    case 'brainerd-robinson':
      // The same as 200 less the differences, but exactly 0 where nothing is shared.
      return 200 * shared;
    case 'bray-curtis':
      return (2 * least) / (totalA + totalB);
    case 'morisita-horn':
      return (2 * product) / (squareA + squareB);
    case 'jaccard':
      return both / either;
    case 'chi-square':
      return Math.sqrt(weighted);
  }
}
