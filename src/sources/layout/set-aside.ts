import type { RowSetAside } from '../source-reading.ts';
import { filledCells, isBlank, isNumberLike, isProse, numberShare } from './cell-shapes.ts';
import type { Grid } from './grid.ts';
import { isSummaryPhrase, isSummaryWord, summaryRows } from './summary-rows.ts';

const NOTE_START =
  /^(?:[*†‡§¹²³]|\(?\d\)\s|(?:notes?|nb|n\.b\.|remarks?|sources?|legend|key|abbreviations?|anm(?:erkung(?:en)?)?|quellen?|legende|abkürzungen|remarques?|légende|nota|note|fonte|fonti|legenda|fuentes?|leyenda|bemærkning(?:er)?|kilder?)\b\s*[:.]?)/i;

/**
 * Which rows below the header are no records? Blank rows, the header repeated, totals and means, notes,
 * headings between groups of rows, and everything from the point where another table begins.
 * @param forced rows (0 = first) that the profile sets aside; `kept` are those it holds to be records.
 */
export function rowsToSetAside(
  grid: Grid,
  start: number,
  header: readonly string[],
  forced: ReadonlySet<number>,
  kept: ReadonlySet<number>,
  last: number,
): RowSetAside[] {
  const aside: RowSetAside[] = [];
  const width = Math.max(header.length, 1);
  const identifiers = identifierHabit(grid, start, header);
  const other = nextTable(grid, start);
  const summaries = summaryRows(grid, start, Math.min(other, last + 1));
  for (let at = start; at < grid.length; at++) {
    if (kept.has(at)) continue;
    const reason =
      at > last
        ? 'below the last row that the profile names'
        : forced.has(at)
          ? 'set aside by the profile'
          : at >= other
            ? reasonBelow(grid[at]!)
            : summaries.has(at)
              ? 'looks like a total or mean of other rows'
              : reasonOf(grid[at]!, header, width, identifiers);
    if (reason !== null) aside.push({ row: at + 1, reason });
  }
  return aside;
}

function reasonBelow(row: readonly string[]): string {
  return filledCells(row).length === 0 ? 'empty row' : 'belongs to another table below this one';
}

function reasonOf(
  row: readonly string[],
  header: readonly string[],
  width: number,
  identifiers: IdentifierHabit,
): string | null {
  const filled = filledCells(row);
  if (filled.length === 0) return 'empty row';
  if (filled.length > 1 && filled.every((i) => row[i]!.trim() === (header[i] ?? '').trim()))
    return 'the header again';
  const first = row[filled[0]!]!.trim();
  if (isSummaryPhrase(first) && filled.slice(1).every((i) => isNumberLike(row[i]!)))
    return 'looks like a total or mean of other rows';
  if (filled.length > 1) return isPartedNote(row, filled, width) ? 'note' : null;
  if (width < 3) return width > 1 && isNote(first) ? 'note' : null;
  if (isNote(first) || (isProse(first) && filled[0] === 0) || isLegend(first)) return 'note';
  if (filled[0] === 0 && identifiers.withDigits && !/\d/.test(first)) return 'heading between rows';
  return null;
}

function isNote(text: string): boolean {
  return NOTE_START.test(text) && (isProse(text) || /[:*†‡§¹²³]/.test(text));
}

/** A note whose commas the delimiter has taken for its own: words side by side from the first cell on. */
function isPartedNote(row: readonly string[], filled: readonly number[], width: number): boolean {
  const first = row[0] ?? '';
  if (filled.length > 0.6 * width || filled.at(-1) !== filled.length - 1) return false;
  return NOTE_START.test(first) && isNote(first) && !filled.slice(1).some((i) => isNumberLike(row[i]!));
}

/** "s. d.: sin dato", "k. A. = keine Angabe": the meaning of an abbreviation; or a sentence of several words. */
function isLegend(text: string): boolean {
  return (
    /^\(?[^\s:=][^:=]{0,24}\s*[:=]\s*\p{L}/u.test(text) || (/\.$/.test(text) && text.split(/\s+/).length > 2)
  );
}

interface IdentifierHabit {
  /** The first column nearly always holds a digit. */
  readonly withDigits: boolean;
}

function identifierHabit(grid: Grid, start: number, header: readonly string[]): IdentifierHabit {
  let filled = 0;
  let digits = 0;
  for (let at = start; at < grid.length; at++) {
    const text = grid[at]![0];
    if (isBlank(text) || text!.trim() === header[0] || filledCells(grid[at]!).length < 2) continue;
    if (isSummaryWord(text!)) continue;
    filled++;
    if (/\d/.test(text!)) digits++;
  }
  return { withDigits: filled > 0 && digits >= 0.9 * filled };
}

/**
 * Where another table begins: after a blank row, a row of words that stand where the rows above hold
 * numbers, or a title alone followed by such a row, or by words over numbers where words stand above and the
 * other way about. `grid.length` where there is none.
 */
function nextTable(grid: Grid, start: number): number {
  for (let blank = start + 1; blank < grid.length - 2; blank++) {
    if (filledCells(grid[blank]!).length > 0) continue;
    let at = blank + 1;
    while (at < grid.length && filledCells(grid[at]!).length === 0) at++;
    const title = at < grid.length && filledCells(grid[at]!).length === 1;
    const header = grid[title ? at + 1 : at];
    const record = grid[title ? at + 2 : at + 1];
    if (header === undefined || record === undefined) return grid.length;
    const words = filledCells(header);
    const numbers = words.filter((i) => isNumberLike(record[i] ?? '') && isNumberLike(grid[start]![i] ?? ''));
    const turned = words.filter((i) => otherSort(record[i], grid[start]![i])).length;
    const unlike = title && turned >= 2 && turned >= words.length / 2;
    const startsAnew =
      words.length >= 2 &&
      (unlike || numbers.length >= (title ? 1 : 2)) &&
      new Set(words.map((i) => header[i])).size === words.length &&
      numberShare(header) === 0 &&
      (unlike || words.every((i) => !isProse(header[i]!)));
    if (startsAnew) return blank;
    blank = at;
  }
  return grid.length;
}

/** A number below words, or words below a number. */
function otherSort(one: string | undefined, other: string | undefined): boolean {
  return !isBlank(one) && !isBlank(other) && isNumberLike(one!) !== isNumberLike(other!);
}
