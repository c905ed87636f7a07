import { CELL_STATES } from '../cells/reading.ts';
import { InputError } from '../errors.ts';
import { takeRows } from './subset.ts';
import type { Column, FragmentTable, NumericColumn } from './table.ts';

/** Id of the attribute that says how many objects a row stands for. */
export const QUANTITY = 'quantity';

/**
 * How many objects one row stands for: 1 where nothing is recorded, the recorded number else. Half counts
 * are allowed (common practice where a piece may belong to either of two kinds); nought is a row of a table
 * of counts that was looked for and not found. The lower end of a range is taken, so that nothing is counted
 * that may not be there.
 */
export function quantityAt(table: Pick<FragmentTable, 'columns'>, row: number): number {
  const column = table.columns.get(QUANTITY);
  if (column?.kind !== 'numeric') return 1;
  const low = column.low[row];
  return Number.isNaN(low) || low < 0 ? 1 : low;
}

/** Whether any row stands for more or less than one object. */
export function hasQuantities(table: Pick<FragmentTable, 'columns' | 'rows'>): boolean {
  const column = table.columns.get(QUANTITY);
  if (column?.kind !== 'numeric') return false;
  return column.low.some((low) => low >= 0 && low !== 1);
}

/** How many objects the rows stand for together: the number of rows where no quantity is recorded. */
export function countOf(table: Pick<FragmentTable, 'columns'>, rows: Iterable<number>): number {
  let count = 0;
  for (const row of rows) count += quantityAt(table, row);
  return count;
}

/**
 * How many original objects the rows stand for: an item counts once however many rows it has; an item of a
 * single row counts as often as that row says.
 */
export function itemsOf(table: Pick<FragmentTable, 'columns' | 'item'>, rows: Iterable<number>): number {
  const rowsOf = new Map<string, number[]>();
  for (const row of rows) {
    const item = table.item[row];
    const known = rowsOf.get(item);
    if (known === undefined) rowsOf.set(item, [row]);
    else known.push(row);
  }
  let count = 0;
  for (const own of rowsOf.values()) count += own.length === 1 ? quantityAt(table, own[0]) : 1;
  return count;
}

/** More objects than this are not laid out one by one. */
const MOST_OBJECTS = 1_000_000;

/**
 * One row an object: a row that stands for twelve becomes twelve, one for nought none, so that every count, share
 * and test of kinds counts objects. Measurements stay with the first of them, since they were taken once.
 *
 * Half counts are carried from row to row: of two halves one object comes, and the total is kept to within a half.
 * The table itself where no quantity is recorded.
 *
 * @throws InputError where the quantities come to more than a million objects.
 */
export function oneRowEach(table: FragmentTable): FragmentTable {
  if (!hasQuantities(table)) return table;
  const total = countOf(table, table.id.keys());
  if (total > MOST_OBJECTS)
    throw new InputError(
      `the quantities come to ${total} objects, and at most ${MOST_OBJECTS} are counted one by one`,
      { column: QUANTITY },
      'check the column of quantities, or give counts in tens',
    );
  const rows: number[] = [];
  const copies: number[] = [];
  let reached = 0;
  for (let row = 0; row < table.rows; row++) {
    const before = Math.floor(reached + 0.5);
    reached += quantityAt(table, row);
    const count = Math.floor(reached + 0.5) - before;
    for (let copy = 0; copy < count; copy++) {
      rows.push(row);
      copies.push(copy);
    }
  }
  const laidOut = takeRows(table, rows);
  const named = (names: readonly string[]) =>
    names.map((name, row) => (copies[row] === 0 ? name : `${name} [${copies[row]! + 1}]`));
  const columns = [...laidOut.columns].map(([id, column]): [string, Column] => [
    id,
    column.kind === 'numeric' ? (id === QUANTITY ? ones(column) : onlyFirst(column, copies)) : column,
  ]);
  return { ...laidOut, id: named(laidOut.id), item: named(laidOut.item), columns: new Map(columns) };
}

function ones(column: NumericColumn): NumericColumn {
  const one = new Float64Array(column.low.length).fill(1);
  return { ...column, low: one, high: one.slice(), readings: new Map() };
}

const NOT_OBSERVED = CELL_STATES.indexOf('not-observed');

/** A measurement of the first of several objects; of the others none was taken. */
function onlyFirst(column: NumericColumn, copies: readonly number[]): NumericColumn {
  const of = (values: Float64Array) => values.map((value, row) => (copies[row] === 0 ? value : Number.NaN));
  return {
    ...column,
    low: of(column.low),
    high: of(column.high),
    step: of(column.step),
    state: column.state.map((state, row) => (copies[row] === 0 ? state : NOT_OBSERVED)),
    readings: new Map([...column.readings].filter(([row]) => copies[row] === 0)),
  };
}
