import type { Register } from '../../attributes/definition.ts';
import { CELL_STATES, type CellState } from '../../cells/reading.ts';
import { quantile } from '../../numerics/describing/quantile.ts';
import { addTo, greatest, least } from '../../numerics/foundation/lists.ts';
import { midpoint } from '../accessors.ts';
import { columnsOnDemand } from '../columns-on-demand.ts';
import { contradictEachOther } from '../contradiction.ts';
import { isMissing } from '../missing.ts';
import { QUANTITY } from '../quantity.ts';
import { picked, viewRows } from '../subset.ts';
import type { Column, DerivedFrom, FragmentTable, NumericColumn, TermColumn } from '../table.ts';
import { agreedTerm } from './terms.ts';

export interface CollapsedItems {
  /** One row an item, in the order in which the items first occur; its id is the item's. */
  readonly table: FragmentTable;
  /** Items whose fragments contradict each other, by attribute; attributes without any are left out. */
  readonly disagreements: readonly { readonly attribute: string; readonly items: number }[];
}

/**
 * One row for each original object, from the fragments that survive of it.
 * - Numbers: hull of the intervals; of several, the median of their midpoints as `centre`. When they
 *   disagree, `contradictEachOther` says.
 * - Terms: see `agreedTerm`. Yes/no: present when any fragment has it.
 * - Without any value: the state that all share, `absent` when somebody looked in vain, otherwise
 *   `not-observed`.
 * - Text: the distinct texts, in order, joined by " | ".
 */
export function collapseItems(table: FragmentTable, register: Register): CollapsedItems {
  const { names, groups } = groupByItem(table);
  const columns = new Map<string, Column>();
  const disagreements: { attribute: string; items: number }[] = [];
  for (const [id, column] of table.columns) {
    const { collapsed, items } = collapseColumn(id, column, groups, register);
    columns.set(id, collapsed);
    if (items > 0) disagreements.push({ attribute: id, items });
  }
  return { table: { ...namedBy(table, names, groups), columns }, disagreements };
}

/** The collapsed table, its columns made when they are asked for: for a question, not to be posted to a worker. */
export function viewItems(table: FragmentTable, register: Register): FragmentTable {
  const { names, groups } = groupByItem(table);
  const make = (id: string) =>
    collapseColumn(id, table.columns.get(id) as Column, groups, register).collapsed;
  return { ...namedBy(table, names, groups), columns: columnsOnDemand(table.columns.keys(), make) };
}

function groupByItem({ item }: FragmentTable): {
  readonly names: readonly string[];
  readonly groups: readonly number[][];
} {
  const rowsOf = new Map<string, number[]>();
  for (const [row, name] of item.entries()) addTo(rowsOf, name, row);
  return { names: [...rowsOf.keys()], groups: [...rowsOf.values()] };
}

/** Each object goes by its own name, and stands where its first piece stood. */
function namedBy(
  table: FragmentTable,
  names: readonly string[],
  groups: readonly number[][],
): Omit<FragmentTable, 'columns'> {
  const { columns: _, ...first } = viewRows(
    table,
    groups.map((rows) => rows[0]),
  );
  return { ...first, id: names };
}

/** Rows of one object are one object, whatever number of pieces each of them counts. */
function oncePerItem(column: Column, groups: readonly number[][]): Column {
  const first = groups.map((rows) => rows[0]);
  if (column.kind !== 'numeric') return { ...column, ...pickRows(column, first) };
  const one = (values: Float64Array, several: number) =>
    Float64Array.from(groups, (rows) => (rows.length > 1 ? several : values[rows[0]]));
  return {
    ...column,
    ...pickRows(column, first),
    low: one(column.low, 1),
    high: one(column.high, 1),
    step: one(column.step, Number.NaN),
    readings: new Map(),
  };
}

function pickRows(column: Column, rows: readonly number[]): { raw: string[]; state: Uint8Array } {
  return {
    raw: rows.map((row) => column.raw[row]),
    state: Uint8Array.from(rows, (row) => column.state[row]),
  };
}

interface Collapsed {
  readonly collapsed: Column;
  readonly items: number;
}

function collapseColumn(
  id: string,
  column: Column,
  groups: readonly number[][],
  register: Register,
): Collapsed {
  if (id === QUANTITY) return { collapsed: oncePerItem(column, groups), items: 0 };
  const raw = groups.map((rows) =>
    distinctTexts(rows.length === 1 ? [column.raw[rows[0]]] : picked(column.raw, rows)),
  );
  switch (column.kind) {
    case 'numeric':
      return collapseNumbers(column, groups, raw, register);
    case 'term':
      return collapseTerms(column, groups, raw, register);
    case 'text': {
      const state = Uint8Array.from(groups, (rows) => stateWithoutValue(column, rows));
      return { collapsed: { ...column, raw, state }, items: 0 };
    }
  }
}

