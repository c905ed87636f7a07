import { append } from '../../numerics/foundation/lists.ts';
import { flagged, readAs } from '../notes.ts';
import type { Note } from '../reading.ts';
import { knownUnit, unitDimension } from '../units.ts';
import { type Draft, misread } from './draft.ts';
import { type Cursor, isSign, isWord, peek, takeQuantity } from './quantity.ts';

/** Lengths over which counts are normally stated: "12 on 5 cm" is a rate, not a strip of 5 cm. */
const COUNTING_LENGTHS = new Set([
  '1 cm',
  '2 cm',
  '5 cm',
  '10 cm',
  '1 dm',
  '1 inch',
  '2 inch',
  '10 mm',
  '50 mm',
  '100 mm',
]);

/**
 * "5 rows in 32 mm": n rows enclose n - 1 spaces. Where the first and last lie at the ends of the length
 * ("centre to centre") or the spaces themselves are counted, the rate is exact; otherwise the ends are
 * unknown, and the count is between n - 1 and n + 1 over the length. A plain noun ("12 threads") says what
 * was counted and changes nothing.
 */
export function takeEnclosed(cursor: Cursor, draft: Draft): Note | null {
  const start = cursor.at;
  const first = peek(cursor);
  // "12 mm mellemrum" measures a space, it does not count spaces.
  if (isWord(first, 'spaces') && draft.unit !== undefined) return misread(cursor);
  let spaces = isWord(first, 'spaces');
  while (peek(cursor)?.kind === 'counted' || isWord(peek(cursor), 'spaces')) {
    spaces ||= isWord(peek(cursor), 'spaces');
    cursor.at += 1;
  }
  // "1 Reihe/3 cm" states a rate, "1 Reihe in 3 cm" a strip.
  const rate = isSign(peek(cursor), '/') && peek(cursor, 1)?.kind === 'number';
  if (!isWord(peek(cursor), 'within') && !rate) return null;
  cursor.at += 1;
  const length = takeQuantity(cursor);
  if (length?.unit === undefined || unitDimension(length.unit) !== 'length' || draft.unit !== undefined) {
    return misread(cursor, start);
  }
  const unit = knownUnit(`per ${length.value} ${length.unit}`);
  if (unit === null) return misread(cursor, start);
  draft.unit = unit;
  append(draft.notes, length.notes);
  if (rate) return null;
  if (spaces) {
    draft.notes.push(readAs('spaces-counted', `spaces counted over ${length.value} ${length.unit}`));
    return null;
  }
  if (takeCentres(cursor)) {
    draft.low -= 1;
    draft.high -= 1;
    draft.notes.push(
      readAs(
        'rows-enclose-spaces',
        `n elements centre to centre enclose n - 1 spaces in ${length.value} ${length.unit}`,
      ),
    );
    return null;
  }
  if (COUNTING_LENGTHS.has(`${length.value} ${length.unit}`)) return null;
  draft.low = Math.max(0, draft.low - 1);
  draft.high += 1;
  draft.interval = true;
  draft.notes.push(
    flagged(
      'rows-in-length',
      `a count over ${length.value} ${length.unit} with unknown ends read as n - 1 to n + 1 over it`,
    ),
  );
  return null;
}

function takeCentres(cursor: Cursor): boolean {
  const open = isSign(peek(cursor), '(') ? 1 : 0;
  if (!isWord(peek(cursor, open), 'centres')) return false;
  cursor.at += 1 + open;
  if (open === 1 && isSign(peek(cursor), ')')) cursor.at += 1;
  return true;
}
