/**
 * Files of another hand: tests/references/parquet.parquet is written by pyarrow (tests/references/scripts/parquet.py);
 * the expected texts are what that script put in. What Thrum writes itself is compared with its own table.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readParquet } from '../../../src/sources/formats/parquet.ts';
import { writeParquet } from '../../../src/sources/formats/write-parquet.ts';
import { readTexts } from '../../../src/sources/read-source.ts';
import { checkStudy } from '../../../src/study/load.ts';
import { prepareStudy } from '../../../src/study/prepare.ts';
import { openWorkbooks } from '../../../src/study/workbooks.ts';
import { read, register } from '../support.ts';

const fileOf = (name: string) =>
  new Uint8Array(readFileSync(new URL(`../../references/${name}.parquet`, import.meta.url)));

describe('a Parquet file of another hand', () => {
  it('comes as the texts that a CSV would hold', async () => {
    const grid = await readParquet(fileOf('parquet'), 'finds.parquet');
    expect(grid).toEqual([
      [
        'Find no.',
        'Site',
        'Row spacing (mm)',
        'Width (mm)',
        'Layers',
        'Seen',
        'At',
        'Worn',
        'Fibres',
        'Remarks',
      ],
      [
        '007',
        'Ottmere',
        '3.5',
        '0.1',
        '1',
        '2021-04-03',
        '2021-04-03T12:30:00.000Z',
        'TRUE',
        'wool; silk',
        '=1+1',
      ],
      ['008', 'Ottmere', '', '12.25', '2', '', '', 'FALSE', 'lime', 'über, "2"'],
      ['009', 'Ness', 'INF', '', '', '1899-12-31', '2021-04-03', '', '', "'quoted'"],
    ]);
  });

  it('is a source of a study like any other', async () => {
    const study = checkStudy({ title: 'Packed', sources: [{ file: 'finds.parquet' }] }, 'study.json');
    const files = new Map([['finds.parquet', fileOf('parquet')]]);
    const { fragments } = prepareStudy(study, files, { sheets: await openWorkbooks(study, files) });
    expect(fragments.id).toEqual(['007', '008', '009']);
    const width = fragments.columns.get('width');
    expect(width?.kind === 'numeric' && [...width.low]).toEqual([0.1, 12.25, Number.NaN]);
  });

  it('has no sheets', async () => {
    const study = checkStudy({ title: 'Packed', sources: [{ file: 'a.parquet', sheet: 'x' }] }, 'study.json');
    const files = new Map([['a.parquet', fileOf('parquet')]]);
    const sheets = await openWorkbooks(study, files);
    expect(() => prepareStudy(study, files, { sheets })).toThrow(/only a workbook has sheets/);
  });

  it.each([
    ['packed otherwise', () => fileOf('parquet-zstd'), /packed by ZSTD; save it packed by SNAPPY/],
    [
      'with records in its cells',
      () => fileOf('parquet-nested'),
      /row 2, column "Size".*neither text nor a number/,
    ],
    ['cut short', () => fileOf('parquet').slice(0, 300), /this is not a Parquet file/],
    ['with a head of nonsense', () => nonsense(), /cannot be opened/],
    ['that is a CSV', () => new TextEncoder().encode('a,b\n1,2\n3,4\n'), /this is not a Parquet file/],
  ])('%s is refused in one sentence', async (_, bytes, message) => {
    await expect(readParquet(bytes(), 'a.parquet')).rejects.toThrow(message);
  });
});

/** The marks are there, and nothing sensible between them. */
function nonsense(): Uint8Array {
  const bytes = fileOf('parquet');
  bytes.fill(0xff, 4, bytes.length - 8);
  return bytes;
}

describe('the normalised table as Parquet', () => {
  const before = read(
    'Find no.,Row spacing (mm),Structure,Note\nA1,c. 3-4,tabby ?,=SUM(A1)\nA2,>20,-,-12\nA3,"34; 36",n/a,\'x\n',
  ).table;

  it('comes back as it was: ends, states, certainty, step and texts that need no apostrophe', async () => {
    const grid = await readParquet(await writeParquet(before), 'fragments.parquet');
    const after = readTexts(grid, { name: 'fragments.parquet', register }).table;
    expect(after).toEqual(before);
    expect(grid.flat()).toContain('=SUM(A1)');
  });

  it('is the same bytes twice', async () => {
    expect(await writeParquet(before)).toEqual(await writeParquet(before));
  });
});
