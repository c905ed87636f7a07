import type { Register } from '../../attributes/definition.ts';
import { countKnown, filledCells } from './cell-shapes.ts';

type Grid = readonly (readonly string[])[];

/** The grid turned on its side: rows become columns; short rows are filled up with blanks. */
export function transpose(grid: Grid): string[][] {
  let width = 0;
  for (const row of grid) width = Math.max(width, row.length);
  return Array.from({ length: width }, (_, column) => grid.map((row) => row[column] ?? ''));
}

const SEARCHED = 500;

/**
 * Does the table stand on its side, one row an attribute and one column a fragment? So it is when the
 * first column holds at least three headers that the register knows, most of what it holds, and clearly
 * more of them than any row does.
 */
export function isTransposed(grid: Grid, register: Register): boolean {
  const searched = grid.slice(0, SEARCHED);
  const first = searched.map((row) => row[0] ?? '').filter((text) => text.trim() !== '');
  const down = countKnown(first, register);
  if (down < 3 || down < 0.5 * first.length) return false;
  if (!searched.some((row) => filledCells(row).length > 1)) return false;
  const across = Math.max(...searched.slice(0, 10).map((row) => countKnown(row, register)));
  return down > 2 * across;
}
