import { describe, expect, it } from 'vitest';
import { benchForTests } from './bench.ts';
import { type Desk, saved } from './workbench.ts';

let desk: Desk;
benchForTests(async (opened) => {
  desk = await opened.open();
  await desk.demo();
  await desk.go('Placement');
});

const bring = async (name: string, text: string) =>
  await desk.page
    .locator('.drop.slim input[type=file]')
    .setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });

describe('placing a table of finds', () => {
  it('answers row by row, says which columns it did not use, and hands the answers over as CSV', async () => {
    const { page } = desk;
    await bring(
      'finds.csv',
      'item,structure,row spacing (cm),density 1,zzyx\nA1,open twining,3.2,2-3,red\nA2,tabby,,12,blue\nA3,,,,\n',
    );
    await page.getByText('finds.csv:', { exact: false }).waitFor();
    await page
      .getByText('column “zzyx”', { exact: false })
      .or(page.getByText('column "zzyx"', { exact: false }))
      .waitFor();
    const table = page.getByRole('region', { name: 'The finds of the table' });
    const rows = await table.locator('tbody tr').allTextContents();
    expect(rows.length).toBeGreaterThanOrEqual(2);
    expect(rows[0]).toMatch(/^A1/);
    const csv = await saved(page, page.locator('.more').getByRole('button', { name: /CSV/ }).first());
    expect(csv.text.split(/\r?\n/)[0]).toContain('nearest');
    expect(desk.errors).toEqual([]);
  });

  it('keeps one of them among the finds of the study when its name is chosen', async () => {
    const { page } = desk;
    await page
      .getByRole('region', { name: 'The finds of the table' })
      .getByRole('button', { name: 'A2' })
      .click();
    await page.locator('.kept-finds [aria-current=true]', { hasText: 'A2' }).waitFor();
    await page.locator('.say .sentence').waitFor();
    expect(desk.errors).toEqual([]);
  });

  it('says in a sentence why a table has no finds', async () => {
    await bring('other.csv', 'zzyx,qqw\n1,2\n');
    await desk.page.getByRole('alert').getByText('no column of the finds is an attribute').waitFor();
  });
});
