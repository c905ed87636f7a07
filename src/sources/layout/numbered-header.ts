import { filledCells, isBlank, isNumberLike } from './cell-shapes.ts';
import type { Grid } from './grid.ts';

/**
 * Names of columns that look like readings:
 * - numbered types or years at equal steps (1, 2, 3 … or 1950, 1960, 1970), over rows that do not run so themselves;
 * - any names that differ ("142.24", "15-24", "1A") beside a blank corner, over rows that each have a name there;
 * - codes that begin with a figure ("1a", "2b"), over rows of plain numbers.
 */
export function isNumberedHeader(grid: Grid, at: number): boolean {
  const row = grid[at]!;
  const below = grid.slice(at + 1, at + 21).filter((record) => filledCells(record).length > 0);
  if (below.length === 0) return false;
  if (isRun(row)) return !below.slice(0, 5).every(isRun) && below.slice(0, 5).every(isNamed);
  return hasCorner(row, below) || areCodes(row, below);
}

const isNamed = (record: readonly string[]): boolean => !isBlank(record[0]);

/**
 * Three or more whole numbers that grow by equal steps, after a word or blank; in every column, they start with 1
 * and are four or more.
 */
function isRun(row: readonly string[]): boolean {
  const numbers = row.flatMap((text, i) =>
    /^\d{1,4}$/.test(text.trim()) ? [{ i, value: Number(text) }] : [],
  );
  const [one, two] = numbers;
  if (numbers.length < 3 || one === undefined || two === undefined) return false;
  const step = two.value - one.value;
  if (one.i === 0 && (one.value !== 1 || step !== 1 || numbers.length < Math.max(4, row.length)))
    return false;
  const rest = filledCells(row).filter((i) => i >= one.i).length;
  return (
    step > 0 &&
    rest - numbers.length <= 2 &&
    numbers.every(({ value }, place) => value === one.value + place * step)
  );
}

/** Rows with names of their own, each another, and nothing over those names. */
function hasCorner(row: readonly string[], below: Grid): boolean {
  const fields = filledCells(row);
  return (
    isBlank(row[0]) &&
    row.length > 2 &&
    fields.length === row.length - 1 &&
    areDifferent(fields.map((i) => row[i]!)) &&
    below.length > 1 &&
    below.every(isNamed) &&
    areDifferent(below.map((record) => record[0]!))
  );
}

function areCodes(row: readonly string[], below: Grid): boolean {
  const names = row.filter((text) => !isBlank(text));
  return (
    names.length > 2 &&
    below.length > 1 &&
    areDifferent(names) &&
    names.every((text) => /^\d{1,3}[\s._-]?\p{L}{1,3}$/u.test(text.trim())) &&
    below.every((record) => record.every((text) => isBlank(text) || isPlainNumber(text)))
  );
}

const isPlainNumber = (text: string): boolean => isNumberLike(text) && !/\p{L}/u.test(text);
const areDifferent = (texts: readonly string[]): boolean =>
  new Set(texts.map((text) => text.trim())).size === texts.length;
