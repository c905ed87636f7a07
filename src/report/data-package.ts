import { type NormalisedField, writeNormalised } from '../sources/formats/normalised-table.ts';
import { writeCsv } from '../sources/formats/safe-csv.ts';
import type { Prepared } from '../study/prepare.ts';
import type { Results } from '../study/results.ts';
import { serializeResults } from '../study/results-json.ts';
import { sha256 } from '../study/sha256.ts';
import { VERSION } from '../study/version.ts';
import { ledgerRows } from './ledger-rows.ts';
import { packageStudy } from './package-study.ts';
import { PACKAGED_TABLE } from './packaged-names.ts';
import { tableCsv } from './table-csv.ts';

/**
 * The fragments, normalised, the ledger and the tables of the results as a Data Package
 * (https://datapackage.org/standard/data-package/): file name -> text. Numbers stand as two ends in the attribute's unit, INF and -INF where open, with the
 * state of the cell beside them and the text of the source behind; terms as ids with their certainty. A study file
 * beside them reads the table back and asks the same.
 *
 * @param results the study's results, where they are wanted too: as results.json and a CSV a table.
 */
export function dataPackage(prepared: Prepared, results?: Results): Map<string, string> {
  const { fields, csv } = writeNormalised(prepared.fragments);
  const files = new Map([
    [PACKAGED_TABLE, csv],
    ['ledger.csv', writeCsv(ledgerRows(prepared.ledger))],
  ]);
  const ledgerFields = ledgerRows([])[0].map(
    (name): NormalisedField => ({ name, type: name === 'row' ? 'integer' : 'string', title: name }),
  );
  const resources: unknown[] = [
    tableResource('fragments', PACKAGED_TABLE, csv, { fields, primaryKey: ['fragment'] }),
    tableResource('ledger', 'ledger.csv', files.get('ledger.csv') ?? '', { fields: ledgerFields }),
  ];
  for (const [id, result] of Object.entries(results?.analyses ?? {})) {
    for (const [name, table] of Object.entries(result.tables)) {
      const path = `tables/${id}-${name}.csv`;
      const { csv: text, ...schema } = tableCsv(table);
      files.set(path, text);
      resources.push(tableResource(slug(`${id}-${name}`), path, text, schema));
    }
  }
  if (results !== undefined) {
    const text = serializeResults(results);
    files.set('results.json', text);
    resources.push({ name: 'results.json', path: 'results.json', ...sizeAndHash(text) });
  }
  for (const [path, text] of packageStudy(prepared)) {
    files.set(path, text);
    resources.push({ name: path, path, ...sizeAndHash(text) });
  }
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
    resources,
  };
  files.set('datapackage.json', `${JSON.stringify(descriptor, null, 2)}\n`);
  return files;
}

interface Schema {
  readonly fields: readonly NormalisedField[];
  readonly missingValues?: readonly string[];
  readonly primaryKey?: readonly string[];
}

function tableResource(name: string, path: string, text: string, schema: Schema) {
  return {
    name,
    path,
    type: 'table',
    format: 'csv',
    mediatype: 'text/csv',
    encoding: 'utf-8',
    ...sizeAndHash(text),
    schema: { missingValues: [''], ...schema },
  };
}

function sizeAndHash(text: string) {
  const bytes = new TextEncoder().encode(text);
  return { bytes: bytes.length, hash: `sha256:${sha256(bytes)}` };
}

function slug(text: string): string {
  const plain = text
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll(/[^a-z0-9._-]+/g, '-')
    .replaceAll(/^-+|-+$/g, '');
  return plain === '' ? 'study' : plain;
}
