import type { AttributeDefinition } from '../attributes/definition.ts';
import { lowered, takeDoubt } from './certainty.ts';
import type { CellContext } from './context.ts';
import { eraContext, readDateSpan } from './dates/read-date-span.ts';
import { readDegrees } from './degrees.ts';
import { readDescription } from './descriptions/read-description.ts';
import { emptyNumeric, emptyTerm, flagged, notUnderstood, quote, readAs, textReading } from './notes.ts';
import { isIdem, profileCode, readNothing } from './nothing.ts';
import { withoutBeside } from './numbers/beside.ts';
import { readNumeric } from './numbers/read-numeric.ts';
import { formatPly, parsePly } from './ply.ts';
import { readPresence } from './presence.ts';
import type { CellState, Note, NumericReading, Reading, TermReading } from './reading.ts';
import { doubtNotes, readFreeTerm, readGrade, readTerm, termReading, translated } from './terms.ts';
import { foldCell, plainSigns } from './text.ts';
import { readTwist, twistTerm } from './twist.ts';
import { readUnnamed } from './unnamed.ts';
import { withoutMeasureWords } from './wording/measure-words.ts';
import { nothingInWords } from './wording/nothing-in-words.ts';

/** Most cells of most tables: a number in the attribute's own unit, with the column's own mark. */
const PLAIN_POINT = /^\d{1,9}(?:\.(\d{1,6}))?$/u;
const PLAIN_COMMA = /^\d{1,9}(?:,(\d{1,6}))?$/u;
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
    const code = profileCode(text, context);
    if (code !== undefined && code !== 'measured' && code !== 'approximate') {
      return coded(text, attribute, code);
    }
    const reading = readValue(text, attribute, context);
    if (!reading.notes.some(({ level }) => level === 'not-understood')) return reading;
    // What no rule of the attribute reads may be a sentence that holds no value.
    const said = nothingInWords(text, attribute);
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

function readNumber(text: string, attribute: AttributeDefinition, context: CellContext): Reading {
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
  const bare = withoutBeside(text, attribute.unit);
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

/** Attributes whose cells are names of places and times: there, "unprov." is no name. */
const NAMED = new Set(['site', 'region', 'phase', 'period']);

function readKind(text: string, attribute: AttributeDefinition, context: CellContext): TermReading {
  const { vocabulary } = context;
  if (/^ply\d?$/u.test(attribute.id)) return readPlyCell(text, context);
  if (vocabulary === undefined) {
    return (
      (NAMED.has(attribute.id) ? readUnnamed(text, attribute, context) : null) ?? readFreeTerm(text, context)
    );
  }
  if (vocabulary.id === 'twist' || vocabulary.id === 'slant') return readTwistCell(text, context, vocabulary);
  const described =
    context.register === undefined ? null : readDescription(text, attribute, context.register, context);
  return described === null || described.main.kind !== 'term'
    ? readTerm(text, vocabulary, context)
    : described.main;
}

/** A vocabulary of twist: what its own synonyms do not know is read as a direction or a notation. */
function readTwistCell(
  text: string,
  context: CellContext,
  vocabulary: NonNullable<CellContext['vocabulary']>,
): TermReading {
  const settled = translated(text, context);
  if (settled !== undefined) return readTerm(text, vocabulary, context);
  if (vocabulary.id === 'slant' && /^[\s/\\|]+$/u.test(plainSigns(text)) && text.trim() !== '') {
    const why = `${quote(text)} may be a slant that was drawn, or no more than a dash`;
    return emptyTerm('not-observed', [notUnderstood('drawn-slant', why)]);
  }
  const doubt = takeDoubt(plainSigns(text));
  const { twist, notes } = readTwist(doubt.rest, context);
  if (notes.some(({ rule }) => rule === 'unplied')) return emptyTerm('not-observed', notes);
  // Rows of both slants are a structure with a name, not a question of how one thread was spun.
  const slant = vocabulary.id === 'slant' && twist === 'both' ? twistTerm(twist, vocabulary) : null;
  if (slant !== null) return termReading(slant, doubt.steps, doubtNotes(doubt.marks));
  if (twist !== null) {
    const term = twistTerm(twist, vocabulary);
    if (term !== null) return termReading(term, doubt.steps, [...doubtNotes(doubt.marks), ...notes]);
  }
  const known = readTerm(text, vocabulary, context);
  const problems = notes.filter(({ level }) => level === 'not-understood');
  const informed = known.term !== null || !known.notes.some(({ level }) => level === 'not-understood');
  return informed || problems.length === 0 ? known : emptyTerm('not-observed', problems);
}

function readPlyCell(text: string, context: CellContext): TermReading {
  const settled = translated(text, context);
  if (settled !== undefined) return readFreeTerm(text, context);
  const nothing = readNothing(text, 'without absent');
  if (nothing !== null) return emptyTerm(nothing.state, nothing.notes);
  const doubt = takeDoubt(plainSigns(text));
  const { ply, notes } = parsePly(doubt.rest, context.plyOrder);
  const marks = doubtNotes(doubt.marks);
  if (ply !== null)
    return termReading(formatPly(ply), doubt.steps, [
      ...marks,
      ...rewritten(doubt.rest, formatPly(ply)),
      ...notes,
    ]);
  const { twist } = readTwist(doubt.rest, context);
  if (twist === 'none') {
    return termReading('I', doubt.steps, [
      ...marks,
      readAs('twist-none', `${quote(text)} read as observed without twist`),
    ]);
  }
  return emptyTerm('not-observed', notes);
}

const rewritten = (text: string, normal: string): readonly Note[] =>
  text === normal ? [] : [readAs('ply-notation', `${quote(text)} written as ${normal}`)];

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
