import { editDistance } from '../../attributes/likeness.ts';
import { takeDoubt } from '../certainty.ts';
import {
  ABSENT,
  AND,
  ELSEWHERE,
  FILLER,
  LOOKS_LIKE,
  LOST,
  NOT,
  OR,
  QUALITY,
  SEEN,
  SMALL,
  UNDETERMINED,
  WITH,
} from './function-words.ts';
import type { Lexicon, Sense } from './lexicon.ts';
import type { Own } from './own-words.ts';
import { phraseAt } from './phrases.ts';
import { type Token, tokens } from './tokens.ts';

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
      /** A colon follows: all that stands before the next full stop or semicolon is said of it. */
      readonly heads?: true;
    };

export function itemsOf(text: string, lexicon: Lexicon, own: Own): readonly Item[] {
  const all = tokens(text);
  const items: Item[] = [];
  for (let at = 0; at < all.length; ) {
    const met = phraseAt(all, at, lexicon, own);
    if (met !== null) {
      if (met.senses !== 'ignored')
        items.push({
          kind: 'term',
          text: met.text,
          senses: met.senses.filter(safeBehind(all[at - 1], all[at]!, met.length)),
        });
      at += met.length;
      continue;
    }
    const [item, length] = functionAt(all, at, lexicon);
    if (item !== null) items.push(item);
    at += length;
  }
  return items;
}

/** "R 2/2": behind a letter that nobody knows, an order by itself names no structure. */
function safeBehind(before: Token | undefined, token: Token, length: number): (sense: Sense) => boolean {
  const lettered = before?.kind === 'word' && before.folded.length === 1 && !/[sz]/u.test(before.folded);
  return token.kind === 'order' && length === 1 && lettered ? ({ alone }) => !alone : () => true;
}

function functionAt(all: readonly Token[], at: number, lexicon: Lexicon): readonly [Item | null, number] {
  const { kind, text, folded } = all[at]!;
  const item = (of: Exclude<Item['kind'], 'term' | 'doubt' | 'unknown'>): Item => ({ kind: of, text });
  if (kind === 'sign') {
    if (text === '?') return [{ kind: 'doubt', text, steps: 1 }, 1];
    if (text === '/' || text === '|') return [item('or'), 1];
    if (text === '+' || text === '&') return [item('and'), 1];
    // "Tabby → twill": a sign that no grammar here knows.
    if (/^[→>=<~*#]$/u.test(text)) return [{ kind: 'unknown', text }, 1];
    // A colon joins "selvedge: tablet-woven"; a full stop after a short word cuts it.
    if (text === ':' || (text === '.' && cutBefore(all, at))) return [null, 1];
    return [item('stop'), 1];
  }
  if (kind !== 'word') return [{ kind: 'unknown', text }, 1];
  // "Sans doute", "nicht sicher": a doubt before a denial.
  const next = all[at + 1];
  const pair = next?.kind === 'word' ? takeDoubt(`${text} ${next.text} x`) : null;
  if (pair?.marks[0]?.includes(' ') === true)
    return [{ kind: 'doubt', text: `${text} ${next!.text}`, steps: pair.steps }, 2];
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
  if (ELSEWHERE.test(folded))
    return [{ kind: 'elsewhere', text, ...(all[at + 1]?.text === ':' ? { heads: true } : {}) }, 1];
  if (SMALL.has(folded) || FILLER.test(folded) || QUALITY.test(folded)) return [null, 1];
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
