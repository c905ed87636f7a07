import { InputError } from '../errors.ts';
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

/**
 * Opens the workbooks that a study names, before it is prepared: the library that does so is loaded only
 * here, and only where there is a workbook. A file that is missing is left to the preparation to report.
 */
export async function openWorkbooks(
  { sources }: Pick<Study, 'sources'>,
  files: ReadonlyMap<string, Uint8Array>,
): Promise<Sheets> {
  const opened = new Map<string, OpenedWorkbook>();
  for (const source of sources) {
    const bytes = files.get(source.file);
    if (!isWorkbook(source.file) || bytes === undefined) continue;
    let sheets: readonly string[] = [];
    try {
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
