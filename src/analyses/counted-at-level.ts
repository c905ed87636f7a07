import type { Register } from '../attributes/definition.ts';
import { InputError } from '../errors.ts';
import { atLevel, type Level, type LevelFound } from '../fragments/common-level.ts';
import { type CrossedTable, crossedTable } from '../fragments/crossed-table.ts';
import type { FragmentTable } from '../fragments/table.ts';
import type { Unavailable } from './contract.ts';

/** Assemblages by kinds, counted at a level, and as recorded where that differs. */
export interface CountedAtLevel {
  readonly found: LevelFound;
  readonly table: CrossedTable;
  readonly recorded: CrossedTable | null;
}

/**
 * @throws InputError as `crossedTable` does, and where the level leaves one kind of all.
 */
export function countedAtLevel(
  records: FragmentTable,
  across: string,
  kinds: string,
  register: Register,
  level: Level,
): CountedAtLevel {
  const found = atLevel(records, kinds, across, register, { level });
  const recorded = crossedTable(records, across, kinds, register);
  if (!found.differs) return { found, table: recorded, recorded: null };
  return { found, table: crossedOrWhy(found.table, across, kinds, register, found.folds), recorded };
}

/** A table of two attributes of kinds, each counted at the level that the values of the other have in common. */
export interface BothAtLevel {
  /** The table that was asked for. */
  readonly table: CrossedTable;
  /** The same at the other level: as recorded, or at the common level where the words as they stand were asked for. */
  readonly other: CrossedTable | Unavailable | null;
  /** What counting at a level changes, of either attribute. */
  readonly found: Pick<LevelFound, 'folds' | 'tooBroad' | 'differs'>;
  /** Rows that say less than the level, by the attribute of which they say it. */
  readonly leftOut: readonly LevelFound[];
}

/**
 * @throws InputError as `crossedTable` does, and where the level leaves one kind of all.
 */
export function bothAtLevel(
  records: FragmentTable,
  rows: string,
  columns: string,
  register: Register,
  level: Level,
): BothAtLevel {
  const settings = { level: level === 'recorded' ? ('common' as const) : level };
  const across = atLevel(records, columns, rows, register, settings);
  const down = atLevel(across.table, rows, columns, register, settings);
  const recorded = crossedTable(records, rows, columns, register);
  const leftOut = [across, down];
  const differs = across.differs || down.differs;
  const found = {
    folds: leftOut.flatMap(({ folds }) => folds),
    tooBroad: leftOut.flatMap(({ tooBroad }) => tooBroad),
    differs,
  };
  const none = { folds: [], tooBroad: [], differs: false };
  if (!differs) return { table: recorded, other: null, found: none, leftOut: [] };
  const counted = () => crossedOrWhy(down.table, rows, columns, register, found.folds);
  if (level !== 'recorded') return { table: counted(), other: recorded, found, leftOut };
  try {
    return { table: recorded, other: counted(), found: none, leftOut: [] };
  } catch (fault) {
    if (!(fault instanceof InputError)) throw fault;
    return { table: recorded, other: { why: fault.what }, found: none, leftOut: [] };
  }
}

function crossedOrWhy(
  table: FragmentTable,
  rows: string,
  columns: string,
  register: Register,
  [fold]: LevelFound['folds'],
): CrossedTable {
  try {
    return crossedTable(table, rows, columns, register);
  } catch (fault) {
    if (!(fault instanceof InputError)) throw fault;
    const who = fold?.because[0]?.label;
    throw new InputError(
      `at the level asked for all that can be compared is of one kind${fold === undefined ? '' : `, ${fold.label}${who === undefined ? '' : `, since ${who} says no more`}`}`,
      { path: 'level' },
      'leave that assemblage out, or ask for the level "recorded"',
    );
  }
}

/** Records that lack a value, those that say less than the level told from those that say nothing. */
export function lackingAtLevel(
  { table, leftOut }: { readonly table: CrossedTable; readonly leftOut: readonly LevelFound[] },
  labelOf: (id: string) => string,
): readonly { readonly reason: string; readonly rows: readonly number[] }[] {
  const broad = new Set(leftOut.flatMap(({ tooBroad }) => tooBroad.flatMap(({ rows }) => rows)));
  return [
    ...table.lacking.map(({ attribute, rows }) => ({
      reason: `${labelOf(attribute)} not recorded`,
      rows: leftOut.some((one) => one.attribute === attribute) ? rows.filter((row) => !broad.has(row)) : rows,
    })),
    ...leftOut.flatMap(({ attribute, tooBroad }) =>
      tooBroad.map(({ label, rows }) => ({ reason: `${labelOf(attribute)} no closer than ${label}`, rows })),
    ),
  ].filter(({ rows }) => rows.length > 0);
}
