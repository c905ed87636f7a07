import { readWorkbook } from '../sources/formats/workbook.ts';

/**
 * One sheet of an .xlsx file as the bytes of a CSV, ready for the reader of sources; rows keep their numbers.
 *
 * @param options.name of the file, for messages; `sheet` may be left out where only one sheet holds anything.
 * @throws InputError as readWorkbook.
 */
export async function spreadsheetToCsv(
  bytes: Uint8Array,
  options: { readonly name: string; readonly sheet?: string },
): Promise<Uint8Array> {
  const { grid } = await readWorkbook(bytes, options.name, options.sheet);
  return gridAsCsv(grid);
}

/** A grid of text as CSV (RFC 4180, UTF-8) with nothing changed: every cell is quoted. */
export function gridAsCsv(grid: readonly (readonly string[])[]): Uint8Array {
  const text = grid.map((row) => row.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(',')).join('\r\n');
  return new TextEncoder().encode(grid.length === 0 ? '' : `${text}\r\n`);
}
