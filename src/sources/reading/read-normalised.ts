import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { CELL_STATES, CERTAINTIES } from '../../cells/reading.ts';
import { InputError } from '../../errors.ts';
import type { Column, DerivedFrom, FragmentTable } from '../../fragments/table.ts';
import { decodeBytes } from '../formats/decode.ts';
import { IDENTITY_FIELDS, PART_PATTERN } from '../formats/normalised-table.ts';
import { parseCsv } from '../formats/parse-csv.ts';
import { restoreText } from '../formats/safe-csv.ts';
import { TEXT_COLUMN_PREFIX, textColumnAttribute } from './assemble.ts';
import { codes, numbers, toNumber } from './normalised-values.ts';
import { fixedLevels } from './read-column.ts';

type Cells = readonly string[];

/**
 * Reads a normalised table back, as `writeNormalised` wrote it: the same rows, readings, states and texts.
 * Attributes that the register does not know become text columns.
 * @throws InputError where the identity fields are missing, a row is too short or a value is none.
 */
export function readNormalised(bytes: Uint8Array, name: string, register: Register): FragmentTable {
  return normalisedTable(parseCsv(decodeBytes(bytes, name).text, name, ',').grid, name, register);
}

/** Whether a grid is a normalised table: it begins with the identity fields, and some attribute has its state. */
export function isNormalised([header = []]: readonly Cells[]): boolean {
  return (
    IDENTITY_FIELDS.every((field, i) => header[i] === field) && header.some((field) => STATE.test(field))
  );
}

const STATE = /.\.state$/;

/**
 * As `readNormalised`, of a grid whose first row is the header.
 * @param restore what takes off the marks with which texts were written; none in a file that needs none.
 */
export function normalisedTable(
  grid: readonly Cells[],
  name: string,
  register: Register,
  restore: (text: string) => string = restoreText,
): FragmentTable {
  const [header = [], ...rows] = grid;
  for (const field of IDENTITY_FIELDS) {
    if (!header.includes(field)) {
      throw new InputError(
        `the field "${field}" is missing`,
        { file: name, row: 1 },
        'read the file with "thrum read" instead',
      );
    }
  }
  for (const [i, row] of rows.entries()) {
    if (row.length !== header.length) {
      throw new InputError(
        `the row has ${row.length} cells where the header has ${header.length}`,
        { file: name, row: i + 2 },
        'write the table again',
      );
    }
  }
  const fields = new Map(
    header.map((field, i): [string, Cells] => [restore(field), rows.map((row) => restore(row[i]!))]),
  );
  const of = (field: (typeof IDENTITY_FIELDS)[number]): Cells => fields.get(field)!;
  const sources = [...new Set(of('source'))];
  const columns = new Map<string, Column>();
  for (const id of attributeIds(header)) columns.set(id, columnOf(id, fields, rows.length, name, register));
  return {
    rows: rows.length,
    id: of('fragment'),
    item: of('item'),
    assemblage: of('assemblage'),
    origin: rows.map((_, i) => ({ source: sources.indexOf(of('source')[i]!), row: Number(of('row')[i]) })),
    sources,
    columns,
  };
}

function attributeIds(header: Cells): string[] {
  const identity: readonly string[] = IDENTITY_FIELDS;
  const ids = header
    .filter((field) => !identity.includes(field))
    .map((field) => PART_PATTERN.exec(field)?.[1] ?? field);
  return [...new Set(ids)];
}

function columnOf(
  id: string,
  fields: ReadonlyMap<string, Cells>,
  rows: number,
  file: string,
  register: Register,
): Column {
  const part = (name: string): Cells | undefined => fields.get(`${id}.${name}`);
  const value = part('value') ?? fields.get(id);
  const attribute = register.attributes.get(id) ?? unknownAttribute(id);
  const state = codes(part('state'), CELL_STATES, rows, file, `${id}.state`);
  const low = part('low');
  const derived = derivedPart(part('derivedFrom'));
  const blank = Array.from({ length: rows }, () => '');
  if (low !== undefined) {
    const centre = part('centre');
    const readings = new Map<number, readonly number[]>();
    for (const [row, text] of (part('readings') ?? []).entries()) {
      if (text !== '')
        readings.set(
          row,
          text.split('; ').map((one) => toNumber(one, file, row, `${id}.readings`)),
        );
    }
    return {
      kind: 'numeric',
      attribute,
      low: numbers(low, file, `${id}.low`),
      high: numbers(part('high') ?? blank, file, `${id}.high`),
      step: numbers(part('step') ?? blank, file, `${id}.step`),
      state,
      raw: part('raw') ?? blank,
      readings,
      ...derived,
      ...(centre === undefined ? {} : { centre: numbers(centre, file, `${id}.centre`) }),
    };
  }
  const certainty = part('certainty');
  if (certainty === undefined) return { kind: 'text', attribute, state, raw: value ?? part('raw') ?? blank };
  const levels = [...fixedLevels(attribute)];
  const places = new Map(levels.map((level, code) => [level, code]));
  const termCodes = Int32Array.from(value ?? blank, (text) => {
    if (text === '') return -1;
    let code = places.get(text);
    if (code === undefined) {
      code = levels.push(text) - 1;
      places.set(text, code);
    }
    return code;
  });
  return {
    kind: 'term',
    attribute,
    codes: termCodes,
    levels,
    state,
    certainty: codes(certainty, CERTAINTIES, rows, file, `${id}.certainty`),
    raw: part('raw') ?? blank,
    ...derived,
  };
}

function derivedPart(texts: Cells | undefined): { readonly derivedFrom?: DerivedFrom } {
  if (texts === undefined) return {};
  const listed = texts.flatMap((text, row): [number, readonly string[]][] =>
    text === '' ? [] : [[row, text.split('; ')]],
  );
  return { derivedFrom: new Map(listed) };
}

function unknownAttribute(id: string): AttributeDefinition {
  const attribute = textColumnAttribute(
    id.startsWith(TEXT_COLUMN_PREFIX) ? id.slice(TEXT_COLUMN_PREFIX.length) : id,
  );
  return { ...attribute, id };
}
