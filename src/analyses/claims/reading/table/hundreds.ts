import { isBlank } from './blank.ts';
import type { Layout, TableColumn } from './laid.ts';

/** Whether numbers that add up to a hundred are per cents, and along which lines. */

/** Do the cells of most rows, or of most columns, add up to 100 (or to 1)? */
export function addsToHundred(
  laid: Layout,
  columns: readonly number[],
  rows: readonly number[],
  least = 2,
): boolean {
  const at = (r: number, c: number) =>
    Number((laid.texts[r][c] ?? '').replace(/[%\s]/g, '').replace(',', '.')) || 0;
  const near = (cells: readonly number[]) => {
    const sum = cells.reduce((all, one) => all + one, 0);
    const slack = Math.max(1, cells.length / 2);
    return (
      cells.length >= 2 &&
      cells.every((one) => one >= 0) &&
      (Math.abs(sum - 100) <= slack || Math.abs(sum - 1) <= 0.01 * cells.length)
    );
  };
  const byRow = rows.map((r) => near(columns.map((c) => at(r, c))));
  const byColumn = columns.map((c) => near(rows.map((r) => at(r, c))));
  const most = (list: readonly boolean[]) =>
    list.length >= least && list.filter(Boolean).length * 3 >= list.length * 2;
  return (
    most(byRow) ||
    most(byColumn) ||
    (least <= 2 && (byRow.length === 1 || byColumn.length === 1) && [...byRow, ...byColumn].some(Boolean))
  );
}

/** Do the cells of most lines add up to 100? */
export function linesAreHundred(laid: Layout, columns: readonly number[], rows: readonly number[]): boolean {
  const good = rows.filter((r) => {
    const sum = columns.reduce(
      (all, c) => all + (Number((laid.texts[r][c] ?? '').replace(/[%\s]/g, '').replace(',', '.')) || 0),
      0,
    );
    return Math.abs(sum - 100) <= Math.max(1, columns.length / 2);
  }).length;
  return good * 3 >= rows.length * 2;
}

/** Do all cells together add up to 100, as per cents of the whole do? */
export function wholeIsHundred(laid: Layout, columns: readonly number[], rows: readonly number[]): boolean {
  const cells = rows.flatMap((r) =>
    columns.map((c) => Number((laid.texts[r][c] ?? '').replace(/[%\s]/g, '')) || 0),
  );
  const sum = cells.reduce((all, one) => all + one, 0);
  return cells.length > 3 && Math.abs(sum - 100) <= cells.length / 2;
}

/** Printed totals of 99, 100 or 101 in every line. */
export function totalsAreHundred(laid: Layout): boolean {
  const column = laid.columns.findIndex(isSumLine);
  const row = laid.rows.findIndex(isSumLine);
  const cells = [
    ...(column < 0 ? [] : laid.texts.map((texts) => texts[column])),
    ...(row < 0 ? [] : laid.texts[row].filter((_, c) => !isSumLine(laid.columns[c]))),
  ].filter((cell) => !isBlank(cell));
  return cells.length >= 2 && cells.every((cell) => Math.abs(Number(cell.replace(/[%\s]/g, '')) - 100) <= 2);
}

/** A line or a column of sums. */
export function isSumLine({ line }: Pick<TableColumn, 'line'>): boolean {
  return line === 'total' || line === 'subtotal';
}
