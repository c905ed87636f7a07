import { flagged, notUnderstood, readAs } from '../notes.ts';
import type { Note } from '../reading.ts';
import { bracket } from './bracket.ts';
import { takeEnclosed } from './enclosed.ts';
import type { Measure, Quantity } from './measure.ts';
import { type Cursor, inUnitOf, isSign, isWord, peek, takeQuantity, takeUnit } from './quantity.ts';

/** Everything that is known of the statement while its tokens are read. */
export interface Draft {
  low: number;
  high: number;
  step: number;
  unit: string | undefined;
  open: 'low' | 'high' | undefined;
  about: boolean;
  doubt: number;
  isMean: boolean;
  interval: boolean;
  other: Measure | undefined;
  notes: Note[];
}

/**
 * Reads one statement: signs and words before the number, the number, what follows it. Stops before a
 * "," or ";" at its own level, or a closing bracket. Returns a not-understood note where the tokens make no
 * statement; nothing is skipped.
 */
export function readSegment(cursor: Cursor): Measure | Note {
  const draft: Draft = {
    low: Number.NaN,
    high: Number.NaN,
    step: Number.NaN,
    unit: undefined,
    open: undefined,
    about: false,
    doubt: 0,
    isMean: false,
    interval: false,
    other: undefined,
    notes: [],
  };
  const between = takeBefore(cursor, draft);
  const first = takeQuantity(cursor);
  if (first === null) return misread(cursor);
  draft.low = first.value;
  draft.high = first.value;
  draft.step = first.step;
  draft.unit = first.unit;
  draft.notes.push(...first.notes);
  while (peek(cursor) !== undefined && !isSign(peek(cursor), ',', ';', ')')) {
    const failure = takeAfter(cursor, draft, between);
    if (failure !== null) return failure;
  }
  if (between && !draft.interval) return misread(cursor);
  if (draft.open === 'high') draft.low = Number.NEGATIVE_INFINITY;
  if (draft.open === 'low') draft.high = Number.POSITIVE_INFINITY;
  const { low, high, step, unit, open, about, doubt, isMean, other, notes } = draft;
  return {
    low,
    high,
    step,
    about,
    doubt,
    isMean,
    notes,
    ...(open === undefined ? {} : { open }),
    ...(unit === undefined ? {} : { unit }),
    ...(other === undefined ? {} : { other }),
  };
}

/** Signs and words before the number. Says whether "between"/"from" announced a range. */
function takeBefore(cursor: Cursor, draft: Draft): boolean {
  let between = false;
  for (;;) {
    const token = peek(cursor);
    if (isWord(token, 'about') || isSign(token, '~')) draft.about = true;
    else if (isSign(token, '<') || isWord(token, 'below', 'atMost')) draft.open = 'high';
    else if (isSign(token, '>') || isWord(token, 'above', 'atLeast')) draft.open = 'low';
    else if (isWord(token, 'from')) between = true;
    else if (isWord(token, 'mean')) draft.isMean = true;
    else if (isWord(token, 'to') && draft.open === undefined && peek(cursor, 1)?.kind === 'number')
      draft.open = 'high';
    else if (isSign(token, '+-') && peek(cursor, 1)?.kind === 'number') {
      draft.about = true;
      draft.notes.push(flagged('plus-minus-before', '± before the number read as "about"'));
    } else if (!(isSign(token, '=', ':') && draft.isMean)) break;
    cursor.at += 1;
  }
  if (draft.open !== undefined) draft.notes.push(censoredNote(draft.open));
  return between;
}

const censoredNote = (open: 'low' | 'high'): Note =>
  open === 'low'
    ? readAs('at-least', 'only a lower bound is stated; the upper end stays open')
    : readAs('at-most', 'only an upper bound is stated; the lower end is the least that is possible');

/** One thing that may follow a number. Returns a note where it cannot be understood. */
function takeAfter(cursor: Cursor, draft: Draft, between: boolean): Note | null {
  const token = peek(cursor);
  if (token?.kind === 'unit') {
    if (draft.unit !== undefined) return misread(cursor);
    draft.unit = takeUnit(cursor, draft.notes);
    return null;
  }
  if (isSign(token, '?')) {
    draft.doubt += 1;
    cursor.at += 1;
    return null;
  }
  if (token?.kind === 'counted' || isWord(token, 'spaces')) return takeEnclosed(cursor, draft);
  if (isWord(token, 'within')) return takeEnclosed(cursor, draft);
  if (token?.kind === 'n') {
    draft.notes.push(readAs('mean-of', `read as the mean of ${token.count} readings`));
    cursor.at += 1;
    return null;
  }
  if (isSign(token, '(')) return bracket(cursor, draft);
  if (isWord(token, 'orMore') || (isSign(token, '+') && peek(cursor, 1)?.kind !== 'number')) {
    return openEnd(cursor, draft, 'low');
  }
  if (isWord(token, 'orLess')) return openEnd(cursor, draft, 'high');
  if (isSign(token, '+-')) return plusMinus(cursor, draft);
  if (isSign(token, 'x', ':')) {
    return notUnderstood(
      'two-systems',
      'two readings stand in one cell; split the column into two attributes',
    );
  }
  if (isSign(token, '-', '--', '/', '<') || isWord(token, 'to', 'or', 'and', 'atMost', 'below')) {
    return range(cursor, draft, between);
  }
  return trailingCode(cursor, draft);
}

