import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { itemsOf } from './items.ts';
import { lexiconOf } from './lexicon.ts';
import { parseItems } from './parse.ts';

/**
 * What a name or a description stands for, attribute by attribute: a term of the vocabulary, a named word of
 * its descriptions ("openTwining"), or a text that is understood to the last word ("open twining with pile").
 * null where it is none of these, or leaves anything open.
 */
export function meaningOf(
  text: string,
  attribute: AttributeDefinition,
  register: Register,
): ReadonlyMap<string, string> | null {
  const vocabulary = register.vocabularies.get(attribute.vocabulary ?? '');
  if (vocabulary === undefined) return null;
  if (vocabulary.terms.some(({ id }) => id === text)) return new Map([[attribute.id, text]]);
  const named = vocabulary.words?.find(({ id }) => id === text);
  if (named !== undefined) return new Map(Object.entries(named.sets));
  const lexicon = lexiconOf(attribute, register);
  if (lexicon === null) return null;
  const items = itemsOf(text, lexicon, new Map());
  if (items.length === 0 || items.some(({ kind }) => kind === 'or' || kind === 'doubt')) return null;
  const { said, rest } = parseItems(items, lexicon);
  if (rest.length > 0 || said.size === 0) return null;
  const sets = new Map<string, string>();
  for (const [id, { value, several }] of said) {
    if (value === null || several !== undefined) return null;
    sets.set(id, value);
  }
  return sets;
}
