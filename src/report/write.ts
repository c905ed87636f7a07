import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { writeParquet } from '../sources/formats/write-parquet.ts';
import type { Prepared } from '../study/prepare.ts';
import { resultsPieces } from '../study/results/json.ts';
import type { Results } from '../study/results/results.ts';
import { VERSION } from '../study/version.ts';
import type { FileContent } from './file-content.ts';
import type { PageParts } from './html.ts';
import { figureFiles, runContents } from './run-files.ts';
import type { DeskOptions } from './writing/desk.ts';
import { type SetWritten, tryFolder, type WriteSetOptions, writeSet } from './writing/write-set.ts';

export interface WriteRequest extends WriteSetOptions {
  readonly prepared: Prepared;
  readonly results: Results;
  readonly folder: string;
  /** Whether report, brief and data package are wanted beside results.json, and whether the report brings its figures to life. */
  readonly report: 'none' | 'static' | 'live';
  /** Whether the normalised table is wanted as Parquet too. */
  readonly parquet?: boolean;
  /** Whether every figure is wanted as files for print. */
  readonly figures?: boolean;
}

/**
 * Writes a run's results into a folder, all of them or none: results.json, report.html, brief.html, tables and
 * the data package. What an earlier run wrote there and this one does not goes; files of others are never touched.
 */
export async function writeReport({
  prepared,
  results,
  folder,
  report,
  parquet = false,
  figures = false,
  ...options
}: WriteRequest): Promise<SetWritten> {
  const files = new Map<string, FileContent>(
    report === 'none'
      ? [['results.json', resultsPieces(results)]]
      : runContents(prepared, results, await pageParts(report === 'live')),
  );
  if (parquet) files.set('fragments.parquet', await writeParquet(prepared.fragments));
  if (figures) for (const [name, text] of figureFiles(results)) files.set(name, text);
  const set = { files, writtenBy: `Thrum ${VERSION}`, study: prepared.study.title };
  return await writeSet(folder, set, options);
}

/** Tries before the long computing whether the results can be written. @throws InputError where not. */
export async function tryResultsFolder(
  folder: string,
  report: WriteRequest['report'],
  options: DeskOptions = {},
): Promise<void> {
  const names = ['results.json', ...(report === 'none' ? [] : WITH_REPORT)];
  await tryFolder(folder, names, options);
}

const WITH_REPORT = [
  'report.html',
  'brief.html',
  'fragments.csv',
  'fragments.study.json',
  'ledger.csv',
  'datapackage.json',
];

async function pageParts(live: boolean): Promise<PageParts> {
  const require = createRequire(import.meta.url);
  const font = await readFile(require.resolve(FONT), 'base64');
  if (!live) return { font };
  return { font, plotly: await readFile(require.resolve('plotly.js-cartesian-dist-min'), 'utf8') };
}

const FONT =
  '@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2';
