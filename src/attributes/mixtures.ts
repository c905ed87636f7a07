import type { Term, Vocabulary } from './definition.ts';
import { lowestCommon } from './tree.ts';

/**
 * Several terms that hold at once ("wool and silk") are one term whose id joins theirs. It stands below what
 * they have in common, and nowhere below any of them: a cloth of wool and silk is no kind of wool.
 */

const JOIN = '+';

/** The id of several terms at once, whatever their order; a single one is itself. */
export function mixtureOf(ids: readonly string[]): string {
  return [...new Set(ids)].sort().join(JOIN);
}

/** The terms that an id joins; the id alone where it joins none. */
export function partsOf(id: string, vocabulary: Vocabulary): readonly string[] {
  if (vocabulary.mixes !== true || !id.includes(JOIN)) return [id];
  const parts = id.split(JOIN);
  const known = new Set(vocabulary.terms.map((term) => term.id));
  return known.has(id) && !parts.every((part) => known.has(part)) ? [id] : parts;
}

/** A vocabulary with the mixtures among some ids as terms of their own. */
export function withMixtures(vocabulary: Vocabulary, ids: Iterable<string>): Vocabulary {
  if (vocabulary.mixes !== true) return vocabulary;
  const known = new Map(vocabulary.terms.map((term) => [term.id, term]));
  const added: Term[] = [];
  for (const id of new Set(ids)) {
    const parts = partsOf(id, vocabulary);
    if (known.has(id) || parts.length < 2 || !parts.every((part) => known.has(part))) continue;
    const parent = parts.reduce<string | null>(
      (held, part) => (held === null ? null : lowestCommon(vocabulary, held, part)),
      parts[0]!,
    );
    added.push({
      id,
      label: parts.map((part) => known.get(part)?.label ?? part).join(' and '),
      ...(parent === null ? {} : { parent }),
      definition: 'Several at once.',
      source: 'composed from its parts',
    });
  }
  return added.length === 0 ? vocabulary : { ...vocabulary, terms: [...vocabulary.terms, ...added] };
}
