import type { Register } from '../../attributes/definition.ts';
import { partsOf, withMixtures } from '../../attributes/mixtures.ts';
import { termAt } from '../accessors.ts';
import { termLabel } from '../groups.ts';
import type { FragmentTable, TermColumn } from '../table.ts';

/**
 * A register that knows the mixtures of a table as terms, so that they are counted and labelled like any other; the
 * same one where it knows them all.
 */
export function registerMixtures(table: FragmentTable, register: Register): Register {
  const vocabularies = new Map(register.vocabularies);
  let added = false;
  for (const column of table.columns.values()) {
    const vocabulary = vocabularies.get(column.attribute.vocabulary ?? '');
    if (column.kind !== 'term' || vocabulary === undefined) continue;
    const known = withMixtures(vocabulary, column.levels);
    if (known === vocabulary) continue;
    vocabularies.set(vocabulary.id, known);
    added = true;
  }
  return added ? { ...register, vocabularies } : register;
}

/** How often a kind was met by itself and as part of a mixture. */
export interface PartCount {
  readonly term: string;
  readonly alone: number;
  readonly inMixtures: number;
}

/** Counts in which a mixture counts once for each of its kinds; null where there is no mixture among the rows. */
export function countByParts(
  column: TermColumn,
  rows: readonly number[],
  register: Register,
): readonly PartCount[] | null {
  const vocabulary = register.vocabularies.get(column.attribute.vocabulary ?? '');
  if (vocabulary?.mixes !== true) return null;
  const counts = new Map<string, { alone: number; inMixtures: number }>();
  let mixtures = 0;
  for (const row of rows) {
    const term = termAt(column, row);
    if (term === null) continue;
    const parts = partsOf(term, vocabulary);
    if (parts.length > 1) mixtures += 1;
    for (const part of parts) {
      const count = counts.get(part) ?? { alone: 0, inMixtures: 0 };
      if (parts.length > 1) count.inMixtures += 1;
      else count.alone += 1;
      counts.set(part, count);
    }
  }
  if (mixtures === 0) return null;
  const order = new Map(vocabulary.terms.map(({ id }, place) => [id, place]));
  return [...counts]
    .sort(([a], [b]) => (order.get(a) ?? 0) - (order.get(b) ?? 0))
    .map(([term, count]) => ({ term: termLabel(column.attribute, term, register), ...count }));
}
