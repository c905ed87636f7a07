import { SYSTEM_1, SYSTEM_2 } from '../../attributes/blocks/system-words.ts';
import type { AttributeDefinition } from '../../attributes/definition.ts';
import { foldText, splitWords } from '../../attributes/folding.ts';
import { editDistance } from '../../attributes/likeness.ts';
import { type Match, splitHeader } from '../../attributes/matching.ts';
import type { Subject } from './table-subject.ts';

export const OF_CLOTH: readonly AttributeDefinition['block'][] = ['structure', 'spacing', 'fibre'];

/** Words beside the known ones that leave the meaning as it is. */
const HARMLESS: ReadonlySet<string> = new Set(
  (
    'max min mean average avg median total overall main primary no nr number num nummer id code name text value measured recorded ' +
    'new old final original estimated approx about fragment textile fabric cloth site find finds the of in and a an per with ' +
    'textil stoff gewebe fund objekt max. mittel mittlere grosste kleinste gesamt tissu tessuto tejido tekstil nom nome nombre ' +
    'archaeological archaeol arch creation published short full mm cm m g kg years year'
  ).split(' '),
);

/** Words of a known wording that a header may leave out. */
const NUMBERING: ReadonlySet<string> = new Set('max maximum mean of the n'.split(' '));
const NAMING: ReadonlySet<string> = new Set('no nr number num id code'.split(' '));
/** The end of an interval is named as such. */
const BOUNDS: ReadonlySet<string> = new Set(['dateFrom', 'dateTo']);
/** Names of rows differ from row to row. */
const NAMES: ReadonlySet<string> = new Set(['fragment', 'item', 'catalogueNumber']);
/** Ambiguous words that have a meaning in tables of anything. */
const UNLIKE_CLOTH: ReadonlySet<string> = new Set(['quantity']);
/** Whether a near wording differs from the known one in nothing that matters. */
export function nearEnough(
  header: string,
  match: Match & { readonly kind: 'suggested' },
  attribute: AttributeDefinition,
  heard: boolean,
  subject: Subject,
): boolean {
  const cloth = subject === 'textiles';
  if (/is ambiguous|may be the unit|may be an end|written with its unit|the unit here is/.test(match.reason))
    return cloth || (heard && UNLIKE_CLOTH.has(attribute.id));
  const words = wordsOf(header);
  const known = wordsOf(match.via);
  if (
    BOUNDS.has(attribute.id) &&
    !words.some((word) => /^(?:from|to|von|bis|start|end|min|max|de|a|da|til|fra)$/.test(word))
  )
    return false;
  if (NAMES.has(attribute.id) && !heard) return false;
  if (/may be short for/.test(match.reason)) return heard || cloth || !OF_CLOTH.includes(attribute.block);
  if (/differs by/.test(match.reason)) return slipEnough(words, known, heard);
  if (/inflection/.test(match.reason))
    return !namesAPerson(words, known) && joined(words).length >= (heard || cloth ? 5 : 8);
  if (/another order/.test(match.reason)) return heard || cloth || joined(words).length >= 8;
  const more = words.filter((word) => !alike(word, known));
  // "Thread count warp x weft" holds both.
  const both = SYSTEMS.every((_, at) => words.some((word) => namesOnly(word, at)));
  if (!both && more.some((word) => namesAnotherSystem(word, attribute))) return false;
  const fewer = known.filter((word) => !alike(word, words));
  const plain = (word: string) => /^\d+$/.test(word);
  // "Sampling site" names a place; "sample no" a find.
  if (
    NAMES.has(attribute.id) &&
    more.some((word) => /^(?:site|location|place|ort|stelle|lieu|sito|sitio|sted)$/.test(word))
  )
    return false;
  const left = NAMES.has(attribute.id) ? NAMING : NUMBERING;
  const harmless =
    more.every((word) => HARMLESS.has(word) || plain(word)) &&
    fewer.every((word) => left.has(word) || plain(word));
  if (harmless) return heard || cloth || !OF_CLOTH.includes(attribute.block);
  return cloth && heard && OF_CLOTH.includes(attribute.block) && known.every((word) => alike(word, words));
}

/** Words that name the first system, and those that name the second. */
const SYSTEMS: readonly ReadonlySet<string>[] = [SYSTEM_1, SYSTEM_2].map(
  (system) =>
    new Set(
      Object.values(system)
        .flat()
        .flatMap(wordsOf)
        .filter((word) => word.length > 3),
    ),
);

/** Whether a word names this of the two systems and not the other, as "system" does. */
const namesOnly = (word: string, at: number): boolean =>
  SYSTEMS.every((system, place) => system.has(word) === (place === at));

/** "Warp spacing" is no spacing of rows: the attribute is of a system, and no wording of it names this one. */
function namesAnotherSystem(word: string, attribute: AttributeDefinition): boolean {
  if (attribute.block !== 'spacing' || !SYSTEMS.some((system) => system.has(word))) return false;
  return !Object.values(attribute.synonyms ?? {}).some((wordings) =>
    wordings.some((wording) => wordsOf(wording).includes(word)),
  );
}

export const joined = (words: readonly string[]): string => words.join('');

/**
 * A slip of the pen is believable in a long word that begins alike; in a short one it is another word, unless two
 * neighbours are swapped. Two words where one was known are believed one slip only.
 */
function slipEnough(words: readonly string[], known: readonly string[], heard: boolean): boolean {
  const long = heard ? 6 : 8;
  if (words.length !== known.length) {
    const [a, b] = [joined(words), joined(known)];
    return (
      a[0] === b[0] &&
      Math.min(a.length, b.length) >= 8 &&
      Math.abs(a.length - b.length) <= 1 &&
      editDistance(a, b) <= 1
    );
  }
  return words.every((word, i) => {
    const other = known[i]!;
    if (word === other) return true;
    const swapped = word.length >= 5 && [...word].sort().join('') === [...other].sort().join('');
    return word[0] === other[0] && (swapped || Math.min(word.length, other.length) >= long);
  });
}

/** "Publisher" is who, "published" is what. */
const namesAPerson = (words: readonly string[], known: readonly string[]): boolean =>
  words.some((word, i) => /(?:er|or)s?$/.test(word) && /(?:ed|ing)$/.test(known[i] ?? ''));

export function wordsOf(text: string): string[] {
  return foldText(splitWords(splitHeader(text).name))
    .split(' ')
    .filter((word) => word !== '');
}

const alike = (word: string, others: readonly string[]): boolean =>
  others.some(
    (other) =>
      other === word || (word.length > 4 && other.length > 4 && other.slice(0, 5) === word.slice(0, 5)),
  );
