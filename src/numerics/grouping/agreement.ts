import { exp, ln } from '../foundation/elementary.ts';
import type { Unavailable } from '../foundation/unavailable.ts';

/** Counts of records by group in a first and in a second grouping. */
export interface Contingency {
  /** rows * columns counts, row by row. */
  readonly counts: Float64Array;
  readonly rows: number;
  readonly columns: number;
  readonly rowSums: Float64Array;
  readonly columnSums: Float64Array;
  /** Records that both groupings place; the others (label -1 in either) are left out. */
  readonly n: number;
}

/** Crosses two groupings of the same records; labels 0, 1, …, -1 for none. */
export function contingency(first: ArrayLike<number>, second: ArrayLike<number>): Contingency {
  if (first.length !== second.length) {
    throw new RangeError(
      `contingency needs two groupings of the same records, got ${first.length} and ${second.length}`,
    );
  }
  let rows = 0;
  let columns = 0;
  for (let i = 0; i < first.length; i++) {
    rows = Math.max(rows, first[i] + 1);
    columns = Math.max(columns, second[i] + 1);
  }
  const counts = new Float64Array(rows * columns);
  const rowSums = new Float64Array(rows);
  const columnSums = new Float64Array(columns);
  let n = 0;
  for (let i = 0; i < first.length; i++) {
    if (first[i] < 0 || second[i] < 0) continue;
    counts[first[i] * columns + second[i]]++;
    rowSums[first[i]]++;
    columnSums[second[i]]++;
    n++;
  }
  return { counts, rows, columns, rowSums, columnSums, n };
}

const TOO_FEW = { why: 'fewer than two records are placed by both groupings' };

const pairs = (count: number) => (count * (count - 1)) / 2;

/**
 * Do two groupings put the same pairs of records together, beyond chance? Adjusted Rand index (Hubert &
 * Arabie 1985, *J. Classif.* 2:193, eq. 5): 1 for equal groupings, 0 on average for random ones of the same
 * sizes, and below 0 for less than that. Two groupings that are both one single group, or both all
 * singletons, are equal: 1.
 */
export function adjustedRand(table: Contingency): number | Unavailable {
  const { counts, rowSums, columnSums, n } = table;
  if (n < 2) return TOO_FEW;
  const sum = (values: Float64Array) => values.reduce((total, count) => total + pairs(count), 0);
  const together = sum(counts);
  const first = sum(rowSums);
  const second = sum(columnSums);
  const expected = (first * second) / pairs(n);
  const most = (first + second) / 2;
  return most === expected ? 1 : (together - expected) / (most - expected);
}

/** Entropies and mutual information of the two groupings, in nats. */
export interface Information {
  readonly first: number;
  readonly second: number;
  readonly mutual: number;
}

export function information(table: Contingency): Information | Unavailable {
  const { counts, rows, columns, rowSums, columnSums, n } = table;
  if (n < 2) return TOO_FEW;
  let mutual = 0;
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const count = counts[row * columns + column];
      if (count === 0) continue;
      mutual += (count / n) * (ln(count) + ln(n) - ln(rowSums[row]) - ln(columnSums[column]));
    }
  }
  return { first: entropy(rowSums, n), second: entropy(columnSums, n), mutual: Math.max(0, mutual) };
}

function entropy(sums: Float64Array, n: number): number {
  let total = 0;
  for (const count of sums) if (count > 0 && count < n) total -= (count / n) * (ln(count) - ln(n));
  return total;
}

/** How far each grouping is contained in the other, and the harmonic mean of both. */
export interface VMeasure {
  /** 1 when every group of the second lies within one group of the first. */
  readonly homogeneity: number;
  /** 1 when every group of the first lies within one group of the second. */
  readonly completeness: number;
  readonly vMeasure: number;
}

/**
 * Is each group of the second grouping pure, and each kind of the first kept together? V-measure with
 * beta = 1 (Rosenberg & Hirschberg 2007, *EMNLP-CoNLL*: 410); it is not corrected for chance and grows with
 * the number of groups. A grouping of one single group has entropy 0 and counts as perfectly explained.
 *
 * @param table the recorded classification in rows, the found groups in columns
 */
export function vMeasure(table: Contingency): VMeasure | Unavailable {
  const found = information(table);
  if ('why' in found) return found;
  const homogeneity = found.first > 0 ? found.mutual / found.first : 1;
  const completeness = found.second > 0 ? found.mutual / found.second : 1;
  const sum = homogeneity + completeness;
  return { homogeneity, completeness, vMeasure: sum > 0 ? (2 * homogeneity * completeness) / sum : 0 };
}

/**
 * How much does one grouping tell about the other, beyond chance? Adjusted mutual information with the
 * arithmetic mean of the entropies (Vinh, Epps & Bailey 2010, *JMLR* 11:2837, eq. 24a for the expectation):
 * 1 for equal groupings, 0 on average for random ones of the same sizes.
 */
export function adjustedMutualInformation(table: Contingency): number | Unavailable {
  const found = information(table);
  if ('why' in found) return found;
  const groups = [table.rowSums, table.columnSums].map((sums) => sums.filter((count) => count > 0).length);
  // Both one group, or both all singletons: equal, though mutual information equals its expectation.
  if (groups[0] === groups[1] && (groups[0] === 1 || groups[0] === table.n)) return 1;
  const expected = expectedInformation(table);
  const span = (found.first + found.second) / 2 - expected;
  const least = 2 * Number.EPSILON;
  return (found.mutual - expected) / (span < 0 ? Math.min(span, -least) : Math.max(span, least));
}

/** Expectation over all pairs of groupings with the same sizes (hypergeometric model), in nats. */
function expectedInformation({ rowSums, columnSums, n }: Contingency): number {
  const lnFactorial = new Float64Array(n + 1);
  for (let m = 2; m <= n; m++) lnFactorial[m] = lnFactorial[m - 1] + ln(m);
  let total = 0;
  for (const a of rowSums) {
    for (const b of columnSums) {
      if (a === 0 || b === 0) continue;
      const fixed =
        lnFactorial[a] + lnFactorial[b] + lnFactorial[n - a] + lnFactorial[n - b] - lnFactorial[n];
      for (let both = Math.max(1, a + b - n); both <= Math.min(a, b); both++) {
        const probability = exp(
          fixed -
            lnFactorial[both] -
            lnFactorial[a - both] -
            lnFactorial[b - both] -
            lnFactorial[n - a - b + both],
        );
        total += (both / n) * (ln(n) + ln(both) - ln(a) - ln(b)) * probability;
      }
    }
  }
  return total;
}

/**
 * Which group answers to which kind? Kinds and groups are paired one to one, largest common count first
 * (of equals the earlier kind, then the earlier group): entry i is the group paired with kind i, -1 for none.
 */
export function matchGroups(table: Contingency): Int32Array {
  const match = new Int32Array(table.rows).fill(-1);
  const taken = new Set<number>();
  for (;;) {
    let best = 0;
    let bestRow = -1;
    let bestColumn = -1;
    for (let row = 0; row < table.rows; row++) {
      if (match[row] >= 0) continue;
      for (let column = 0; column < table.columns; column++) {
        const count = table.counts[row * table.columns + column];
        if (taken.has(column) || count <= best) continue;
        best = count;
        bestRow = row;
        bestColumn = column;
      }
    }
    if (bestRow < 0) return match;
    match[bestRow] = bestColumn;
    taken.add(bestColumn);
  }
}
