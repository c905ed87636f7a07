import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { InputError } from '../errors.ts';
import type { Prepared } from '../study/prepare.ts';
import type { Results } from '../study/results.ts';
import { serializeResults } from '../study/results-json.ts';
import { runFiles } from './run-files.ts';

export interface WriteRequest {
  readonly prepared: Prepared;
  readonly results: Results;
  readonly folder: string;
  /** Whether the report and the data package are wanted beside results.json. */
  readonly report: boolean;
}

/**
 * Writes a run's results into a folder: results.json, report.html, tables and the data package. The only
 * function of the report that touches files.
 *
 * @returns the names of the files written.
 */
export async function writeReport({ prepared, results, folder, report }: WriteRequest): Promise<string[]> {
  const files = report
    ? runFiles(prepared, results, await plotlyText())
    : new Map([['results.json', serializeResults(results)]]);
  try {
    for (const [name, text] of files) {
      await mkdir(dirname(join(folder, name)), { recursive: true });
      await writeFile(join(folder, name), text);
    }
  } catch (fault) {
    const reason = (fault as NodeJS.ErrnoException).code ?? 'unknown reason';
    throw new InputError(
      `the folder cannot be written to (${reason})`,
      { file: folder },
      'choose another with --out',
    );
  }
  return [...files.keys()];
}

async function plotlyText(): Promise<string> {
  const require = createRequire(import.meta.url);
  return readFile(require.resolve('plotly.js-dist-min/plotly.min.js'), 'utf8');
}
