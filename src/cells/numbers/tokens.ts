import { flagged } from '../notes.ts';
import type { Note } from '../reading.ts';
import { alternation } from '../text.ts';
import { COUNTED, knownUnit } from '../units.ts';
import { PER_WORDS, UNITS } from '../units-table.ts';
import { FRACTIONS, readLiteral } from './literal.ts';
import { WORD_KINDS, WORD_PATTERN, type WordKind } from './words.ts';

export type Token =
  | {
      readonly kind: 'number';
      readonly value: number;
      readonly step: number;
      readonly notes: readonly Note[];
    }
  | { readonly kind: 'unit'; readonly unit: string; readonly square: boolean }
  | { readonly kind: 'word'; readonly word: WordKind }
  | { readonly kind: 'counted'; readonly noun: string }
  | { readonly kind: 'n'; readonly count: number }
  | { readonly kind: 'sign'; readonly sign: Sign; readonly tight: boolean }
  | { readonly kind: 'other'; readonly text: string; readonly tight: boolean };

/** `<` and `>` stand for their "or equal" forms too: a closed end is all a reading can hold. */
export type Sign =
  | '-'
  | '--'
  | '/'
  | 'x'
  | ':'
  | '+-'
  | '<'
  | '>'
  | '~'
  | '+'
  | '('
  | ')'
  | ','
  | ';'
  | '?'
  | '=';

