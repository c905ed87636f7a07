import { type NormalisedField, normalisedPieces } from '../sources/formats/normalised-table.ts';
import { csvPieces } from '../sources/formats/safe-csv.ts';
import type { Prepared } from '../study/prepare.ts';
import { resultsPieces } from '../study/results/json.ts';
import type { Results } from '../study/results/results.ts';
import { VERSION } from '../study/version.ts';
import { type Finished, type TextContent, wholeTexts } from './file-content.ts';
import { LEDGER_COLUMNS, ledgerRows } from './ledger-rows.ts';
import { packageStudy } from './package-study.ts';
import { PACKAGED_TABLE } from './packaged-names.ts';
import { tablePieces } from './table-csv.ts';

/**
 * The fragments, normalised, the ledger and the tables of the results as a Data Package
 * (https://datapackage.org/standard/data-package/): file name -> text. Numbers stand as two ends in the attribute's unit, INF and -INF where open, with the
 * state of the cell beside them and the text of the source behind; terms as ids with their certainty. A study file
 * beside them reads the table back and asks the same.
 *
 * @param results the study's results, where they are wanted too: as results.json and a CSV a table.
 */
export function dataPackage(prepared: Prepared, results?: Results): Map<string, string> {
  return wholeTexts(packageFiles(prepared, results));
}

/** The same for a disk: long tables piece by piece, and the description made from what was written before it. */
export function packageFiles(prepared: Prepared, results?: Results): Map<string, TextContent> {
  const { fields, pieces } = normalisedPieces(prepared.fragments);
  const files = new Map<string, TextContent>([
    [PACKAGED_TABLE, pieces],
    ['ledger.csv', csvPieces(ledgerRows(prepared.ledger))],
  ]);
  const resources: Resource[] = [
    tableResource('fragments', PACKAGED_TABLE, { fields, primaryKey: ['fragment'] }),
    tableResource('ledger', 'ledger.csv', { fields: LEDGER_FIELDS }),
  ];
  for (const [id, result] of Object.entries(results?.analyses ?? {})) {
    for (const [name, table] of Object.entries(result.tables)) {
      const path = `tables/${id}-${name}.csv`;
      const { pieces: text, ...schema } = tablePieces(table);
      files.set(path, text);
      resources.push(tableResource(slug(`${id}-${name}`), path, schema));
    }
  }
  if (results !== undefined) {
    files.set('results.json', () => resultsPieces(results));
    resources.push({ name: 'results.json', path: 'results.json' });
  }
  for (const [path, text] of packageStudy(prepared)) {
    files.set(path, text);
    resources.push({ name: path, path });
  }
  return files.set('datapackage.json', (before) => descriptor(prepared, resources, before));
}

const LEDGER_FIELDS = LEDGER_COLUMNS.map(
  (name): NormalisedField => ({ name, type: name === 'row' ? 'integer' : 'string', title: name }),
);

function descriptor(
  { study, heads }: Prepared,
  resources: readonly Resource[],
  before: ReadonlyMap<string, Finished>,
): string {
  const described = {
    $schema: 'https://datapackage.org/profiles/2.0/datapackage.json',
    name: slug(study.title),
    title: study.title,
    description: `Normalised by Thrum ${VERSION}; rows after the study's selection.`,
    version: VERSION,
    sources: heads.map(({ file, sha256: hash }) => ({ title: file, path: file, hash: `sha256:${hash}` })),
    resources: resources.map(({ schema, ...resource }) => {
      const { bytes = 0, hash = '' } = before.get(resource.path) ?? {};
      return { ...resource, bytes, hash: `sha256:${hash}`, ...(schema === undefined ? {} : { schema }) };
    }),
  };
  return `${JSON.stringify(described, null, 2)}\n`;
}

interface Resource {
  readonly name: string;
  readonly path: string;
  readonly schema?: Schema;
}

interface Schema {
  readonly fields: readonly NormalisedField[];
  readonly missingValues?: readonly string[];
  readonly primaryKey?: readonly string[];
}

function tableResource(name: string, path: string, schema: Schema): Resource {
  return {
    name,
    path,
    ...{ type: 'table', format: 'csv', mediatype: 'text/csv', encoding: 'utf-8' },
    schema: { missingValues: [''], ...schema },
  };
}

function slug(text: string): string {
  const plain = text
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll(/[^a-z0-9._-]+/g, '-')
    .replaceAll(/^-+|-+$/g, '');
  return plain === '' ? 'study' : plain;
}
