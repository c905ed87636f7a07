import { lookupKey } from '../../attributes/folding.ts';
import { AND, ELSEWHERE, SMALL, WITH } from './function-words.ts';
import { type Lexicon, type Sense, sameSense, sameSets } from './lexicon.ts';
import { readNotation } from './notation.ts';
import type { Own } from './own-words.ts';
import { keyOf, type Token } from './tokens.ts';

export interface Phrase {
  readonly senses: readonly Sense[] | 'ignored';
  readonly text: string;
  readonly length: number;
}

/** The longest phrase that begins here; exact before inflected. */
export function phraseAt(all: readonly Token[], at: number, lexicon: Lexicon, own: Own): Phrase | null {
  const first = all[at]!;
  if (first.kind === 'sign' || SMALL.has(first.folded) || AND.has(first.folded)) return null;
  if (first.kind === 'notation') {
    const senses = readNotation(first.text);
    return senses === null ? null : { senses, text: first.text, length: 1 };
  }
  let most = at;
  while (most < all.length && most - at < lexicon.longest + 3 && joins(all[most]!)) most++;
  for (let end = most; end > at; end--) {
    const last = all[end - 1]!;
    if (end - at > 1 && (SMALL.has(last.folded) || WITH.has(last.folded) || AND.has(last.folded))) continue;
    const parts = all.slice(at, end);
    const senses = sensesOf(parts, lexicon, own);
    if (senses !== null) return { senses, text: parts.map((part) => part.text).join(' '), length: end - at };
  }
  return null;
}

function joins({ kind, text }: Token): boolean {
  return kind !== 'sign' || text === '+' || text === '&';
}

function sensesOf(parts: readonly Token[], lexicon: Lexicon, own: Own): readonly Sense[] | 'ignored' | null {
  const written = lookupKey(parts.map((part) => part.text).join(' '));
  const settled = own.get(written);
  if (settled !== undefined) return settled;
  const spelled = lexicon.spelled.get(keyOf(parts, 'spelled'));
  if (spelled !== undefined) return spelled;
  const exact = lexicon.exact.get(keyOf(parts, 'folded'));
  if (exact !== undefined) return exact;
  if (parts.length === 1 && parts[0]!.folded.length < 5) return null;
  // "stripes" are a part of the fabric, and not an inflected "strip".
  if (parts.length === 1 && ELSEWHERE.test(parts[0]!.folded)) return null;
  const inflected = lexicon.stems.get(keyOf(parts, 'stem'));
  if (inflected !== undefined && agree(inflected)) return inflected;
  const single = parts.length === 1 ? (cutShort(parts[0]!, lexicon) ?? compound(parts[0]!, lexicon)) : null;
  return single ?? withUmlauts(parts, lexicon);
}

/** "Diamantkoeper", "aaben": letters written out where a keyboard lacks them. */
function withUmlauts(parts: readonly Token[], lexicon: Lexicon): readonly Sense[] | null {
  const written = (word: string) =>
    word.replace(/(?<![aeiouq])[aou]e|aa/gu, (pair) => (pair === 'aa' ? 'a' : pair[0]!));
  const folded = parts.map((part) =>
    part.kind === 'word' ? { ...part, folded: written(part.folded) } : part,
  );
  if (folded.every((part, at) => part.folded === parts[at]!.folded)) return null;
  const exact = lexicon.exact.get(keyOf(folded, 'folded'));
  return exact ?? (folded.length === 1 ? compound(folded[0]!, lexicon) : null);
}

/** Wordings that differ only in inflection must not say different things, but for what hangs on the structure. */
function agree(senses: readonly Sense[]): boolean {
  const free = senses.filter(({ when, alone }) => when === undefined && !alone);
  return free.every((sense) => sameSense(sense, free[0]!));
}

/** "Zwirnb.": every word that begins so says the same. */
function cutShort(part: Token, lexicon: Lexicon): readonly Sense[] | null {
  if (!part.cut || part.folded.length < 4) return null;
  const met = lexicon.words.filter((word) => word.startsWith(part.folded));
  const senses = met.flatMap((word) => lexicon.exact.get(word) ?? []);
  const [first] = senses;
  if (first === undefined || first.asks !== undefined) return null;
  return senses.every(({ sets }) => sameSets(sets, first.sets)) ? senses : null;
}

/** "Spitzköperbindung", "diamantkiper": two known words written as one. */
function compound(part: Token, lexicon: Lexicon): readonly Sense[] | null {
  const word = part.folded;
  if (part.kind !== 'word' || word.length < 9) return null;
  for (let cut = word.length - 4; cut >= 4; cut--) {
    const tail = lexicon.exact.get(word.slice(cut));
    if (tail === undefined) continue;
    for (const joint of ['', 's', 'n', 'en', 'e']) {
      const head = word.slice(0, cut);
      if (!head.endsWith(joint)) continue;
      const stemmed = head.slice(0, head.length - joint.length);
      const front = stemmed.length < 4 ? undefined : lexicon.exact.get(stemmed);
      const whole = front === undefined ? null : together(front, tail);
      if (whole !== null) return whole;
    }
  }
  return null;
}

/** What two words say of one another: the first sense of each that fits, without a contradiction. */
function together(front: readonly Sense[], tail: readonly Sense[]): readonly Sense[] | null {
  const base = tail.find(({ when, alone, asks }) => when === undefined && !alone && asks === undefined);
  if (base === undefined) return null;
  const structure = base.sets.get('structure');
  const added = front.find(
    ({ when, asks, sets }) =>
      asks === undefined &&
      (when === undefined
        ? !sets.has('structure') || sets.get('structure') === structure
        : structure !== undefined && when.includes(structure)),
  );
  if (added === undefined) return null;
  const sets = new Map([...base.sets, ...added.sets]);
  return [{ ...base, sets, via: `${added.via} + ${base.via}` }];
}
