import { flagged, notUnderstood, readAs } from '../notes.ts';
import type { Note } from '../reading.ts';

/** One printed number: its value and the smallest step that its digits allow. */
export interface Literal {
  readonly value: number;
  readonly step: number;
  readonly notes: readonly Note[];
}

const GROUPED = /^\d{1,3}(?:[.,' ]\d{3})+$/u;

/**
 * Reads the digits and marks of one number ("3,5", "1.200", "1'200,5") by the decimal habit of its column.
 * A mark followed by other than three digits can only be decimal, whatever the habit; with exactly three,
 * the habit decides. Returns a note where no reading is possible ("1,4,2").
 */
export function readLiteral(digits: string, decimal: ',' | '.'): Literal | Note {
  const grouping = decimal === '.' ? ',' : '.';
  const marks = digits.match(/[.,' ]/gu) ?? [];
  if (marks.length === 0) return { value: Number(digits), step: 1, notes: [] };
  const last = digits.search(/[.,' ]\d*$/u);
  const mark = digits[last] ?? '';
  const before = digits.slice(0, last);
  const after = digits.slice(last + 1);
  const others = marks.slice(0, -1);

  if (after === '') {
    const note = flagged('missing-decimals', `a mark without decimals stands at the end of "${digits}"`);
    return withNotes(plain(before), [note]);
  }
  if (others.some((other) => other === mark) || mark === "'" || mark === ' ') {
    if (!GROUPED.test(digits))
      return notUnderstood('number-marks', `the marks in "${digits}" are neither decimal nor thousands`);
    return withNotes(plain(digits), [thousands(digits)]);
  }
  if (others.length > 0) {
    if (!GROUPED.test(before))
      return notUnderstood('number-marks', `the marks in "${digits}" are neither decimal nor thousands`);
    const notes = mark === decimal ? [thousands(digits)] : [thousands(digits), otherMark(mark, decimal)];
    return withNotes(plain(before, after), notes);
  }
  if (mark === grouping) {
    if (after.length === 3 && /^[1-9]\d{0,2}$/u.test(before))
      return withNotes(plain(before + after), [thousands(digits)]);
    return withNotes(plain(before, after), [otherMark(mark, decimal)]);
  }
  return plain(before, after);
}

function plain(whole: string, decimals = ''): Literal {
  const digits = `${whole.replace(/\D/gu, '')}`;
  return {
    value: Number(`${digits === '' ? '0' : digits}.${decimals === '' ? '0' : decimals}`),
    step: Number(`1e-${decimals.length}`),
    notes: [],
  };
}

const withNotes = (literal: Literal, notes: readonly Note[]): Literal => ({ ...literal, notes });

const thousands = (digits: string): Note =>
  readAs('thousands-mark', `"${digits}" read with a thousands mark, as the decimal habit of the column asks`);

const otherMark = (mark: string, decimal: string): Note =>
  flagged('decimal-mark', `"${mark}" read as decimal mark, though the column writes "${decimal}"`);

/** Vulgar fractions of Unicode, as numerator and denominator. */
export const FRACTIONS: Readonly<Record<string, readonly [number, number]>> = {
  '½': [1, 2],
  '⅓': [1, 3],
  '⅔': [2, 3],
  '¼': [1, 4],
  '¾': [3, 4],
  '⅕': [1, 5],
  '⅖': [2, 5],
  '⅗': [3, 5],
  '⅘': [4, 5],
  '⅙': [1, 6],
  '⅚': [5, 6],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
};
