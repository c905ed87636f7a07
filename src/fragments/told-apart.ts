import type { Register, Vocabulary } from '../attributes/definition.ts';
import { ancestors } from '../attributes/tree.ts';
import { KIND } from './kinds/kinds.ts';
import type { FragmentTable, TermColumn } from './table.ts';

/**
 * Whether the term of a row is meant as a kind of its own although it has narrower ones: it is a kind with named
 * variants, and its catalogue tells those apart, by its own use or as its profile says (`tells`).
 */
export function plainIn(
  column: TermColumn,
  vocabulary: Vocabulary,
  table: FragmentTable,
  register: Register,
): (row: number) => boolean {
  const told = toldBySource(column, vocabulary, table.origin);
  const declaredBy = declared(table, column.attribute.id, register);
  const plainKinds = new Set(
    vocabulary.terms.filter(({ inner }) => inner === 'variants').map(({ id }) => id),
  );
  const whole = new Set(vocabulary.terms.filter(({ inner }) => inner === 'plain').map(({ id }) => id));
  return (row) => {
    const term = column.levels[column.codes[row]];
    if (whole.has(term)) return true;
    const { source } = table.origin[row];
    return (
      plainKinds.has(term) && (told.get(source)?.has(term) === true || declaredBy[source]?.has(term) === true)
    );
  };
}

/** For each source the terms whose narrower ones it tells apart as its profile says, as the attribute names them. */
function declared(
  { tells = [] }: FragmentTable,
  attribute: string,
  register: Register,
): readonly ReadonlySet<string>[] {
  if (attribute !== KIND) return tells.map((terms) => new Set(terms));
  const structures = new Map(
    register.vocabularies.get('structure')?.terms.map(({ id, label }) => [id, label]),
  );
  return tells.map((terms) => new Set(terms.map((id) => structures.get(id) ?? id)));
}

/** For each source the terms whose narrower ones it uses anywhere: it tells those apart. */
function toldBySource(
  column: TermColumn,
  vocabulary: Vocabulary,
  origin: FragmentTable['origin'],
): ReadonlyMap<number, ReadonlySet<string>> {
  const told = new Map<number, Set<string>>();
  column.codes.forEach((code, row) => {
    if (code < 0) return;
    const { source } = origin[row];
    const own = told.get(source) ?? new Set<string>();
    for (const id of ancestors(vocabulary, column.levels[code])) own.add(id);
    told.set(source, own);
  });
  return told;
}
