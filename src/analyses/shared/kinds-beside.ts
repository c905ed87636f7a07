import { KIND, kindsBeside } from '../../fragments/kinds/kinds.ts';
import type { AnalysisInput } from '../contract.ts';

/**
 * What an analysis is given, with the kinds of fabric composed without the facets that tell, or follow from, what is
 * compared between them: groups by face differ in their counts by what face is, and groups by openness in their spacings.
 *
 * @param by groupings that are asked for; where the kind is none of them nothing changes.
 * @param about attributes that are compared.
 */
export function withKindsBeside(
  input: AnalysisInput,
  by: readonly string[],
  about: readonly string[],
): AnalysisInput {
  const { fragments, records, register } = input;
  if (!by.includes(KIND) || !records.columns.has(KIND)) return input;
  const of = kindsBeside(records, about, register);
  return {
    ...input,
    register: of.register,
    records: of.table,
    fragments: fragments === records ? of.table : kindsBeside(fragments, about, register).table,
  };
}
