import type { Vocabulary } from '../../attributes/definition.ts';
import { wordingsOf } from '../../attributes/wording-index.ts';
import { keyOf, tokens } from '../descriptions/tokens.ts';

/** Stem of a wording -> the one term that it names; null where it would name two. */
const indexes = new WeakMap<Vocabulary, ReadonlyMap<string, string | null>>();

/** Shorter stems are too easily those of another word. */
const SHORTEST = 6;

/**
 * The term of a wording in another number, gender or case: "interlocking stitches", "nudos de red", "tubuläre Kanten".
 * Word by word in the same order, without endings; null where two terms share the stems.
 */
export function inflectedTerm(text: string, vocabulary: Vocabulary): string | null {
  const key = stemsOf(text);
  return key.length < SHORTEST ? null : (indexOf(vocabulary).get(key) ?? null);
}

/** Denials and signs are kept out: only words make an inflected wording. */
const stemsOf = (text: string): string => {
  const parts = tokens(text);
  return parts.every(({ kind }) => kind === 'word') ? keyOf(parts, 'stem') : '';
};

function indexOf(vocabulary: Vocabulary): ReadonlyMap<string, string | null> {
  const known = indexes.get(vocabulary);
  if (known !== undefined) return known;
  const made = new Map<string, string | null>();
  for (const { id, label, synonyms } of vocabulary.terms) {
    for (const wording of wordingsOf(id, label, synonyms)) {
      const key = stemsOf(wording);
      if (key === '') continue;
      const before = made.get(key);
      made.set(key, before === undefined || before === id ? id : null);
    }
  }
  indexes.set(vocabulary, made);
  return made;
}
