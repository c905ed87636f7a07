import type { Register } from '../../attributes/definition.ts';
import { isWithin } from '../../attributes/tree.ts';

/**
 * Terms that stand beside narrower terms of their own in one count ("twined" beside "open twining"):
 * some of what they count belongs to the narrower ones, only nobody can say how much.
 */
export function nestedKinds(
  attribute: string,
  ids: readonly string[],
  register: Register,
): readonly string[] {
  const name = register.attributes.get(attribute)?.vocabulary;
  const vocabulary = name === undefined ? undefined : register.vocabularies.get(name);
  if (vocabulary === undefined) return [];
  return ids
    .filter((id) => ids.some((other) => other !== id && isWithin(vocabulary, other, id)))
    .map((id) => vocabulary.terms.find((term) => term.id === id)?.label ?? id);
}
