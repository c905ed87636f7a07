import { CELL_STATES } from '../../cells/reading.ts';
import type {
  Column,
  DerivedFrom,
  FragmentTable,
  NumericColumn,
  TermColumn,
  TextColumn,
} from '../../fragments/table.ts';

const NOT_OBSERVED = CELL_STATES.indexOf('not-observed');

/** One column from the same attribute of several tables; rows of a table without it are not observed. */
export function stackColumns(id: string, tables: readonly FragmentTable[]): Column {
  const first = tables.map((table) => table.columns.get(id)).find((column) => column !== undefined)!;
  const parts = tables.map((table) => ({ rows: table.rows, column: table.columns.get(id) }));
  if (first.kind === 'numeric') return stackNumbers(first, parts);
  return first.kind === 'term' ? stackTerms(first, parts) : stackTexts(first, parts);
}

type Parts = readonly { readonly rows: number; readonly column: Column | undefined }[];

function total(parts: Parts): number {
  return parts.reduce((sum, { rows }) => sum + rows, 0);
}

function rawOf(parts: Parts): string[] {
  return parts.flatMap(({ rows, column }) => column?.raw ?? Array.from({ length: rows }, () => ''));
}

function stackNumbers(first: NumericColumn, parts: Parts): NumericColumn {
  const rows = total(parts);
  const low = new Float64Array(rows).fill(Number.NaN);
  const high = new Float64Array(rows).fill(Number.NaN);
  const step = new Float64Array(rows).fill(Number.NaN);
  const state = new Uint8Array(rows).fill(NOT_OBSERVED);
  const readings = new Map<number, readonly number[]>();
  const centred = parts.some(({ column }) => column?.kind === 'numeric' && column.centre !== undefined);
  const centre = centred ? { centre: new Float64Array(rows).fill(Number.NaN) } : {};
  let at = 0;
  for (const { rows: count, column } of parts) {
    if (column?.kind === 'numeric') {
      if (column.centre !== undefined) centre.centre?.set(column.centre, at);
      low.set(column.low, at);
      high.set(column.high, at);
      step.set(column.step, at);
      state.set(column.state, at);
      for (const [row, list] of column.readings) readings.set(at + row, list);
    }
    at += count;
  }
  return {
    kind: 'numeric',
    attribute: first.attribute,
    low,
    high,
    state,
    raw: rawOf(parts),
    readings,
    step,
    ...centre,
    ...derivedOf(parts),
  };
}

/** Where values were computed before: a table that was written out and read back still says so. */
function derivedOf(parts: Parts): { readonly derivedFrom?: DerivedFrom } {
  const derived = new Map<number, readonly string[]>();
  let at = 0;
  for (const { rows, column } of parts) {
    if (column !== undefined && column.kind !== 'text')
      for (const [row, from] of column.derivedFrom ?? []) derived.set(at + row, from);
    at += rows;
  }
  return derived.size === 0 ? {} : { derivedFrom: derived };
}

function stackTerms(first: TermColumn, parts: Parts): TermColumn {
  const rows = total(parts);
  const codes = new Int32Array(rows).fill(-1);
  const state = new Uint8Array(rows).fill(NOT_OBSERVED);
  const certainty = new Uint8Array(rows);
  const levels: string[] = [];
  const places = new Map<string, number>();
  let at = 0;
  for (const { rows: count, column } of parts) {
    if (column?.kind === 'term') {
      const map = column.levels.map((level) => {
        let code = places.get(level);
        if (code === undefined) {
          code = levels.length;
          levels.push(level);
          places.set(level, code);
        }
        return code;
      });
      for (let row = 0; row < count; row++)
        codes[at + row] = column.codes[row]! < 0 ? -1 : map[column.codes[row]!]!;
      state.set(column.state, at);
      certainty.set(column.certainty, at);
    }
    at += count;
  }
  return {
    kind: 'term',
    attribute: first.attribute,
    codes,
    levels,
    state,
    certainty,
    raw: rawOf(parts),
    ...derivedOf(parts),
  };
}

function stackTexts(first: TextColumn, parts: Parts): TextColumn {
  const state = new Uint8Array(total(parts)).fill(NOT_OBSERVED);
  let at = 0;
  for (const { rows, column } of parts) {
    if (column !== undefined) state.set(column.state, at);
    at += rows;
  }
  return { kind: 'text', attribute: first.attribute, state, raw: rawOf(parts) };
}
