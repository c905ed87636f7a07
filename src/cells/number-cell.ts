import type { AttributeDefinition } from '../attributes/definition.ts';
import type { CellContext } from './context.ts';
import { eraContext, readDateSpan } from './dates/read-date-span.ts';
import { readDegrees } from './degrees.ts';
import { emptyNumeric, quote, readAs } from './notes.ts';
import { readNothing } from './nothing.ts';
import { withoutBeside } from './numbers/beside.ts';
import { readNumeric } from './numbers/read-numeric.ts';
import type { Note, NumericReading, Reading } from './reading.ts';
import { foldCell } from './text.ts';
import { withoutCountedWords } from './wording/counted-words.ts';
import { greatestExtent, withoutMeasureWords } from './wording/measure-words.ts';

/** Most cells of most tables: a number in the attribute's own unit, with the column's own mark. */
const PLAIN_POINT = /^\d{1,9}(?:\.(\d{1,6}))?$/u;
const PLAIN_COMMA = /^\d{1,9}(?:,(\d{1,6}))?$/u;
/** Reads the cell of a measure, a count or a date. */
export function readNumber(text: string, attribute: AttributeDefinition, context: CellContext): Reading {
  if (attribute.unit === 'year') return readDateSpan(text, eraContext(context));
  const plain = (context.decimal === '.' ? PLAIN_POINT : PLAIN_COMMA).exec(text);
  if (plain !== null && (context.unit === undefined || context.unit === attribute.unit)) {
    const value = Number(context.decimal === '.' ? text : text.replace(',', '.'));
    const step = plain[1] === undefined ? 1 : Number(`1e-${plain[1].length}`);
    if (value !== 0) return { kind: 'numeric', low: value, high: value, state: 'measured', step, notes: [] };
  }
  const nothing = readNothing(text);
  if (nothing !== null) return emptyNumeric(nothing.state, nothing.notes);
  const degrees = attribute.scale === 'interval' && attribute.unit === 'degree' ? readDegrees(text) : null;
  if (degrees !== null) return degrees;
  const counted = attribute.unit === undefined ? withoutCountedWords(text, attribute.id) : text;
  if (counted !== text)
    return withNotes(readNumeric(counted, attribute, context), [
      readAs('counted-named', `${quote(text)} names what is counted too`),
    ]);
  const bare = withoutBeside(greatestExtent(text, attribute.id), attribute.unit);
  const reading = readNumeric(bare.text, attribute, context);
  if (!Number.isNaN(reading.low)) return withNotes(reading, bare.notes);
  // "rows 5 mm apart": what names the measure is taken off only where the rest makes no number with it.
  const named = withoutMeasureWords(foldCell(bare.text), attribute.id);
  const unnamed = named === foldCell(bare.text) ? reading : readNumeric(named, attribute, context);
  if (!Number.isNaN(unnamed.low))
    return withNotes(unnamed, [
      ...bare.notes,
      readAs('measure-named', `${quote(text)} names the measure too`),
    ]);
  // Nothing is gained where the rest makes no number either: the whole text is then what is not understood.
  return bare.text === text ? reading : readNumeric(text, attribute, context);
}

const withNotes = (reading: NumericReading, notes: readonly Note[]): NumericReading =>
  notes.length === 0 ? reading : { ...reading, notes: [...notes, ...reading.notes] };
