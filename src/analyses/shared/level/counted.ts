import type { Register } from '../../../attributes/definition.ts';
import { InputError } from '../../../errors.ts';
import { type CrossedTable, crossedTable } from '../../../fragments/crossed-table.ts';
import {
  atLevel,
  BROAD_TOLERANCE,
  type Level,
  type LevelFound,
} from '../../../fragments/level/common-level.ts';
import type { FragmentTable } from '../../../fragments/table.ts';
import type { Unavailable } from '../../contract.ts';

/** Assemblages by kinds, counted at a level, and as recorded where that differs. */
export interface CountedAtLevel {
  readonly found: LevelFound;
  readonly table: CrossedTable;
  readonly recorded: CrossedTable | null;
  /** What a few broad records fold for all, told apart; null where nothing is folded by few. */
  readonly finer: ToldCloser | null;
}

/**
 * The level that all record but for a few: where the broad records of an assemblage are under half of a branch, they are
 * left out and what the others tell apart stays apart. It is asked beside the common level and never in its place, since
 * what is left out may be of one kind.
 */
export interface ToldCloser {
  readonly found: LevelFound;
  readonly table: CrossedTable;
  /** The folds of the common level that are none here, each with those alone whose records folded it. */
  readonly unfolded: LevelFound['folds'];
}

/** Largest share of broad records under a branch, in what is compared, that can be left out beside those that are told. */
const MOST_LEFT_OUT = 0.5;

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
  if (!found.differs) return { found, table: recorded, recorded: null, finer: null };
  return {
    found,
    table: crossedOrWhy(found.table, across, kinds, register, found.folds),
    recorded,
    finer: level === 'common' ? toldCloser(records, across, kinds, register, found) : null,
  };
}

function toldCloser(
  records: FragmentTable,
  across: string,
  kinds: string,
  register: Register,
  common: LevelFound,
): ToldCloser | null {
  const found = atLevel(records, kinds, across, register, { level: 'common', tolerance: MOST_LEFT_OUT });
  const still = new Set(found.folds.map(({ term }) => term));
  const unfolded = common.folds
    .filter(({ term }) => !still.has(term))
    .map((fold) => ({
      ...fold,
      because: fold.because.filter(({ broad, of }) => broad > BROAD_TOLERANCE * of),
    }));
  if (unfolded.length === 0) return null;
  try {
    return { found, table: crossedTable(found.table, across, kinds, register), unfolded };
  } catch (fault) {
    if (fault instanceof InputError) return null;
    throw fault;
  }
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
  /** As `CountedAtLevel.finer`, of the columns across the rows. */
  readonly finer: ToldCloser | null;
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
  if (!differs) return { table: recorded, other: null, found: none, leftOut: [], finer: null };
  const counted = () => crossedOrWhy(down.table, rows, columns, register, found.folds);
  if (level !== 'recorded') {
    // With rows that are folded as well, a finer table would be one of other rows.
    const finer =
      level === 'common' && !down.differs ? toldCloser(records, rows, columns, register, across) : null;
    return { table: counted(), other: recorded, found, leftOut, finer };
  }
  try {
    return { table: recorded, other: counted(), found: none, leftOut: [], finer: null };
  } catch (fault) {
    if (!(fault instanceof InputError)) throw fault;
    return { table: recorded, other: { why: fault.what }, found: none, leftOut: [], finer: null };
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
