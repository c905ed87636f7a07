import { InputError } from '../errors.ts';
import type { FragmentTable } from '../fragments/table.ts';
import { plainColumns } from './columns.ts';
import { loadDanfo } from './danfo.ts';
import { frameOf } from './frame.ts';

/**
 * Writes the fragment table as one sheet of an .xlsx file: identifiers as text, numbers as numbers, two
 * columns ("rowSpacing low", "rowSpacing high") where readings are intervals, an empty cell for every
 * gap and every open end. A text that begins with "=" stays text; it is not a formula.
 *
 * @param path must end in ".xlsx".
 * @throws InputError where the path has another ending or the sheet a name that spreadsheets refuse.
 */
export async function writeWorkbook(table: FragmentTable, path: string, sheet = 'Fragments'): Promise<void> {
  if (!path.endsWith('.xlsx')) {
    throw new InputError('only .xlsx can be written', { file: path }, 'end the name of the file in ".xlsx"');
  }
  if (sheet === '' || sheet.length > 31 || /[\\/?*[\]:]/.test(sheet)) {
    throw new InputError(
      `"${sheet}" cannot be the name of a sheet`,
      { file: path },
      'use 1 to 31 letters without \\ / ? * [ ] :',
    );
  }
  const danfo = await loadDanfo();
  danfo.toExcel(frameOf(danfo, plainColumns(table, 'ends'), null), { filePath: path, sheetName: sheet });
}
