import type { AttributeDefinition } from '../attributes/definition.ts';
import { lowered } from './certainty.ts';
import type { CellContext } from './context.ts';
import { readDescription } from './descriptions/read-description.ts';
import { NAMES, readFreeTerm } from './free-terms.ts';
import { readGrade } from './grades.ts';
import { emptyNumeric, emptyTerm, flagged, notUnderstood, quote, readAs, textReading } from './notes.ts';
import { isIdem, profileCode } from './nothing.ts';
import { readNumber } from './number-cell.ts';
import { readPresence } from './presence.ts';
import type { CellState, Note, Reading, TermReading } from './reading.ts';
import { readTerm, termReading } from './terms.ts';
import { readPlyCell, readTwistCell } from './twist-cell.ts';
import { readUnnamed } from './unnamed.ts';
import { nothingInWords } from './wording/nothing-in-words.ts';

/** Longer texts are read as prose or names at most; no pattern is tried on them. */
const LONGEST = 2000;

/**
 * Reads the text of one cell as a value of an attribute.
 *
 * - Never throws, whatever the text; what is not understood becomes `not-observed` with a note of level
 *   `not-understood`, and whoever holds the cell keeps the raw text.
 * - The profile's own codes for "nothing" (`context.missing`) win over every rule, its translations over
 *   every synonym.
 * - Numbers come out in the attribute's unit, low <= high; ±Infinity where an end is open.
 * - Near matches of terms are named in the notes, never taken.
 * - "idem" is reported with the rule `idem`, since only the reader of the column can copy down.
 *
 * The patterns are listed in docs/reading-cells.md.
 */
export function readCell(text: string, attribute: AttributeDefinition, context: CellContext): Reading {
  try {
    const code = profileCode(text, context.missing);
    if (code !== undefined && code !== 'measured' && code !== 'approximate') {
      return coded(text, attribute, code);
    }
    const reading = readValue(text, attribute, context);
    if (!reading.notes.some(({ level }) => level === 'not-understood')) return reading;
    // What no rule of the attribute reads may be a sentence that holds no value.
    const said = nothingInWords(text, attribute);
    if (said !== null && attribute.vocabulary === 'orientation') return termReading('untold', 0, [said.note]);
    return said === null ? reading : nothingFor(attribute, said.state, text, [said.note]);
  } catch (error) {
    const reason = error instanceof Error ? error.message : 'unknown reason';
    return nothingFor(attribute, 'not-observed', text, [
      notUnderstood('unreadable', `${quote(text)} could not be read (${reason})`),
    ]);
  }
}

function readValue(text: string, attribute: AttributeDefinition, context: CellContext): Reading {
  switch (attribute.scale) {
    case 'ratio':
    case 'interval':
      return readNumber(text, attribute, context);
    case 'binary':
    case 'presence':
      return readPresence(text, context, attribute);
    case 'text':
      return readText(text);
    case 'ordinal':
      return tooLong(text) ?? readGrade(text, attribute, context);
    case 'nominal':
      return tooLong(text) ?? readKind(text, attribute, context);
  }
}

function tooLong(text: string): TermReading | null {
  if (text.length <= LONGEST) return null;
  return emptyTerm('not-observed', [
    notUnderstood('prose', `a text of ${text.length} characters is no term`),
  ]);
}

function readKind(text: string, attribute: AttributeDefinition, context: CellContext): TermReading {
  const { vocabulary } = context;
  if (/^ply\d?$/u.test(attribute.id)) return readPlyCell(text, context);
  if (vocabulary === undefined) {
    return (
      (NAMES.has(attribute.id) ? readUnnamed(text, attribute, context) : null) ??
      readFreeTerm(text, context, attribute)
    );
  }
  if (vocabulary.id === 'twist' || vocabulary.id === 'slant') return readTwistCell(text, context, vocabulary);
  const described =
    context.register === undefined ? null : readDescription(text, attribute, context.register, context);
  return described === null || described.main.kind !== 'term'
    ? readTerm(text, vocabulary, context)
    : described.main;
}

function readText(text: string): Reading {
  if (isIdem(text)) {
    return textReading(text, 'measured', [flagged('idem', `${quote(text)} may repeat the cell above`)]);
  }
  return textReading(text, text.trim() === '' ? 'not-observed' : 'measured', []);
}

function coded(text: string, attribute: AttributeDefinition, code: CellState): Reading {
  const blank = text.trim() === '';
  const why = `${quote(text)} read as ${code.replace('-', ' ')}, as the source's profile says`;
  return nothingFor(attribute, code, text, blank ? [] : [readAs('profile-code', why)]);
}

/** No value, in the shape that the attribute's scale asks for; an absence is a value of yes/no scales. */
function nothingFor(
  attribute: AttributeDefinition,
  state: CellState,
  text: string,
  notes: readonly Note[],
): Reading {
  switch (attribute.scale) {
    case 'ratio':
    case 'interval':
      return emptyNumeric(state, notes);
    case 'text':
      return textReading(text, state, notes);
    case 'binary':
    case 'presence':
      if (state === 'absent') {
        return { kind: 'term', term: 'absent', state, certainty: lowered('certain', 0), notes };
      }
      return emptyTerm(state, notes);
    default:
      return emptyTerm(state, notes);
  }
}
