import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../../src/errors.ts';
import { writeNormalised } from '../../../src/sources/formats/normalised-table.ts';
import { readTexts } from '../../../src/sources/read-source.ts';
import { readNormalised } from '../../../src/sources/reading/read-normalised.ts';
import { bytes, lostCells, read, register } from '../support.ts';

/** Relations that hold for whatever table there is; no expected numbers. */

const cell = fc.oneof(
  fc.constantFrom(
    '',
    ' ',
    '3,5',
    '3-4',
    'c. 12',
    '<2',
    '14 x 12',
    'Z/S',
    '?',
    '-',
    'n/a',
    'idem',
    '"',
    'tabby',
    'Flachs',
    '1,200',
    '=1+1',
    '__proto__',
    'Note: see p. 3',
  ),
  fc.string({ maxLength: 12 }),
  fc.string({ maxLength: 8, unit: 'grapheme' }),
);
const header = fc.oneof(
  fc.constantFrom(
    'Fund-Nr.',
    'Row spacing (mm)',
    'Reihenabstand [cm]',
    'Threads per cm',
    'structure',
    'Faser',
    'site',
    'from',
    'to',
    '',
    'constructor',
    'Value',
    'measurement',
  ),
  fc.string({ maxLength: 10 }),
);
const table = fc
  .integer({ min: 1, max: 6 })
  .chain((width) =>
    fc.tuple(
      fc.array(header, { minLength: width, maxLength: width }),
      fc.array(fc.array(cell, { minLength: width, maxLength: width }), { maxLength: 12 }),
    ),
  );
const ragged = fc.array(fc.array(cell, { maxLength: 5 }), { minLength: 1, maxLength: 12 });

const holdsText = (rows: readonly (readonly string[])[]): boolean =>
  rows.some((row) => row.some((text) => text.trim() !== ''));

describe('any table of strings', () => {
  it('is read without a throw, every row kept or set aside, every text in the table or the ledger', () => {
    fc.assert(
      fc.property(table, fc.constantFrom(',', ';', '\t', '|'), ([head, rows], delimiter) => {
        const grid = [head, ...rows];
        fc.pre(holdsText(grid));
        const reading = read(Papa.unparse(grid, { delimiter, newline: '\n' }));
        expect(reading.rowsRead).toBe(reading.rowsKept + reading.rowsSetAside.length);
        expect(lostCells(reading)).toEqual([]);
        expect(new Set(reading.table.id).size).toBe(reading.table.rows);
      }),
      { numRuns: 80 },
    );
  });

  it('may be ragged, and is then a grid all the same', () => {
    fc.assert(
      fc.property(ragged, (grid) => {
        const reading = readTexts(grid, { name: 'finds.csv', register });
        expect(reading.rowsRead).toBe(reading.rowsKept + reading.rowsSetAside.length);
        expect(lostCells(reading)).toEqual([]);
      }),
      { numRuns: 80 },
    );
  });

  it('gives the same reading again with the profile that the first reading wrote', () => {
    fc.assert(
      fc.property(table, ([head, rows]) => {
        const grid = [head, ...rows];
        fc.pre(holdsText(grid));
        const text = Papa.unparse(grid, { newline: '\n' });
        const first = read(text);
        const second = read(text, JSON.parse(JSON.stringify(first.profile)));
        expect(second.table).toEqual(first.table);
        expect(second.rowsSetAside.length).toBe(first.rowsSetAside.length);
      }),
      { numRuns: 40 },
    );
  });

  it('survives writing the normalised table and reading it back', () => {
    fc.assert(
      fc.property(table, ([head, rows]) => {
        const grid = [head, ...rows];
        fc.pre(holdsText(grid));
        const { table: before } = read(Papa.unparse(grid, { newline: '\n' }));
        fc.pre(before.rows > 0);
        const after = readNormalised(bytes(writeNormalised(before).csv), 'fragments.csv', register);
        expect(after.id).toEqual(before.id);
        expect(after.item).toEqual(before.item);
        expect(after.origin).toEqual(before.origin);
        expect([...after.columns.keys()].sort()).toEqual([...before.columns.keys()].sort());
        for (const [id, column] of before.columns)
          expect({ id, ...after.columns.get(id) }).toEqual({ id, ...column });
      }),
      { numRuns: 60 },
    );
  });

  it('keeps the lower end of every interval below the upper', () => {
    fc.assert(
      fc.property(fc.array(cell, { minLength: 1, maxLength: 20 }), (cells) => {
        const reading = read(
          Papa.unparse([['Row spacing (mm)', 'id'], ...cells.map((text, i) => [text, `F${i}`])], {
            newline: '\n',
          }),
        );
        const column = reading.table.columns.get('rowSpacing');
        if (column?.kind !== 'numeric') return;
        for (let row = 0; row < column.low.length; row++) {
          expect(
            Number.isNaN(column.low[row])
              ? Number.isNaN(column.high[row])
              : column.low[row] <= column.high[row],
          ).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('any bytes', () => {
  it('are read, or refused with one sentence', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (content) => {
        try {
          const reading = read(new TextDecoder('windows-1252').decode(content));
          expect(reading.rowsRead).toBe(reading.rowsKept + reading.rowsSetAside.length);
        } catch (error) {
          expect(error).toBeInstanceOf(InputError);
        }
      }),
      { numRuns: 80 },
    );
  });
});
