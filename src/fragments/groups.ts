import type { AttributeDefinition, Register } from '../attributes/definition.ts';
import { InputError } from '../errors.ts';
import { termAt } from './accessors.ts';
import { naturalOrder } from './natural-order.ts';
import { requireColumn } from './require-column.ts';
import type { FragmentTable, TermColumn } from './table.ts';

/** Rows that share one value of every grouping attribute. */
export interface RowGroup {
  /** Term ids, one a grouping attribute. */
  readonly ids: readonly string[];
  /** The same as a reader would name them. */
  readonly labels: readonly string[];
  readonly rows: readonly number[];
}

export interface Grouping {
  readonly groups: readonly RowGroup[];
  /** Rows that lack a value of a grouping attribute, by the first one that they lack. */
  readonly ungrouped: readonly { readonly attribute: string; readonly rows: readonly number[] }[];
}

interface GroupingKey {
  readonly attribute: string;
  /** The id a row belongs to, null where it is not recorded. */
  readonly idOf: (row: number) => string | null;
  readonly labelOf: (id: string) => string;
  readonly order: (a: string, b: string) => number;
}

/**
 * Puts rows into groups by the values of one or more attributes of kinds, or by "assemblage" (site
 * and phase). Groups come in the order of the grades or the vocabulary, otherwise in natural order of
 * their labels. Without grouping attributes there is one group of all rows. InputError for numbers.
 */
export function groupRows(table: FragmentTable, by: readonly string[], register: Register): Grouping {
  const keys = by.map((id) => groupingKey(table, id, register));
  const rowsOf = new Map<string, number[]>();
  const idsOf = new Map<string, readonly string[]>();
  const lacking = new Map<string, number[]>();
  for (let row = 0; row < table.rows; row++) {
    const ids = keys.map((key) => key.idOf(row));
    const gap = ids.indexOf(null);
    if (gap >= 0) {
      collect(lacking, keys[gap].attribute, row);
      continue;
    }
    const name = JSON.stringify(ids);
    if (!idsOf.has(name)) idsOf.set(name, ids as readonly string[]);
    collect(rowsOf, name, row);
  }
  const groups = [...rowsOf].map(([name, rows]) => {
    const ids = idsOf.get(name) ?? [];
    return { ids, labels: ids.map((id, place) => keys[place].labelOf(id)), rows };
  });
  groups.sort((a, b) => {
    for (const [place, key] of keys.entries()) {
      const difference = key.order(a.ids[place], b.ids[place]);
      if (difference !== 0) return difference;
    }
    return 0;
  });
  return { groups, ungrouped: [...lacking].map(([attribute, rows]) => ({ attribute, rows })) };
}

/** The label of a term, grade or wording, as a reader would name it. */
export function termLabel(attribute: AttributeDefinition, id: string, register: Register): string {
  if (attribute.vocabulary === undefined) return id;
  const terms = register.vocabularies.get(attribute.vocabulary)?.terms;
  return terms?.find((term) => term.id === id)?.label ?? id;
}

function groupingKey(table: FragmentTable, id: string, register: Register): GroupingKey {
  if (id === 'assemblage') {
    return {
      attribute: id,
      idOf: (row) => (table.assemblage[row] === '' ? null : table.assemblage[row]),
      labelOf: (name) => name,
      order: naturalOrder,
    };
  }
  const column = requireColumn(table, id, register);
  if (column.kind === 'numeric') {
    throw new InputError(
      `"${column.attribute.label}" (${id}) is a number and forms no groups`,
      {},
      'group by an attribute of kinds or grades, such as site, period or structure',
    );
  }
  if (column.kind === 'text') {
    return {
      attribute: id,
      idOf: (row) => (column.raw[row].trim() === '' ? null : column.raw[row].trim()),
      labelOf: (name) => name,
      order: naturalOrder,
    };
  }
  return termKey(id, column, register);
}

function termKey(id: string, column: TermColumn, register: Register): GroupingKey {
  const labelOf = (term: string) => termLabel(column.attribute, term, register);
  const ranks = new Map(fixedOrder(column.attribute, register).map((term, rank) => [term, rank]));
  const rankOf = (term: string) => ranks.get(term) ?? ranks.size;
  return {
    attribute: id,
    idOf: (row) => termAt(column, row),
    labelOf,
    order: (a, b) => rankOf(a) - rankOf(b) || naturalOrder(labelOf(a), labelOf(b)),
  };
}

function fixedOrder(attribute: AttributeDefinition, register: Register): readonly string[] {
  if (attribute.levels !== undefined) return attribute.levels;
  if (attribute.vocabulary === undefined) return [];
  return register.vocabularies.get(attribute.vocabulary)?.terms.map((term) => term.id) ?? [];
}

function collect(into: Map<string, number[]>, key: string, row: number): void {
  const rows = into.get(key);
  if (rows === undefined) into.set(key, [row]);
  else rows.push(row);
}
