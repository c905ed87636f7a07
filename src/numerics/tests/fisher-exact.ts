import { exp } from '../foundation/elementary.ts';
import { greatest } from '../foundation/lists.ts';
import { logFactorial } from '../foundation/log-factorial.ts';
import type { Random } from '../foundation/random.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { dealtOut, MANY_THINGS } from '../resampling/drawn-counts.ts';
import { type CountTable, margins, withoutEmptyLines } from './contingency.ts';

export interface FisherExact {
  readonly p: number;
  readonly method: 'exact' | 'resampled';
  /** Random tables drawn when resampled. */
  readonly tables?: number;
}

/** Nodes of the search that may be visited before the exact test gives way to drawing tables. */
const VISIT_LIMIT = 3_000_000;

/**
 * Fisher's exact test of an r x c table: chance, with all margins fixed, of a table no likelier than
 * the one seen. Exact by walking the columns and merging equal row remainders (the network idea of
 * Mehta & Patel 1983, J. Am. Stat. Assoc. 78:427); where that grows too large, by drawing `tables`
 * tables with the same margins, p = (b + 1) / (m + 1).
 * `visits` bounds the search, 3,000,000 unless given (some ten seconds).
 * Ties in likelihood count within a relative 1e-7, as is usual.
 */
export function fisherExact(
  table: CountTable,
  random: Random,
  tables = 9999,
  visits = VISIT_LIMIT,
): FisherExact | Unavailable {
  const trimmed = withoutEmptyLines(table).table;
  const { rows, columns } = margins(trimmed);
  if (rows.length < 2 || columns.length < 2) return { why: 'an association needs two rows and two columns' };
  const observed = logWeight(trimmed);
  const threshold = observed + 1e-7;
  const exact = walk(rows, columns, threshold, visits);
  if (exact !== undefined) return { p: Math.min(1, exact), method: 'exact' };
  const draw = tableDrawer(rows, columns, random);
  let reached = 0;
  for (let i = 0; i < tables; i++) if (draw() <= threshold) reached++;
  return { p: (reached + 1) / (tables + 1), method: 'resampled', tables };
}

/** Log of the part of a table's chance that depends on its cells: minus the sum of log factorials. */
function logWeight(table: CountTable): number {
  let sum = 0;
  for (const line of table) {
    let part = 0;
    for (const count of line) part += logFactorial(count);
    sum += part;
  }
  return -sum;
}

interface State {
  /** What is left to place in each row, sorted: only the remainders matter from here on. */
  readonly left: readonly number[];
  readonly weight: number;
  ways: number;
}

/**
 * Sum of chances of all tables with log weight at most `threshold`, column by column. States that
 * share their remainders and their weight are merged; a state whose completions all lie on one side
 * of the threshold is settled at once, by the closed sum over every completion.
 */
function walk(
  rows: readonly number[],
  columns: readonly number[],
  threshold: number,
  limit: number,
): number | undefined {
  // Fewer rows make fewer ways to fill a column.
  if (rows.length > columns.length) return walk(columns, rows, threshold, limit);
  const order = [...columns].sort((a, b) => b - a);
  const all = completions(rows, order);
  // Remainders are told apart by one number where it stays exact, which is far quicker than by their text.
  const most = greatest(rows) + 1;
  const keys = rows.reduce((product) => product * most, 1);
  const base = keys <= Number.MAX_SAFE_INTEGER ? most : null;
  let settled = 0;
  let states: State[] = [{ left: [...rows].sort((a, b) => a - b), weight: 0, ways: 1 }];
  let visits = 0;
  for (let at = 0; at < order.length; at++) {
    const rest = boundsOf(order.slice(at + 1), rows.length);
    const next = new Map<number | string, Map<number, State>>();
    for (const state of states) {
      const within = fillings(state.left, order[at], (left, weight) => {
        const total = state.weight + weight;
        if (total + unlikeliest(left, rest) > threshold) return ++visits <= limit;
        if (total + likeliest(left, rest) <= threshold) {
          settled += state.ways * exp(total + completions(left, rest.columns) - all);
          return ++visits <= limit;
        }
        const sorted = inOrder(left);
        const key = keyOf(sorted, base);
        let alike = next.get(key);
        if (alike === undefined) {
          alike = new Map();
          next.set(key, alike);
        }
        const rounded = Math.round(total * 1e9);
        const known = alike.get(rounded);
        if (known) known.ways += state.ways;
        else alike.set(rounded, { left: sorted, weight: total, ways: state.ways });
        return ++visits <= limit;
      });
      if (!within) return undefined;
    }
    states = [...next.values()].flatMap((alike) => [...alike.values()]);
  }
  return settled;
}

