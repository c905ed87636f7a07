import { stateAt } from './missing.ts';
import type { NumericColumn, TermColumn } from './table.ts';

/**
 * One number for a reading: the middle of its interval, or, where a row stands for several fragments,
 * the median of theirs. NaN where there is no reading or an end is open.
 */
export function midpoint(column: NumericColumn, row: number): number {
  const centre = column.centre?.[row] ?? Number.NaN;
  if (!Number.isNaN(centre)) return centre;
  const middle = (column.low[row] + column.high[row]) / 2;
  return Number.isFinite(middle) ? middle : Number.NaN;
}

/** One value a record: its midpoint, or the known end of an open reading. */
export function pointOf(column: NumericColumn, row: number): number {
  const middle = midpoint(column, row);
  if (!Number.isNaN(middle)) return middle;
  return Number.isFinite(column.high[row]) ? column.high[row] : column.low[row];
}

/** An open-ended reading such as ">30" has no upper (or no lower) end. */
export function isOpenEnded(column: NumericColumn, row: number): boolean {
  return !(Number.isFinite(column.low[row]) && Number.isFinite(column.high[row]));
}

/** The term of a row, `absent` where a yes/no attribute was looked for in vain; null where there is none. */
export function termAt(column: TermColumn, row: number): string | null {
  const code = column.codes[row];
  if (code >= 0) return column.levels[code];
  const { scale } = column.attribute;
  const yesNo = scale === 'presence' || scale === 'binary';
  return yesNo && stateAt(column, row) === 'absent' ? 'absent' : null;
}

/**
 * The same column with every row that stands for several fragments reduced to the median of theirs,
 * for comparisons that take one number a reading.
 */
export function atCentre(column: NumericColumn): NumericColumn {
  const { centre } = column;
  if (centre === undefined) return column;
  const orEnd = (ends: Float64Array) =>
    ends.map((end, row) => (Number.isNaN(centre[row]) ? end : centre[row]));
  return { ...column, low: orEnd(column.low), high: orEnd(column.high) };
}
