import type { Condensed } from '../dissimilarity/condensed.ts';
import { ln } from '../foundation/elementary.ts';
import { groupSizes } from './silhouette.ts';

/**
 * Logarithm of the pooled within-group dispersion W: for each group the sum of squared dissimilarities of
 * its pairs, divided by its size (Tibshirani, Walther & Hastie 2001, *JRSS B* 63:411, eq. 2). -Infinity
 * where no two members of any group differ. Records with label -1 are left out.
 */
export function logDispersion({ n, values }: Condensed, membership: ArrayLike<number>): number {
  const size = groupSizes(membership, n);
  const sums = new Float64Array(size.length);
  let pair = 0;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      const distance = values[pair++];
      if (membership[i] >= 0 && membership[i] === membership[j]) sums[membership[i]] += distance * distance;
    }
  }
  return ln(sums.reduce((total, sum, group) => total + (size[group] === 0 ? 0 : sum / size[group]), 0));
}

export interface Gap {
  readonly k: number;
  /** Mean log dispersion of the reference tables minus that of the real one. */
  readonly gap: number;
  /** Standard error of the gap by simulation: sd * sqrt(1 + 1/B). */
  readonly error: number;
}

/**
 * Does cutting into k groups tighten the table more than it would tighten one even cloud?
 *
 * The gap statistic (same paper, eq. 3 to 5) from log dispersions for k = 1, 2, …; `references` has one such
 * row for each table without groups.
 */
export function gapStatistic(observed: readonly number[], references: readonly (readonly number[])[]): Gap[] {
  const tables = references.length;
  return observed.map((logW, place) => {
    const mean = references.reduce((sum, row) => sum + row[place] / tables, 0);
    const variance = references.reduce(
      (sum, row) => sum + ((row[place] - mean) * (row[place] - mean)) / tables,
      0,
    );
    return { k: place + 1, gap: mean - logW, error: Math.sqrt(variance * (1 + 1 / tables)) };
  });
}

/**
 * The smallest k whose gap is not less than the next one minus its error (same paper, p. 415); the last k
 * tried where there is none. 1 means: no evidence of groups.
 */
export function groupsByGap(gaps: readonly Gap[]): number {
  const found = gaps.find((gap, place) => {
    const next = gaps[place + 1];
    return next !== undefined && gap.gap >= next.gap - next.error;
  });
  return (found ?? gaps[gaps.length - 1]).k;
}
