import type { CellObject, WorkSheet } from 'xlsx';
import { InputError } from '../../errors.ts';
import { boundedArchive } from './bounded-archive.ts';

/** The cells of one sheet as text, row for row as the spreadsheet shows them. */
export interface SheetReading {
  readonly sheet: string;
  /** Names of all sheets of the file, in order. */
  readonly sheets: readonly string[];
  readonly grid: readonly (readonly string[])[];
  /** Cells that are one with cells below them; only the first of each holds the text. */
  readonly merged: readonly MergedCells[];
}

/** One column of a block of merged cells, 0 = first row and column. */
export interface MergedCells {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
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
 *   later rather than misread. Of merged cells only the first holds the text, and `merged` tells which. Formulas give their stored
 *   result and are never worked out.
 *
 * @param sheet name of the sheet; may be left out where only one sheet holds anything.
 * @throws InputError where the file is no .xlsx, has no such sheet, or the choice is open.
 */
export async function readWorkbook(bytes: Uint8Array, file: string, sheet?: string): Promise<SheetReading> {
  return (await openWorkbook(bytes, file)).read(sheet);
}

/** A workbook that was opened; its sheets are read when asked for. */
export interface Workbook {
  /** Names of all sheets, in order. */
  readonly sheets: readonly string[];
  /** Those that hold anything. */
  readonly filled: readonly string[];
  /** @throws InputError where there is no such sheet, or the choice is open. */
  readonly read: (sheet?: string) => SheetReading;
}

/** Opens an .xlsx file. @throws InputError where it is none. */
export async function openWorkbook(bytes: Uint8Array, file: string): Promise<Workbook> {
  const { read, utils, SSF } = await import('xlsx');
  // A zip archive starts so; the parser would take almost any other file for some old spreadsheet.
  if (bytes[0] !== 0x50 || bytes[1] !== 0x4b) {
    throw new InputError('this is not an .xlsx file', { file }, 'save it as .xlsx or as CSV');
  }
  const bounded = boundedArchive(bytes, file);
  const book = (() => {
    try {
      return read(bounded, { type: 'array', cellFormula: false, cellHTML: false, cellNF: true, UTC: true });
    } catch {
      throw new InputError(
        'the .xlsx file cannot be opened',
        { file },
        'open it in a spreadsheet and save it again',
      );
    }
  })();
  const sheets = book.SheetNames;
  const cells = new Map(
    sheets.map((name) => [name, cellsOf(book.Sheets[name] ?? {}, file, utils.decode_cell, SSF.is_date)]),
  );
  const filled = sheets.filter((name) => (cells.get(name)?.length ?? 0) > 0);
  return {
    sheets,
    filled,
    read: (wanted) => {
      const sheet = chosenSheet(sheets, filled, file, wanted);
      const merged = mergedDown(book.Sheets[sheet]);
      return { sheet, sheets, grid: gridOf(cells.get(sheet) ?? [], file), merged };
    },
  };
}

interface Placed {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

/** Blocks that reach over several rows, by the column that holds their text. */
function mergedDown(sheet: WorkSheet | undefined): MergedCells[] {
  return (sheet?.['!merges'] ?? [])
    .filter(({ s, e }) => e.r > s.r)
    .map(({ s, e }) => ({ row: s.r, column: s.c, rows: e.r - s.r + 1 }));
}

/** The cells that hold text; the range that a sheet claims for itself can be the whole of a million rows. */
function cellsOf(
  sheet: WorkSheet,
  file: string,
  decode: (address: string) => { r: number; c: number },
  isDate: (format: string) => boolean,
): Placed[] {
  return Object.keys(sheet).flatMap((address) => {
    if (address.startsWith('!')) return [];
    const text = cellText(sheet[address] as CellObject, isDate);
    const { r: row, c: column } = decode(address);
    if (text.length > LONGEST_CELL)
      throw new InputError(
        `the cell ${address} holds ${text.length} characters`,
        { file },
        `spreadsheets allow ${LONGEST_CELL}; save the table as CSV`,
      );
    return text === '' ? [] : [{ row, column, text }];
  });
}

/** Characters; the limit of the file format (ECMA-376, as spreadsheets apply it). */
const LONGEST_CELL = 32_767;

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
  filled: readonly string[],
  file: string,
  wanted: string | undefined,
): string {
  if (wanted !== undefined) {
    if (sheets.includes(wanted)) return wanted;
    throw new InputError(`there is no sheet "${wanted}"`, { file }, `choose one of ${listed(sheets)}`);
  }
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
      return typeof cell.v === 'object' ? cell.v.toISOString().slice(0, 10) : shown;
    case 'b':
      return cell.v ? 'TRUE' : 'FALSE';
    case 'e':
      return shown;
    default:
      return String(cell.v);
  }
}

/**
 * Serial day of the 1900 system to an ISO date. Day 60 is a 29 February that never was; so that day 1 is
 * 1 January 1900, day 61 is 1 March. Days are counted from 1 March of the year 0, by which leap days come
 * last: common practice of calendar arithmetic.
 */
function isoDate(serial: number): string {
  const day = Math.floor(serial) - (serial >= 61 ? 1 : 0);
  // 31 December 1899 is day 693 900 after 1 March of the year 0.
  const days = day + 693_900;
  const era = Math.floor(days / 146_097);
  const ofEra = days - era * 146_097;
  const year = Math.floor(
    (ofEra - Math.floor(ofEra / 1460) + Math.floor(ofEra / 36_524) - Math.floor(ofEra / 146_096)) / 365,
  );
  const ofYear = ofEra - (365 * year + Math.floor(year / 4) - Math.floor(year / 100));
  const fromMarch = Math.floor((5 * ofYear + 2) / 153);
  const month = fromMarch < 10 ? fromMarch + 3 : fromMarch - 9;
  const date = ofYear - Math.floor((153 * fromMarch + 2) / 5) + 1;
  const full = year + era * 400 + (month <= 2 ? 1 : 0);
  return `${String(full).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(date).padStart(2, '0')}`;
}
