import { z } from 'zod';
import { InputError } from '../../errors.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import type { ColumnRule, ProfileInput } from '../profile/profile.ts';
import { schemaFault } from '../profile/schema-fault.ts';
import { isNormalised } from '../reading/read-normalised.ts';
import { writeNormalised } from './normalised-table.ts';
import { parseJson } from './parse-json.ts';

/**
 * Frictionless Data Package (https://datapackage.org/standard/data-package/) with Table Schema, versions
 * 1 and 2, read as far as it says how a table is to be read, and written for the normalised table.
 */

const field = z.looseObject({
  name: z.string(),
  type: z.string().optional(),
  unit: z.string().optional(),
  attribute: z.string().optional(),
  decimalChar: z.string().optional(),
});
const schema = z.looseObject({
  fields: z.array(field).default([]),
  missingValues: z.array(z.union([z.string(), z.looseObject({ value: z.string() })])).optional(),
});
const dialect = z.looseObject({
  delimiter: z.string().optional(),
  quoteChar: z.string().nullable().optional(),
  header: z.boolean().optional(),
  headerRows: z.array(z.number()).optional(),
});
const resource = z.looseObject({
  name: z.string().optional(),
  title: z.string().optional(),
  path: z.union([z.string(), z.array(z.string())]).optional(),
  encoding: z.string().optional(),
  dialect: dialect.optional(),
  schema: z.union([schema, z.string()]).optional(),
});
const descriptor = z.looseObject({ name: z.string().optional(), resources: z.array(resource).min(1) });

/** A table that a data package names, and what it says of how to read it. */
export interface PackagedTable {
  readonly name: string;
  readonly path: string;
  readonly profile: ProfileInput;
}

/**
 * The CSV tables of a `datapackage.json`, each with a source profile: delimiter, encoding, header, missing
 * values, and for each field its unit, decimal mark and (where the package is of our own writing) attribute.
 * @throws InputError for malformed JSON, or a package without resources.
 */
export function readDataPackage(text: string, file: string): PackagedTable[] {
  const value = parseJson(text, file);
  const parsed = descriptor.safeParse(value);
  if (!parsed.success) throw schemaFault(parsed.error.issues[0]!, descriptor, value, file);
  return parsed.data.resources.flatMap((one) => {
    const paths = one.path === undefined ? [] : [one.path].flat();
    return paths
      .filter((path) => /\.(?:csv|tsv|txt|tab)$/i.test(path))
      .map((path) => ({ name: one.name ?? path, path: safePath(path, file), profile: profileOf(one) }));
  });
}

/** The standard forbids absolute and parent paths, for good reasons. */
function safePath(path: string, file: string): string {
  if (/^(?:[a-z][a-z0-9+.-]*:|[/\\])/i.test(path) || path.split(/[/\\]/).includes('..')) {
    throw new InputError(
      `the path "${path}" leads out of the package`,
      { file },
      'put the table beside datapackage.json and name it by a relative path',
    );
  }
  return path;
}

const ENCODINGS: ReadonlyMap<string, NonNullable<ProfileInput['encoding']>> = new Map([
  ['utf-8', 'utf-8'],
  ['utf8', 'utf-8'],
  ['utf-16', 'utf-16le'],
  ['utf-16le', 'utf-16le'],
  ['utf-16be', 'utf-16be'],
  ['windows-1252', 'windows-1252'],
  ['cp1252', 'windows-1252'],
  ['iso-8859-1', 'windows-1252'],
  ['latin1', 'windows-1252'],
  ['latin-1', 'windows-1252'],
]);
const DELIMITERS = [',', ';', '\t', '|'] as const;

function profileOf(one: z.infer<typeof resource>): ProfileInput {
  if (typeof one.schema === 'object' && isNormalised([one.schema.fields.map(({ name }) => name)]))
    return { normalised: {} };
  const encoding = ENCODINGS.get((one.encoding ?? '').toLowerCase());
  const delimiter = DELIMITERS.find((sign) => sign === one.dialect?.delimiter);
  const table = typeof one.schema === 'object' ? one.schema : { fields: [] };
  const missing: Record<string, 'not-observed'> = {};
  for (const entry of table.missingValues ?? []) {
    const code = typeof entry === 'string' ? entry : entry.value;
    if (code.trim() !== '') missing[code] = 'not-observed';
  }
  const headerRow = one.dialect?.header === false ? 0 : one.dialect?.headerRows?.at(-1);
  return {
    ...(encoding === undefined ? {} : { encoding }),
    ...(delimiter === undefined ? {} : { delimiter }),
    ...(one.dialect?.quoteChar === null ? { quotes: false } : {}),
    ...(headerRow === undefined ? {} : { layout: { headerRow } }),
    missing,
    columns: table.fields.flatMap(ruleOf),
  };
}

function ruleOf(one: z.infer<typeof field>): ColumnRule[] {
  const rule: ColumnRule = {
    header: one.name,
    ...(one.attribute === undefined ? {} : { attribute: one.attribute }),
    ...(one.unit === undefined ? {} : { unit: one.unit }),
    ...(one.decimalChar === ',' || one.decimalChar === '.' ? { decimal: one.decimalChar } : {}),
  };
  return Object.keys(rule).length > 1 ? [rule] : [];
}

export interface PackageHead {
  /** Lower-case letters, digits, ".", "_" and "-". */
  readonly name: string;
  readonly title: string;
  readonly description?: string;
  readonly licenses?: readonly { readonly name: string; readonly path?: string; readonly title?: string }[];
  readonly sources?: readonly { readonly title: string; readonly path?: string }[];
}

/** File name -> text: the normalised table and a `datapackage.json` that describes every field of it. */
export function writeDataPackage(table: FragmentTable, head: PackageHead): ReadonlyMap<string, string> {
  const { fields, csv } = writeNormalised(table);
  const json = {
    $schema: 'https://datapackage.org/profiles/2.0/datapackage.json',
    ...head,
    resources: [
      {
        name: 'fragments',
        path: 'fragments.csv',
        type: 'table',
        format: 'csv',
        mediatype: 'text/csv',
        encoding: 'utf-8',
        schema: { fields, missingValues: [''], primaryKey: ['fragment'] },
      },
    ],
  };
  return new Map([
    ['fragments.csv', csv],
    ['datapackage.json', `${JSON.stringify(json, null, 2)}\n`],
  ]);
}
