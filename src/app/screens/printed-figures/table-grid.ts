import { greatest } from '../../../numerics/foundation/lists.ts';
import { decodeBytes } from '../../../sources/formats/decode.ts';
import { detectDelimiter } from '../../../sources/formats/dialect.ts';
import { parseCsv } from '../../../sources/formats/parse-csv.ts';
import { restoreText, writeCsv } from '../../../sources/formats/safe-csv.ts';

/** A printed table as it is edited: texts only, all rows of one width, heads in the first, labels in the first column. */
export type PrintedGrid = readonly (readonly string[])[];

/** The texts of a CSV; none where it cannot be parted into cells, which the worker says where it reads it. */
export function readGrid(bytes: Uint8Array | undefined, name: string): PrintedGrid {
  if (bytes === undefined) return [];
  try {
    const { text } = decodeBytes(bytes, name);
    const rows = parseCsv(text, name, detectDelimiter(text)).grid;
    const width = Math.max(0, greatest(rows.map((row) => row.length)));
    return rows.map((row) => Array.from({ length: width }, (_, i) => restoreText((row[i] ?? '').trim())));
  } catch {
    return [];
  }
}

export function gridBytes(grid: PrintedGrid): Uint8Array {
  return new TextEncoder().encode(writeCsv(grid));
}

export function blankGrid(rows: number, columns: number): PrintedGrid {
  return Array.from({ length: rows }, () => Array.from({ length: columns }, () => ''));
}

/** A table that is laid out and holds nothing yet. */
export function isBlank(grid: PrintedGrid): boolean {
  return grid.length > 0 && grid.every((line) => line.every((cell) => cell === ''));
}

export function withCell(grid: PrintedGrid, row: number, column: number, text: string): PrintedGrid {
  return grid.map((line, i) => (i === row ? line.with(column, text) : line));
}

export function withRow(grid: PrintedGrid): PrintedGrid {
  return [...grid, (grid[0] ?? []).map(() => '')];
}

export function withColumn(grid: PrintedGrid): PrintedGrid {
  return grid.map((line) => [...line, '']);
}

export function withoutRow(grid: PrintedGrid, row: number): PrintedGrid {
  return grid.toSpliced(row, 1);
}

export function withoutColumn(grid: PrintedGrid, column: number): PrintedGrid {
  return grid.map((line) => line.toSpliced(column, 1));
}
