import type { AttributeDefinition } from '../../attributes/definition.ts';
import type { CellContext } from '../../cells/context.ts';
import { readCell } from '../../cells/read-cell.ts';
import { CELL_STATES, CERTAINTIES, type CellState, type Note, type Reading } from '../../cells/reading.ts';
import type { Column, NumericColumn, TermColumn, TextColumn } from '../../fragments/table.ts';
import { describeReading, enter, type Ledger, summariseNotes } from '../ledger/ledger.ts';
import { readSeveral } from './read-several.ts';
import { saysNothing } from './says-nothing.ts';

/** The texts of one column, and where each came from. */
export interface ColumnTexts {
  readonly header: string;
  readonly texts: readonly string[];
  /** Row of the grid of each text, 1 = first. */
  readonly origins: readonly number[];
  /** The cells may hold several readings that were gathered from several rows. */
  readonly gathered?: boolean;
}

interface Cached {
  readonly reading: Reading;
  readonly state: number;
  readonly note: Note | null;
  readonly readAs: string;
}

const NOT_OBSERVED = CELL_STATES.indexOf('not-observed');
const MEASURED = CELL_STATES.indexOf('measured');

/**
 * Reads every text of a column as values of one attribute. Equal texts are read once. Cells that were
 * changed, flagged or not understood are entered in the ledger.
 */
export function readColumn(
  column: ColumnTexts,
  attribute: AttributeDefinition,
  context: CellContext,
  ledger: Ledger,
): Column {
  if (attribute.scale === 'text') return readTextColumn(column.texts, attribute, context.missing);
  const several = column.gathered === true;
  return columnOf(
    column,
    attribute,
    (text) => (several ? readSeveral(text, attribute, context) : readCell(text, attribute, context)),
    ledger,
  );
}

/**
 * A column from a way to read its texts; each text is read once. `prefix` stands before what a cell was read
 * as in the ledger, where several attributes are read from one column.
 */
export function columnOf(
  column: ColumnTexts,
  attribute: AttributeDefinition,
  readText: (text: string) => Reading,
  ledger: Ledger,
  prefix = '',
): Column {
  const cache = new Map<string, Cached>();
  const read = (text: string): Cached => {
    const known = cache.get(text);
    if (known !== undefined) return known;
    const reading = readText(text);
    const note = summariseNotes(reading.notes);
    const state = CELL_STATES.indexOf(reading.state);
    const fresh = {
      reading,
      state,
      note,
      readAs: note === null ? '' : `${prefix}${describeReading(reading, attribute.unit)}`,
    };
    cache.set(text, fresh);
    return fresh;
  };
  const note = (row: number, text: string, cached: Cached): void => {
    if (cached.note === null) return;
    enter(ledger, {
      row: column.origins[row]!,
      column: column.header,
      raw: text,
      readAs: cached.readAs,
      level: cached.note.level,
      rule: cached.note.rule,
      why: cached.note.why,
    });
  };
  return attribute.scale === 'ratio' || attribute.scale === 'interval'
    ? readNumbers(column.texts, attribute, read, note)
    : readTerms(column.texts, attribute, read, note);
}

type Read = (text: string) => Cached;
type Enter = (row: number, text: string, cached: Cached) => void;

function readNumbers(
  texts: readonly string[],
  attribute: AttributeDefinition,
  read: Read,
  note: Enter,
): NumericColumn {
  const rows = texts.length;
  const low = new Float64Array(rows).fill(Number.NaN);
  const high = new Float64Array(rows).fill(Number.NaN);
  const step = new Float64Array(rows).fill(Number.NaN);
  const state = new Uint8Array(rows).fill(NOT_OBSERVED);
  const readings = new Map<number, readonly number[]>();
  for (let row = 0; row < rows; row++) {
    const cached = read(texts[row]!);
    const { reading } = cached;
    state[row] = cached.state;
    if (reading.kind === 'numeric') {
      low[row] = reading.low;
      high[row] = reading.high;
      if (reading.step !== undefined) step[row] = reading.step;
      if (reading.readings !== undefined) readings.set(row, reading.readings);
    }
    if (cached.note !== null) note(row, texts[row]!, cached);
  }
  return { kind: 'numeric', attribute, low, high, state, raw: texts, readings, step };
}

function readTerms(
  texts: readonly string[],
  attribute: AttributeDefinition,
  read: Read,
  note: Enter,
): TermColumn {
  const rows = texts.length;
  const codes = new Int32Array(rows).fill(-1);
  const state = new Uint8Array(rows).fill(NOT_OBSERVED);
  const certainty = new Uint8Array(rows);
  const levels = [...fixedLevels(attribute)];
  const places = new Map(levels.map((level, code) => [level, code]));
  for (let row = 0; row < rows; row++) {
    const cached = read(texts[row]!);
    const { reading } = cached;
    state[row] = cached.state;
    if (reading.kind === 'term') {
      certainty[row] = CERTAINTIES.indexOf(reading.certainty);
      if (reading.term !== null) {
        let code = places.get(reading.term);
        if (code === undefined) {
          code = levels.length;
          levels.push(reading.term);
          places.set(reading.term, code);
        }
        codes[row] = code;
      }
    }
    if (cached.note !== null) note(row, texts[row]!, cached);
  }
  return { kind: 'term', attribute, codes, levels, state, certainty, raw: texts };
}

/** Grades keep their order and yes/no its two levels, whichever of them occur. */
export function fixedLevels(attribute: AttributeDefinition): readonly string[] {
  if (attribute.scale === 'binary' || attribute.scale === 'presence') return ['absent', 'present'];
  return attribute.scale === 'ordinal' ? (attribute.levels ?? []) : [];
}

/** A column kept as it stands; only blanks, words for "not available" and the source's codes for "nothing here" are told apart. */
export function readTextColumn(
  texts: readonly string[],
  attribute: AttributeDefinition,
  missing: Readonly<Record<string, CellState>> = {},
): TextColumn {
  const codes = new Map(Object.entries(missing).map(([text, of]) => [text.trim(), CELL_STATES.indexOf(of)]));
  const state = new Uint8Array(texts.length);
  for (let row = 0; row < texts.length; row++) {
    const text = texts[row]!.trim();
    state[row] = codes.get(text) ?? (saysNothing(text) ? NOT_OBSERVED : MEASURED);
  }
  return { kind: 'text', attribute, raw: texts, state };
}
