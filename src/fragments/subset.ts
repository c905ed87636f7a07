import { columnsOnDemand } from './columns-on-demand.ts';
import type { Column, DerivedFrom, FragmentTable, NumericColumn } from './table.ts';

/** The table of the given rows, in the given order; indices may repeat. */
export function takeRows(table: FragmentTable, rows: ArrayLike<number>): FragmentTable {
  const from = Int32Array.from(rows);
  if (isWhole(from, table.rows)) return table;
  const columns = new Map([...table.columns].map(([id, column]) => [id, takeFromColumn(column, from)]));
  return { ...takeNames(table, from), columns };
}

/** The same, its columns made when they are asked for: for a question, not to be posted to a worker. */
export function viewRows(table: FragmentTable, rows: ArrayLike<number>): FragmentTable {
  const from = Int32Array.from(rows);
  if (isWhole(from, table.rows)) return table;
  const make = (id: string) => takeFromColumn(table.columns.get(id) as Column, from);
  return { ...takeNames(table, from), columns: columnsOnDemand(table.columns.keys(), make) };
}

/** Tables are never changed, so that all rows in their own order are the table itself. */
function isWhole(rows: Int32Array, all: number): boolean {
  return rows.length === all && rows.every((row, place) => row === place);
}

function takeNames(table: FragmentTable, rows: Int32Array): Omit<FragmentTable, 'columns'> {
  return {
    rows: rows.length,
    id: picked(table.id, rows),
    item: picked(table.item, rows),
    assemblage: picked(table.assemblage, rows),
    origin: picked(table.origin, rows),
    sources: table.sources,
    ...(table.tells === undefined ? {} : { tells: table.tells }),
  };
}

/** What a list holds at some places, in their order. */
export function picked<T>(list: readonly T[], places: ArrayLike<number>): T[] {
  const taken = new Array<T>(places.length);
  for (let place = 0; place < taken.length; place++) taken[place] = list[places[place]];
  return taken;
}

function takeFromColumn(column: Column, rows: Int32Array): Column {
  const raw = picked(column.raw, rows);
  const state = takeNumbersOf(column.state, rows, new Uint8Array(rows.length));
  switch (column.kind) {
    case 'numeric':
      return takeNumbers(column, rows, raw, state);
    case 'term':
      return {
        ...column,
        raw,
        state,
        codes: takeNumbersOf(column.codes, rows, new Int32Array(rows.length)),
        certainty: takeNumbersOf(column.certainty, rows, new Uint8Array(rows.length)),
        ...takeDerived(column.derivedFrom, rows),
      };
    case 'text':
      return { ...column, raw, state };
  }
}

function takeNumbersOf<Numbers extends Float64Array | Int32Array | Uint8Array>(
  from: ArrayLike<number>,
  rows: Int32Array,
  into: Numbers,
): Numbers {
  for (let place = 0; place < rows.length; place++) into[place] = from[rows[place]];
  return into;
}

function takeNumbers(
  column: NumericColumn,
  rows: Int32Array,
  raw: readonly string[],
  state: Uint8Array,
): NumericColumn {
  const take = (values: Float64Array) => takeNumbersOf(values, rows, new Float64Array(rows.length));
  return {
    ...column,
    raw,
    state,
    readings: takeListed(column.readings, rows),
    low: take(column.low),
    high: take(column.high),
    step: take(column.step),
    ...(column.centre === undefined ? {} : { centre: take(column.centre) }),
    ...takeDerived(column.derivedFrom, rows),
  };
}

function takeDerived(
  derivedFrom: DerivedFrom | undefined,
  rows: Int32Array,
): { readonly derivedFrom?: DerivedFrom } {
  return derivedFrom === undefined ? {} : { derivedFrom: takeListed(derivedFrom, rows) };
}

/** What is listed of some rows, by the places that they have now. */
function takeListed<T>(listed: ReadonlyMap<number, T>, rows: Int32Array): ReadonlyMap<number, T> {
  const taken = new Map<number, T>();
  if (listed.size === 0) return taken;
  for (let place = 0; place < rows.length; place++) {
    const own = listed.get(rows[place]);
    if (own !== undefined) taken.set(place, own);
  }
  return taken;
}
