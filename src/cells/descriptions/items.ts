import { lookupKey } from '../../attributes/folding.ts';
import { editDistance } from '../../attributes/likeness.ts';
import { takeDoubt } from '../certainty.ts';
import { ownValue } from '../text.ts';
import {
  ABSENT,
  AND,
  ELSEWHERE,
  FILLER,
  LOOKS_LIKE,
  LOST,
  NOT,
  OR,
  SEEN,
  SMALL,
  UNDETERMINED,
  WITH,
} from './function-words.ts';
import type { Lexicon, Sense } from './lexicon.ts';
import { sameSense, sameSets } from './lexicon.ts';
import { readNotation } from './notation.ts';
import { keyOf, type Token, tokens } from './tokens.ts';

/** A description taken apart: its terms, and the words that join, deny, doubt or place them. */
export type Item =
  | { readonly kind: 'term'; readonly text: string; readonly senses: readonly Sense[] }
  | { readonly kind: 'doubt'; readonly text: string; readonly steps: number }
  | { readonly kind: 'unknown'; readonly text: string; readonly near?: string }
  | {
      readonly kind:
        | 'not'
        | 'absent'
        | 'unseen'
        | 'or'
        | 'and'
        | 'with'
        | 'stop'
        | 'elsewhere'
        | 'looks-like';
      readonly text: string;
    };

/** What the source's own profile says of wordings: text -> senses; "" leaves a wording out. */
export type Own = ReadonlyMap<string, readonly Sense[] | 'ignored'>;

export function itemsOf(text: string, lexicon: Lexicon, own: Own): readonly Item[] {
  const all = tokens(text);
  const items: Item[] = [];
  for (let at = 0; at < all.length; ) {
    const met = phraseAt(all, at, lexicon, own);
    if (met !== null) {
      if (met.senses !== 'ignored') items.push({ kind: 'term', text: met.text, senses: met.senses });
      at += met.length;
      continue;
    }
    const [item, length] = functionAt(all, at, lexicon);
    if (item !== null) items.push(item);
    at += length;
  }
  return items;
}

interface Phrase {
  readonly senses: readonly Sense[] | 'ignored';
  readonly text: string;
  readonly length: number;
}

/** The longest phrase that begins here; exact before inflected. */
function phraseAt(all: readonly Token[], at: number, lexicon: Lexicon, own: Own): Phrase | null {
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
  const inflected = lexicon.stems.get(keyOf(parts, 'stem'));
  if (inflected !== undefined && agree(inflected)) return inflected;
  return parts.length === 1 ? (cutShort(parts[0]!, lexicon) ?? compound(parts[0]!, lexicon)) : null;
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

function functionAt(all: readonly Token[], at: number, lexicon: Lexicon): readonly [Item | null, number] {
  const { kind, text, folded } = all[at]!;
  const item = (of: Exclude<Item['kind'], 'term' | 'doubt' | 'unknown'>): Item => ({ kind: of, text });
  if (kind === 'sign') {
    if (text === '?') return [{ kind: 'doubt', text, steps: 1 }, 1];
    if (text === '/' || text === '|') return [item('or'), 1];
    if (text === '+' || text === '&') return [item('and'), 1];
    // A colon joins "selvedge: tablet-woven"; a full stop after a short word cuts it.
    if (text === ':' || (text === '.' && cutBefore(all, at))) return [null, 1];
    return [item('stop'), 1];
  }
  if (kind !== 'word') return [{ kind: 'unknown', text }, 1];
  if (AND.has(folded)) {
    if (all[at + 1]?.text === '/') return [item('or'), OR.has(all[at + 2]?.folded ?? '') ? 3 : 2];
    return [item('and'), 1];
  }
  if (OR.has(folded)) return [item('or'), 1];
  if (NOT.has(folded)) {
    return SEEN.has(all[at + 1]?.folded ?? '')
      ? [{ kind: 'unseen', text: `${text} ${all[at + 1]!.text}` }, 2]
      : [item('not'), 1];
  }
  if (ABSENT.has(folded)) return [item('absent'), 1];
  if (LOST.has(folded)) return [item('unseen'), 1];
  if (WITH.has(folded)) return [item('with'), 1];
  if (UNDETERMINED.test(folded)) return [null, 1];
  if (LOOKS_LIKE.test(folded)) return [item('looks-like'), 1];
  if (ELSEWHERE.test(folded)) return [item('elsewhere'), 1];
  if (SMALL.has(folded) || FILLER.test(folded)) return [null, 1];
  const doubt = takeDoubt(`${text}${all[at]!.cut ? '.' : ''} x`);
  if (doubt.steps > 0) return [{ kind: 'doubt', text, steps: doubt.steps }, 1];
  const near = slip(folded, lexicon);
  return [{ kind: 'unknown', text, ...(near === null ? {} : { near }) }, 1];
}

function cutBefore(all: readonly Token[], at: number): boolean {
  const before = all[at - 1];
  return before?.kind === 'word' && before.folded.length <= 6;
}

/** A known word that a slip of the pen may have stood for: one letter in five, never taken. */
function slip(word: string, lexicon: Lexicon): string | null {
  if (word.length < 5) return null;
  const allowed = word.length < 9 ? 1 : 2;
  let best: { readonly known: string; readonly slips: number } | null = null;
  for (const known of lexicon.words) {
    if (known.length < 5 || Math.abs(known.length - word.length) > allowed) continue;
    const slips = editDistance(word, known);
    if (slips <= allowed && (best === null || slips < best.slips)) best = { known, slips };
  }
  return best?.known ?? null;
}

/** The source's translations as wordings of their own. */
export function ownWords(
  translations: Readonly<Record<string, string>> | undefined,
  meaning: (text: string) => ReadonlyMap<string, string> | null,
): Own {
  const own = new Map<string, readonly Sense[] | 'ignored'>();
  for (const text of Object.keys(translations ?? {})) {
    const means = ownValue(translations, text) ?? '';
    if (means === '') own.set(lookupKey(text), 'ignored');
    const sets = means === '' ? null : meaning(means);
    if (sets !== null) own.set(lookupKey(text), [{ sets, alone: false, weak: false, via: text }]);
  }
  return own;
}
