import type { CellObject, WorkSheet } from 'xlsx';
import { InputError } from '../errors.ts';

/** The cells of one sheet as text, row for row as the spreadsheet shows them. */
export interface SheetReading {
  readonly sheet: string;
  /** Names of all sheets of the file, in order. */
  readonly sheets: readonly string[];
  readonly grid: readonly (readonly string[])[];
}

/**
 * Reads one sheet of an .xlsx file as a grid of text, so that it goes through the same reading as a CSV.
 *
 * - The parser is the one that danfojs-node itself reads spreadsheets with. Its own `readExcel` is not
 *   used: it takes the first row for the header, drops empty rows (so that row numbers no longer point
 *   into the sheet), turns a number shown as 007 into 7, and gives an empty frame for an unknown sheet.
 * - Text stays as typed. Numbers come with a decimal point and at most 15 significant digits, the
 *   precision that spreadsheets keep; shown leading zeros and percent signs are kept. Dates come as
 *   ISO 8601, so that a range which a spreadsheet took for a date (3-4 -> 3 April) is not understood
 *   later rather than misread. Of merged cells only the first holds the text. Formulas give their stored
 *   result and are never worked out.
 *
 * @param sheet name of the sheet; may be left out where only one sheet holds anything.
 * @throws InputError where the file is no .xlsx, has no such sheet, or the choice is open.
 */
export async function readWorkbook(bytes: Uint8Array, file: string, sheet?: string): Promise<SheetReading> {
  const { read, utils, SSF } = await import('xlsx');
  // A zip archive starts so; the parser would take almost any other file for some old spreadsheet.
  if (bytes[0] !== 0x50 || bytes[1] !== 0x4b) {
    throw new InputError('this is not an .xlsx file', { file }, 'save it as .xlsx or as CSV');
  }
  const book = (() => {
    try {
      return read(bytes, { type: 'array', cellFormula: false, cellHTML: false, cellNF: true, UTC: true });
    } catch {
      throw new InputError(
        'the .xlsx file cannot be opened',
        { file },
        'open it in a spreadsheet and save it again',
      );
    }
  })();
  const sheets = book.SheetNames;
  const decoded = (name: string) => cellsOf(book.Sheets[name] ?? {}, utils.decode_cell, SSF.is_date);
  const name = chosenSheet(sheets, (each) => decoded(each).length > 0, file, sheet);
  return { sheet: name, sheets, grid: gridOf(decoded(name), file) };
}

interface Placed {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

/** The cells that hold text; the range that a sheet claims for itself can be the whole of a million rows. */
function cellsOf(
  sheet: WorkSheet,
  decode: (address: string) => { r: number; c: number },
  isDate: (format: string) => boolean,
): Placed[] {
  return Object.keys(sheet).flatMap((address) => {
    if (address.startsWith('!')) return [];
    const text = cellText(sheet[address] as CellObject, isDate);
    const { r: row, c: column } = decode(address);
    return text === '' ? [] : [{ row, column, text }];
  });
}

const LARGEST_GRID = 20_000_000;

function gridOf(cells: readonly Placed[], file: string): string[][] {
  const rows = cells.reduce((most, { row }) => Math.max(most, row + 1), 0);
  const columns = cells.reduce((most, { column }) => Math.max(most, column + 1), 0);
  if (rows * columns > LARGEST_GRID) {
    throw new InputError(
      `the sheet spans ${rows} rows and ${columns} columns`,
      { file },
      'delete stray cells far from the table, or save the table as CSV',
    );
  }
  const grid = Array.from({ length: rows }, () => Array.from({ length: columns }, () => ''));
  for (const { row, column, text } of cells) grid[row]![column] = text;
  return grid;
}

function chosenSheet(
  sheets: readonly string[],
  holds: (sheet: string) => boolean,
  file: string,
  wanted: string | undefined,
): string {
  if (wanted !== undefined) {
    if (sheets.includes(wanted)) return wanted;
    throw new InputError(`there is no sheet "${wanted}"`, { file }, `choose one of ${listed(sheets)}`);
  }
  const filled = sheets.filter(holds);
  if (filled.length === 1) return filled[0]!;
  if (filled.length === 0)
    throw new InputError('every sheet is empty', { file }, 'bring a file that holds a table');
  throw new InputError(`${filled.length} sheets hold something`, { file }, `name one of ${listed(filled)}`);
}

function listed(sheets: readonly string[]): string {
  return sheets.map((sheet) => `"${sheet}"`).join(', ');
}

function cellText(cell: CellObject, isDate: (format: string) => boolean): string {
  if (cell.v === undefined || cell.v === null) return '';
  const shown = cell.w ?? '';
  switch (cell.t) {
    case 'n': {
      if (typeof cell.z === 'string' && isDate(cell.z)) return isoDate(Number(cell.v));
      return /^0\d|%$/.test(shown) ? shown : String(Number(Number(cell.v).toPrecision(15)));
    }
    case 'd':
      return cell.v instanceof Date ? cell.v.toISOString().slice(0, 10) : shown;
    case 'b':
      return cell.v ? 'TRUE' : 'FALSE';
    case 'e':
      return shown;
    default:
      return String(cell.v);
  }
}

/** Serial day of the 1900 system (day 60 is a 29 February that never was) to an ISO date. */
function isoDate(serial: number): string {
  const day = Math.floor(serial) - (serial >= 61 ? 1 : 0);
  return new Date(Date.UTC(1900, 0, day)).toISOString().slice(0, 10);
}
