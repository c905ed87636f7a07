import type { Register } from '../../attributes/definition.ts';
import { greatest } from '../../numerics/foundation/lists.ts';
import { countKnown, filledCells } from './cell-shapes.ts';
import type { Grid } from './grid.ts';

/** The grid turned on its side: rows become columns; short rows are filled up with blanks. */
export function transpose(grid: Grid): string[][] {
  let width = 0;
  for (const row of grid) width = Math.max(width, row.length);
  return Array.from({ length: width }, (_, column) => grid.map((row) => row[column] ?? ''));
}

/** A taller sheet has its fragments below each other, whatever its first column says. */
const MOST_ATTRIBUTES = 500;

/**
 * Does the table stand on its side, one row an attribute and one column a fragment? So it is when the
 * first column holds at least three different headers that the register knows, at least half of what it
 * holds, and clearly more of them than any row does.
 */
export function isTransposed(grid: Grid, register: Register): boolean {
  if (grid.length > MOST_ATTRIBUTES || !grid.some((row) => filledCells(row).length > 1)) return false;
  const top = filledCells(grid[0] ?? []).map((i) => grid[0]![i]!);
  if (top.length > 1 && top.every((text) => countKnown([text], register) === 1)) return false;
  const first = grid.map((row) => (row[0] ?? '').trim()).filter((text) => text !== '');
  // A letter or two may be a header's abbreviation and any find's name.
  const telling = [...new Set(first)].filter((text) => text.replace(/[^\p{L}]/gu, '').length > 2);
  const down = countKnown(telling, register);
  if (down < 3 || down < 0.5 * first.length) return false;
  const across = greatest(
    grid.slice(0, 10).map((row) => countKnown(row.slice(0, MOST_ATTRIBUTES), register)),
  );
  return down > 2 * across;
}
