/** The workbook is written by openpyxl (tests/references/scripts/workbook.py), not by the parser under test. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkStudy } from '../../src/study/load.ts';
import { prepareStudy } from '../../src/study/prepare.ts';
import { openWorkbooks } from '../../src/study/workbooks.ts';

const bytes = new Uint8Array(readFileSync(new URL('../references/workbook.xlsx', import.meta.url)));
const csv = new TextEncoder().encode('Find no.,Site,Structure\n1,Ottmere,tabby\n');
const files = new Map([
  ['finds.xlsx', bytes],
  ['b.csv', csv],
]);
const studyOf = (...sources: object[]) => checkStudy({ title: 'Two forms', sources }, 'study.json');

describe('a study that names a workbook', () => {
  it('reads the sheet that it names, beside a CSV', async () => {
    const study = studyOf({ file: 'finds.xlsx', sheet: 'Liste Nord' }, { file: 'b.csv' });
    const { heads, all } = prepareStudy(study, files, { sheets: await openWorkbooks(study, files) });
    expect(heads.map(({ file }) => file)).toEqual(['finds.xlsx, sheet Liste Nord', 'b.csv']);
    expect(heads.map(({ rowsRead, rowsKept }) => [rowsRead, rowsKept])).toEqual([
      [6, 3],
      [1, 1],
    ]);
    expect(all.columns.get('column: No.')?.raw).toContain('007');
  });

  it('is refused in one sentence where the sheet is open or is not there', async () => {
    const open = studyOf({ file: 'finds.xlsx' });
    const sheets = await openWorkbooks(open, files);
    expect(() => prepareStudy(open, files, { sheets })).toThrow(
      'finds.xlsx: 2 sheets hold something; name one of "Liste Nord", "Liste Süd".',
    );
    const wrong = studyOf({ file: 'finds.xlsx', sheet: 'Nord' });
    const none = await openWorkbooks(wrong, files);
    expect(() => prepareStudy(wrong, files, { sheets: none })).toThrow('there is no sheet "Nord"');
  });

  it('goes on with the other sources where it is told to, and says which could not be read', async () => {
    const study = studyOf({ file: 'finds.xlsx' }, { file: 'gone.csv' }, { file: 'b.csv' });
    const sheets = await openWorkbooks(study, files);
    const prepared = prepareStudy(study, files, { sheets, lenient: true });
    expect(prepared.all.id).toEqual(['1']);
    expect(prepared.sources.map(({ faults }) => faults.map(({ what }) => what))).toEqual([
      ['2 sheets hold something'],
      ['the file is missing'],
      [],
    ]);
    expect(() => prepareStudy(study, files, { sheets })).toThrow('2 sheets hold something');
  });
});
