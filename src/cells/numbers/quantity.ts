import { flagged } from '../notes.ts';
import type { Note } from '../reading.ts';
import { convert } from '../units.ts';
import type { Quantity } from './measure.ts';
import { fraction } from './scan-number.ts';
import type { Sign, Token } from './token.ts';
import type { WordKind } from './words.ts';

/** A place in the tokens of a cell, moved along by the parsers. */
export interface Cursor {
  readonly tokens: readonly Token[];
  at: number;
}

export const peek = (cursor: Cursor, ahead = 0): Token | undefined => cursor.tokens[cursor.at + ahead];

export function isSign(token: Token | undefined, ...signs: readonly Sign[]): boolean {
  return token?.kind === 'sign' && signs.includes(token.sign);
}

export function isWord(token: Token | undefined, ...words: readonly WordKind[]): boolean {
  return token?.kind === 'word' && words.includes(token.word);
}

const BINARY = new Set([2, 3, 4, 5, 6, 8, 10, 12, 16, 32, 64]);

/**
 * Takes a number with its fraction, sign and unit: "3 1/2", "-5", "12 mm", "10 ft. 10 in.". Returns null,
 * with the cursor where it was, when none stands here.
 */
export function takeQuantity(cursor: Cursor): Quantity | null {
  const start = cursor.at;
  let negative = false;
  if (isSign(peek(cursor), '-') && peek(cursor, 1)?.kind === 'number') {
    negative = true;
    cursor.at += 1;
  }
  const first = peek(cursor);
  if (first?.kind !== 'number') {
    cursor.at = start;
    return null;
  }
  cursor.at += 1;
  let { value, step } = first;
  const notes = [...first.notes];
  const mixed = Number.isInteger(value) ? takeFraction(cursor) : null;
  if (mixed !== null) {
    value += mixed.value;
    step = mixed.step;
  }
  let unit = takeUnit(cursor, notes);
  if (mixed === null && unit === undefined) {
    const inches = commonFraction(cursor, first.value);
    if (inches !== null) {
      value = inches.value;
      step = inches.step;
      unit = inches.unit;
      notes.push(
        flagged('common-fraction', 'a fraction before a unit of inches or feet read as part of one'),
      );
    }
  }
  if (unit === 'foot') {
    const more = takeInches(cursor);
    if (more !== null) {
      value = value * 12 + more.value;
      step = more.step;
      unit = 'inch';
    }
  }
  return { value: negative ? -value : value, step, ...(unit === undefined ? {} : { unit }), notes };
}

export function takeUnit(cursor: Cursor, notes: Note[]): string | undefined {
  const token = peek(cursor);
  if (token?.kind !== 'unit') return undefined;
  if (token.square)
    notes.push(flagged('per-square', 'a count over a square field read as a count over its side'));
  cursor.at += 1;
  return token.unit;
}

/** "1/2" after a whole number. */
function takeFraction(cursor: Cursor): { value: number; step: number } | null {
  const over = peek(cursor);
  const under = peek(cursor, 2);
  if (over?.kind !== 'number' || !isSign(peek(cursor, 1), '/') || under?.kind !== 'number') return null;
  if (!(Number.isInteger(over.value) && over.value < under.value && BINARY.has(under.value))) return null;
  cursor.at += 3;
  return fraction(0, [over.value, under.value]);
}

/** "3/4 in.": a fraction only with a unit that is divided so; "3/4 mm" are two readings. */
function commonFraction(cursor: Cursor, over: number): { value: number; step: number; unit: string } | null {
  const under = peek(cursor, 1);
  const unit = peek(cursor, 2);
  if (!isSign(peek(cursor), '/') || under?.kind !== 'number' || unit?.kind !== 'unit') return null;
  if (!(unit.unit === 'inch' || unit.unit === 'foot') || !(over < under.value && BINARY.has(under.value)))
    return null;
  cursor.at += 3;
  return { ...fraction(0, [over, under.value]), unit: unit.unit };
}

function takeInches(cursor: Cursor): { value: number; step: number } | null {
  const start = cursor.at;
  const token = peek(cursor);
  if (token?.kind !== 'number') return null;
  const inches = takeQuantity(cursor);
  if (inches?.unit === 'inch') return inches;
  cursor.at = start;
  return null;
}

/** Brings the second end of a range to the unit of the first; null when they do not measure the same. */
export function inUnitOf(first: Quantity, second: Quantity): Quantity | null {
  if (first.unit === undefined || second.unit === undefined || first.unit === second.unit) return second;
  try {
    const [value] = convert([second.value, second.value], second.unit, first.unit);
    const [step] = convert([second.step, second.step], second.unit, first.unit);
    return { ...second, value, step, unit: first.unit };
  } catch {
    return null;
  }
}
