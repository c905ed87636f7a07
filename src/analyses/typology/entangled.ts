import { termAt } from '../../fragments/accessors.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { conditionsOf, type Typology } from './rules.ts';

/** What each computed attribute is computed from; row spacing stands for density2, its inverse. */
const COMPUTED_FROM: Readonly<Record<string, readonly string[]>> = {
  density2: ['rowSpacing'],
  rowGap: ['rowSpacing', 'rowWidth'],
  gapRatio: ['rowSpacing', 'rowWidth'],
  spacingClass: ['rowSpacing', 'rowWidth', 'structure'],
  balance: ['density1', 'rowSpacing'],
  logBalance: ['density1', 'rowSpacing'],
  cover1: ['diameter1', 'density1'],
  cover2: ['diameter2', 'rowSpacing'],
  openness: ['diameter1', 'density1', 'diameter2', 'rowSpacing'],
};

/** Terms of structure that are given by the spacing of the rows. */
const SAYS_SPACING: ReadonlySet<string> = new Set(['closeTwining', 'semiOpenTwining', 'openTwining']);

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