function openEnd(cursor: Cursor, draft: Draft, open: 'low' | 'high'): Note | null {
  if (draft.open !== undefined) return misread(cursor);
  draft.open = open;
  draft.notes.push(censoredNote(open));
  cursor.at += 1;
  return null;
}

function plusMinus(cursor: Cursor, draft: Draft): Note | null {
  cursor.at += 1;
  const spread = takeQuantity(cursor);
  if (spread === null || draft.interval || draft.open !== undefined) return misread(cursor);
  const first: Quantity = {
    value: draft.low,
    step: draft.step,
    notes: [],
    ...(draft.unit === undefined ? {} : { unit: draft.unit }),
  };
  const same = inUnitOf(first, spread);
  if (same === null) return misread(cursor);
  draft.low -= same.value;
  draft.high += same.value;
  draft.unit ??= same.unit;
  draft.interval = true;
  draft.notes.push(
    ...same.notes,
    flagged('plus-minus', '± read as half a range; it may be a standard deviation instead'),
  );
  return null;
}

/** "3-4", "3 bis 4", "3/4", "5 or 6", "between 3 and 4", "min. 3 max. 4". */
function range(cursor: Cursor, draft: Draft, between: boolean): Note | null {
  const start = cursor.at;
  const link = peek(cursor);
  cursor.at += 1;
  let about = false;
  while (isWord(peek(cursor), 'about', 'atMost', 'below') || isSign(peek(cursor), '~', '<')) {
    about ||= isWord(peek(cursor), 'about') || isSign(peek(cursor), '~');
    cursor.at += 1;
  }
  const negative = isSign(link, '--') && draft.low < 0;
  const found = takeQuantity(cursor);
  if (found === null || draft.interval || draft.open === 'high') return misread(cursor, start);
  const second = negative ? { ...found, value: -found.value } : found;
  const first: Quantity = {
    value: draft.low,
    step: draft.step,
    notes: [],
    ...(draft.unit === undefined ? {} : { unit: draft.unit }),
  };
  const same = inUnitOf(first, second);
  if (same === null) return misread(cursor, start);
  const capped = isWord(link, 'atMost', 'below') || isSign(link, '<');
  if (capped !== (draft.open === 'low')) return misread(cursor, start);
  if (draft.open === 'low') {
    draft.open = undefined;
    draft.notes = draft.notes.filter(({ rule }) => rule !== 'at-least');
  }
  draft.about ||= about;
  draft.interval = true;
  draft.low = Math.min(draft.low, same.value);
  draft.high = Math.max(draft.high, same.value);
  draft.step = Math.min(draft.step, same.step);
  draft.unit ??= same.unit;
  draft.notes.push(...same.notes, linkNote(link, between, same.value < first.value));
  return null;
}

function linkNote(link: ReturnType<typeof peek>, between: boolean, descending: boolean): Note {
  if (isSign(link, '/'))
    return flagged('slash', 'a slash between two numbers read as a range; it may part two systems');
  if (isWord(link, 'or')) return flagged('alternative', 'two numbers joined by "or" read as a range');
  if (isWord(link, 'and') && !between)
    return flagged('alternative', 'two numbers joined by "and" read as a range');
  if (descending) {
    return flagged('descending', 'the second number is smaller: read as a range, but it may be two systems');
  }
  return readAs('range', 'two numbers read as the ends of a range');
}

/** A letter tight behind the number ("21.5K") is a code of the source, not part of the number. */
function trailingCode(cursor: Cursor, draft: Draft): Note | null {
  const token = peek(cursor);
  const last = cursor.at === cursor.tokens.length - 1;
  if (
    token?.kind === 'other' &&
    token.tight &&
    last &&
    /^\p{L}\.?$/u.test(token.text) &&
    draft.unit === undefined
  ) {
    draft.notes.push(
      flagged(
        'trailing-code',
        `"${token.text.toUpperCase()}" behind the number is no known unit; the number is read without it`,
      ),
    );
    cursor.at += 1;
    return null;
  }
  return misread(cursor);
}

/** Names the part that could not be read. */
export function misread(cursor: Cursor, at = cursor.at): Note {
  const token = cursor.tokens[at];
  const part =
    token === undefined
      ? 'the text ends where a number should stand'
      : token.kind === 'other'
        ? `"${token.text}" is not understood here`
        : `the parts do not make a number or range (${token.kind === 'sign' ? `"${token.sign}"` : token.kind} at part ${at + 1})`;
  return notUnderstood('not-a-number', `${part}; the text is kept without a reading`);
}
