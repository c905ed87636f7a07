import { isWithin, lowestCommon } from '../../attributes/tree.ts';
import { greatest } from '../../numerics/foundation/lists.ts';
import type { Lexicon } from './lexicon.ts';
import { type Rest, type Said, unused } from './said.ts';

/** What several words say of one facet: the narrowest, else what they have in common. */
export function settle(
  id: string,
  all: readonly { value: string; text: string; doubt: number }[],
  lexicon: Lexicon,
): Said {
  const doubt = greatest(all.map((one) => one.doubt));
  const text = [...new Set(all.map((one) => one.text))].join(' ');
  const values = [...new Set(all.map(({ value }) => value))];
  const attribute = lexicon.facets.find((facet) => facet.id === id)!;
  const state = (value: string) => (value === 'absent' ? ('absent' as const) : ('measured' as const));
  if (values.length === 1) return { value: values[0]!, state: state(values[0]!), doubt, text };
  const tree =
    id === lexicon.attribute.id ? lexicon.vocabulary : lexicon.trees.get(attribute.vocabulary ?? '');
  const narrowest =
    tree === undefined
      ? undefined
      : values.find((value) => values.every((other) => isWithin(tree, value, other)));
  if (narrowest !== undefined) return { value: narrowest, state: 'measured', doubt, text };
  if (id === 'rowSlant' && values.includes('S') && values.includes('Z'))
    return { value: 'countered', state: 'measured', doubt, text };
  const held =
    tree === undefined
      ? null
      : values.reduce<string | null>((a, b) => (a === null ? null : lowestCommon(tree, a, b)), values[0]!);
  return { value: held, state: held === null ? 'not-observed' : 'measured', doubt, text, several: values };
}

/** A facet that makes no sense for the structure is not taken. */
export function dropUnfit(
  said: ReadonlyMap<string, Said>,
  rest: readonly Rest[],
  lexicon: Lexicon,
): { readonly said: ReadonlyMap<string, Said>; readonly rest: readonly Rest[] } {
  const structure = said.get(lexicon.attribute.id)?.value ?? null;
  if (structure === null) return { said, rest };
  const kept = new Map<string, Said>();
  const more: Rest[] = [...rest];
  for (const [id, one] of said) {
    const listed = lexicon.facets.find((facet) => facet.id === id)?.appliesTo;
    const applies =
      id === lexicon.attribute.id ||
      listed === undefined ||
      listed.some(
        (term) =>
          isWithin(lexicon.vocabulary, structure, term) || isWithin(lexicon.vocabulary, term, structure),
      );
    if (applies) kept.set(id, one);
    else {
      const label = lexicon.vocabulary.terms.find((term) => term.id === structure)?.label ?? structure;
      more.push(unused(one.text, `it makes no sense for "${label}"`));
    }
  }
  return { said: kept, rest: more };
}
