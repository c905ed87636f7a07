import type { AttributeDefinition } from '../../attributes/definition.ts';
import { CELL_STATES } from '../../cells/reading.ts';
import type { Interval } from '../intervals.ts';
import { isMissing } from '../missing.ts';
import type { Column, NumericColumn, TermColumn } from '../table.ts';

/** A value that follows from others: what it may be, its middle where that is one number, and whence it comes. */
export interface Derived {
  readonly ends: Interval;
  /** The value at the readings as they are printed; NaN where one of them is a range. */
  readonly centre: number;
  /** Ids of the attributes that it was computed from. */
  readonly from: readonly string[];
}

const APPROXIMATE = CELL_STATES.indexOf('approximate');
const NOT_OBSERVED = CELL_STATES.indexOf('not-observed');

/** A column with its gaps filled by a formula; undefined where no row gains a value. What is recorded stays. */
export function fillNumbers(
  column: Column | undefined,
  attribute: AttributeDefinition,
  rows: number,
  formula: (row: number) => Derived | null,
): NumericColumn | undefined {
  if (column !== undefined && column.kind !== 'numeric') return undefined;
  const base = column ?? emptyNumbers(attribute, rows);
  const low = base.low.slice();
  const high = base.high.slice();
  const state = base.state.slice();
  const centre = base.centre?.slice() ?? new Float64Array(rows).fill(Number.NaN);
  const derivedFrom = new Map(base.derivedFrom);
  let gained = 0;
  for (let row = 0; row < rows; row++) {
    if (!isMissing(base, row)) continue;
    const made = formula(row);
    if (made === null || Number.isNaN(made.ends[0]) || Number.isNaN(made.ends[1])) continue;
    [low[row], high[row]] = made.ends;
    if (low[row] !== high[row]) centre[row] = made.centre;
    state[row] = low[row] === high[row] ? 0 : APPROXIMATE;
    derivedFrom.set(row, made.from);
    gained++;
  }
  if (gained === 0) return undefined;
  const middles = centre.some((value) => !Number.isNaN(value)) ? { centre } : {};
  return { ...base, low, high, state, ...middles, derivedFrom };
}

function emptyNumbers(attribute: AttributeDefinition, rows: number): NumericColumn {
  return {
    kind: 'numeric',
    attribute,
    low: new Float64Array(rows).fill(Number.NaN),
    high: new Float64Array(rows).fill(Number.NaN),
    step: new Float64Array(rows).fill(Number.NaN),
    state: new Uint8Array(rows).fill(NOT_OBSERVED),
    raw: new Array<string>(rows).fill(''),
    readings: new Map(),
  };
}

/** A kind that follows from other attributes. */
export interface DerivedTerm {
  readonly term: string;
  readonly from: readonly string[];
}

/** The same for terms. */
export function fillTerms(
  column: Column | undefined,
  attribute: AttributeDefinition,
  rows: number,
  termOf: (row: number) => DerivedTerm | null,
): TermColumn | undefined {
  if (column !== undefined && column.kind !== 'term') return undefined;
  const base: TermColumn = column ?? {
    kind: 'term',
    attribute,
    codes: new Int32Array(rows).fill(-1),
    levels: attribute.levels ?? [],
    state: new Uint8Array(rows).fill(NOT_OBSERVED),
    certainty: new Uint8Array(rows),
    raw: new Array<string>(rows).fill(''),
  };
  const levels = [...base.levels];
  const codes = base.codes.slice();
  const state = base.state.slice();
  const derivedFrom = new Map(base.derivedFrom);
  let gained = 0;
  for (let row = 0; row < rows; row++) {
    if (!isMissing(base, row)) continue;
    const found = termOf(row);
    if (found === null) continue;
    if (!levels.includes(found.term)) levels.push(found.term);
    codes[row] = levels.indexOf(found.term);
    state[row] = 0;
    derivedFrom.set(row, found.from);
    gained++;
  }
  return gained === 0 ? undefined : { ...base, levels, codes, state, derivedFrom };
}
