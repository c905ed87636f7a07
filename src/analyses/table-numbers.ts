import type { ResultColumn, ResultTable, TableCell } from './contract.ts';
import { DATE_UNIT, printNumber, printYear } from './phrasing.ts';
import { YEAR_UNIT } from './years.ts';

/** How the numbers of a result's columns are printed, the same in the terminal, the report and the app. */

/** Columns that hold chances, where 0.04 and 0.004 differ and everything below a thousandth is alike. */
const CHANCES: ReadonlySet<string> = new Set(['p', 'pAdjusted']);

/** Columns whose numbers lie on the scale of the attribute that a row describes: dates, where it is a date. */
const ON_SCALE: ReadonlySet<string> = new Set([
  ...['mean', 'median', 'q1', 'q3', 'censored'].flatMap((id) => [id, `${id}Low`, `${id}High`]),
  ...['min', 'max', 'inside', 'outside'],
]);

const MOST_DECIMALS = 4;

/** A number of a table as people read it, and in full for whoever wants it. */
export interface TableNumber {
  readonly text: string;
  readonly full: string;
}

/** Heading of a column for people: years say their era in every cell, so their unit is for files alone. */
export function columnHead({ label, unit }: ResultColumn): string {
  return unit === undefined || unit === '' || unit === YEAR_UNIT ? label : `${label} (${unit})`;
}

/**
 * A printer for the numbers of a table, given the row and the place of its column: years as BC and AD, other
 * numbers by `columnPrinter`. Years are columns of `yearColumn`, and in rows whose column "unit" says
 * that they describe a date, the columns on its scale.
 */
export function tablePrinter({
  columns,
  rows,
}: ResultTable): (row: readonly TableCell[], place: number) => (value: number) => TableNumber {
  const unitAt = columns.findIndex(({ id }) => id === 'unit');
  const isYear = (row: readonly TableCell[], place: number) =>
    columns[place].unit === YEAR_UNIT || (row[unitAt] === DATE_UNIT && ON_SCALE.has(columns[place].id));
  const printers = columns.map((column, place) =>
    columnPrinter(
      column,
      rows.map((row) => (isYear(row, place) ? null : (row[place] ?? null))),
    ),
  );
  return (row, place) =>
    isYear(row, place)
      ? (value) => ({ text: printedYear(value), full: `astronomical year ${value}` })
      : (value) => ({ text: printers[place](value), full: String(value) });
}

/** Open ends have no era. */
function printedYear(value: number): string {
  return Number.isFinite(value) ? printYear(value) : printNumber(value);
}

/**
 * A printer for the numbers of one column of a table.
 *
 * Decimals are equal down the column, so that figures align: three significant digits of the largest
 * number, two of those at the lower quartile of size (attributes of different units may share a column),
 * at most four. A number that these decimals would print as zero keeps one digit: only zero is printed as
 * zero. Chances have two digits and a floor of 0.001. Full precision stays in results.json.
 */
export function columnPrinter(column: ResultColumn, cells: readonly TableCell[]): (value: number) => string {
  if (CHANCES.has(column.id)) return printChance;
  const decimals = decimalsFor(cells.filter((cell): cell is number => typeof cell === 'number'));
  return (value) => printFixed(value, decimals);
}

/** A chance without its "p =": two digits, "< 0.001" below that. */
export function printChance(p: number): string {
  if (p < 0.001) return '< 0.001';
  return p < 0.1 ? p.toFixed(3) : p.toFixed(2);
}

/** The decimals that numbers printed together share; 0 where all are whole. */
function decimalsFor(values: readonly number[]): number {
  const sizes = values
    .filter((value) => Number.isFinite(value) && value !== 0)
    .map(Math.abs)
    .sort((a, b) => a - b);
  if (sizes.every(Number.isInteger)) return 0;
  const largest = sizes[sizes.length - 1];
  const small = sizes[Math.floor(sizes.length / 4)];
  const wanted = Math.max(2 - magnitude(largest), 1 - magnitude(small));
  return Math.min(MOST_DECIMALS, Math.max(0, wanted));
}

/** With these decimals, a true minus, and one digit kept of what would else be printed as zero. */
function printFixed(value: number, decimals: number): string {
  if (!Number.isFinite(value)) return printNumber(value);
  const text = Math.abs(value).toFixed(decimals);
  if (value !== 0 && Number(text) === 0) return printNumber(value, 1);
  return value < 0 ? `\u2212${text}` : text;
}

/** Power of ten of the first digit: 0 from 1 to below 10. */
function magnitude(size: number): number {
  return Number(size.toExponential().split('e')[1]);
}
