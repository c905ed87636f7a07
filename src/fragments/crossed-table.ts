import type { Register } from '../attributes/definition.ts';
import { InputError } from '../errors.ts';
import { groupRows } from './groups.ts';
import { nestedKinds } from './kinds/nested.ts';
import type { FragmentTable } from './table.ts';

/** Records counted by two attributes of kinds. */
export interface CrossedTable {
  readonly rows: readonly string[];
  readonly columns: readonly string[];
  /** counts[row][column] of the records. */
  readonly counts: readonly (readonly number[])[];
  /** Distinct original objects in each cell. */
  readonly items: readonly (readonly number[])[];
  /** The records counted, with their cell and item. */
  readonly entries: readonly {
    readonly record: number;
    readonly row: number;
    readonly column: number;
    readonly item: string;
  }[];
  /** Kinds that stand beside narrower kinds of their own. */
  readonly nested: readonly string[];
  /** Records that lack a value, by the attribute that is lacking. */
  readonly lacking: readonly { readonly attribute: string; readonly rows: readonly number[] }[];
}

/**
 * Rows by columns; only values that occur together with one of the other attribute get a line, so that
 * no line is empty.
 *
 * @throws InputError when either attribute is a number, or fewer than two values of one of them occur.
 */
export function crossedTable(
  table: FragmentTable,
  rows: string,
  columns: string,
  register: Register,
): CrossedTable {
  const { groups, ungrouped } = groupRows(table, [rows, columns], register);
  const ordered = (which: string, place: 0 | 1) => {
    const present = new Set(groups.map((group) => group.ids[place]));
    return groupRows(table, [which], register)
      .groups.filter((group) => present.has(group.ids[0]))
      .map((group) => ({ id: group.ids[0], label: group.labels[0] }));
  };
  const down = ordered(rows, 0);
  const across = ordered(columns, 1);
  for (const [id, values] of [
    [rows, down],
    [columns, across],
  ] as const) {
    if (values.length >= 2) continue;
    const label = register.attributes.get(id)?.label ?? id;
    const has = values.length === 0 ? 'no value' : `only one value ("${values[0].label}")`;
    throw new InputError(
      `"${label}" (${id}) has ${has} among the records that have both, and two are needed`,
      {},
      'choose another attribute, or select more fragments',
    );
  }
  const counts = down.map(() => across.map(() => 0));
  const seen = down.map(() => across.map(() => new Set<string>()));
  const entries = groups
    .flatMap((group) => {
      const row = down.findIndex(({ id }) => id === group.ids[0]);
      const column = across.findIndex(({ id }) => id === group.ids[1]);
      return group.rows.map((record) => ({ record, row, column, item: table.item[record] }));
    })
    .sort((a, b) => a.record - b.record);
  for (const { row, column, item } of entries) {
    counts[row][column]++;
    seen[row][column].add(item);
  }
  return {
    rows: down.map(({ label }) => label),
    columns: across.map(({ label }) => label),
    counts,
    items: seen.map((line) => line.map((items) => items.size)),
    entries,
    nested: [
      ...nestedKinds(
        rows,
        down.map(({ id }) => id),
        register,
      ),
      ...nestedKinds(
        columns,
        across.map(({ id }) => id),
        register,
      ),
    ],
    lacking: ungrouped,
  };
}
