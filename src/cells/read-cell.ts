import type { AttributeDefinition } from '../attributes/definition.ts';
import type { CellContext } from './context.ts';
import { emptyNumeric, notUnderstood, quote, readAs } from './notes.ts';
import { profileCode, readNothing } from './nothing.ts';
import { readNumeric } from './numbers/read-numeric.ts';
import type { CellState, Note, Reading } from './reading.ts';

/** Whole numbers and decimals with the column's own mark, in the attribute's own unit: most cells of most tables. */
const PLAIN_POINT = /^\d{1,9}(?:\.(\d{1,6}))?$/u;
const PLAIN_COMMA = /^\d{1,9}(?:,(\d{1,6}))?$/u;

export function readCell(text: string, attribute: AttributeDefinition, context: CellContext): Reading {
  try {
    return readNumericCell(text, attribute, context);
  } catch (error) {
    const reason = error instanceof Error ? error.message : 'unknown reason';
    return emptyNumeric('not-observed', [
      notUnderstood('unreadable', `${quote(text)} could not be read (${reason})`),
    ]);
  }
}

function readNumericCell(text: string, attribute: AttributeDefinition, context: CellContext): Reading {
  const code = profileCode(text, context);
  if (code !== undefined && code !== 'measured' && code !== 'approximate')
    return emptyNumeric(code, [codeNote(text, code)]);
  const plain = (context.decimal === '.' ? PLAIN_POINT : PLAIN_COMMA).exec(text);
  if (plain !== null && text !== '0' && (context.unit === undefined || context.unit === attribute.unit)) {
    const value = Number(context.decimal === '.' ? text : text.replace(',', '.'));
    const step = plain[1] === undefined ? 1 : Number(`1e-${plain[1].length}`);
    return { kind: 'numeric', low: value, high: value, state: 'measured', step, notes: [] };
  }
  const nothing = readNothing(text);
  if (nothing !== null) return emptyNumeric(nothing.state, nothing.notes);
  return readNumeric(text, attribute, context);
}

const codeNote = (text: string, state: CellState): Note =>
  readAs('profile-code', `${quote(text)} read as ${state.replace('-', ' ')}, as the source's profile says`);
