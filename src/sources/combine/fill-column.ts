import { CELL_STATES } from '../../cells/reading.ts';
import type { Column } from '../../fragments/table.ts';

const NOT_OBSERVED = CELL_STATES.indexOf('not-observed');

/** The same column with the cells of some rows taken from rows of another; -1 keeps what is there. */
export function fillColumn(column: Column | undefined, donor: Column, from: Int32Array): Column {
  const rows = from.length;
  const base = column ?? emptyLike(donor, rows);
  if (base.kind === 'numeric' && donor.kind === 'numeric') {
    const low = base.low.slice();
    const high = base.high.slice();
    const step = base.step.slice();
    const state = base.state.slice();
    const raw = [...base.raw];
    const readings = new Map(base.readings);
    for (let row = 0; row < rows; row++) {
      const source = from[row]!;
      if (source < 0) continue;
      low[row] = donor.low[source]!;
      high[row] = donor.high[source]!;
      step[row] = donor.step[source]!;
      state[row] = donor.state[source]!;
      raw[row] = donor.raw[source]!;
      const list = donor.readings.get(source);
      if (list !== undefined) readings.set(row, list);
    }
    return { ...base, low, high, step, state, raw, readings };
  }
  if (base.kind === 'term' && donor.kind === 'term') {
    const codes = base.codes.slice();
    const state = base.state.slice();
    const certainty = base.certainty.slice();
    const raw = [...base.raw];
    const levels = [...base.levels];
    const places = new Map(levels.map((level, code) => [level, code]));
    for (let row = 0; row < rows; row++) {
      const source = from[row]!;
      if (source < 0) continue;
      const level = donor.codes[source]! < 0 ? undefined : donor.levels[donor.codes[source]!];
      if (level !== undefined && !places.has(level)) places.set(level, levels.push(level) - 1);
      codes[row] = level === undefined ? -1 : places.get(level)!;
      state[row] = donor.state[source]!;
      certainty[row] = donor.certainty[source]!;
      raw[row] = donor.raw[source]!;
    }
    return { ...base, codes, state, certainty, levels, raw };
  }
  const state = base.state.slice();
  const raw = [...base.raw];
  for (let row = 0; row < rows; row++) {
    if (from[row]! < 0) continue;
    state[row] = donor.state[from[row]!]!;
    raw[row] = donor.raw[from[row]!]!;
  }
  return { ...base, state, raw } as Column;
}

function emptyLike(donor: Column, rows: number): Column {
  const state = new Uint8Array(rows).fill(NOT_OBSERVED);
  const raw = Array.from({ length: rows }, () => '');
  const { attribute } = donor;
  if (donor.kind === 'text') return { kind: 'text', attribute, raw, state };
  if (donor.kind === 'term') {
    const levels = [...donor.levels];
    return {
      kind: 'term',
      attribute,
      codes: new Int32Array(rows).fill(-1),
      levels,
      state,
      certainty: new Uint8Array(rows),
      raw,
    };
  }
  const nothing = (): Float64Array => new Float64Array(rows).fill(Number.NaN);
  return {
    kind: 'numeric',
    attribute,
    low: nothing(),
    high: nothing(),
    step: nothing(),
    state,
    raw,
    readings: new Map(),
  };
}

/** Whether a row has nothing at all in a column: no reading, and no statement that there is none. */
export function isUnstated(column: Column | undefined, row: number): boolean {
  return column === undefined || (column.state[row] === NOT_OBSERVED && column.raw[row]!.trim() === '');
}

/** Two cells that say the same. */
export function sameCell(a: Column, rowA: number, b: Column, rowB: number): boolean {
  if (a.kind === 'numeric' && b.kind === 'numeric') {
    return (
      Object.is(a.low[rowA], b.low[rowB]) &&
      Object.is(a.high[rowA], b.high[rowB]) &&
      a.state[rowA] === b.state[rowB]
    );
  }
  if (a.kind === 'term' && b.kind === 'term') {
    return a.levels[a.codes[rowA]!] === b.levels[b.codes[rowB]!] && a.state[rowA] === b.state[rowB];
  }
  return a.raw[rowA]!.trim() === b.raw[rowB]!.trim();
}
