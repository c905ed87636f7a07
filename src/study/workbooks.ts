import { InputError } from '../errors.ts';
import { readParquet } from '../sources/formats/parquet.ts';
import { openWorkbook, type SheetReading } from '../sources/formats/workbook.ts';
import type { Study } from './schema.ts';
import { sourceName } from './source-name.ts';

/** A workbook of a study: the sheets that hold anything, and the one that is read or why none is. */
export interface OpenedWorkbook {
  readonly sheets: readonly string[];
  readonly reading: SheetReading | InputError;
}

/** By the name of the source. */
export type Sheets = ReadonlyMap<string, OpenedWorkbook>;

export function isWorkbook(file: string): boolean {
  return /\.xlsx$/i.test(file);
}

export function isParquet(file: string): boolean {
  return /\.parquet$/i.test(file);
}

/** Whether a table is no text, so that a library of its own has to open it beforehand. */
export function isPacked(file: string): boolean {
  return isWorkbook(file) || isParquet(file);
}

/**
 * Opens the workbooks and Parquet files that a study names, before it is prepared: the libraries that do so are loaded
 * only here, and only where there is one. A file that is missing is left to the preparation to report.
 */
export async function openWorkbooks(
  { sources }: Pick<Study, 'sources'>,
  files: ReadonlyMap<string, Uint8Array>,
): Promise<Sheets> {
  const opened = new Map<string, OpenedWorkbook>();
  for (const source of sources) {
    const bytes = files.get(source.file);
    if (!isPacked(source.file) || bytes === undefined) continue;
    let sheets: readonly string[] = [];
    try {
      if (isParquet(source.file)) {
        opened.set(sourceName(source), { sheets, reading: await oneSheet(source, bytes) });
        continue;
      }
      const workbook = await openWorkbook(bytes, source.file);
      sheets = workbook.filled;
      opened.set(sourceName(source), { sheets, reading: workbook.read(source.sheet) });
    } catch (fault) {
      if (!(fault instanceof InputError)) throw fault;
      opened.set(sourceName(source), { sheets, reading: fault });
    }
  }
  return opened;
}

/** A Parquet file holds one table, and no sheet can be named. */
async function oneSheet(source: Study['sources'][number], bytes: Uint8Array): Promise<SheetReading> {
  if (source.sheet !== undefined)
    throw new InputError('only a workbook has sheets', { file: source.file }, 'leave "sheet" out');
  return { sheet: '', sheets: [], grid: await readParquet(bytes, source.file), merged: [] };
}
