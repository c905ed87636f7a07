import { describe, expect, it } from 'vitest';
import { InputError } from '../../../src/errors.ts';
import { readDataPackage } from '../../../src/sources/formats/datapackage.ts';
import { checkProfile } from '../../../src/sources/profile/profile.ts';
import { readSource } from '../../../src/sources/read-source.ts';
import { bytes, lostCells, numbers, read, register, textsOf } from '../support.ts';

/** Files that break other readers: each is read rightly or refused with one sentence, and ends. */

function refusal(run: () => unknown): string {
  try {
    run();
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
  return 'not refused';
}
const readBytes = (content: Uint8Array) => readSource(content, { name: 'finds.csv', register });

describe('refused with one sentence', () => {
  it('an empty file', () => {
    expect(refusal(() => readBytes(new Uint8Array()))).toBe(
      'finds.csv: the file is empty; export the table again and check its size.',
    );
  });

  it('a file of blanks', () => {
    expect(refusal(() => read(' \n \n'))).toBe('finds.csv: the file holds no text; export the table again.');
  });

  it('a workbook, and any other binary file', () => {
    expect(refusal(() => readBytes(Uint8Array.from([0x50, 0x4b, 3, 4, 20, 0])))).toBe(
      'finds.csv: this is a spreadsheet workbook or other zip archive, not a text table; save the table as CSV first.',
    );
    expect(refusal(() => readBytes(Uint8Array.from({ length: 400 }, (_, i) => (i * 37) % 256)))).toBe(
      'finds.csv: this is a binary file, not a text table; save the table as CSV (UTF-8) first.',
    );
  });

  it('a quotation mark that is never closed', () => {
    expect(refusal(() => read('Find no.,Note,Site\nA1,"so\nA2\nA3,b\n'))).toBe(
      'finds.csv, row 2: a quotation mark opens a cell and is never closed; close it, double it if it belongs to the text, or set "quotes": false in the profile, by which 5 rows are read.',
    );
    expect(read('Find no.,Note\nA1,"so\nA2,b\n', { quotes: false }).table.rows).toBe(2);
  });

  it('fifty million characters in one line', () => {
    expect(refusal(() => read('a,'.repeat(25_000_000)))).toBe(
      'finds.csv, row 1: one line holds 50.0 million characters, so this is not a table with line ends; export the table again with one record a line.',
    );
  });

  it('a profile with an unknown attribute, an unknown key or an unknown term', () => {
    expect(refusal(() => read('a,b\n1,2\n', { columns: [{ header: 'a', attribute: 'rowSpacingg' }] }))).toBe(
      'finds.csv, column "a": the profile names the attribute "rowSpacingg", which is not known; did you mean "rowSpacing"? Otherwise name a default attribute, or define it under "attributes" in the study.',
    );
    expect(refusal(() => checkProfile({ column: [] }, 'finds.profile.json'))).toBe(
      'finds.profile.json: "column" is not known here; write "columns" if that is meant.',
    );
    expect(refusal(() => read('fibre\nx\n', { terms: { fibre: { x: 'flaxx' } } }))).toMatch(
      /^finds\.csv, terms\.fibre: the profile reads "x" as "flaxx", which is no term of "Fibre"; did you mean "flax"\?/,
    );
  });

  it('a data package that is no JSON or leads out of its folder', () => {
    expect(refusal(() => readDataPackage('{', 'datapackage.json'))).toMatch(
      /^datapackage\.json, line 1, column 2: not valid JSON/,
    );
    const escaping = JSON.stringify({ resources: [{ path: '../secret.csv' }] });
    expect(refusal(() => readDataPackage(escaping, 'datapackage.json'))).toBe(
      'datapackage.json: the path "../secret.csv" leads out of the package; put the table beside datapackage.json and name it by a relative path.',
    );
  });
});

describe('read all the same', () => {
  it('NUL characters, with a remark', () => {
    const reading = read('Find no.,Length (mm)\nA1,3\x005\nA2,12\n');
    expect([...numbers(reading, 'length').low]).toEqual([35, 12]);
    expect(reading.ledger.map(({ why }) => why)).toContain('1 NUL characters were taken out of the text.');
  });

  it('mixed line ends, with a remark; a line break inside a cell is none', () => {
    const mixed = read('Find no.,Length (mm)\r\nA1,35\nA2,12\rA3,7\n');
    expect([...numbers(mixed, 'length').low]).toEqual([35, 12, 7]);
    expect(mixed.ledger.map(({ why }) => why)).toContain(
      'The file mixes line ends; each was read as the end of a line.',
    );
    expect(
      read('Find no.,Note\r\nA1,"two\nlines"\r\nA2,one\r\n').ledger.filter(({ rule }) => rule === 'file'),
    ).toEqual([]);
  });

  it('ten thousand columns', () => {
    const header = ['Find no.', ...Array.from({ length: 9999 }, (_, i) => `measure ${i}`)];
    const rows = Array.from({ length: 5 }, (_, r) => header.map((_, c) => `${r}-${c}`));
    const reading = read([header, ...rows].map((row) => row.join(',')).join('\n'));
    expect([reading.columns.length, reading.rowsKept]).toEqual([10_000, 5]);
    expect(textsOf(reading, 'column: measure 9998')[4]).toBe('4-9999');
  });

  it('formulas and markup, as the texts they are', () => {
    const reading = read('Find no.,Note\nA1,"=cmd|\' /C calc\'!A0"\nA2,<script>alert(1)</script>\n');
    expect(reading.table.columns.get('remarks')?.raw).toEqual([
      "=cmd|' /C calc'!A0",
      '<script>alert(1)</script>',
    ]);
  });

  it('UTF-8 with a mark, UTF-16 either way, and Windows-1252, each named', () => {
    const text = 'Fund-Nr.;Länge (mm)\nA1;3,5\nA2;12\n';
    const utf16 = (little: boolean): Uint8Array => {
      const view = new DataView(new ArrayBuffer(2 * text.length + 2));
      view.setUint16(0, 0xfeff, little);
      for (let i = 0; i < text.length; i++) view.setUint16(2 * i + 2, text.charCodeAt(i), little);
      return new Uint8Array(view.buffer);
    };
    const cases: [Uint8Array, string][] = [
      [bytes(`\uFEFF${text}`), 'utf-8'],
      [utf16(true), 'utf-16le'],
      [utf16(false), 'utf-16be'],
      [Uint8Array.from(text, (letter) => letter.charCodeAt(0)), 'windows-1252'],
    ];
    for (const [content, encoding] of cases) {
      const reading = readBytes(content);
      expect(reading.dialect).toEqual({ encoding, delimiter: ';', decimal: ',' });
      expect([...numbers(reading, 'length').low]).toEqual([3.5, 12]);
    }
  });

  it('every delimiter, a declared one too, and a decimal comma in a table parted by commas', () => {
    for (const sign of [',', ';', '\t', '|']) {
      const reading = read(`${['Find no.', 'Length (mm)'].join(sign)}\n${['A1', '35'].join(sign)}\n`);
      expect([reading.dialect.delimiter, reading.table.id[0]]).toEqual([sign, 'A1']);
    }
    const declared = read('sep=;\nFind no.;Length (mm)\nA1;35\n');
    expect([declared.dialect.delimiter, declared.headerRow, [...numbers(declared, 'length').low]]).toEqual([
      ';',
      2,
      [35],
    ]);
    const quoted = read('Find no.,Length (mm)\nA1,"3,5"\nA2,"12,25"\n');
    expect([quoted.dialect.delimiter, quoted.dialect.decimal, [...numbers(quoted, 'length').low]]).toEqual([
      ',',
      ',',
      [3.5, 12.25],
    ]);
  });

  it('a quotation mark alone in a cell is a ditto mark, one or two of them', () => {
    const one = read('Find no.\tSite\tLength (mm)\nA1\tOttmere\t35\nA2\t"\t12\n');
    expect(one.table.columns.get('site')).toMatchObject({ raw: ['Ottmere', 'Ottmere'] });
    const two = read('Find no.,Site,Length (mm)\nA1,Ottmere,35\nA2,",12\nA3,",7\n');
    expect([two.table.id, [...numbers(two, 'length').low]]).toEqual([
      ['A1', 'A2', 'A3'],
      [35, 12, 7],
    ]);
    const quoted = read('Find no.,Note\nA1,", so"\nA2,b\n');
    expect(quoted.table.columns.get('remarks')?.raw).toEqual([', so', 'b']);
  });

  it('quotation marks inside cells, half a million times', () => {
    const reading = read(`Find no.,Note\n${'"a ""b""",c "d"\n'.repeat(100_000)}`);
    expect(reading.rowsRead).toBe(reading.rowsKept + reading.rowsSetAside.length);
    expect(reading.table.columns.get('fragment')?.raw[0]).toBe('a "b"');
  });

  it('a column that the profile leaves out stands in the ledger, cell by cell', () => {
    const reading = read('Find no.,Private\nA1,x\nA2,y\n', {
      columns: [{ header: 'Private', ignore: true }],
    });
    expect(reading.table.columns.has('column: Private')).toBe(false);
    expect(lostCells(reading)).toEqual([]);
  });
});
