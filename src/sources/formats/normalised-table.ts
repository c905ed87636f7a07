import { CELL_STATES, CERTAINTIES } from '../../cells/reading.ts';
import type { Column, FragmentTable, NumericColumn, TermColumn } from '../../fragments/table.ts';
import { csvPieces } from './safe-csv.ts';

/** The normalised table: its fields, and the text of each of its cells. */

/** A field of the normalised table, as Table Schema describes it. */
export interface NormalisedField {
  readonly name: string;
  readonly type: 'string' | 'number' | 'integer';
  readonly title: string;
  readonly description?: string;
  readonly unit?: string;
  readonly constraints?: { readonly enum: readonly string[] };
}

/** A field, and the text of each row in it. */
export interface FieldColumn {
  readonly field: NormalisedField;
  readonly text: (row: number) => string;
}

/** Ends of the field names that belong to one attribute. */
export const PARTS = [
  'low',
  'high',
  'state',
  'certainty',
  'raw',
  'step',
  'readings',
  'value',
  'derivedFrom',
  'centre',
] as const;
export const PART_PATTERN = new RegExp(`^(.*)\\.(${PARTS.join('|')})$`, 's');

export interface NormalisedTable {
  readonly fields: readonly NormalisedField[];
  /** CSV text with a header row of the field names. */
  readonly csv: string;
}

/** The same, its text piece by piece. */
export interface NormalisedPieces extends Pick<NormalisedTable, 'fields'> {
  readonly pieces: Iterable<string>;
}

/**
 * The whole table as CSV: identity and origin of each row, then for each attribute its reading, state and
 * text of the source. Numbers are the shortest decimals that read back as the same double; open ends are
 * INF and -INF; no number is an empty cell. `readNormalised` gives the same table back.
 */
export function writeNormalised(table: FragmentTable): NormalisedTable {
  const { fields, pieces } = normalisedPieces(table);
  return { fields, csv: [...pieces].join('') };
}

/** `writeNormalised` for tables of any length; the pieces can be gone through once. */
export function normalisedPieces(table: FragmentTable): NormalisedPieces {
  const columns = normalisedFields(table);
  const fields = columns.map(({ field }) => field);
  function* rows(): Generator<string[]> {
    yield fields.map(({ name }) => name);
    for (let row = 0; row < table.rows; row++) yield columns.map(({ text }) => text(row));
  }
  return { fields, pieces: csvPieces(rows()) };
}

/** The fields of the normalised table, in order. */
export function normalisedFields(table: FragmentTable): readonly FieldColumn[] {
  return [...identity(table), ...[...table.columns].flatMap(([id, column]) => fieldsOf(id, column))];
}

/** Fields that name a row and where it came from. */
export const IDENTITY_FIELDS = ['fragment', 'item', 'assemblage', 'source', 'row'] as const;

function identity(table: FragmentTable): FieldColumn[] {
  const field = (name: (typeof IDENTITY_FIELDS)[number], title: string): NormalisedField => ({
    name,
    type: name === 'row' ? 'integer' : 'string',
    title,
  });
  return [
    { field: field('fragment', 'Fragment'), text: (row) => table.id[row]! },
    { field: field('item', 'Original object'), text: (row) => table.item[row]! },
    { field: field('assemblage', 'Site and phase'), text: (row) => table.assemblage[row]! },
    { field: field('source', 'Source'), text: (row) => table.sources[table.origin[row]!.source] ?? '' },
    { field: field('row', 'Row in the source, 1 = first'), text: (row) => String(table.origin[row]!.row) },
  ];
}

function fieldsOf(id: string, column: Column): FieldColumn[] {
  const { label, unit, definition } = column.attribute;
  const described = definition === undefined ? {} : { description: definition };
  const reserved = (IDENTITY_FIELDS as readonly string[]).includes(id) || PART_PATTERN.test(id);
  const value = reserved ? `${id}.value` : id;
  const state: FieldColumn = {
    field: {
      name: `${id}.state`,
      type: 'string',
      title: `${label}: state`,
      constraints: { enum: CELL_STATES },
    },
    text: (row) => CELL_STATES[column.state[row]!]!,
  };
  if (column.kind === 'text') {
    return [
      { field: { name: value, type: 'string', title: label, ...described }, text: (row) => column.raw[row]! },
      state,
    ];
  }
  const raw: FieldColumn = {
    field: { name: `${id}.raw`, type: 'string', title: `${label}: text of the source` },
    text: (row) => column.raw[row]!,
  };
  if (column.kind === 'term') {
    return [
      {
        field: { name: value, type: 'string', title: label, ...described },
        text: (row) => column.levels[column.codes[row]!] ?? '',
      },
      {
        field: {
          name: `${id}.certainty`,
          type: 'string',
          title: `${label}: certainty`,
          constraints: { enum: CERTAINTIES },
        },
        text: (row) => CERTAINTIES[column.certainty[row]!]!,
      },
      state,
      raw,
      ...derivedField(id, column),
    ];
  }
  const number = (part: 'low' | 'high' | 'step', title: string, values: Float64Array): FieldColumn => ({
    field: {
      name: `${id}.${part}`,
      type: 'number',
      title: `${label}: ${title}`,
      ...described,
      ...(unit === undefined ? {} : { unit }),
    },
    text: (row) => printNumber(values[row]!),
  });
  const readings: FieldColumn = {
    field: { name: `${id}.readings`, type: 'string', title: `${label}: single readings` },
    text: (row) => (column.readings.get(row) ?? []).map(printNumber).join('; '),
  };
  return [
    number('low', 'at least', column.low),
    number('high', 'at most', column.high),
    state,
    raw,
    number('step', 'printed step', column.step),
    ...(column.readings.size > 0 ? [readings] : []),
    ...derivedField(id, column),
    ...(column.centre === undefined ? [] : [centreField(id, label, column.centre)]),
  ];
}

/** Where any value was computed: the attributes it was computed from, blank where it was recorded. */
function derivedField(id: string, { attribute, derivedFrom }: NumericColumn | TermColumn): FieldColumn[] {
  if (derivedFrom === undefined || derivedFrom.size === 0) return [];
  return [
    {
      field: { name: `${id}.derivedFrom`, type: 'string', title: `${attribute.label}: derived from` },
      text: (row) => (derivedFrom.get(row) ?? []).join('; '),
    },
  ];
}

function centreField(id: string, label: string, centre: Float64Array): FieldColumn {
  return {
    field: {
      name: `${id}.centre`,
      type: 'number',
      title: `${label}: the one number that the range stands for`,
    },
    text: (row) => printNumber(centre[row]!),
  };
}

/** Shortest text that reads back as the same double; Table Schema writes infinite numbers as INF. */
export function printNumber(value: number): string {
  if (Number.isNaN(value)) return '';
  if (!Number.isFinite(value)) return value > 0 ? 'INF' : '-INF';
  return Object.is(value, -0) ? '-0' : String(value);
}
