import type { AttributeDefinition, Register } from '../attributes/definition.ts';
import { matchAttribute } from '../attributes/matching.ts';
import { isWithin } from '../attributes/tree.ts';
import type { CellContext } from '../cells/context.ts';
import { readDescription } from '../cells/descriptions/read-description.ts';
import { readCell } from '../cells/read-cell.ts';
import { CELL_STATES, CERTAINTIES, type Reading } from '../cells/reading.ts';
import { InputError } from '../errors.ts';
import { deriveColumns } from './derive.ts';
import type { Column, FragmentTable } from './table.ts';

/** A find given as texts, read into a table of one row. */
export interface ReadFind {
  readonly table: FragmentTable;
  readonly readings: ReadonlyMap<string, Reading>;
  /** What a reader should know: texts not understood, attributes that do not apply, readings to look at. */
  readonly notes: readonly string[];
}

/**
 * Reads a find as a cell would be read ("c. 32 mm", "open twining with pile"), attribute by attribute; a
 * description gives each of its facets, unless the find names that facet itself. Adds what follows from it (spacing from density and back). An attribute may be named by id or by an exact
 * synonym. What makes no sense for the find's structure is left out and said.
 *
 * @throws InputError for a name that is no attribute.
 */
export function readFind(find: Readonly<Record<string, string>>, register: Register): ReadFind {
  const readings = new Map<string, Reading>();
  const columns = new Map<string, Column>();
  const notes: string[] = [];
  const told = new Map<string, { readonly reading: Reading; readonly text: string }>();
  for (const [name, text] of Object.entries(find)) {
    if (text.trim() === '') continue;
    const attribute = attributeNamed(name, register);
    const vocabulary =
      attribute.vocabulary === undefined ? undefined : register.vocabularies.get(attribute.vocabulary);
    const context: CellContext = {
      decimal: /\d,\d/.test(text) && !/\d\.\d/.test(text) ? ',' : '.',
      register,
      ...(vocabulary === undefined ? {} : { vocabulary }),
    };
    const described = readDescription(text, attribute, register, context);
    const reading = described?.main ?? readCell(text, attribute, context);
    for (const [id, facet] of described?.facets ?? []) told.set(id, { reading: facet, text });
    for (const note of reading.notes) {
      if (note.level !== 'read') notes.push(`${attribute.label}: ${note.why}`);
    }
    readings.set(attribute.id, reading);
    columns.set(attribute.id, columnOf(attribute, reading, text));
  }
  // What was entered for a facet itself goes before what the description says of it.
  for (const [id, { reading, text }] of told) {
    if (readings.has(id)) continue;
    readings.set(id, reading);
    columns.set(id, columnOf(register.attributes.get(id)!, reading, text));
  }
  for (const id of notApplicable(readings, register)) {
    const label = register.attributes.get(id)?.label ?? id;
    notes.push(`${label} makes no sense for the structure that is given, and was left out`);
    readings.delete(id);
    columns.delete(id);
  }
  const bare: FragmentTable = {
    rows: 1,
    id: ['find'],
    item: ['find'],
    assemblage: [''],
    origin: [{ source: 0, row: 1 }],
    sources: ['the find'],
    columns,
  };
  return { table: deriveColumns(bare, register), readings, notes };
}

function attributeNamed(name: string, register: Register): AttributeDefinition {
  const known = register.attributes.get(name);
  if (known !== undefined) return known;
  const match = matchAttribute(name, register);
  const met = match.kind === 'exact' ? register.attributes.get(match.id) : undefined;
  if (met !== undefined) return met;
  throw new InputError(
    `the find names "${name}", which is no attribute`,
    {},
    match.kind === 'suggested' ? `write "${match.id}" if that is meant` : 'name an attribute of the study',
  );
}

function notApplicable(readings: ReadonlyMap<string, Reading>, register: Register): string[] {
  const structure = readings.get('structure');
  const vocabulary = register.vocabularies.get('structure');
  if (structure?.kind !== 'term' || structure.term === null || vocabulary === undefined) return [];
  const { term } = structure;
  return [...readings.keys()].filter((id) => {
    const listed = register.attributes.get(id)?.appliesTo;
    if (listed === undefined) return false;
    // A broad term ("twining") may still turn out to be one of those that the attribute is for.
    return !listed.some((one) => isWithin(vocabulary, term, one) || isWithin(vocabulary, one, term));
  });
}

function columnOf(attribute: AttributeDefinition, reading: Reading, text: string): Column {
  const state = Uint8Array.of(CELL_STATES.indexOf(reading.state));
  const raw = [text];
  if (reading.kind === 'numeric') {
    return {
      kind: 'numeric',
      attribute,
      low: Float64Array.of(reading.low),
      high: Float64Array.of(reading.high),
      state,
      raw,
      readings: new Map(reading.readings === undefined ? [] : [[0, reading.readings]]),
      step: Float64Array.of(reading.step ?? Number.NaN),
    };
  }
  if (reading.kind === 'text') return { kind: 'text', attribute, raw, state };
  return {
    kind: 'term',
    attribute,
    codes: Int32Array.of(reading.term === null ? -1 : 0),
    levels: reading.term === null ? [] : [reading.term],
    state,
    certainty: Uint8Array.of(CERTAINTIES.indexOf(reading.certainty)),
    raw,
  };
}
