import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { neutralise, writeCsv } from '../../../src/sources/formats/safe-csv.ts';

describe('CSV that Thrum writes (RFC 4180)', () => {
  it('reads back as it was, but for texts that a spreadsheet would run', () => {
    const cell = fc.string({ unit: 'grapheme' }).map((text) => text.replaceAll('\u0000', ''));
    const table = fc
      .integer({ min: 2, max: 4 })
      .chain((width) =>
        fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 6 }),
      );
    fc.assert(
      fc.property(table, (rows) => {
        const back = Papa.parse<string[]>(writeCsv(rows), { delimiter: ',', newline: '\r\n' }).data.slice(
          0,
          -1,
        );
        expect(back).toEqual(rows.map((row) => row.map((text) => neutralise(text))));
      }),
    );
  });

  it.each(['=1+1', '@SUM(A1)', '+cmd|calc', '-2+3', '\tx', '=cmd|"/c calc"!A0'])('disarms %j', (text) => {
    expect(writeCsv([[text]])).toContain("'");
  });

  it.each(['-', '-0.5', '+3', '-1e-7', '–', '3 - 4', 'S/Z'])('leaves %j as it is', (text) => {
    expect(writeCsv([[text]])).toBe(`${text}\r\n`);
  });
});