const LENGTHS = alternation(
  UNITS.filter(({ dimension }) => dimension !== 'number').flatMap((unit) => unit.spellings),
);
const SCIENTIFIC = /(\d{1,9}(?:\.\d{1,9})?)e([+-]?\d{1,2})(?![\p{L}\d.,])/uy;
const NUMBER = /(?:\d+(?:[.,']\d+)*(?:\.(?![.\d]))?|[.,]\d+)/uy;
const SPACED = /\d{1,3}(?: \d{3})+(?![\d.,]| ?\/)/uy;
const PER = new RegExp(
  `(?:(?:${PER_WORDS}) ?(?:\\d+(?:[.,]\\d+)? ?(?:[x×] ?\\d+(?:[.,]\\d+)? ?)?)?|/ ?)(?:${LENGTHS})(?!\\p{L})|(?:epi|ppi|tpi|spi)(?!\\p{L})|(?:cm|mm|dm|in)(?:-1|⁻¹)(?!\\d)`,
  'uy',
);
/** "35/5 cm" is a count over 5 cm only where counts are expected; elsewhere it is two lengths. */
const SLASH_COUNT = new RegExp(`/ ?(?:1|2|5|10) ?(?:${LENGTHS})(?!\\p{L})`, 'uy');
const UNIT = new RegExp(`(?:${LENGTHS})(?!\\p{L})`, 'uy');
const COUNT_NOUN = new RegExp(`(?:${COUNTED})(?!\\p{L})`, 'uy');
const SAMPLE = /n ?= ?(\d{1,6})(?!\d)/uy;
const WORD = /[\p{L}\p{M}\d.'_]+/uy;

const SIGNS: readonly (readonly [string, Sign])[] = [
  ['+/-', '+-'],
  ['+-', '+-'],
  ['±', '+-'],
  ['...', '-'],
  ['..', '-'],
  ['…', '-'],
  ['<=', '<'],
  ['=<', '<'],
  ['≤', '<'],
  ['⩽', '<'],
  ['<', '<'],
  ['>=', '>'],
  ['=>', '>'],
  ['≥', '>'],
  ['⩾', '>'],
  ['>', '>'],
  ['~', '~'],
  ['≈', '~'],
  ['≅', '~'],
  ['--', '--'],
  ['-', '-'],
  ['/', '/'],
  ['×', 'x'],
  ['✕', 'x'],
  ['*', 'x'],
  ['x', 'x'],
  [':', ':'],
  ['+', '+'],
  ['(', '('],
  ['[', '('],
  ['{', '('],
  [')', ')'],
  [']', ')'],
  ['}', ')'],
  [',', ','],
  ['、', ','],
  ['，', ','],
  [';', ';'],
  ['\n', ';'],
  ['?', '?'],
  ['=', '='],
];

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
    tokens.push(...found.tokens);
    at += found.length;
  }
  return tokens;
}

interface Found {
  readonly tokens: readonly Token[];
  readonly length: number;
}
type Match = (pattern: RegExp) => RegExpExecArray | null;

function numberAt(match: Match, decimal: ',' | '.', folded: string, at: number): Found | null {
  const vulgar = FRACTIONS[folded[at] ?? ''];
  if (vulgar !== undefined) return { tokens: [fraction(0, vulgar)], length: 1 };
  const power = match(SCIENTIFIC);
  if (power !== null) {
    const decimals = (power[1]?.split('.')[1] ?? '').length;
    const notes = [flagged('scientific', `"${power[0]}" read as a number with a power of ten`)];
    const step = Number(`1e${Number(power[2]) - decimals}`);
    return { tokens: [{ kind: 'number', value: Number(power[0]), step, notes }], length: power[0].length };
  }
  const spaced = match(SPACED);
  const digits = spaced?.[0] ?? match(NUMBER)?.[0];
  if (digits === undefined) return null;
  const literal = readLiteral(digits.replace(/^[.,]/u, '0$&'), decimal);
  if ('level' in literal) {
    const parts = digits.split(',');
    const list = decimal === '.' && parts.every((part) => /^\d+(?:\.\d+)?$/u.test(part));
    if (!list) return { tokens: [{ kind: 'other', text: digits, tight: false }], length: digits.length };
    const note = flagged(
      'comma-list',
      `"${digits}" read as a list, since its commas fit neither decimals nor thousands`,
    );
    const tokens = parts.flatMap((part, index): Token[] => {
      const one = readLiteral(part, decimal);
      if ('level' in one) return [];
      const number: Token = { kind: 'number', ...one, notes: index === 0 ? [note] : [] };
      return index === 0 ? [number] : [{ kind: 'sign', sign: ',', tight: true }, number];
    });
    return { tokens, length: digits.length };
  }
  const rest = folded.slice(at + digits.length, at + digits.length + 2);
  const joined = FRACTIONS[rest[0] ?? ''] ?? (rest[0] === ' ' ? FRACTIONS[rest[1] ?? ''] : undefined);
  if (joined !== undefined && Number.isInteger(literal.value)) {
    return {
      tokens: [fraction(literal.value, joined)],
      length: digits.length + (rest[0] === ' ' ? 2 : 1),
    };
  }
  const notes =
    spaced === null
      ? literal.notes
      : [flagged('thousands-space', `"${digits}" read as one number with a space between thousands`)];
  return {
    tokens: [{ kind: 'number', value: literal.value, step: literal.step, notes }],
    length: digits.length,
  };
}

/** 3½ -> 3.5, whose smallest step is the half. */
export function fraction(
  whole: number,
  [numerator, denominator]: readonly [number, number],
): Token & { kind: 'number' } {
  return {
    kind: 'number',
    value: (whole * denominator + numerator) / denominator,
    step: 1 / denominator,
    notes: [],
  };
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
  const afterNumber = before.at(-1)?.kind === 'number';
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

function signAt(folded: string, at: number, tight: boolean): Found | null {
  for (const [text, sign] of SIGNS) {
    if (!folded.startsWith(text, at)) continue;
    if (text === 'x' && /\p{L}/u.test(folded[at + 1] ?? '')) continue;
    return { tokens: [{ kind: 'sign', sign, tight }], length: text.length };
  }
  return null;
}

function otherAt(match: Match, folded: string, at: number, tight: boolean): Found {
  const text = match(WORD)?.[0] ?? String.fromCodePoint(folded.codePointAt(at) ?? 0);
  return { tokens: [{ kind: 'other', text, tight }], length: text.length };
}