function collapseNumbers(
  column: NumericColumn,
  groups: readonly number[][],
  raw: readonly string[],
  register: Register,
): Collapsed {
  const low = new Float64Array(groups.length).fill(Number.NaN);
  const high = low.slice();
  const centre = low.slice();
  const step = low.slice();
  const state = new Uint8Array(groups.length);
  const readings = new Map<number, readonly number[]>();
  let items = 0;
  groups.forEach((rows, item) => {
    if (rows.length === 1) {
      // Most objects are a single piece, which is taken as it is.
      const [row] = rows;
      state[item] = column.state[row];
      if (Number.isNaN(column.low[row])) return;
      low[item] = column.low[row];
      high[item] = column.high[row];
      step[item] = column.step[row];
      if (column.centre !== undefined) centre[item] = column.centre[row];
      const listed = column.readings.get(row) ?? [];
      if (listed.length > 0) readings.set(item, listed);
      return;
    }
    const known = rows.filter((row) => !Number.isNaN(column.low[row]));
    if (known.length === 0) {
      state[item] = stateWithoutValue(column, rows);
      return;
    }
    low[item] = least(known.map((row) => column.low[row]));
    high[item] = greatest(known.map((row) => column.high[row]));
    const middle = quantile(
      known.map((row) => midpoint(column, row)),
      0.5,
    );
    const several =
      known.length > 1 || known.some((row) => !Number.isNaN(column.centre?.[row] ?? Number.NaN));
    if (several && typeof middle === 'number') centre[item] = middle;
    step[item] = greatest(known.map((row) => column.step[row]));
    // One approximate reading makes the whole approximate: measured is 0, approximate 1.
    state[item] = greatest(known.map((row) => column.state[row]));
    const listed = known.flatMap((row) => column.readings.get(row) ?? []);
    if (listed.length > 0) readings.set(item, listed);
    if (contradictEachOther(column, known, register)) items++;
  });
  const derived = collapseDerived(column, groups);
  return { collapsed: { ...column, ...derived, low, high, centre, step, state, readings, raw }, items };
}

function collapseTerms(
  column: TermColumn,
  groups: readonly number[][],
  raw: readonly string[],
  register: Register,
): Collapsed {
  const levels = [...column.levels];
  const places = new Map([...levels.entries()].reverse().map(([place, level]) => [level, place]));
  const codes = new Int32Array(groups.length).fill(-1);
  const state = new Uint8Array(groups.length);
  const certainty = new Uint8Array(groups.length);
  let items = 0;
  groups.forEach((rows, item) => {
    const { term, disagree, leastCertain } = agreedTerm(column, rows, register);
    if (disagree) items++;
    certainty[item] = leastCertain;
    if (term === null) {
      state[item] = disagree ? codeOf('not-observed') : stateWithoutValue(column, rows);
      return;
    }
    const place = places.get(term) ?? levels.push(term) - 1;
    places.set(term, place);
    codes[item] = place;
    const own = rows.filter((row) => column.codes[row] >= 0).map((row) => column.state[row]);
    state[item] = least(own);
  });
  const derived = collapseDerived(column, groups);
  return { collapsed: { ...column, ...derived, levels, codes, state, certainty, raw }, items };
}

/** An item's value is derived where every fragment that has one has it so. */
function collapseDerived(
  column: NumericColumn | TermColumn,
  groups: readonly number[][],
): { readonly derivedFrom?: DerivedFrom } {
  const { derivedFrom } = column;
  if (derivedFrom === undefined) return {};
  const derived = new Map<number, readonly string[]>();
  groups.forEach((rows, item) => {
    const known = rows.filter((row) => !isMissing(column, row));
    if (known.length === 0 || !known.every((row) => derivedFrom.has(row))) return;
    const [first] = known;
    const whole = known.length === 1 ? derivedFrom.get(first) : undefined;
    derived.set(item, whole ?? [...new Set(known.flatMap((row) => derivedFrom.get(row) ?? []))]);
  });
  return { derivedFrom: derived };
}

function stateWithoutValue(column: Column, rows: readonly number[]): number {
  if (rows.length === 1) return column.state[rows[0]];
  const states = new Set(rows.map((row) => column.state[row]));
  if (states.size === 1) return column.state[rows[0]];
  if (column.kind === 'text' && states.has(codeOf('measured'))) return codeOf('measured');
  return states.has(codeOf('absent')) ? codeOf('absent') : codeOf('not-observed');
}

function codeOf(state: CellState): number {
  return CELL_STATES.indexOf(state);
}

function distinctTexts(texts: readonly string[]): string {
  if (texts.length === 1) return texts[0].trim() === '' ? '' : texts[0];
  return [...new Set(texts.filter((text) => text.trim() !== ''))].join(' | ');
}
