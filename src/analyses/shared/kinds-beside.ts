import { viewItems } from '../../fragments/items/items.ts';
import { KIND, kindsBeside, type Restating, restates } from '../../fragments/kinds/kinds.ts';
import type { AnalysisInput } from '../contract.ts';

/**
 * What an analysis is given, with the kinds of fabric composed without the facets that tell, or follow from, what is
 * compared between them: groups by face differ in their counts by what face is, and groups by openness in their spacings.
 *
 * @param by groupings that are asked for; where the kind is none of them nothing changes.
 * @param about attributes that are compared.
 * @param how whether what follows from any of them goes, or only what follows from all together.
 */
export function withKindsBeside(
  input: AnalysisInput,
  by: readonly string[],
  about: readonly string[],
  how: Restating = 'any',
): AnalysisInput {
  const { fragments, records, register, unit } = input;
  if (!by.includes(KIND) || !records.columns.has(KIND)) return input;
  const facets = [...records.columns.values()].filter(({ attribute }) => attribute.facet !== undefined);
  if (!facets.some(({ attribute }) => restates(attribute.id, about, how))) return input;
  // Composed of the fragments and gathered by item, as the study does it.
  const of = kindsBeside(fragments, about, register, how);
  return {
    ...input,
    register: of.register,
    fragments: of.table,
    records: unit === 'item' ? viewItems(of.table, of.register) : of.table,
  };
}
