import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../../src/errors.ts';
import { writeNormalised } from '../../../src/sources/formats/normalised-table.ts';
import { readSource } from '../../../src/sources/read-source.ts';
import type { SourceReading } from '../../../src/sources/source-reading.ts';
import { bytes, lostCells, read, register } from '../support.ts';

/**
 * Bad input loses nothing: tables of every make, written out as some program or hand would, are read and
 * searched for each text that went in. No reading is compared with one of ours: the texts are the expectation.
 */

/** A text that may stand in a cell of any table here: no delimiter, quotation mark or line end in it. */
const plainText = fc.oneof(
  fc.constantFrom('12', '3,5', '1.200,5', '1,200.5', '-3', 'c. 4', 'Z', 'tabby', 'n. b.', '0', '007', 'idem'),
  fc.constantFrom('=1+1', '@SUM(A1)', '+1-1', "-2+3+cmd|' /C calc'!A0", '"quoted"', '12 x 8', 'max. 12'),
  fc.constantFrom('צמר', 'قطن ١٢', '\u202Eabc\u202C', '羊毛', 'Länge', 'é', '½', '\uFEFFx', 'a\u00A0b'),
  fc.stringMatching(/^[a-zA-Z0-9.()?<>=@+-]{1,8}$/u),
);
const cellText = plainText.map((text) => text.replace(/[",;\t|\n\r]/gu, '_'));

interface Grid {
  readonly header: readonly string[];
  readonly rows: readonly (readonly string[])[];
}
const grid = (most = 7): fc.Arbitrary<Grid> =>
  fc.integer({ min: 1, max: most }).chain((width) =>
    fc.record({
      header: fc.array(
        fc.oneof(
          fc.constantFrom('Find no.', 'Length', 'Length', 'Length (mm)', 'Site', 'Dichte', 'Maße', 'x'),
          cellText,
        ),
        { minLength: width, maxLength: width },
      ),
      rows: fc.array(fc.array(fc.option(cellText, { nil: '' }), { minLength: width, maxLength: width }), {
        minLength: 1,
        maxLength: 9,
      }),
    }),
  );

/** Texts of a grid that are found neither in the table nor in the ledger, a header or a title. */
function missing(reading: SourceReading, texts: readonly string[]): readonly string[] {
  const kept = [
    ...reading.columns.flatMap(({ header }) => header),
    ...[...reading.table.columns.values()].flatMap(({ raw }) => raw),
    ...reading.ledger.flatMap(({ raw, column }) => [raw, column]),
    ...reading.faults.map(({ what, where }) => `${what} ${where.column ?? ''}`),
    // A header cell that was joined with another, or numbered.
    ...reading.grid.slice(Math.max(0, reading.headerRow - 3), reading.headerRow).flat(),
  ].join('\n');
  return texts.filter((text) => text.trim() !== '' && !kept.includes(text.trim()));
}

const inAll = ({ header, rows }: Grid) => [...header, ...rows.flat()];
const holds = (value: Grid) => inAll(value).some((text) => text.trim() !== '');
const write = ({ header, rows }: Grid, sign: string, end: string) =>
  [header, ...rows].map((row) => row.join(sign)).join(end) + end;

function whole(reading: SourceReading, texts: readonly string[]): void {
  expect(reading.rowsRead).toBe(reading.rowsKept + reading.rowsSetAside.length);
  expect(lostCells(reading)).toEqual([]);
  expect(missing(reading, texts)).toEqual([]);
}

const ENCODERS: Readonly<Record<string, (text: string) => Uint8Array>> = {
  'utf-8': bytes,
  'utf-8 with a mark': (text) => bytes(`\uFEFF${text}`),
  'utf-16le': (text) => utf16(text, true),
  'utf-16be': (text) => utf16(text, false),
};
function utf16(text: string, little: boolean): Uint8Array {
  const view = new DataView(new ArrayBuffer(2 * text.length + 2));
  view.setUint16(0, 0xfeff, little);
  for (let i = 0; i < text.length; i++) view.setUint16(2 * i + 2, text.charCodeAt(i), little);
  return new Uint8Array(view.buffer);
}

describe('nothing is lost', () => {
  it('whatever the encoding and the line end', () => {
    fc.assert(
      fc.property(
        grid(),
        fc.constantFrom(...Object.keys(ENCODERS)),
        fc.constantFrom('\n', '\r\n', '\r'),
        (value, encoding, end) => {
          fc.pre(holds(value) && value.header.length > 1);
          const reading = readSource(ENCODERS[encoding](write(value, '\t', end)), {
            name: 'finds.csv',
            register,
            profile: { quotes: false, delimiter: '\t' },
          });
          // A mark at the very start of a file belongs to the encoding.
          whole(
            reading,
            inAll(value).map((text) => text.replaceAll('\uFEFF', '')),
          );
        },
      ),
      { numRuns: 120 },
    );
  });

  it('of bytes that mix UTF-8 and Windows-1252, the letters of either are found', () => {
    const parts = fc.array(
      fc.oneof(
        fc.constant({ text: 'Länge', bytes: bytes('Länge') }),
        fc.constant({ text: 'Lnge', bytes: Uint8Array.from([0x4c, 0xe4, 0x6e, 0x67, 0x65]) }),
        fc.constant({ text: 'tabby', bytes: bytes('tabby') }),
      ),
      { minLength: 2, maxLength: 6 },
    );
    fc.assert(
      fc.property(parts, (cells) => {
        const content = [
          ...bytes('Find no.;Note\n'),
          ...cells.flatMap((cell, i) => [...bytes(`A${i};`), ...cell.bytes, 10]),
        ];
        const reading = readSource(Uint8Array.from(content), { name: 'finds.csv', register });
        expect(reading.rowsRead).toBe(cells.length);
        const notes = [...reading.table.columns.values()].flatMap(({ raw }) => raw);
        expect(notes.filter((text) => /^L.{1,2}nge$/u.test(text)).length).toBe(
          cells.filter(({ text }) => text !== 'tabby').length,
        );
      }),
      { numRuns: 60 },
    );
  });

  it('where one column, a header alone or no row of data is all there is', () => {
    fc.assert(
      fc.property(grid(1), fc.boolean(), (value, headerOnly) => {
        const used = headerOnly ? { ...value, rows: [] } : value;
        fc.pre(holds(used));
        whole(read(write(used, ',', '\n'), { quotes: false }), inAll(used));
      }),
      { numRuns: 80 },
    );
  });

  it('under merged group headings, and above a row of units', () => {
    fc.assert(
      fc.property(
        grid(),
        fc.constantFrom('System 1', 'Maße', 'group'),
        fc.array(fc.constantFrom('mm', '(cm)', 'per cm', '[g]', ''), { minLength: 7, maxLength: 7 }),
        (value, group, units) => {
          fc.pre(holds(value) && value.header.length > 2);
          const width = value.header.length;
          const lines = [
            ['', group, ...Array.from({ length: width - 2 }, () => '')],
            value.header,
            units.slice(0, width),
            ...value.rows,
          ];
          const reading = read(`${lines.map((row) => row.join(';')).join('\n')}\n`, {
            quotes: false,
            delimiter: ';',
          });
          whole(reading, [...lines.flat()]);
        },
      ),
      { numRuns: 100 },
    );
  });

  it('where quotation marks do not pair up: each text is found, or the file is refused with its row', () => {
    const quoted = fc.array(
      fc.array(fc.constantFrom('a', '"', '"b', 'c"', '"d"', 'e""f', '""'), { minLength: 2, maxLength: 2 }),
      {
        minLength: 1,
        maxLength: 6,
      },
    );
    fc.assert(
      fc.property(quoted, (rows) => {
        const text = `Find no.,Note\n${rows.map((row) => row.join(',')).join('\n')}\n`;
        try {
          const reading = read(text);
          const letters = (all: readonly string[]) =>
            all
              .join('')
              .replace(/[^a-f]/gu, '')
              .split('')
              .sort()
              .join('');
          const kept = [...reading.grid.slice(1)].flat();
          expect(letters(kept)).toBe(letters(rows.flat()));
          expect(lostCells(reading)).toEqual([]);
        } catch (error) {
          expect(error).toBeInstanceOf(InputError);
          expect((error as InputError).message).toMatch(/row \d+: a quotation mark opens/);
        }
        whole(read(text, { quotes: false }), rows.flat());
      }),
      { numRuns: 120 },
    );
  });
});

describe('a table that is written for others', () => {
  it('starts no cell with what a spreadsheet would run, whatever was read', () => {
    fc.assert(
      fc.property(grid(), (value) => {
        fc.pre(holds(value));
        const { table } = read(write(value, '\t', '\n'), { quotes: false, delimiter: '\t' });
        const written = writeNormalised(table).csv;
        const cells = Papa.parse<string[]>(written).data.flat();
        const plainNumber = /^[-+]?(?:\d+[.,]?\d*|\.\d+)(?:e[-+]?\d+)?$/iu;
        expect(
          cells.filter((cell) => /^[=@+\t\r-]/u.test(cell) && !plainNumber.test(cell) && cell !== '-'),
        ).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });
});

describe('a decimal comma beside a thousands point', () => {
  it('is told by the column: the mark that can only be decimal decides', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1_000, max: 999_999 }), { minLength: 3, maxLength: 8 }),
        fc.constantFrom<readonly [string, string]>(['.', ','], [',', '.']),
        (values, [thousands, decimal]) => {
          const print = (value: number) =>
            `${String(Math.floor(value)).replace(/\B(?=(\d{3})+$)/gu, thousands)}${decimal}5`;
          const rows = values.map((value, i) => `A${i};${print(value)}`).join('\n');
          const reading = read(`Find no.;Length (mm)\n${rows}\n`);
          const column = reading.table.columns.get('length');
          expect(column?.kind === 'numeric' ? [...column.low] : []).toEqual(
            values.map((value) => value + 0.5),
          );
        },
      ),
      { numRuns: 60 },
    );
  });
});
