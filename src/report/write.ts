import { access, constants, mkdir, readFile, writeFile } from 'node:fs/promises';
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
  for (const [name, text] of files) await writeOut(join(folder, name), text);
  return [...files.keys()];
}

/** Makes a folder where there is none. @throws InputError where it cannot be made or written into. */
export async function makeFolder(folder: string): Promise<void> {
  try {
    await mkdir(folder, { recursive: true });
    await access(folder, constants.W_OK);
  } catch (fault) {
    throw new InputError(
      `nothing can be written into this folder (${reasonOf(fault)})`,
      { file: folder },
      'choose another',
    );
  }
}

/** Writes a file, making its folder where there is none. @throws InputError naming the file. */
export async function writeOut(path: string, content: string | Uint8Array): Promise<void> {
  try {
    await mkdir(dirname(path), { recursive: true });
    await writeFile(path, content);
  } catch (fault) {
    throw new InputError(
      `the file cannot be written (${reasonOf(fault)})`,
      { file: path },
      'choose a place that you may write to',
    );
  }
}

const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'no permission',
  EPERM: 'no permission',
  EROFS: 'no permission',
  EEXIST: 'a file stands where a folder is meant',
  ENOTDIR: 'a file stands where a folder is meant',
  EISDIR: 'a folder stands there',
  ENOSPC: 'the disk is full',
};

function reasonOf(fault: unknown): string {
  const code = (fault as NodeJS.ErrnoException).code ?? 'unknown reason';
  return REASONS[code] ?? code;
}

async function plotlyText(): Promise<string> {
  const require = createRequire(import.meta.url);
  return readFile(require.resolve('plotly.js-dist-min/plotly.min.js'), 'utf8');
}
