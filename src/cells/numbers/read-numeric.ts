import type { AttributeDefinition } from '../../attributes/definition.ts';
import { takeDoubt } from '../certainty.ts';
import type { CellContext } from '../context.ts';
import { emptyNumeric, flagged, notUnderstood, quote } from '../notes.ts';
import type { Note, NumericReading } from '../reading.ts';
import { foldCell } from '../text.ts';
import { unitDimension } from '../units.ts';
import { misread } from './draft.ts';
import type { Measure } from './measure.ts';
import { type Cursor, isSign, peek } from './quantity.ts';
import { readSegment } from './segment.ts';
import { settle } from './settle.ts';
import { tokenize } from './tokens.ts';
import { DATE_LIKE } from './words.ts';

/** Longer texts are prose, not a reading. */
const LONGEST = 300;
/** Before a number the sign says "diameter" or "mean"; it is not the Danish letter. */
const DIAMETER_SIGN = /[Øø⌀∅]\.?(?=\s*[\d<>~c])/gu;
const LETTER_O = /(\d[.,]?)o(?=o*(?:[\s.,\d]|[a-z]?$))/gu;

/** Reads a cell that holds something as a number of the attribute's unit. Never throws. */
export function readNumeric(
  text: string,
  attribute: AttributeDefinition,
  context: CellContext,
): NumericReading {
  const whole = foldCell(text.slice(0, LONGEST + 1).replace(DIAMETER_SIGN, ' '));
  if (whole.length > LONGEST)
    return failed(notUnderstood('prose', `a text of ${text.length} characters is no number`));
  if (DATE_LIKE.test(whole)) {
    const why = `${quote(text)} looks like a date that a spreadsheet has made of two numbers; look at the original`;
    return failed(notUnderstood('date-like', why));
  }
  const doubt = takeDoubt(whole);
  if (/^-\s*\d/u.test(doubt.rest) && whole.startsWith('?')) {
    return failed(notUnderstood('open-range', `${quote(text)}: the lower end is not known; give a bound`));
  }
  const notes: Note[] = [];
  if (doubt.steps > 0) notes.push(flagged('uncertain', `marked as uncertain (${doubt.marks.join(', ')})`));
  const digits = doubt.rest.replace(LETTER_O, '$10');
  if (digits !== doubt.rest)
    notes.push(flagged('letter-for-digit', `a letter O in ${quote(text)} read as zero`));
  const counting = attribute.unit !== undefined && unitDimension(attribute.unit) === 'count';
  const measures = readSegments(tokenize(digits, context.decimal, counting));
  if ('rule' in measures) return failed(measures);
  return settle(measures, attribute, context, notes, doubt.steps);
}

function readSegments(tokens: Cursor['tokens']): readonly Measure[] | Note {
  const cursor: Cursor = { tokens, at: 0 };
  const measures: Measure[] = [];
  const sizes: Note[] = [];
  while (peek(cursor) !== undefined) {
    const token = peek(cursor);
    if (isSign(token, ';', ',')) {
      cursor.at += 1;
      continue;
    }
    if (token?.kind === 'n' && measures.length > 0) {
      sizes.push({ level: 'read', rule: 'mean-of', why: `read as the mean of ${token.count} readings` });
      cursor.at += 1;
      continue;
    }
    const measure = readSegment(cursor);
    if ('rule' in measure) return measure;
    if (isSign(peek(cursor), ')')) return misread(cursor);
    measures.push(measure);
  }
  const first = measures[0];
  if (first === undefined) return misread(cursor);
  return [{ ...first, notes: [...first.notes, ...sizes] }, ...measures.slice(1)];
}

const failed = (note: Note): NumericReading => emptyNumeric('not-observed', [note]);
