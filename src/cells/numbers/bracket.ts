import { append } from '../../numerics/foundation/lists.ts';
import { flagged, readAs } from '../notes.ts';
import type { Note } from '../reading.ts';
import { unitDimension } from '../units.ts';
import { type Draft, misread } from './draft.ts';
import type { Measure } from './measure.ts';
import { type Cursor, isSign, isWord, peek } from './quantity.ts';
import { brokenEdge } from './range.ts';

/**
 * Reads a bracket behind a number: "(n=6)", "(9)" behind a range = its mean, "[3-5]" behind a number = its
 * range, "(3)" behind a number = another reading, "(7.6 cm)" = the same thing in another unit, "(?)" = doubt.
 */
export function bracket(
  cursor: Cursor,
  draft: Draft,
  readSegment: (cursor: Cursor) => Measure | Note,
): Note | null {
  const start = cursor.at;
  cursor.at += 1;
  while (!isSign(peek(cursor), ')')) {
    const token = peek(cursor);
    if (token === undefined) return misread(cursor, start);
    if (isSign(token, '?')) {
      draft.doubt += 1;
      cursor.at += 1;
    } else if (isSign(token, ',', ';')) {
      cursor.at += 1;
    } else if (token.kind === 'n') {
      draft.notes.push(readAs('mean-of', `read as the mean of ${token.count} readings`));
      cursor.at += 1;
    } else if (isWord(token, 'mean', 'label') && isSign(peek(cursor, 1), ')')) {
      draft.isMean ||= isWord(token, 'mean');
      cursor.at += 1;
    } else if (isWord(token, 'broken')) {
      const failure = brokenEdge(cursor, draft);
      if (failure !== null) return failure;
    } else if (isSign(token, '-') && peek(cursor, 1)?.kind === 'number' && isSign(peek(cursor, 2), ')')) {
      rareUpperEnd(cursor, draft);
    } else {
      const inner = readSegment(cursor);
      if ('rule' in inner) return inner;
      const failure = join(draft, inner);
      if (failure) return misread(cursor, start);
    }
  }
  cursor.at += 1;
  return null;
}

/** "3-4(-5)": the upper end that is met rarely. */
function rareUpperEnd(cursor: Cursor, draft: Draft): void {
  const end = peek(cursor, 1);
  cursor.at += 2;
  if (end?.kind !== 'number') return;
  draft.high = Math.max(draft.high, end.value);
  draft.low = Math.min(draft.low, end.value);
  draft.interval = true;
  append(draft.notes, [...end.notes, flagged('rare-end', 'an end in brackets is taken into the range')]);
}

/** "3 (max. 5)": a bound beside a value stretches it. */
function stretch(draft: Draft, inner: Measure): boolean {
  const sameUnit = inner.unit === undefined || inner.unit === draft.unit;
  if (draft.open !== undefined || !sameUnit) return true;
  const fits = inner.open === 'high' ? inner.high >= draft.high : inner.low <= draft.low;
  if (!fits) return true;
  if (inner.open === 'high') draft.high = inner.high;
  else draft.low = inner.low;
  draft.interval = true;
  draft.notes.push(flagged('bound-beside', 'a bound beside a value is taken as the end of its range'));
  return false;
}

/** Joins what a bracket says to the statement before it; true where the two cannot be joined. */
function join(draft: Draft, inner: Measure): boolean {
  if (inner.open !== undefined) return stretch(draft, inner);
  const sameUnit = inner.unit === undefined || draft.unit === undefined || inner.unit === draft.unit;
  if (!sameUnit) {
    if (draft.other !== undefined || !comparable(draft.unit, inner.unit)) return true;
    draft.other = inner;
    return false;
  }
  // "19 11/16 (50 cm)": the number before has a unit of its own that is not written.
  if (draft.unit === undefined && inner.unit !== undefined && !draft.interval && inner.low !== draft.low)
    return true;
  draft.unit ??= inner.unit;
  append(
    draft.notes,
    inner.notes.filter(({ rule }) => rule !== 'range'),
  );
  if (draft.open !== undefined) return true;
  const point = inner.low === inner.high;
  if (draft.interval) {
    if (!point) return true;
    const inside = inner.low >= draft.low && inner.low <= draft.high;
    draft.notes.push(
      inside
        ? readAs(
            'mean-in-brackets',
            `${inner.low} in brackets taken as the mean of the range; the range is what is kept`,
          )
        : flagged(
            'mean-outside',
            `${inner.low} in brackets lies outside the range ${draft.low} to ${draft.high}`,
          ),
    );
    return false;
  }
  if (point) {
    const why = `${inner.low} in brackets is a second value beside ${draft.low}; the first is read`;
    draft.notes.push(flagged(inner.isMean ? 'mean-in-brackets' : 'second-value', why));
    return false;
  }
  const inside = draft.low >= inner.low && draft.low <= inner.high;
  draft.notes.push(
    inside
      ? readAs('range-in-brackets', `read as the range in brackets around ${draft.low}`)
      : flagged(
          'mean-outside',
          `${draft.low} lies outside the range ${inner.low} to ${inner.high} in brackets`,
        ),
  );
  draft.low = Math.min(draft.low, inner.low);
  draft.high = Math.max(draft.high, inner.high);
  draft.interval = true;
  return false;
}

/** Two units can say the same thing when they share a dimension or are a count and its spacing. */
export function comparable(one: string | undefined, other: string | undefined): boolean {
  if (one === undefined || other === undefined) return false;
  const kinds = [unitDimension(one), unitDimension(other)];
  return kinds[0] === kinds[1] || (kinds.includes('count') && kinds.includes('length'));
}
