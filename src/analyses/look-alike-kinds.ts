import type { Register } from '../attributes/definition.ts';
import { isOfSide, LOOK_ALIKES, type LookAlike } from '../attributes/look-alikes.ts';
import { isWithin } from '../attributes/tree.ts';
import { termAt } from '../fragments/accessors.ts';
import type { CrossedTable } from '../fragments/crossed-table.ts';
import type { FragmentTable } from '../fragments/table.ts';

/** Counted kinds that a piece may show alike, and the table in which they are one. */
export interface LookAlikeKinds {
  readonly of: LookAlike;
  /** The kinds that are one in `merged`, as they are called in the table. */
  readonly kinds: readonly string[];
  /** Null where nothing else is counted, so that one kind of all is left. */
  readonly merged: CrossedTable | null;
}

/**
 * The pairs of look-alikes of which both sides are counted, each as one kind: an answer that leans on telling them apart
 * leans on what many pieces do not show. Columns are found by the terms of their records, so that composed kinds ("linked,
 * balanced") are met as well.
 */
export function lookAlikeKinds(
  table: CrossedTable,
  records: FragmentTable,
  register: Register,
): readonly LookAlikeKinds[] {
  return LOOK_ALIKES.flatMap((of) => {
    const [first = [], second = []] = of.sides.map((side) => {
      const column = records.columns.get(side.attribute);
      const vocabulary = register.vocabularies.get(column?.attribute.vocabulary ?? '');
      if (column?.kind !== 'term' || vocabulary === undefined) return [];
      const isOf = (record: number) => {
        const term = termAt(column, record);
        return term !== null && isOfSide(side, side.attribute, term, vocabulary);
      };
      return table.columns.flatMap((_, at) => {
        const own = table.entries.filter((entry) => entry.column === at);
        return own.length > 0 && own.every(({ record }) => isOf(record)) ? [at] : [];
      });
    });
    const alike = [...new Set([...first, ...second])].sort((a, b) => a - b);
    const apart = first.length > 0 && second.length > 0 && !first.some((at) => second.includes(at));
    if (!apart || !preservedSo(of, table, alike, records, register)) return [];
    const merged = alike.length < table.columns.length ? asOne(table, alike) : null;
    return [{ of, kinds: alike.map((at) => table.columns[at]!), merged }];
  });
}

/** Where only some preservation hides the difference, one of the records must be preserved so. */
function preservedSo(
  { preservation }: LookAlike,
  table: CrossedTable,
  alike: readonly number[],
  records: FragmentTable,
  register: Register,
): boolean {
  if (preservation === undefined) return true;
  const column = records.columns.get('preservation');
  const vocabulary = register.vocabularies.get('preservation');
  if (column?.kind !== 'term' || vocabulary === undefined) return false;
  return table.entries.some(({ record, column: at }) => {
    const term = termAt(column, record);
    return alike.includes(at) && term !== null && preservation.some((one) => isWithin(vocabulary, term, one));
  });
}

function asOne(table: CrossedTable, alike: readonly number[]): CrossedTable {
  const [kept = 0] = alike;
  const left = table.columns.map((_, at) => at).filter((at) => at === kept || !alike.includes(at));
  const places = new Map(table.columns.map((_, at) => [at, left.indexOf(alike.includes(at) ? kept : at)]));
  const entries = table.entries.map((entry) => ({ ...entry, column: places.get(entry.column)! }));
  const counts = table.rows.map(() => left.map(() => 0));
  const items = table.rows.map(() => left.map(() => new Set<string>()));
  for (const { row, column, item } of entries) {
    counts[row]![column]!++;
    items[row]![column]!.add(item);
  }
  return {
    ...table,
    columns: left.map((at) =>
      at === kept ? alike.map((one) => table.columns[one]).join(' or ') : table.columns[at]!,
    ),
    counts,
    entries,
    items: items.map((line) => line.map((own) => own.size)),
  };
}
