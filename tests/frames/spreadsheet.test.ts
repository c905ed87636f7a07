import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { gridAsCsv, spreadsheetToCsv } from '../../src/frames/spreadsheet.ts';

const bytes = new Uint8Array(readFileSync(new URL('../references/workbook.xlsx', import.meta.url)));

describe('spreadsheetToCsv', () => {
  it('gives the chosen sheet as CSV, identifiers with their leading zeros', async () => {
    const csv = await spreadsheetToCsv(bytes, { name: 'workbook.xlsx', sheet: 'Liste Süd' });
    expect(new TextDecoder().decode(csv)).toBe('"No."\r\n"001"\r\n');
  });
});

describe('gridAsCsv', () => {
  it('writes RFC 4180: quoted cells, doubled quotation marks, one line a row', () => {
    const text = new TextDecoder().decode(
      gridAsCsv([
        ['a', 'say "b"'],
        ['', '1,5'],
      ]),
    );
    expect(text).toBe('"a","say ""b"""\r\n"","1,5"\r\n');
  });

  it('writes nothing for an empty sheet', () => {
    expect(gridAsCsv([]).length).toBe(0);
  });
});
