import type { Register } from '../../attributes/definition.ts';
import { countKnown, filledCells, isBlank } from './cell-shapes.ts';
import type { Grid } from './grid.ts';
import type { Move } from './long-form.ts';

export interface KeyValueTable {
  readonly headers: readonly string[];
  readonly body: readonly (readonly string[])[];
  /** Row of the grid (1 = first) at which each record begins. */
  readonly origins: readonly number[];
  /** Rows that hold neither a key nor a value of a record, with the reason. */
  readonly aside: readonly { readonly row: number; readonly reason: string }[];
  readonly rowsUsed: number;
  /** Every cell of a pair, and the value that it went to. */
  readonly moves: readonly Move[];
}

interface Pair {
  readonly key: string;
  readonly value: string;
}

/** A key up to its colon, which is not that of a time of day or a ratio: "00:30", "1:2". */
const KEY = /^(?=[^:]*\p{L})([^:]{1,60}?)\s*:(?!\/\/)(?<!\d:(?=\d\d(?!\d)))/u;

/** The key at the beginning of a cell, and what follows its colon; null where there is none. */
function keyOf(cell: string): Pair | null {
  const match = KEY.exec(cell);
  return match === null ? null : { key: match[1]!.trim(), value: cell.slice(match[0].length).trim() };
}

/**
 * "Length: 51 cm" in one cell, or a key and its value in two. Several pairs in one line, parted by a tab
 * or several spaces, are not taken apart: a colon inside a value stays with it.
 */
function pairOf(row: readonly string[]): Pair | null {
  const filled = filledCells(row);
  if (filled.length === 0 || filled.length > 2 || filled[0] !== 0) return null;
  const first = row[0]!.trim();
  if (filled.length === 2) {
    if (filled[1] !== 1) return null;
    // A delimiter inside the value has parted it: "Museum Name:Amano, Museo".
    const inner = keyOf(first);
    if (inner !== null && inner.value !== '')
      return { key: inner.key, value: `${inner.value}, ${row[1]!.trim()}` };
    return { key: first.replace(/\s*:$/, ''), value: row[1]!.trim() };
  }
  return keyOf(first);
}

/**
 * Is the sheet a list of keys and values rather than a table? So it is when nearly every filled row is such
 * a pair and, for pairs in two cells, the first column holds known headers.
 */
export function isKeyValue(grid: Grid, register: Register): boolean {
  const rows = grid.slice(0, 400).filter((row) => filledCells(row).length > 0);
  if (rows.length < 2) return false;
  const pairs = rows.map(pairOf);
  const found = pairs.filter((pair) => pair !== null);
  if (found.length < 0.7 * rows.length) return false;
  const colons = rows.filter((row) => keyOf((row[0] ?? '').trim()) !== null).length;
  if (colons >= 0.7 * rows.length) return true;
  const keys = [...new Set(found.map((pair) => pair.key))];
  // "id,site": both cells of the first row are headers, so the rows below are records of two cells.
  if (countKnown(rows[0]!, register) > 1) return false;
  // A letter or two may be a header's abbreviation and any find's name.
  const telling = keys.filter((key) => key.replace(/[^\p{L}]/gu, '').length > 2);
  const known = countKnown(telling, register);
  return known > 2 && known >= 0.5 * keys.length;
}

/** Gathers blocks of pairs into records: a blank row or a key met again begins the next record. */
export function readKeyValue(grid: Grid): KeyValueTable {
  const headers: string[] = [];
  const places = new Map<string, number>();
  const records: Map<number, string>[] = [];
  const origins: number[] = [];
  const aside: { row: number; reason: string }[] = [];
  const moves: Move[] = [];
  let rowsUsed = 0;
  let current: Map<number, string> | null = null;
  for (const [at, row] of grid.entries()) {
    if (row.every((cell) => isBlank(cell))) {
      aside.push({ row: at + 1, reason: 'empty row' });
      current = null;
      continue;
    }
    const pair = pairOf(row);
    if (pair === null) {
      aside.push({ row: at + 1, reason: 'neither a key nor a value' });
      continue;
    }
    let place = places.get(pair.key);
    if (place === undefined) {
      place = headers.length;
      places.set(pair.key, place);
      headers.push(pair.key);
    }
    if (current === null || current.has(place)) {
      current = new Map();
      records.push(current);
      origins.push(at + 1);
    }
    current.set(place, pair.value);
    rowsUsed++;
    for (const i of filledCells(row)) {
      moves.push({ row: at + 1, column: pair.key, raw: row[i]!, readAs: pair.value, rule: 'key-value' });
    }
  }
  const body = records.map((record) => headers.map((_, place) => record.get(place) ?? ''));
  return { headers, body, origins, aside, rowsUsed, moves };
}
