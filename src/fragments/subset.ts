import type { Column, DerivedFrom, FragmentTable, NumericColumn } from './table.ts';

/** The table of the given rows, in the given order; indices may repeat. */
export function takeRows(table: FragmentTable, rows: ArrayLike<number>): FragmentTable {
  const from = Array.from(rows);
  return {
    rows: from.length,
    id: from.map((row) => table.id[row]),
    item: from.map((row) => table.item[row]),
    assemblage: from.map((row) => table.assemblage[row]),
    origin: from.map((row) => table.origin[row]),
    sources: table.sources,
    ...(table.tells === undefined ? {} : { tells: table.tells }),
    columns: new Map([...table.columns].map(([id, column]) => [id, takeFromColumn(column, from)])),
  };
}

function takeFromColumn(column: Column, rows: readonly number[]): Column {
  const raw = rows.map((row) => column.raw[row]);
  const state = Uint8Array.from(rows, (row) => column.state[row]);
  switch (column.kind) {
    case 'numeric':
      return takeNumbers(column, rows, raw, state);
    case 'term':
      return {
        ...column,
        raw,
        state,
        codes: Int32Array.from(rows, (row) => column.codes[row]),
        certainty: Uint8Array.from(rows, (row) => column.certainty[row]),
        ...takeDerived(column.derivedFrom, rows),
      };
    case 'text':
      return { ...column, raw, state };
  }
}

function takeNumbers(
  column: NumericColumn,
  rows: readonly number[],
  raw: readonly string[],
  state: Uint8Array,
): NumericColumn {
  const take = (values: Float64Array) => Float64Array.from(rows, (row) => values[row]);
  const readings = new Map<number, readonly number[]>();
  rows.forEach((row, place) => {
    const listed = column.readings.get(row);
    if (listed !== undefined) readings.set(place, listed);
  });
  return {
    ...column,
    raw,
    state,
    readings,
    low: take(column.low),
    high: take(column.high),
    step: take(column.step),
    ...(column.centre === undefined ? {} : { centre: take(column.centre) }),
    ...takeDerived(column.derivedFrom, rows),
  };
}

function takeDerived(
  derivedFrom: DerivedFrom | undefined,
  rows: readonly number[],
): { readonly derivedFrom?: DerivedFrom } {
  if (derivedFrom === undefined) return {};
  const taken = new Map<number, readonly string[]>();
  rows.forEach((row, place) => {
    const from = derivedFrom.get(row);
    if (from !== undefined) taken.set(place, from);
  });
  return { derivedFrom: taken };
}
