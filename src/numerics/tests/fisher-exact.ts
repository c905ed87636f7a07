import { exp } from '../foundation/elementary.ts';
import { greatest } from '../foundation/lists.ts';
import type { Random } from '../foundation/random.ts';
import type { Unavailable } from '../foundation/unavailable.ts';
import { type CountTable, margins, withoutEmptyLines } from './contingency.ts';
import { boundsOf, completions, fillings, likeliest, logWeight, unlikeliest } from './fixed-margins.ts';
import { tableDrawer } from './tables-drawn.ts';

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
