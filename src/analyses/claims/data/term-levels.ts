import type { Register } from '../../../attributes/definition.ts';

const MOST_SAID = 4;

/** At each level above the recorded one: the term that each recorded term then counts as. */
export function ancestorsOf(
  terms: readonly (string | null)[],
  attribute: string,
  register: Register,
): readonly { readonly said: string; readonly of: ReadonlyMap<string, string> }[] {
  const vocabulary = register.vocabularies.get(register.attributes.get(attribute)?.vocabulary ?? '');
  if (vocabulary === undefined) return [];
  const parents = new Map(vocabulary.terms.map(({ id, parent }) => [id, parent]));
  const labels = new Map(vocabulary.terms.map(({ id, label }) => [id, label]));
  const pathOf = (term: string): readonly string[] => {
    const path = [term];
    for (
      let parent = parents.get(term);
      parent !== undefined && !path.includes(parent);
      parent = parents.get(parent)
    )
      path.unshift(parent);
    return path;
  };
  const recorded = [...new Set(terms)].filter((term) => term !== null);
  const deepest = recorded.reduce((most, term) => Math.max(most, pathOf(term).length), 0);
  return Array.from({ length: Math.max(0, deepest - 1) }, (_, depth) => {
    const of = new Map(recorded.map((term) => [term, pathOf(term)[depth] ?? term]));
    const names = [...new Set(of.values())].map((term) => labels.get(term) ?? term);
    const more = names.length > MOST_SAID ? ', …' : '';
    return { said: `${names.slice(0, MOST_SAID).join(', ')}${more}`, of, kinds: names.length };
  }).filter(({ kinds }) => kinds > 1);
}
