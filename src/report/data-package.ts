import { CELL_STATES, CERTAINTIES } from '../cells/reading.ts';
import type { Column, FragmentTable } from '../fragments/table.ts';
import type { Prepared } from '../study/prepare.ts';
import { sha256 } from '../study/sha256.ts';
import { VERSION } from '../study/version.ts';
import { toCsv } from './csv.ts';
import { ledgerRows } from './ledger-rows.ts';

/** A field of Table Schema (Frictionless Data, https://datapackage.org/standard/table-schema/). */
interface Field {
  readonly name: string;
  readonly type: 'string' | 'number' | 'integer';
  readonly title: string;
  readonly description?: string;
  readonly unit?: string;
  readonly constraints?: { readonly enum: readonly string[] };
}

interface FieldColumn {
  readonly field: Field;
  readonly text: (row: number) => string;
}

/**
 * The fragments, normalised, and the ledger as a Data Package (https://datapackage.org/standard/data-package/):
 * file name -> text. Numbers stand as two ends in the attribute's unit, INF and -INF where open, with the
 * state of the cell beside them and the text of the source behind; terms as ids with their certainty.
 *
 * @param more further files of the same folder that the package lists, such as results.json.
 */
export function dataPackage(
  prepared: Prepared,
  more: ReadonlyMap<string, string> = new Map(),
): Map<string, string> {
  const columns = fieldColumns(prepared.fragments);
  const files = new Map([
    ['fragments.csv', toCsv(tableRows(prepared.fragments, columns))],
    ['ledger.csv', toCsv(ledgerRows(prepared.ledger))],
  ]);
  const ledgerFields = ledgerRows([])[0].map(
    (name): Field => ({ name, type: name === 'row' ? 'integer' : 'string', title: name }),
  );
  const descriptor = {
    $schema: 'https://datapackage.org/profiles/2.0/datapackage.json',
    name: slug(prepared.study.title),
    title: prepared.study.title,
    description: `Normalised by Thrum ${VERSION}; rows after the study's selection.`,
    version: VERSION,
    sources: prepared.heads.map(({ file, sha256: hash }) => ({
      title: file,
      path: file,
      hash: `sha256:${hash}`,
    })),
    resources: [
      tableResource(
        'fragments',
        files.get('fragments.csv') ?? '',
        columns.map(({ field }) => field),
        ['fragment'],
      ),
      tableResource('ledger', files.get('ledger.csv') ?? '', ledgerFields),
      ...[...more].map(([path, text]) => ({ name: slug(path), path, ...sizeAndHash(text) })),
    ],
  };
  files.set('datapackage.json', `${JSON.stringify(descriptor, null, 2)}\n`);
  return files;
}

function tableResource(name: string, text: string, fields: readonly Field[], primaryKey?: readonly string[]) {
  return {
    name,
    path: `${name}.csv`,
    type: 'table',
    format: 'csv',
    mediatype: 'text/csv',
    encoding: 'utf-8',
    ...sizeAndHash(text),
    schema: { fields, missingValues: [''], ...(primaryKey === undefined ? {} : { primaryKey }) },
  };
}

function sizeAndHash(text: string) {
  const bytes = new TextEncoder().encode(text);
  return { bytes: bytes.length, hash: `sha256:${sha256(bytes)}` };
}

function tableRows(table: FragmentTable, columns: readonly FieldColumn[]): string[][] {
  const head = columns.map(({ field }) => field.name);
  return [head, ...Array.from({ length: table.rows }, (_, row) => columns.map(({ text }) => text(row)))];
}

function fieldColumns(table: FragmentTable): FieldColumn[] {
  const fixed: FieldColumn[] = [
    { field: { name: 'fragment', type: 'string', title: 'Fragment' }, text: (row) => table.id[row] },
    { field: { name: 'item', type: 'string', title: 'Original object' }, text: (row) => table.item[row] },
    {
      field: { name: 'assemblage', type: 'string', title: 'Site and phase' },
      text: (row) => table.assemblage[row],
    },
    {
      field: { name: 'source', type: 'string', title: 'Source file' },
      text: (row) => table.sources[table.origin[row].source] ?? '',
    },
    {
      field: { name: 'row', type: 'integer', title: 'Row in the source, 1 = first' },
      text: (row) => String(table.origin[row].row),
    },
  ];
  const taken = new Set(fixed.map(({ field }) => field.name));
  const rest = [...table.columns]
    .filter(([id]) => !taken.has(id))
    .flatMap(([id, column]) => attributeFields(id, column));
  return [...fixed, ...rest];
}

function attributeFields(id: string, column: Column): FieldColumn[] {
  const { label, unit, definition } = column.attribute;
  const state: FieldColumn = {
    field: {
      name: `${id}.state`,
      type: 'string',
      title: `${label}: state`,
      constraints: { enum: CELL_STATES },
    },
    text: (row) => CELL_STATES[column.state[row]],
  };
  const raw: FieldColumn = {
    field: { name: `${id}.raw`, type: 'string', title: `${label}: text of the source` },
    text: (row) => column.raw[row] ?? '',
  };
  const described = definition === undefined ? {} : { description: definition };
  if (column.kind === 'text') {
    return [
      {
        field: { name: id, type: 'string', title: label, ...described },
        text: (row) => column.raw[row] ?? '',
      },
    ];
  }
  if (column.kind === 'term') {
    return [
      {
        field: { name: id, type: 'string', title: label, ...described },
        text: (row) => (column.codes[row] < 0 ? '' : column.levels[column.codes[row]]),
      },
      {
        field: {
          name: `${id}.certainty`,
          type: 'string',
          title: `${label}: certainty`,
          constraints: { enum: CERTAINTIES },
        },
        text: (row) => (column.codes[row] < 0 ? '' : CERTAINTIES[column.certainty[row]]),
      },
      state,
      raw,
    ];
  }
  const measured = unit === undefined ? {} : { unit };
  return [
    {
      field: { name: `${id}.low`, type: 'number', title: `${label}: at least`, ...described, ...measured },
      text: (row) => printEnd(column.low[row]),
    },
    {
      field: { name: `${id}.high`, type: 'number', title: `${label}: at most`, ...described, ...measured },
      text: (row) => printEnd(column.high[row]),
    },
    state,
    raw,
  ];
}

/** Shortest text that reads back as the same double; Table Schema writes infinite numbers as INF. */
function printEnd(value: number): string {
  if (Number.isNaN(value)) return '';
  if (!Number.isFinite(value)) return value > 0 ? 'INF' : '-INF';
  return String(value);
}

function slug(text: string): string {
  const plain = text
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll(/[^a-z0-9._-]+/g, '-')
    .replaceAll(/^-+|-+$/g, '');
  return plain === '' ? 'study' : plain;
}
