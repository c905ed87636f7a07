import type { FragmentTable } from './table.ts';

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
