import type { Vocabulary } from '../../attributes/definition.ts';
import { wordingsOf } from '../../attributes/wording-index.ts';
import { SMALL } from '../descriptions/function-words.ts';
import { tokens } from '../descriptions/tokens.ts';

/** Stem of a wording -> the one term that it names; null where it would name two. */
const indexes = new WeakMap<Vocabulary, ReadonlyMap<string, string | null>>();

/** Shorter stems are too easily those of another word. */
const SHORTEST = 3;

/**
 * The term of a wording in another number, gender or case: "interlocking stitches", "nudos de red", "tubuläre Kanten".
 * Word by word in the same order, without endings; null where two terms share the stems.
 */
export function inflectedTerm(text: string, vocabulary: Vocabulary): string | null {
  const key = stemsOf(text);
  if (key.length < SHORTEST) return null;
  const [first, second, ...more] = key.split(' ');
  const met = indexOf(vocabulary).get(key);
  // "Webkante verstärkt": the adjective behind its noun.
  const turned = second === undefined || more.length > 0 ? undefined : `${second} ${first}`;
  return met ?? (turned === undefined ? null : (indexOf(vocabulary).get(turned) ?? null));
}

/** Three letters stay at least. */
const withoutEnding = (word: string): string => {
  const bare = word.replace(/(?:ern|en|er|em|es|as|os|s|[aeiou])$/u, '');
  return bare.length < 3 ? word : bare;
};

/** Denials and signs are kept out: only words make an inflected wording. */
const stemsOf = (text: string): string => {
  const parts = tokens(text);
  return parts.every(({ kind }) => kind === 'word')
    ? parts.flatMap(({ folded }) => (SMALL.has(folded) ? [] : [withoutEnding(folded)])).join(' ')
    : '';
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
