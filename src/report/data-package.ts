import { type NormalisedField, writeCsv, writeNormalised } from '../sources/export.ts';
import type { Prepared } from '../study/prepare.ts';
import { sha256 } from '../study/sha256.ts';
import { VERSION } from '../study/version.ts';
import { ledgerRows } from './ledger-rows.ts';

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
  const { fields, csv } = writeNormalised(prepared.fragments);
  const files = new Map([
    ['fragments.csv', csv],
    ['ledger.csv', writeCsv(ledgerRows(prepared.ledger))],
  ]);
  const ledgerFields = ledgerRows([])[0].map(
    (name): NormalisedField => ({ name, type: name === 'row' ? 'integer' : 'string', title: name }),
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
      tableResource('fragments', files.get('fragments.csv') ?? '', fields, ['fragment']),
      tableResource('ledger', files.get('ledger.csv') ?? '', ledgerFields),
      ...[...more].map(([path, text]) => ({ name: slug(path), path, ...sizeAndHash(text) })),
    ],
  };
  files.set('datapackage.json', `${JSON.stringify(descriptor, null, 2)}\n`);
  return files;
}

function tableResource(
  name: string,
  text: string,
  fields: readonly NormalisedField[],
  primaryKey?: readonly string[],
) {
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

function slug(text: string): string {
  const plain = text
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll(/[^a-z0-9._-]+/g, '-')
    .replaceAll(/^-+|-+$/g, '');
  return plain === '' ? 'study' : plain;
}
