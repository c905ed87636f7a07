import type { Register } from '../attributes/definition.ts';
import { InputError } from '../errors.ts';
import { atLevel, type Level, type LevelFound } from '../fragments/common-level.ts';
import { type CrossedTable, crossedTable } from '../fragments/crossed-table.ts';
import type { FragmentTable } from '../fragments/table.ts';

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
  if (!found.differs) return { found, table: crossedTable(records, across, kinds, register), recorded: null };
  const recorded = crossedTable(records, across, kinds, register);
  try {
    return { found, table: crossedTable(found.table, across, kinds, register), recorded };
  } catch (fault) {
    if (!(fault instanceof InputError)) throw fault;
    const [fold] = found.folds;
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
  { found, table }: CountedAtLevel,
  labelOf: (id: string) => string,
): readonly { readonly reason: string; readonly rows: readonly number[] }[] {
  const broad = new Set(found.tooBroad.flatMap(({ rows }) => rows));
  return [
    ...table.lacking.map(({ attribute, rows }) => ({
      reason: `${labelOf(attribute)} not recorded`,
      rows: attribute === found.attribute ? rows.filter((row) => !broad.has(row)) : rows,
    })),
    ...found.tooBroad.map(({ label, rows }) => ({
      reason: `${labelOf(found.attribute)} no closer than ${label}`,
      rows,
    })),
  ].filter(({ rows }) => rows.length > 0);
}
