import type { Register } from '../../attributes/definition.ts';
import { countKnown, filledCells, isBlank, isNumberLike, isProse, numberShare } from './cell-shapes.ts';
import type { Grid } from './grid.ts';
import { isUnitRow, joinHeaderRows } from './joined-headers.ts';
import { isNumberedHeader } from './numbered-header.ts';

export interface HeaderRows {
  /** Position of the first header row, 0 = first; -1 where the table has no header. */
  readonly start: number;
  /** 0 to 3: groups, names and units. */
  readonly rows: number;
}

const SEARCHED = 40;

/**
 * Where does the header stand? The first row that is about as full as the table's rows, holds words
 * rather than numbers and hardly repeats itself; a later row wins when it holds clearly more known
 * headers. A table whose first full row is made of numbers has no header.
 */
export function findHeader(grid: Grid, register: Register): HeaderRows {
  const searched = grid.slice(0, SEARCHED);
  const typical = typicalFill(grid);
  let best = -1;
  let bestKnown = 0;
  let first = -1;
  for (const [at, row] of searched.entries()) {
    const filled = filledCells(row);
    if (filled.length === 0) continue;
    // A title above the table fills a cell or two.
    if (first < 0 && filled.length >= Math.min(3, 0.6 * typical)) first = at;
    if (first === at && isNumberedHeader(grid, at)) return { start: at, rows: 1 };
    if (filled.length < 0.6 * typical || !looksLikeHeader(row, filled)) continue;
    // A lone "L" may be a code as well as a length.
    const known = countKnown(
      row.filter((text) => text.trim().length > 1),
      register,
    );
    if (best < 0 || known >= bestKnown + 2) {
      best = at;
      bestKnown = known;
    }
  }
  if (best < 0) {
    const mostlyNumbers = first < 0 || numberShare(grid[first]!) >= 0.5;
    return mostlyNumbers ? { start: -1, rows: 0 } : { start: first, rows: 1 };
  }
  const found = headerAt(grid, best, register);
  const below = grid[found.start + found.rows];
  const units =
    found.rows === 2 && below !== undefined && !isUnitRow(grid[found.start + 1]!) && isUnitRow(below);
  return units && grid.length > found.start + 3 ? { ...found, rows: 3 } : found;
}

/** Whether the header that starts or ends at this row takes up two rows. */
function headerAt(grid: Grid, at: number, register: Register): HeaderRows {
  const above = grid[at - 1];
  if (above !== undefined && isGroupRow(above, grid[at]!)) return { start: at - 1, rows: 2 };
  const below = grid[at + 1];
  if (below === undefined || at + 2 >= grid.length) return { start: at, rows: 1 };
  if (isUnitRow(below)) return { start: at, rows: 2 };
  const row = grid[at]!;
  const joined = joinHeaderRows(row, below);
  const continues =
    isGroupRow(row, below) &&
    (countKnown(joined, register) > countKnown(row, register) ||
      countKnown(below, register) > 1 ||
      differsFromData(below, grid.slice(at + 2, at + 22)));
  return { start: at, rows: continues ? 2 : 1 };
}

/** Filled cells of a rather full row, so that titles and notes do not count. */
function typicalFill(grid: Grid): number {
  const step = Math.max(1, Math.floor(grid.length / 500));
  const fills: number[] = [];
  for (let i = 0; i < grid.length; i += step) {
    const filled = filledCells(grid[i]!).length;
    if (filled > 0) fills.push(filled);
  }
  fills.sort((a, b) => a - b);
  return fills[Math.floor(0.8 * (fills.length - 1))] ?? 0;
}

function looksLikeHeader(row: readonly string[], filled: readonly number[]): boolean {
  const texts = filled.map((i) => row[i]!.trim());
  const numbers = texts.filter(isNumberLike).length;
  const distinct = new Set(texts).size;
  return (
    numbers < 0.5 * texts.length && distinct >= 0.5 * texts.length && texts.some((text) => !isProse(text))
  );
}

/**
 * A row of group headings above the real header: fewer cells, each standing over its first column, with
 * blanks to the right that the row below fills.
 */
function isGroupRow(above: readonly string[], below: readonly string[]): boolean {
  const groups = filledCells(above);
  const fields = filledCells(below);
  if (groups.length < 1 || fields.length < 2 || numberShare(above) > 0 || numberShare(below) > 0)
    return false;
  // A title stands alone in the first cell; a single group may stand further right.
  if (groups.length === 1 && groups[0] === 0) return false;
  if (above.some((text) => isProse(text))) return false;
  const covered = fields.filter((i) => isBlank(above[i]) && groups.some((group) => group < i)).length;
  return covered >= 1;
}

/** Words over columns that hold numbers below: a header, not a record. */
function differsFromData(row: readonly string[], data: Grid): boolean {
  let numeric = 0;
  let words = 0;
  for (const i of filledCells(row)) {
    const below = data.map((record) => record[i] ?? '').filter((text) => !isBlank(text));
    if (below.length === 0 || below.filter(isNumberLike).length < 0.6 * below.length) continue;
    numeric++;
    if (!isNumberLike(row[i]!)) words++;
  }
  return numeric > 0 && words / numeric > 0.5;
}
