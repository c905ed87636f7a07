import type { Register } from '../attributes/definition.ts';
import { partsOf } from '../attributes/mixtures.ts';
import { termAt } from './accessors.ts';
import { takeRows } from './subset.ts';
import type { FragmentTable, TermColumn } from './table.ts';

/** A table in which a record of a mixture stands once for each of its kinds, under the same item. */
export interface ByParts {
  readonly table: FragmentTable;
  /** Row -> the row that it stands for in the table that was given. */
  readonly from: Int32Array;
  /** Records of mixtures. */
  readonly mixtures: number;
}

/**
 * Counts of such a table are mentions, not records: those of one record are no independent evidence, so that whoever
 * tests them deals whole items (they keep the item of their record).
 *
 * @param ids attributes whose mixtures are parted; those whose vocabulary has no mixtures change nothing.
 */
export function byParts(table: FragmentTable, ids: readonly string[], register: Register): ByParts {
  let all: ByParts = { table, from: Int32Array.from({ length: table.rows }, (_, row) => row), mixtures: 0 };
  const mixed = new Set<number>();
  for (const id of ids) {
    const column = all.table.columns.get(id);
    const vocabulary = register.vocabularies.get(column?.attribute.vocabulary ?? '');
    if (column?.kind !== 'term' || vocabulary?.mixes !== true) continue;
    const rows: number[] = [];
    const terms: (string | null)[] = [];
    for (let row = 0; row < all.table.rows; row++) {
      const term = termAt(column, row);
      const parts = term === null ? [null] : partsOf(term, vocabulary);
      if (parts.length > 1) mixed.add(all.from[row]!);
      for (const part of parts) {
        rows.push(row);
        terms.push(part);
      }
    }
    const taken = takeRows(all.table, rows);
    const levels = [...new Set(terms.filter((term) => term !== null))];
    const places = new Map(levels.map((level, place) => [level, place]));
    const parted: TermColumn = {
      ...(taken.columns.get(id) as TermColumn),
      levels,
      codes: Int32Array.from(terms, (term) => (term === null ? -1 : places.get(term)!)),
    };
    all = {
      table: { ...taken, columns: new Map([...taken.columns, [id, parted]]) },
      from: Int32Array.from(rows, (row) => all.from[row]!),
      mixtures: 0,
    };
  }
  return { ...all, mixtures: mixed.size };
}
