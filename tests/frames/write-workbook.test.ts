import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { read } from 'xlsx';
import { writeWorkbook } from '../../src/frames/write-workbook.ts';
import { readWorkbook } from '../../src/sources/formats/workbook.ts';
import { SAMPLE } from './sample-table.ts';

const path = join(mkdtempSync(join(tmpdir(), 'thrum-workbook-')), 'fragments.xlsx');

describe('writeWorkbook', () => {
  it('writes what reading gives back: identifiers as text, both ends of ranges, gaps empty', async () => {
    await writeWorkbook(SAMPLE, path, 'Finds');
    const { grid } = await readWorkbook(new Uint8Array(readFileSync(path)), 'fragments.xlsx', 'Finds');
    expect(grid).toEqual([
      ['fragment', 'item', 'assemblage', 'width', 'rowSpacing low', 'rowSpacing high', 'structure'],
      ['001', 'A', 'Cave, upper', '10', '3', '4', 'tabby'],
      ['002', 'A', 'Cave, upper', '12.5', '35', '35', 'openTwining'],
      ['010', 'B', '', '', '', '', ''],
      ['=1+1', 'C', 'Cave, upper', '7', '20', '', 'tabby'],
    ]);
  });

  it('writes numbers as numbers and no formula, whatever a text begins with', async () => {
    await writeWorkbook(SAMPLE, path, 'Finds');
    const sheet = read(readFileSync(path), { cellFormula: true }).Sheets.Finds!;
    expect(sheet.D2).toMatchObject({ t: 'n', v: 10 });
    expect(sheet.A5).toMatchObject({ t: 's', v: '=1+1' });
    expect(Object.values(sheet).filter((cell: { f?: string }) => cell?.f !== undefined)).toEqual([]);
  });

  it('refuses another ending and names that spreadsheets refuse', async () => {
    await expect(writeWorkbook(SAMPLE, 'fragments.ods')).rejects.toThrow(
      'fragments.ods: only .xlsx can be written; end the name of the file in ".xlsx".',
    );
    await expect(writeWorkbook(SAMPLE, 'fragments.xlsx', 'a/b')).rejects.toThrow(
      '"a/b" cannot be the name of a sheet',
    );
  });
});
