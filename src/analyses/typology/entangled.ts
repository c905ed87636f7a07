import { termAt } from '../../fragments/accessors.ts';
import { COMPUTED_FROM, SAYS_SPACING } from '../../fragments/says-spacing.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { conditionsOf, type Typology } from './rules.ts';

/** Attributes that decide the type, in order of first mention. */
export function definingAttributes(typology: Typology): readonly string[] {
  return [
    ...new Set(typology.types.flatMap((type) => conditionsOf(type.when).map(({ attribute }) => attribute))),
  ];
}

/**
 * Whether a test on an attribute would be circular: it defines the types, is computed from what does, or what
 * does is computed from it. The structure counts as the spacing where its terms say "open" or "close".
 */
export function circularWith(typology: Typology, table: FragmentTable): (id: string) => boolean {
  const structure = table.columns.get('structure');
  const spaced =
    structure?.kind === 'term' &&
    Array.from({ length: table.rows }, (_, row) => termAt(structure, row)).some(
      (term) => term !== null && SAYS_SPACING.has(term),
    );
  const rootsOf = (id: string) =>
    id === 'structure' && spaced ? ['structure', 'rowSpacing'] : (COMPUTED_FROM[id] ?? [id]);
  const bound = new Set(definingAttributes(typology).flatMap(rootsOf));
  return (id) => rootsOf(id).some((root) => bound.has(root));
}
