import { splitHeader } from '../../attributes/matching.ts';
import { filledCells } from './cell-shapes.ts';

/** A header that takes up several rows: groups over names over units. */

/** A row that holds nothing but units, in brackets or without. */
export function isUnitRow(row: readonly string[]): boolean {
  const filled = filledCells(row);
  return filled.length > 0 && filled.every((i) => unitOnly(row[i]!) !== null);
}

/** "(mm)", "[cm]", "mm", "per cm" -> the unit; null for anything else. */
function unitOnly(text: string): string | null {
  const bare = text
    .trim()
    .replace(/^[([{]|[)\]}]$/g, '')
    .trim();
  if (bare === '' || /^\d/.test(bare)) return null;
  const { unit } = splitHeader(`x (${bare})`);
  return unit === undefined ? null : bare;
}

/**
 * One header a column from two rows: a unit in the second goes into brackets, a group heading is carried
 * to the right over the columns that the second row names below it.
 */
export function joinHeaderRows(upper: readonly string[], lower: readonly string[]): string[] {
  const units = isUnitRow(lower);
  const end = lastGroupEnd(upper);
  const headers: string[] = [];
  let group = '';
  for (let i = 0; i < Math.max(upper.length, lower.length); i++) {
    const above = (upper[i] ?? '').trim();
    const below = (lower[i] ?? '').trim();
    if (units) {
      headers.push(below === '' ? above : `${above} (${unitOnly(below)})`.trim());
      continue;
    }
    if (above !== '') group = above;
    else if (i >= end) group = '';
    headers.push(below === '' ? above : above === '' && group === '' ? below : `${group} ${below}`);
  }
  return headers;
}

/** Where all groups but the last are equally wide, the last is as wide as they are. */
function lastGroupEnd(upper: readonly string[]): number {
  const starts = filledCells(upper);
  const widths = starts.slice(1).map((start, i) => start - starts[i]!);
  const wide = widths.filter((width) => width > 1);
  return wide.length > 0 && new Set(wide).size === 1 ? starts.at(-1)! + wide[0]! : Number.POSITIVE_INFINITY;
}
