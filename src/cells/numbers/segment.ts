import { append } from '../../numerics/foundation/lists.ts';
import { flagged, notUnderstood, readAs } from '../notes.ts';
import type { Note } from '../reading.ts';
import { bracket } from './bracket.ts';
import { type Draft, misread } from './draft.ts';
import { takeEnclosed } from './enclosed.ts';
import type { Measure } from './measure.ts';
import { type Cursor, isSign, isWord, peek, takeQuantity, takeUnit } from './quantity.ts';
import { brokenEdge, plusMinus, range } from './range.ts';

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
    labelled: false,
    interval: false,
    other: undefined,
    notes: [],
  };
  const between = takeBefore(cursor, draft);
  const first = takeQuantity(cursor);
  if (first === null) return misread(cursor);
  draft.low = Number.isNaN(draft.low) ? first.value : Math.min(draft.low, first.value);
  draft.high = first.value;
  draft.step = first.step;
  draft.unit = first.unit;
  append(draft.notes, first.notes);
  while (peek(cursor) !== undefined && !isSign(peek(cursor), ',', ';', ')')) {
    const failure = takeAfter(cursor, draft, between);
    if (failure !== null) return failure;
  }
  if (between && !draft.interval) return misread(cursor);
  if (draft.open === 'high') draft.low = Number.NEGATIVE_INFINITY;
  if (draft.open === 'low') draft.high = Number.POSITIVE_INFINITY;
  const { low, high, step, unit, open, about, doubt, isMean, labelled, other, notes } = draft;
  return {
    labelled,
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
    else if (isWord(token, 'label')) label(draft);
    else if (rareLowerEnd(cursor, draft)) continue;
    else if (isWord(token, 'to') && draft.open === undefined && peek(cursor, 1)?.kind === 'number')
      draft.open = 'high';
    else if (isSign(token, '+-') && peek(cursor, 1)?.kind === 'number') {
      draft.about = true;
      draft.notes.push(flagged('plus-minus-before', '± before the number read as "about"'));
    } else if (!(isSign(token, '=', ':') && (draft.isMean || draft.labelled))) break;
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
  if (isSign(token, '(')) return bracket(cursor, draft, readSegment);
  if (isWord(token, 'orMore') || (isSign(token, '+') && peek(cursor, 1)?.kind !== 'number')) {
    return openEnd(cursor, draft, 'low');
  }
  if (isWord(token, 'orLess')) return openEnd(cursor, draft, 'high');
  const numberNext = peek(cursor, 1)?.kind === 'number';
  if (isWord(token, 'atMost') && !numberNext) return openEnd(cursor, draft, 'high');
  if (isWord(token, 'atLeast') && !numberNext) return openEnd(cursor, draft, 'low');
  if (isWord(token, 'mean') && !numberNext) draft.isMean = true;
  else if (isWord(token, 'label')) label(draft);
  else if (isSign(token, '†') && peek(cursor, 1) === undefined) {
    draft.notes.push(flagged('footnote-mark', 'a mark behind the number may point to a footnote'));
  } else return takeLink(cursor, draft, between);
  cursor.at += 1;
  return null;
}

/** What joins the number to another, or breaks it off. */
function takeLink(cursor: Cursor, draft: Draft, between: boolean): Note | null {
  const token = peek(cursor);
  if (isWord(token, 'broken')) return brokenEdge(cursor, draft);
  if (isSign(token, '+-')) return plusMinus(cursor, draft);
  if (isSign(token, 'x', ':')) {
    return notUnderstood(
      'two-systems',
      'two readings stand in one cell; split the column into two attributes',
    );
  }
  if (isSign(token, '-', '--', '/', '<', '&') || isWord(token, 'to', 'or', 'and', 'atMost', 'below')) {
    return range(cursor, draft, between);
  }
  return trailingCode(cursor, draft);
}

/** "30 mm long": what the number is of, which the column says too, or contradicts. */
function label(draft: Draft): void {
  draft.labelled = true;
  draft.notes.push(
    flagged('label', 'the cell names what was measured; check that it is what the column is about'),
  );
}

/** "(2-)3-4": the lower end that is met rarely. */
function rareLowerEnd(cursor: Cursor, draft: Draft): boolean {
  const value = peek(cursor, 1);
  if (
    !isSign(peek(cursor), '(') ||
    value?.kind !== 'number' ||
    !isSign(peek(cursor, 2), '-') ||
    !isSign(peek(cursor, 3), ')')
  ) {
    return false;
  }
  if (!Number.isNaN(draft.low)) return false;
  draft.low = value.value;
  draft.interval = false;
  append(draft.notes, [...value.notes, flagged('rare-end', 'an end in brackets is taken into the range')]);
  cursor.at += 4;
  return true;
}

function openEnd(cursor: Cursor, draft: Draft, open: 'low' | 'high'): Note | null {
  if (draft.open !== undefined) return misread(cursor);
  draft.open = open;
  draft.notes.push(censoredNote(open));
  cursor.at += 1;
  return null;
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
