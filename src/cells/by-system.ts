import { SYSTEM_1, SYSTEM_2 } from '../attributes/blocks/system-words.ts';
import { alternation, plainSigns } from './text.ts';

/** What a cell says of each system of a fabric; null of the one that it does not name. */
export interface BySystem {
  readonly first: string | null;
  readonly second: string | null;
}

/** Lower case without accents, letter by letter, so that places in it are places in the text. */
function flat(text: string): string {
  return Array.from(text.normalize('NFC').toLowerCase(), (letter) => letter.normalize('NFD')[0] ?? '').join(
    '',
  );
}

/** Words for a system that stand alone in a cell; a bare number does not. */
const wordsOf = (system: typeof SYSTEM_1, more: readonly string[]): string =>
  alternation([...Object.values(system).flat(), ...more].filter((word) => !/^\d$/u.test(word)).map(flat));
const FIRST = wordsOf(SYSTEM_1, ['warps', 'warp threads', 'Kettfäden', 'fils de chaîne', 'trendtråde']);
const SECOND = wordsOf(SYSTEM_2, ['wefts', 'weft threads', 'Schussfäden', 'fils de trame', 'islættråde']);
const WORDS = new RegExp(`(?<![\\p{L}\\d])(?:(${FIRST})|(${SECOND}))(?![\\p{L}\\d])`, 'gu');

/** Longer texts are prose. */
const LONGEST = 120;

/** What may stand between a word for a system and what is said of it, and between two such sayings. */
const LINKS = /^[\s,;:=/()–-]+|[\s,;:=/(–-]+$/gu;
const LINK_WORDS =
  /^(?:(?:of|in|is|and|the|aus|im|in der|der|und|en|de|et|in|di|e|de|y|i|af|av|og)\s+)+|(?:\s+(?:in|in the|in der|im|der|and|und|en|de|et|di|e|y|i|og|as|als))+$/u;
const JOINED = /^\s*(?:and|und|u\.|et|e|y|og|[&+/,])\s*$/u;

/**
 * Parts a cell that says of which system it speaks: "warp linen, weft wool", "Leinen (Kette), Wolle (Schuss)", "wool
 * weft", "warp and weft wool". Null where no system is named, or one of them twice.
 */
export function bySystem(text: string): BySystem | null {
  const plain = plainSigns(text).normalize('NFC');
  const folded = flat(plain);
  if (plain.length > LONGEST || folded.length !== plain.length) return null;
  const met = [...folded.matchAll(WORDS)].map((one) => ({
    system: one[1] === undefined ? 2 : 1,
    from: one.index,
    to: one.index + one[0].length,
  }));
  const [a, b, ...more] = met;
  if (a === undefined || more.length > 0 || a.system === b?.system) return null;
  const cut = (from: number, to?: number) => said(plain.slice(from, to));
  const leads = cut(0, a.from) === '';
  const last = b ?? a;
  const trails = /^[\s).]*$/u.test(folded.slice(last.to));
  const pair = (own: string, other: string): BySystem | null =>
    own === '' || other === ''
      ? null
      : a.system === 1
        ? { first: own, second: other }
        : { first: other, second: own };
  if (b === undefined) {
    const own = leads ? cut(a.to) : trails ? cut(0, a.from) : '';
    return own === '' ? null : { first: a.system === 1 ? own : null, second: a.system === 2 ? own : null };
  }
  if (JOINED.test(folded.slice(a.to, b.from))) {
    const both = leads ? cut(b.to) : trails ? cut(0, a.from) : '';
    return both === '' ? null : { first: both, second: both };
  }
  if (leads) return pair(cut(a.to, b.from), cut(b.to));
  return trails ? pair(cut(0, a.from), cut(a.to, b.from)) : null;
}

function said(text: string): string {
  let rest = text;
  for (let before = ''; before !== rest; ) {
    before = rest;
    rest = rest.replace(LINKS, '').replace(LINK_WORDS, '');
  }
  // A bracket that was opened within stays closed: "wool (dyed".
  return rest.includes('(') ? rest : rest.replace(/\)+$/u, '');
}
