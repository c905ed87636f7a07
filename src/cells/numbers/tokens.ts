import { append } from '../../numerics/foundation/lists.ts';
import { alternation } from '../text.ts';
import { COUNTED, knownUnit } from '../units.ts';
import { PER_WORDS, UNITS } from '../units-table.ts';
import { numberAt } from './scan-number.ts';
import { signAt } from './signs.ts';
import type { Found, Match, Token } from './token.ts';
import { WORD_KINDS, WORD_PATTERN } from './words.ts';

const LENGTHS = alternation(
  UNITS.filter(({ dimension }) => dimension !== 'number').flatMap((unit) => unit.spellings),
);
const PER = new RegExp(
  `(?:(?:${PER_WORDS}) ?(?:\\d+(?:[.,]\\d+)? ?(?:[x×] ?\\d+(?:[.,]\\d+)? ?)?)?|/ ?)(?:${LENGTHS})(?!\\p{L})|(?:epi|ppi|tpi|spi|e\\.p\\.i\\.?|t\\.p\\.i\\.?)(?!\\p{L})|(?:cm|mm|dm|in)(?:-1|⁻¹)(?!\\d)`,
  'uy',
);
/** "35/5 cm" is a count over 5 cm only where counts are expected; elsewhere it is two lengths. */
const SLASH_COUNT = new RegExp(`/ ?(?:1|2|5|10) ?(?:${LENGTHS})(?!\\p{L})`, 'uy');
const UNIT = new RegExp(`(?:${LENGTHS})(?!\\p{L})`, 'uy');
const COUNT_NOUN = new RegExp(`(?:${COUNTED})(?!\\p{L})`, 'uy');
const SAMPLE = /n ?= ?(\d{1,6})(?!\d)/uy;
const WORD = /[\p{L}\p{M}\d.'_]+/uy;

/**
 * Cuts a folded cell text (see foldCell) into the parts that number patterns are made of. `counting` says
 * that the attribute is a count per length, so that "35/5 cm" is 35 over 5 cm and not 35 or 5 cm.
 */
export function tokenize(folded: string, decimal: ',' | '.', counting: boolean): readonly Token[] {
  const tokens: Token[] = [];
  let at = 0;
  const match = (pattern: RegExp): RegExpExecArray | null => {
    pattern.lastIndex = at;
    return pattern.exec(folded);
  };
  while (at < folded.length) {
    if (folded[at] === ' ') {
      at += 1;
      continue;
    }
    const tight = at > 0 && folded[at - 1] !== ' ';
    const found =
      numberAt(match, decimal, folded, at) ??
      (tokens.length > 0 ? perAt(match, counting) : null) ??
      phraseAt(match, tokens, folded, at) ??
      signAt(folded, at, tight) ??
      otherAt(match, folded, at, tight);
    append(tokens, found.tokens);
    at += found.length;
  }
  return tokens;
}

function perAt(match: Match, counting: boolean): Found | null {
  const text = match(PER)?.[0] ?? (counting ? match(SLASH_COUNT)?.[0] : undefined);
  if (text === undefined) return null;
  const unit = knownUnit(text);
  if (unit === null) return null;
  return { tokens: [{ kind: 'unit', unit, square: /\d ?[x×] ?\d/u.test(text) }], length: text.length };
}

function phraseAt(match: Match, before: readonly Token[], folded: string, at: number): Found | null {
  const previous = at > 0 ? (folded[at - 1] ?? '') : '';
  if (/\p{L}/u.test(previous)) return null;
  const sample = match(SAMPLE);
  if (sample !== null) return { tokens: [{ kind: 'n', count: Number(sample[1]) }], length: sample[0].length };
  const last = before.at(-1);
  const afterNumber = last?.kind === 'number' || (last?.kind === 'sign' && last.sign === '+');
  const unit = match(UNIT)?.[0];
  const word = match(WORD_PATTERN)?.[0];
  const noun = match(COUNT_NOUN)?.[0];
  const wordKind = word === undefined ? undefined : WORD_KINDS.get(word);
  // "5 in" is five inches, "5 rows in 32 mm" is not: a number after the word makes it a preposition.
  const preposition = wordKind === 'within' && /^ ?\d/u.test(folded.slice(at + (word?.length ?? 0)));
  if (unit !== undefined && afterNumber && !preposition && unit.length >= (word?.length ?? 0)) {
    const id = knownUnit(unit);
    if (id !== null) return { tokens: [{ kind: 'unit', unit: id, square: false }], length: unit.length };
  }
  if (noun !== undefined && noun.length >= (word?.length ?? 0)) {
    return { tokens: [{ kind: 'counted', noun }], length: noun.length };
  }
  // "3a" and "4e" are codes; a one-letter word stands free.
  const glued = word?.length === 1 && /\d/u.test(previous);
  if (word !== undefined && wordKind !== undefined && !glued) {
    return { tokens: [{ kind: 'word', word: wordKind }], length: word.length };
  }
  return null;
}

function otherAt(match: Match, folded: string, at: number, tight: boolean): Found {
  const text = match(WORD)?.[0] ?? String.fromCodePoint(folded.codePointAt(at) ?? 0);
  return { tokens: [{ kind: 'other', text, tight }], length: text.length };
}
