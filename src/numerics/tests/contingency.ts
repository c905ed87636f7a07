import { chiSquaredUpper } from '../foundation/distributions.ts';
import { ln } from '../foundation/elementary.ts';
import { least } from '../foundation/lists.ts';
import type { Unavailable } from '../foundation/unavailable.ts';

/** A table of counts: rows by columns, whole numbers from 0. */
export type CountTable = readonly (readonly number[])[];

export interface Association {
  /** Pearson's chi-squared, without continuity correction. */
  readonly chiSquared: number;
  readonly df: number;
  readonly p: number;
  /** Likelihood-ratio statistic. */
  readonly g: number;
  readonly gP: number;
  readonly n: number;
  /** Smallest count expected under independence; chi-squared is doubtful below 5. */
  readonly smallestExpected: number;
  readonly cramersV: number;
  /** Bergsma 2013, J. Korean Stat. Soc. 42:323: nearly unbiased in small tables. */
  readonly cramersVCorrected: number;
  readonly expected: readonly (readonly number[])[];
  /** Adjusted standardised residuals, about standard normal each (Haberman 1973, Biometrics 29:205). */
  readonly residuals: readonly (readonly number[])[];
  /** Each cell's part of chi-squared, 0 to 1. */
  readonly contributions: readonly (readonly number[])[];
}

/**
 * Are the rows and columns of a table of counts associated? Empty rows and columns must be taken out
 * first (`withoutEmptyLines`). Unavailable for fewer than two rows or columns.
 * Source: Pearson 1900; Agresti 2013, Categorical Data Analysis, chapter 3.
 */
export function association(table: CountTable): Association | Unavailable {
  const { rows, columns, n } = margins(table);
  if (rows.length < 2 || columns.length < 2) return { why: 'an association needs two rows and two columns' };
  if (rows.includes(0) || columns.includes(0)) return { why: 'a row or column of the table is empty' };
  let chiSquared = 0;
  let g = 0;
  const expected = rows.map((row) => columns.map((column) => (row * column) / n));
  const parts = table.map((line, i) =>
    line.map((count, j) => {
      const gap = count - expected[i][j];
      const part = (gap * gap) / expected[i][j];
      chiSquared += part;
      if (count > 0) g += 2 * count * ln(count / expected[i][j]);
      return part;
    }),
  );
  const df = (rows.length - 1) * (columns.length - 1);
  return {
    chiSquared,
    df,
    p: chiSquaredUpper(chiSquared, df),
    g,
    gP: chiSquaredUpper(g, df),
    n,
    smallestExpected: least(expected.flat()),
    cramersV: Math.sqrt(chiSquared / n / Math.min(rows.length - 1, columns.length - 1)),
    cramersVCorrected: correctedV(chiSquared, n, rows.length, columns.length),
    expected,
    residuals: table.map((line, i) =>
      line.map((count, j) => {
        const spread = Math.sqrt(expected[i][j] * (1 - rows[i] / n) * (1 - columns[j] / n));
        return (count - expected[i][j]) / spread;
      }),
    ),
    contributions: parts.map((line) => line.map((part) => (chiSquared > 0 ? part / chiSquared : 0))),
  };
}

function correctedV(chiSquared: number, n: number, rows: number, columns: number): number {
  if (n < 2) return 0;
  const phi = Math.max(0, chiSquared / n - ((rows - 1) * (columns - 1)) / (n - 1));
  const r = rows - ((rows - 1) * (rows - 1)) / (n - 1);
  const c = columns - ((columns - 1) * (columns - 1)) / (n - 1);
  const side = Math.min(r - 1, c - 1);
  return side > 0 ? Math.min(1, Math.sqrt(phi / side)) : 0;
}

export function margins(table: CountTable): { rows: number[]; columns: number[]; n: number } {
  const rows = table.map((line) => line.reduce((sum, count) => sum + count, 0));
  const columns = (table[0] ?? []).map((_, j) => table.reduce((sum, line) => sum + line[j], 0));
  return { rows, columns, n: rows.reduce((sum, row) => sum + row, 0) };
}

export interface TrimmedTable {
  readonly table: number[][];
  /** Indices of the rows and columns that were kept. */
  readonly rows: number[];
  readonly columns: number[];
}

/** The table without rows and columns that hold no count, with the indices of those kept. */
export function withoutEmptyLines(table: CountTable): TrimmedTable {
  const sums = margins(table);
  const rows = sums.rows.flatMap((sum, index) => (sum > 0 ? [index] : []));
  const columns = sums.columns.flatMap((sum, index) => (sum > 0 ? [index] : []));
  return { table: rows.map((row) => columns.map((column) => table[row][column])), rows, columns };
}