/** A copy, smallest first; lists are of a few numbers, for which the built-in sort is slow. */
function inOrder(values: readonly number[]): readonly number[] {
  const sorted = values.slice();
  for (let at = 1; at < sorted.length; at++) {
    const value = sorted[at];
    let to = at;
    for (; to > 0 && sorted[to - 1] > value; to--) sorted[to] = sorted[to - 1];
    sorted[to] = value;
  }
  return sorted;
}

/** One for each list of remainders below `base`; their text where no number holds them all. */
function keyOf(values: readonly number[], base: number | null): number | string {
  if (base === null) return values.join();
  let key = 0;
  for (const value of values) key = key * base + value;
  return key;
}

/** Log of the summed weights of every table with these margins: n! over the factorials of the margins. */
function completions(rows: readonly number[], columns: readonly number[]): number {
  const n = rows.reduce((sum, row) => sum + row, 0);
  const sides = [...rows, ...columns].reduce((sum, count) => sum + logFactorial(count), 0);
  return logFactorial(n) - sides;
}

/** The columns still to fill, with what they alone say of the log weight of every way to fill them. */
interface Rest {
  readonly columns: readonly number[];
  readonly likeliest: number;
  readonly unlikeliest: number;
}

/**
 * Between which log weights every completion lies. Log factorials are convex, so a line weighs most
 * when it is spread as evenly as whole numbers allow and least when it stands in one cell.
 */
function boundsOf(columns: readonly number[], rows: number): Rest {
  return { columns, likeliest: even(columns, rows), unlikeliest: heaped(columns) };
}

const likeliest = (left: readonly number[], { columns, likeliest: ofColumns }: Rest): number =>
  columns.length === 0 ? 0 : Math.min(even(left, columns.length), ofColumns);

const unlikeliest = (left: readonly number[], { columns, unlikeliest: ofColumns }: Rest): number =>
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
function fillings(
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

/** Draws log weights of random tables with these margins, as if the row labels were shuffled over the column labels. */
function tableDrawer(rows: readonly number[], columns: readonly number[], random: Random): () => number {
  const n = rows.reduce((sum, row) => sum + row, 0);
  if (n > MANY_THINGS) return countDrawer(rows, columns, random);
  const unshuffled = Uint32Array.from(rows.flatMap((count, row) => new Array<number>(count).fill(row)));
  const labels = new Uint32Array(n);
  const table = rows.map(() => new Array<number>(columns.length).fill(0));
  return () => {
    labels.set(unshuffled);
    for (const line of table) line.fill(0);
    let last = n;
    for (let column = 0; column < columns.length; column++)
      for (let i = 0; i < columns[column]; i++) {
        const pick = random.integer(last--);
        table[labels[pick]][column]++;
        labels[pick] = labels[last];
      }
    return logWeight(table);
  };
}

/** The same for very many: each column is dealt out of what the rows have left. */
function countDrawer(rows: readonly number[], columns: readonly number[], random: Random): () => number {
  return () => {
    const left = Float64Array.from(rows);
    let sum = 0;
    for (const column of columns) {
      const drawn = dealtOut(left, column, random);
      let part = 0;
      for (let row = 0; row < left.length; row++) {
        part += logFactorial(drawn[row]);
        left[row] -= drawn[row];
      }
      sum += part;
    }
    return -sum;
  };
}
