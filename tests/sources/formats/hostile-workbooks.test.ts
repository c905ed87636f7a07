import { strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { utils, write } from 'xlsx';
import { ARCHIVE_LIMITS, boundedArchive } from '../../../src/sources/formats/bounded-archive.ts';
import { readWorkbook } from '../../../src/sources/formats/workbook.ts';

/** A workbook of one small sheet, and what is added to its archive or put in the place of its parts. */
function workbook(more: Readonly<Record<string, Uint8Array>> = {}): Uint8Array {
  const book = utils.book_new();
  utils.book_append_sheet(
    book,
    utils.aoa_to_sheet([
      ['id', 'length'],
      ['a', 3],
    ]),
    'Finds',
  );
  const parts = unzipSync(new Uint8Array(write(book, { type: 'array', bookType: 'xlsx' }) as ArrayBuffer));
  return zipSync({ ...parts, ...more });
}

const messageOf = (bytes: Uint8Array) =>
  readWorkbook(bytes, 'hostile.xlsx').then(
    () => 'no fault',
    (fault: Error) => fault.message,
  );

describe('a workbook that means harm', () => {
  it('does not grow beyond its limits', async () => {
    const zeros = new Uint8Array(60 * 1024 * 1024);
    expect(await messageOf(workbook({ 'xl/zeros.xml': zeros }))).toContain('unpacks to more than 60 MB');
    const many = Object.fromEntries(
      Array.from({ length: ARCHIVE_LIMITS.parts + 1 }, (_, part) => [`xl/${part}.xml`, new Uint8Array(0)]),
    );
    expect(await messageOf(workbook(many))).toContain('more than 10000 parts');
  });

  it('that says it is small when unpacked is held to what it says', () => {
    const bytes = workbook({ 'xl/zeros.xml': new Uint8Array(60 * 1024 * 1024) });
    const view = new DataView(bytes.buffer);
    // The size when unpacked stands at 24 of an entry of the central directory (APPNOTE.TXT 4.3.12).
    for (let at = 0; at + 46 < bytes.length; at++)
      if (view.getUint32(at, true) === 0x02014b50 && view.getUint32(at + 24, true) === 60 * 1024 * 1024)
        view.setUint32(at + 24, 1000, true);
    expect(boundedArchive(bytes, 'lies.xlsx').length).toBeLessThan(100_000);
  });

  it('brings no macros, objects or links to other files along', async () => {
    const bytes = workbook({
      'xl/vbaProject.bin': strToU8('macros'),
      'xl/embeddings/oleObject1.bin': strToU8('object'),
      'xl/externalLinks/externalLink1.xml': strToU8('<externalLink/>'),
      'xl/media/image1.png': strToU8('picture'),
      '../../escape.xml': strToU8('<a/>'),
    });
    const { grid } = await readWorkbook(bytes, 'macros.xlsx');
    expect(grid).toEqual([
      ['id', 'length'],
      ['a', '3'],
    ]);
    const left = Object.keys(unzipSync(boundedArchive(bytes, 'macros.xlsx')));
    expect(left.filter((name) => /\.bin|externalLinks|media/.test(name))).toEqual([]);
  });

  it('declares no entities', async () => {
    const bomb =
      '<?xml version="1.0"?><!-- x --><!DOCTYPE sst [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">]><sst>&b;</sst>';
    expect(await messageOf(workbook({ 'xl/sharedStrings.xml': strToU8(bomb) }))).toContain(
      'declares a document type',
    );
  });

  it('holds no cell longer than spreadsheets allow', async () => {
    const long = 'x'.repeat(40_000);
    const sheet = `<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData><row r="1"><c r="A1" t="inlineStr"><is><t>${long}</t></is></c></row></sheetData></worksheet>`;
    expect(await messageOf(workbook({ 'xl/worksheets/sheet1.xml': strToU8(sheet) }))).toContain(
      'the cell A1 holds 40000 characters',
    );
  });
});
