import type { AttributeDefinition, Register } from '../attributes/definition.ts';
import { isWithin } from '../attributes/tree.ts';
import { CELL_STATES } from '../cells/reading.ts';
import { ln } from '../numerics/foundation/elementary.ts';
import { termAt } from './accessors.ts';
import { difference, type Interval, isNothing, NOTHING, product, quotient, tenOver } from './intervals.ts';
import { isMissing } from './missing.ts';
import { DEFAULT_THRESHOLDS, type SpacingThresholds, spacingClassOf } from './spacing-class.ts';
import type { Column, FragmentTable, NumericColumn, TermColumn } from './table.ts';

/**
 * Adds what follows from what was recorded; a recorded value is never replaced.
 *
 * - `rowSpacing` (mm) and `density2` (per cm) from each other, 10 / x, where rows are a thing of the structure;
 * - `rowGap` = spacing - row width; `gapRatio` = gap / row width;
 * - `balance` = density1 / density2 and its logarithm;
 * - `cover1`, `cover2` = width x density / 10; `openness` = (1 - cover1)(1 - cover2), covers cut at 1
 *   (Peirce 1937, J. Text. Inst. 28:T45);
 * - `spacingClass`, see spacing-class.ts.
 *
 * Intervals go through every formula. A column is added only where at least one row gains a value.
 */
export function deriveColumns(
  table: FragmentTable,
  register: Register,
  thresholds: SpacingThresholds = DEFAULT_THRESHOLDS,
): FragmentTable {
  const columns = new Map(table.columns);
  const numbers = (id: string, formula: (row: number) => Interval) => {
    const attribute = register.attributes.get(id);
    if (attribute === undefined) return;
    const filled = fillNumbers(columns.get(id), attribute, table.rows, formula);
    if (filled !== undefined) columns.set(id, filled);
  };
  const at = (id: string, row: number): Interval => {
    const column = columns.get(id);
    return column?.kind === 'numeric' ? [column.low[row], column.high[row]] : NOTHING;
  };
  const applies = (id: string, row: number) => appliesTo(register, id, structureAt(table, row));

  numbers('rowSpacing', (row) =>
    applies('rowSpacing', row) ? through(tenOver, at('density2', row)) : NOTHING,
  );
  numbers('density2', (row) => through(tenOver, at('rowSpacing', row)));
  numbers('rowGap', (row) => through(difference, at('rowSpacing', row), at('rowWidth', row)));
  numbers('gapRatio', (row) => through(quotient, at('rowGap', row), at('rowWidth', row)));
  numbers('balance', (row) =>
    applies('balance', row) ? through(quotient, at('density1', row), at('density2', row)) : NOTHING,
  );
  numbers('logBalance', (row) => through(([low, high]): Interval => [ln(low), ln(high)], at('balance', row)));
  numbers('cover1', (row) => through(cover, at('diameter1', row), at('density1', row)));
  numbers('cover2', (row) => through(cover, at('diameter2', row), at('density2', row)));
  numbers('openness', (row) => through(openness, at('cover1', row), at('cover2', row)));

  const attribute = register.attributes.get('spacingClass');
  if (attribute !== undefined) {
    const filled = fillClass(columns.get('spacingClass'), attribute, table.rows, (row) =>
      applies('spacingClass', row)
        ? spacingClassOf(structureAt(table, row), at('gapRatio', row), at('rowSpacing', row), thresholds)
        : undefined,
    );
    if (filled !== undefined) columns.set('spacingClass', filled);
  }
  return { ...table, columns };
}

const APPROXIMATE = CELL_STATES.indexOf('approximate');
const NOT_OBSERVED = CELL_STATES.indexOf('not-observed');

function through(formula: (...operands: Interval[]) => Interval, ...operands: Interval[]): Interval {
  return operands.some(isNothing) ? NOTHING : formula(...operands);
}

function cover(width: Interval, density: Interval): Interval {
  const [low, high] = product(width, density);
  return [low / 10, high / 10];
}

function openness(first: Interval, second: Interval): Interval {
  const open = (share: number) => 1 - Math.min(1, Math.max(0, share));
  return [open(first[1]) * open(second[1]), open(first[0]) * open(second[0])];
}

function structureAt(table: FragmentTable, row: number): string | null {
  const column = table.columns.get('structure');
  return column?.kind === 'term' ? termAt(column, row) : null;
}

/** An attribute without a list applies everywhere; one with a list needs a structure within it. */
function appliesTo(register: Register, id: string, structure: string | null): boolean {
  const listed = register.attributes.get(id)?.appliesTo;
  if (listed === undefined) return true;
  const vocabulary = register.vocabularies.get('structure');
  if (structure === null || vocabulary === undefined) return false;
  return listed.some((term) => isWithin(vocabulary, structure, term));
}

function fillNumbers(
  column: Column | undefined,
  attribute: AttributeDefinition,
  rows: number,
  formula: (row: number) => Interval,
): NumericColumn | undefined {
  if (column !== undefined && column.kind !== 'numeric') return undefined;
  const base = column ?? emptyNumbers(attribute, rows);
  const low = base.low.slice();
  const high = base.high.slice();
  const state = base.state.slice();
  let gained = 0;
  for (let row = 0; row < rows; row++) {
    if (!isMissing(base, row)) continue;
    const [from, to] = formula(row);
    if (Number.isNaN(from) || Number.isNaN(to)) continue;
    low[row] = from;
    high[row] = to;
    state[row] = from === to ? 0 : APPROXIMATE;
    gained++;
  }
  return gained === 0 ? undefined : { ...base, low, high, state };
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

function fillClass(
  column: Column | undefined,
  attribute: AttributeDefinition,
  rows: number,
  classOf: (row: number) => string | undefined,
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
  let gained = 0;
  for (let row = 0; row < rows; row++) {
    if (!isMissing(base, row)) continue;
    const found = classOf(row);
    if (found === undefined) continue;
    if (!levels.includes(found)) levels.push(found);
    codes[row] = levels.indexOf(found);
    state[row] = 0;
    gained++;
  }
  return gained === 0 ? undefined : { ...base, levels, codes, state };
}
