import { logFactorial } from '../foundation/log-factorial.ts';
import type { CountTable } from './contingency.ts';

/** Tables with the same margins: how likely each is, what bounds that while a table is being filled, and the ways to fill it. */

/** Log of the part of a table's chance that depends on its cells: minus the sum of log factorials. */
export function logWeight(table: CountTable): number {
  let sum = 0;
  for (const line of table) {
    let part = 0;
    for (const count of line) part += logFactorial(count);
    sum += part;
  }
  return -sum;
}

/** Log of the summed weights of every table with these margins: n! over the factorials of the margins. */
export function completions(rows: readonly number[], columns: readonly number[]): number {
  const n = rows.reduce((sum, row) => sum + row, 0);
  const sides = [...rows, ...columns].reduce((sum, count) => sum + logFactorial(count), 0);
  return logFactorial(n) - sides;
}

/** The columns still to fill, with what they alone say of the log weight of every way to fill them. */
export interface Rest {
  readonly columns: readonly number[];
  readonly likeliest: number;
  readonly unlikeliest: number;
}

/**
 * Between which log weights every completion lies. Log factorials are convex, so a line weighs most
 * when it is spread as evenly as whole numbers allow and least when it stands in one cell.
 */
export function boundsOf(columns: readonly number[], rows: number): Rest {
  return { columns, likeliest: even(columns, rows), unlikeliest: heaped(columns) };
}

export const likeliest = (left: readonly number[], { columns, likeliest: ofColumns }: Rest): number =>
  columns.length === 0 ? 0 : Math.min(even(left, columns.length), ofColumns);

export const unlikeliest = (left: readonly number[], { columns, unlikeliest: ofColumns }: Rest): number =>
  columns.length === 0 ? 0 : Math.max(heaped(left), ofColumns);

function even(lines: readonly number[], cells: number): number {
  let sum = 0;
  for (const line of lines) {
    const each = Math.floor(line / cells);
    const more = line - each * cells;
    sum += (cells - more) * logFactorial(each) + more * logFactorial(each + 1);
  }
  return -sum;
}

function heaped(lines: readonly number[]): number {
  let sum = 0;
  for (const line of lines) sum += logFactorial(line);
  return -sum;
}

/**
 * Visits every way to take `column` from the row remainders, with what is left (re-used, do not keep)
 * and the log weight of the column; stops, and returns false, when `visit` returns false.
 */
export function fillings(
  rows: readonly number[],
  column: number,
  visit: (left: readonly number[], weight: number) => boolean,
): boolean {
  const room = rows.map((_, row) => rows.slice(row + 1).reduce((sum, value) => sum + value, 0));
  return fill({ rows, room, left: [...rows], visit }, 0, column, 0);
}

interface Filling {
  readonly rows: readonly number[];
  /** What the rows after each one can still take. */
  readonly room: readonly number[];
  readonly left: number[];
  readonly visit: (left: readonly number[], weight: number) => boolean;
}

function fill(filling: Filling, row: number, rest: number, weight: number): boolean {
  const { rows, room, left } = filling;
  if (row === rows.length) return filling.visit(left, weight);
  const most = Math.min(rows[row], rest);
  for (let count = Math.max(0, rest - room[row]); count <= most; count++) {
    left[row] = rows[row] - count;
    if (!fill(filling, row + 1, rest - count, weight - logFactorial(count))) return false;
  }
  left[row] = rows[row];
  return true;
}
