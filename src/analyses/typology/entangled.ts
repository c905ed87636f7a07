import { COMPUTED_FROM } from '../../fragments/computed-from.ts';
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
 * does is computed from it. The structure, and the kind composed of it, count as everything that its facets rest on:
 * a comparison by the structure weighs those that the table records.
 */
export function circularWith(typology: Typology, table: FragmentTable): (id: string) => boolean {
  const rootsOf = (id: string): readonly string[] => {
    if (id !== 'structure' && id !== 'kind') return COMPUTED_FROM[id] ?? [id];
    const facets = [...table.columns.values()].filter(({ attribute }) => attribute.facet?.of === 'structure');
    return ['structure', ...facets.flatMap(({ attribute }) => [attribute.id, ...rootsOf(attribute.id)])];
  };
  const bound = new Set(definingAttributes(typology).flatMap(rootsOf));
  return (id) => rootsOf(id).some((root) => bound.has(root));
}
