import type { Register } from '../../attributes/definition.ts';
import { contradictEachOther } from '../../fragments/contradiction.ts';
import { isMissing } from '../../fragments/missing.ts';
import type { Column, FragmentTable } from '../../fragments/table.ts';

/** Fragments said to be of one item whose records cannot both be true of it. */
export interface Contradiction {
  readonly item: string;
  readonly attribute: string;
  readonly rows: readonly number[];
  /** What the fragments say, one text a row. */
  readonly says: readonly string[];
}

const OF_THE_OBJECT = new Set(['structure', 'spacing', 'fibre']);

/**
 * Items whose fragments cannot both be right, attribute by attribute, as `contradictEachOther` judges.
 * Preservation, context and size may differ between fragments of one object and are not compared; the
 * site may not.
 */
export function contradictions(table: FragmentTable, register: Register): Contradiction[] {
  const items = new Map<string, number[]>();
  for (const [row, item] of table.item.entries()) {
    const rows = items.get(item);
    if (rows === undefined) items.set(item, [row]);
    else rows.push(row);
  }
  const several = [...items].filter(([, rows]) => rows.length > 1);
  const found: Contradiction[] = [];
  for (const [attribute, column] of table.columns) {
    if (!OF_THE_OBJECT.has(column.attribute.block) && attribute !== 'site') continue;
    for (const [item, rows] of several) {
      if (!contradictEachOther(column, rows, register)) continue;
      const conflicting = saying(column, rows);
      found.push({
        item,
        attribute,
        rows: conflicting,
        says: conflicting.map((row) => column.raw[row]!.trim()),
      });
    }
  }
  return found;
}

/** One row for each different text. */
function saying(column: Column, rows: readonly number[]): readonly number[] {
  const first = new Map<string, number>();
  for (const row of rows) {
    const text = column.raw[row]!.trim();
    if (text !== '' && !isMissing(column, row) && !first.has(text)) first.set(text, row);
  }
  return [...first.values()];
}
