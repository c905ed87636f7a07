import { describe, expect, it } from 'vitest';
import { benchForTests } from './bench.ts';

const bench = benchForTests();

const study = (parts: object) => JSON.stringify({ title: 's', ...parts });

/** File, what it holds, and the one sentence that is said of it. */
const STRANGE: readonly (readonly [name: string, text: string, said: string])[] = [
  [
    'picture.png',
    '\u0089PNG',
    'picture.png: not a table or a study; bring tables as CSV, TSV, XLSX or Parquet',
  ],
  ['empty.csv', '', 'empty.csv: the file is empty; export the table again and check its size.'],
  ['binary.csv', 'a\0b\0\0\0c', 'binary.csv: this is a binary file, not a text table; save the table as CSV'],
  ['broken.xlsx', 'no archive', 'broken.xlsx: this is not an .xlsx file; save it as .xlsx or as CSV.'],
  ['one.csv', 'Name\nA\nB\n', 'Only one column was found. If there are more, say under'],
  ['heads.csv', 'No;Site;Structure\n', 'No row of this table is a find, so there is nothing to compare.'],
  [
    'study.json',
    '{"title": "s", sources: []}',
    'study.json, line 1, column 16: not valid JSON: a name is missing; write it',
  ],
  ['study.json', study({ sources: 'a.csv' }), 'study.json, sources: '],
  [
    'study.json',
    study({ sources: [{ file: 'gone.csv' }], analyses: [] }),
    'gone.csv: the file is missing; put it beside the study file, or correct its name in the study.',
  ],
];

describe('a file that is not what was hoped for', () => {
  it.each(STRANGE)('%s (%j) is answered in one sentence', async (name, text, said) => {
    const desk = await bench.open();
    const { page } = desk;
    await page
      .locator('input[type=file]')
      .first()
      .setInputFiles({ name, mimeType: 'application/octet-stream', buffer: Buffer.from(text, 'latin1') });
    await page.getByText(said).waitFor();
    expect(await page.locator('body').textContent()).not.toMatch(/\bat \S+ \(|\.tsx?:\d|undefined|NaN/);
    expect(desk.errors).toEqual([]);
    await desk.close();
  });

  it('a study whose one analysis cannot be asked opens all the same, and says so where it is taken away', async () => {
    const desk = await bench.open();
    const { page } = desk;
    const analyses = [{ id: 'x', kind: 'sumary', of: ['rowSpacing'] }];
    await page
      .locator('input[type=file]')
      .first()
      .setInputFiles([
        {
          name: 'study.json',
          mimeType: 'application/json',
          buffer: Buffer.from(study({ sources: [{ file: 'a.csv' }], analyses })),
        },
        { name: 'a.csv', mimeType: 'text/csv', buffer: Buffer.from('No;Site\n1;Kell\n2;Orm\n') },
      ]);
    await page.locator('.raw-grid .raw-cell').first().waitFor();
    await desk.go('Take away');
    await page.getByRole('button', { name: /^Save the results/ }).click();
    await page.getByRole('alert').getByText('sumary').waitFor();
    await desk.close();
  });

  it('a table without anything to compare leads back to Sources', async () => {
    const desk = await bench.open();
    const { page } = desk;
    await page
      .locator('input[type=file]')
      .first()
      .setInputFiles({
        name: 'pots.csv',
        mimeType: 'text/csv',
        buffer: Buffer.from('No;Site;Weight (g)\n1;Kell;12\n2;Orm;13\n3;Orm;17\n'),
      });
    await page.locator('.raw-grid .raw-cell').first().waitFor();
    await desk.go('Placement');
    await page.getByText('no column is understood as one of these yet').waitFor();
    await desk.go('Kinship');
    await page.getByText('no column is understood as one of these yet').waitFor();
    await page.getByRole('button', { name: 'Go to Sources' }).click();
    await page.locator('.raw-grid .raw-cell').first().waitFor();
    await desk.close();
  });
});
