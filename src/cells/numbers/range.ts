import { append } from '../../numerics/foundation/lists.ts';
import { flagged, notUnderstood, readAs } from '../notes.ts';
import type { Note } from '../reading.ts';
import { type Draft, misread } from './draft.ts';
import type { Quantity } from './measure.ts';
import { type Cursor, inUnitOf, isSign, isWord, peek, takeQuantity } from './quantity.ts';

/** "3.5 ± 0.5": an interval, flagged, since it may be a standard deviation. */
export function plusMinus(cursor: Cursor, draft: Draft): Note | null {
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
  append(draft.notes, [
    ...same.notes,
    flagged('plus-minus', '± read as half a range; it may be a standard deviation instead'),
  ]);
  return null;
}

/** "3-4", "3 bis 4", "3/4", "5 or 6", "between 3 and 4", "min. 3 max. 4". */
export function range(cursor: Cursor, draft: Draft, between: boolean): Note | null {
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
  if (isSign(link, '/') && same.value < first.value)
    return notUnderstood(
      'two-systems',
      'two numbers with a slash, the second smaller: two systems as a rule; split the column into two attributes',
    );
  draft.about ||= about;
  draft.interval = true;
  draft.low = Math.min(draft.low, same.value);
  draft.high = Math.max(draft.high, same.value);
  draft.step = Math.min(draft.step, same.step);
  draft.unit ??= same.unit;
  append(draft.notes, [...same.notes, linkNote(link, between, same.value < first.value)]);
  return null;
}

function linkNote(link: ReturnType<typeof peek>, between: boolean, descending: boolean): Note {
  if (isSign(link, '/'))
    return flagged('slash', 'a slash between two numbers read as a range; it may part two systems');
  if (isWord(link, 'or')) return flagged('alternative', 'two numbers joined by "or" read as a range');
  if (isSign(link, '&') || (isWord(link, 'and') && !between))
    return flagged('alternative', 'two numbers joined by "and" read as a range');
  if (descending) {
    return flagged('descending', 'the second number is smaller: read as a range, but it may be two systems');
  }
  return readAs('range', 'two numbers read as the ends of a range');
}

/** "30 mm (incomplete)": a broken edge gives a lower bound. */
export function brokenEdge(cursor: Cursor, draft: Draft): Note | null {
  if (draft.open !== undefined || draft.interval) return misread(cursor);
  draft.open = 'low';
  draft.notes.push(flagged('broken-edge', 'said to be incomplete, so read as a lower bound'));
  cursor.at += 1;
  return null;
}
