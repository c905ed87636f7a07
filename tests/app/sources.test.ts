import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { benchForTests } from './bench.ts';

/** What an untidy table asks, answered with clicks. Invented tables; what is expected follows from their texts. */

const bench = benchForTests();

const file = (name: string, text: string) => ({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });
const bring = async (page: Page, ...files: { name: string; mimeType: string; buffer: Buffer }[]) => {
  await page.locator('input[type=file]').setInputFiles(files);
};
const kept = async (page: Page, name: string, rows: number) => {
  await page.locator('.source-way', { hasText: name }).getByText(`${rows} rows`, { exact: false }).waitFor();
};
const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ }).click();

const FIRST = file(
  'first.csv',
  'Find no.,Site,Weave,Thread count (per cm),Length (mm),Width (mm)\n' +
    'OT-1,Ottmere,tabby,14 x 12,45,30\nOT-2,,2/2 twill,16 x 14,32,28\nOT-2,,2/2 twill,15 x 14,12,8\nOT-3,Pell,tabby,10 x 9,90,70\n',
);
const SECOND = file(
  'second.csv',
  'Kat.-Nr.;Fundort;Bindung;Kette/cm;Schuss/cm;Länge (mm);Breite (mm)\nK 7;Pell;Leinwandbindung;10;9;90;70\nK 8;Pell;Köper;12;11;80;60\n',
);

describe('an unknown table', () => {
  it('is parted, filled down and freed of a repeated row by answers that can be taken back', async () => {
    const desk = await bench.open();
    const { page } = desk;
    await bring(page, FIRST);
    await page.getByRole('button', { name: 'Part them: “Thread count (per cm)”' }).click();
    await page.getByText('Density of system 1 + Density of system 2').first().waitFor();
    await page.getByRole('button', { name: 'Blanks in “Site” mean as above' }).click();
    await page.getByText('The cell means "as above"; the text above it was taken.').first().waitFor();
    await page.getByRole('button', { name: 'OT-2: The same row twice: keep the first' }).click();
    await kept(page, 'first.csv', 3);
    await page.getByText('Nothing is left to ask about this table.').waitFor();
    await undo(page);
    await kept(page, 'first.csv', 4);
    await page.getByText('stands in 2 rows. What are they?').waitFor();
    expect(desk.errors).toEqual([]);
    await desk.close();
  });

  it('asks for a unit that nothing states, and which of several pieces stands for a row', async () => {
    const desk = await bench.open();
    const { page } = desk;
    await bring(page, file('sizes.csv', 'Find no.,Maße\nA,12 x 8; 5 x 3\nB,9 x 7 x 2\nC,4 x 3\nD,6 x 5\n'));
    await page.getByRole('button', { name: 'Part them: “Maße”' }).click();
    await page.getByText('1 cell of', { exact: false }).waitFor();
    await page.getByRole('button', { name: 'Several pieces: the first' }).click();
    await page.getByText('Its numbers are taken as mm.', { exact: false }).waitFor();
    await page.getByRole('button', { name: '“Maße” is in cm' }).click();
    await page.getByText('Nothing is left to ask about this table.').waitFor();
    await page.getByText('the first is read, "12 x 8"', { exact: false }).first().waitFor();
    await undo(page);
    await page.getByText('Its numbers are taken as mm.', { exact: false }).waitFor();
    expect(desk.errors).toEqual([]);
    await desk.close();
  });

  it('asks once what rows of one table are that agree in everything', async () => {
    const rows = Array.from(
      { length: 30 },
      (_, i) =>
        `F${i},Ottmere,${100 + i},${50 + ((i * 7) % 30)},${5 + ((i * 11) % 30)},${4 + ((i * 13) % 30)}`,
    );
    const twice = [rows[3], rows[9]].map((row, i) => row?.replace(/^F\d+/, `G${i}`));
    const desk = await bench.open();
    const { page } = desk;
    await bring(
      page,
      file(
        'twice.csv',
        `Find no.,Site,Length (mm),Width (mm),Kette/cm,Schuss/cm\n${[...rows, ...twice].join('\n')}\n`,
      ),
    );
    await page.getByText('2 pairs of rows').waitFor();
    await page.getByRole('button', { name: 'G0 and F3: One find: keep F3' }).waitFor();
    await page.getByRole('button', { name: 'All 2 pairs: One find twice: keep the first row' }).click();
    await kept(page, 'twice.csv', 30);
    expect(desk.errors).toEqual([]);
    await desk.close();
  });

  it('asks whether a find was published twice, and asks again when the answer is taken back', async () => {
    const desk = await bench.open();
    const { page } = desk;
    await bring(page, FIRST, SECOND);
    await page.getByRole('button', { name: 'Part them: “Thread count (per cm)”' }).click();
    await page.locator('.source-way', { hasText: 'second.csv' }).click();
    await page.getByRole('button', { name: 'K 7 and OT-3: One find: keep first.csv' }).click();
    await page.getByText('2 rows read = 1 kept + 1 set aside').waitFor();
    await page.getByRole('button', { name: 'Decisions about rows: 1' }).click();
    await page.getByRole('button', { name: 'Ask again about K 7' }).click();
    await page.getByText('2 rows read = 2 kept + 0 set aside').waitFor();
    expect(desk.errors).toEqual([]);
    await desk.close();
  });

  it('may be a sheet of a workbook; one that cannot be read leaves the others as they are', async () => {
    const desk = await bench.open();
    const { page } = desk;
    const workbook = readFileSync(new URL('../references/workbook.xlsx', import.meta.url));
    await bring(
      page,
      FIRST,
      { name: 'lists.xlsx', mimeType: 'application/octet-stream', buffer: workbook },
      file('broken.csv', 'a,b\0\0\0\n'),
    );
    await kept(page, 'first.csv', 4);
    await page.locator('.source-way', { hasText: 'broken.csv' }).click();
    await page.getByText('this is a binary file, not a text table').waitFor();
    await page.locator('.source-way', { hasText: 'lists.xlsx' }).click();
    await page.getByRole('button', { name: 'Liste Nord' }).click();
    await page.getByText('The file: lists.xlsx, sheet Liste Nord').waitFor();
    await page.getByText('6 rows read = 3 kept + 3 set aside').waitFor();
    expect(desk.errors).toEqual([]);
    expect(desk.foreign).toEqual([]);
    await desk.close();
  });
});
