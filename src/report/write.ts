import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Prepared } from '../study/prepare.ts';
import type { Results } from '../study/results.ts';
import { serializeResults } from '../study/results-json.ts';
import { VERSION } from '../study/version.ts';
import { runFiles } from './run-files.ts';
import type { DeskOptions } from './writing/desk.ts';
import { type SetWritten, tryFolder, type WriteSetOptions, writeSet } from './writing/write-set.ts';

export interface WriteRequest extends WriteSetOptions {
  readonly prepared: Prepared;
  readonly results: Results;
  readonly folder: string;
  /** Whether the report and the data package are wanted beside results.json. */
  readonly report: boolean;
}

/**
 * Writes a run's results into a folder, all of them or none: results.json, report.html, tables and the data
 * package. What an earlier run wrote there and this one does not goes; files of others are never touched.
 */
export async function writeReport({
  prepared,
  results,
  folder,
  report,
  ...options
}: WriteRequest): Promise<SetWritten> {
  const files = report
    ? runFiles(prepared, results, await plotlyText())
    : new Map([['results.json', serializeResults(results)]]);
  const set = { files, writtenBy: `Thrum ${VERSION}`, study: prepared.study.title };
  return await writeSet(folder, set, options);
}

/** Tries before the long computing whether the results can be written. @throws InputError where not. */
export async function tryResultsFolder(
  folder: string,
  report: boolean,
  options: DeskOptions = {},
): Promise<void> {
  const names = ['results.json', ...(report ? WITH_REPORT : [])];
  await tryFolder(folder, names, options);
}

const WITH_REPORT = ['report.html', 'fragments.csv', 'ledger.csv', 'datapackage.json'];

async function plotlyText(): Promise<string> {
  const require = createRequire(import.meta.url);
  return readFile(require.resolve('plotly.js-dist-min/plotly.min.js'), 'utf8');
}
