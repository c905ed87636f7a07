import type { Register } from '../attributes/definition.ts';
import { isWithin } from '../attributes/tree.ts';
import { groupRows, termLabel } from './groups.ts';
import type { FragmentTable } from './table.ts';
import { plainIn } from './told-apart.ts';

/** What the share of a kind in a group may be, since some of its records name only something broader. */
export interface ShareBounds {
  readonly group: string;
  readonly kind: string;
  /** Records that say the kind, those that say something broader which it may be, and all with a term. */
  readonly certain: number;
  readonly could: number;
  readonly of: number;
  /** None of the broad ones is of the kind, and all are. */
  readonly low: number;
  readonly high: number;
}

/**
 * Bounds of the shares of the narrowest kinds recorded, group by group: a broad record counts for none of the kinds
 * that it may be at the low end, for each of them at the high end.
 *
 * @returns groups in their order, kinds in that of the vocabulary; empty where no record is broader than another,
 * and for attributes without a hierarchy.
 */
export function shareBounds(
  table: FragmentTable,
  kinds: string,
  across: readonly string[],
  register: Register,
): readonly ShareBounds[] {
  const column = table.columns.get(kinds);
  const name = register.attributes.get(kinds)?.vocabulary;
  const vocabulary = name === undefined ? undefined : register.vocabularies.get(name);
  if (column?.kind !== 'term' || vocabulary === undefined) return [];
  const isPlain = plainIn(column, vocabulary, table, register);
  const present = new Set([...column.codes].filter((code) => code >= 0).map((code) => column.levels[code]));
  const hasNarrower = (term: string) =>
    [...present].some((other) => other !== term && isWithin(vocabulary, other, term));
  const inner = new Set([...present].filter(hasNarrower));
  const isBroad = (row: number) => inner.has(column.levels[column.codes[row]]) && !isPlain(row);
  const { groups } = groupRows(table, [...across, kinds], register);
  const rows = groups.flatMap((group) => group.rows);
  if (!rows.some(isBroad)) return [];
  const told = new Set(rows.filter((row) => !isBroad(row)).map((row) => column.levels[column.codes[row]]));
  return groupRows(table, across, register).groups.flatMap((group) => {
    const own = group.rows.filter((row) => column.codes[row] >= 0);
    if (own.length === 0) return [];
    return vocabulary.terms
      .filter(({ id }) => told.has(id))
      .map(({ id }): ShareBounds => {
        const termOf = (row: number) => column.levels[column.codes[row]];
        const certain = own.filter((row) => termOf(row) === id && !isBroad(row)).length;
        const could = own.filter((row) => isBroad(row) && isWithin(vocabulary, id, termOf(row))).length;
        return {
          group: group.labels.join(', '),
          kind: termLabel(column.attribute, id, register),
          certain,
          could,
          of: own.length,
          low: certain / own.length,
          high: (certain + could) / own.length,
        };
      });
  });
}
