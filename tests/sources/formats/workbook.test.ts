/**
 * The file is written by openpyxl 3.0.9 (tests/references/scripts/workbook.py), not by the parser under
 * test. The expected texts are what that script put in; serial days are those of ISO/IEC 29500-1, 18.17.4.1.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readWorkbook } from '../../../src/sources/formats/workbook.ts';
import { readTexts } from '../../../src/sources/read-source.ts';
import { register, termsOf } from '../support.ts';

const bytes = new Uint8Array(readFileSync(new URL('../../references/workbook.xlsx', import.meta.url)));
const read = (sheet?: string) => readWorkbook(bytes, 'workbook.xlsx', sheet);

describe('readWorkbook', () => {
  it('keeps every row where it stands, the title and the empty row included', async () => {
    const { grid, sheet } = await read('Liste Nord');
    expect(sheet).toBe('Liste Nord');
    expect(grid.map((row) => row[0])).toEqual([
      'Finds of an invented place',
      '',
      'No.',
      '007',
      '008',
      'merged',
      '',
    ]);
    expect(grid.every((row) => row.length === 8)).toBe(true);
  });

  it.each([
    ['a number', 'B4', '3.5'],
    ['a number with the noise of binary arithmetic', 'B5', '0.3'],
    ['a number shown with thousands marks', 'E5', '1234567.25'],
    ['a share shown in percent', 'E4', '45%'],
    ['an identifier typed as text', 'A4', '007'],
    ['an identifier that is a number shown with leading zeros', 'A5', '008'],
    ['a range typed as text', 'C5', '3-4'],
    ['a range that the spreadsheet took for a date, told apart as a date', 'C4', '2021-04-03'],
    ['the day after the leap day that never was', 'D5', '1900-03-01'],
    ['a yes', 'F4', 'TRUE'],
    ['a no', 'F5', 'FALSE'],
    ['a formula without a stored result', 'G4', ''],
    ['text with a comma, quotation marks', 'H4', 'c. 3-4, "open"'],
    ['text beyond ASCII', 'H5', 'über 2 cm'],
  ])('reads %s (%s) as "%s"', async (_, address, expected) => {
    const { grid } = await read('Liste Nord');
    expect(grid[Number(address.slice(1)) - 1]![address.charCodeAt(0) - 65]).toBe(expected);
  });

  it('tells which cells are merged downwards, and reading takes their text', async () => {
    expect((await read('Liste Nord')).merged).toEqual([{ row: 5, column: 0, rows: 2 }]);
    const grid = [
      ['Site', 'Find no.', 'Length (mm)'],
      ['Ottmere', '1', '35'],
      ['', '2', '40'],
      ['', '3', '12'],
    ];
    const merged = [{ row: 1, column: 0, rows: 2 }];
    const reading = readTexts(grid, { name: 'workbook.xlsx', register, merged });
    expect(termsOf(reading, 'site')).toEqual(['Ottmere', 'Ottmere', null]);
    expect(reading.ledger.find(({ rule }) => rule === 'copied-down')).toMatchObject({
      row: 3,
      column: 'Site',
      why: 'The cell is merged with the one above; its text was taken.',
    });
  });

  it('chooses a sheet by name', async () => {
    expect((await read('Liste Süd')).grid).toEqual([['No.'], ['001']]);
    expect((await read('leer')).grid).toEqual([]);
  });

  it('asks for the sheet where several hold something', async () => {
    await expect(read()).rejects.toThrow(
      'workbook.xlsx: 2 sheets hold something; name one of "Liste Nord", "Liste Süd".',
    );
  });

  it('names the sheets where the wanted one is not there', async () => {
    await expect(read('Liste')).rejects.toThrow(
      'workbook.xlsx: there is no sheet "Liste"; choose one of "Liste Nord", "Liste Süd", "leer".',
    );
  });

  it('says in one sentence that a file is no workbook', async () => {
    const csv = new TextEncoder().encode('a,b\n1,2\n');
    await expect(readWorkbook(csv, 'a.csv')).rejects.toThrow('a.csv: this is not an .xlsx file; ');
    await expect(readWorkbook(new Uint8Array(0), 'a.xlsx')).rejects.toThrow(
      'a.xlsx: this is not an .xlsx file; ',
    );
    const cut = bytes.slice(0, 200);
    await expect(readWorkbook(cut, 'a.xlsx')).rejects.toThrow('a.xlsx: the .xlsx file cannot be opened; ');
  });
});
