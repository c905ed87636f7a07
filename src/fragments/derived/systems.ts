import { CELL_STATES } from '../../cells/reading.ts';
import { midpoint, termAt } from '../accessors.ts';
import type { Column, FragmentTable } from '../table.ts';

/**
 * Where nothing tells which system is the warp, "14 x 10" and "10 x 14" are one fabric seen twice. The systems
 * of such a find are put in one order, the denser first, with all that is recorded of each (count,
 * diameter, twist, ply, fibre). Rows without both counts stay as they are. Common practice, no source.
 *
 * @param alike whether the systems of a row's structure can change places; rows of twining cannot.
 */
export function orderUntoldSystems(table: FragmentTable, alike: (row: number) => boolean): FragmentTable {
  const orientation = table.columns.get('orientation');
  const first = table.columns.get('density1');
  const second = table.columns.get('density2');
  if (orientation?.kind !== 'term' || first?.kind !== 'numeric' || second?.kind !== 'numeric') return table;
  const swapped = new Set<number>();
  for (let row = 0; row < table.rows; row++) {
    if (termAt(orientation, row) !== 'untold' || !alike(row)) continue;
    if (midpoint(first, row) < midpoint(second, row)) swapped.add(row);
  }
  if (swapped.size === 0) return table;
  const columns = new Map(table.columns);
  for (const [one, two] of SYSTEM_PAIRS) {
    const a = table.columns.get(one);
    const b = table.columns.get(two);
    // A measure that the table has of one system only stays with the attribute it stands under.
    if (a === undefined || b === undefined || a.kind !== b.kind) continue;
    columns.set(one, mixed(a, b, swapped, two));
    columns.set(two, mixed(b, a, swapped, one));
  }
  return { ...table, columns };
}

/** What is recorded of each of two systems. */
const SYSTEM_PAIRS: readonly (readonly [string, string])[] = [
  ['density1', 'density2'],
  ['diameter1', 'diameter2'],
  ['twist1', 'twist2'],
  ['ply1', 'ply2'],
  ['plyCount1', 'plyCount2'],
  ['tightness1', 'tightness2'],
  ['twistAngle1', 'twistAngle2'],
  ['fibre', 'fibre2'],
];

/** The first column with some rows taken from the second; the text of the source goes with its reading. */
function mixed(own: Column, others: Column, rows: ReadonlySet<number>, from: string): Column {
  const pick = <Value>(mine: ArrayLike<Value>, theirs: ArrayLike<Value>): Value[] =>
    Array.from(mine, (value, row) => (rows.has(row) ? (theirs[row] as Value) : value));
  const state = Uint8Array.from(pick(own.state, others.state));
  const raw = pick(own.raw, others.raw);
  const moved = new Map<number, readonly string[]>();
  for (const row of rows)
    if (others.state[row] === MEASURED || others.raw[row] !== '') moved.set(row, [from]);
  if (own.kind === 'numeric' && others.kind === 'numeric') {
    const readings = new Map([...own.readings].filter(([row]) => !rows.has(row)));
    for (const [row, list] of others.readings) if (rows.has(row)) readings.set(row, list);
    return {
      ...own,
      low: Float64Array.from(pick(own.low, others.low)),
      high: Float64Array.from(pick(own.high, others.high)),
      step: Float64Array.from(pick(own.step, others.step)),
      state,
      raw,
      readings,
      derivedFrom: new Map([...(own.derivedFrom ?? []), ...moved]),
    };
  }
  if (own.kind === 'term' && others.kind === 'term') {
    const levels = [...new Set([...own.levels, ...others.levels])];
    const code = (column: typeof own, row: number) =>
      column.codes[row] < 0 ? -1 : levels.indexOf(column.levels[column.codes[row]]);
    return {
      ...own,
      levels,
      codes: Int32Array.from(own.codes, (_, row) => code(rows.has(row) ? others : own, row)),
      certainty: Uint8Array.from(pick(own.certainty, others.certainty)),
      state,
      raw,
      derivedFrom: new Map([...(own.derivedFrom ?? []), ...moved]),
    };
  }
  return own;
}

const MEASURED = CELL_STATES.indexOf('measured');
