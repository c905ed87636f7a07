import type { Register } from '../../attributes/definition.ts';
import type { LayoutRule } from '../profile/layout-rules.ts';
import type { Fault } from '../source-reading.ts';
import { findHeader } from './header-row.ts';
import { joinHeaderRows } from './joined-headers.ts';

/** The rows of the header, as the profile says or as found, and their texts. */

/** The header of each column, joined from its rows, and the row of names by itself. */
export function headerTexts(
  rows: readonly (readonly string[])[],
): readonly [texts: string[], lower: string[]] {
  const trimmed = rows.map((row) => row.map((text) => text.trim()));
  const [first, second, third] = trimmed;
  if (first === undefined) return [[], []];
  if (second === undefined) return [first, first];
  if (third === undefined) return [joinHeaderRows(first, second), second];
  return [joinHeaderRows(joinHeaderRows(first, second), third), joinHeaderRows(second, third)];
}

export function headerRows(
  grid: readonly (readonly string[])[],
  rule: LayoutRule,
  register: Register,
): { start: number; rows: number } {
  if (rule.headerRow === undefined) return findHeader(grid, register);
  if (rule.headerRow === 0 || rule.headerRow > grid.length) return { start: -1, rows: 0 };
  const rows = Math.min(rule.headerRows ?? 1, rule.headerRow);
  return { start: rule.headerRow - rows, rows };
}

/** That a table has no header is asked about: its columns have no names, and its first row may be one after all. */
export function noHeader(rows: number, rule: LayoutRule, records: number, file: string): Fault[] {
  if (rows > 0 || rule.headerRow !== undefined || records < 2) return [];
  return [
    {
      what: 'no header was found, since the first row looks like one of the finds',
      where: { file, row: 1 },
      mend: 'say "layout": { "headerRow": 1 } in the profile if the first row names the columns, or 0 if none does',
    },
  ];
}
