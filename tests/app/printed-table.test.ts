import { mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { thrum } from '../cli/thrum.ts';
import { benchForTests } from './bench.ts';
import { type Desk, saved } from './workbench.ts';

const bench = benchForTests();

const said = ({ page }: Desk) => page.getByRole('region', { name: 'What can be said' });
const chosen = ({ page }: Desk) => page.getByRole('region', { name: 'The chosen figure' });
const cell = (desk: Desk, name: string) => chosen(desk).getByRole('textbox', { name });

async function withTable(text: string): Promise<Desk> {
  const desk = await bench.open();
  await desk.go('Printed figures');
  await desk.page
    .getByRole('region', { name: 'The figures of a paper' })
    .locator('input[type=file]')
    .setInputFiles({ name: 'kinds.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
  await desk.page.getByRole('button', { name: 'Open the table kinds.csv' }).click();
  return desk;
}

/** What a person has to do on this page from here on: clicks and keys; a text that is pasted is neither. */
async function countedActions(page: Page): Promise<() => Promise<Record<string, number>>> {
  const counts = await page.evaluateHandle(() => {
    const made: Record<string, number> = { click: 0, keydown: 0 };
    for (const type of Object.keys(made))
      window.addEventListener(
        type,
        () => {
          made[type]++;
        },
        true,
      );
    return made;
  });
  return () => counts.jsonValue();
}

/** A table as it is copied from a page: caption, two rows of heads, blanks between the columns, a note. */
const PASTED = `Table 2. Kinds of fabric by site

                 Saltmere         Drommavel        Total
Kind             n      %         n      %         n      %
tabby           12   40.0         5   25.0        17   34.0
twill           10   33.3         9   45.0        18   38.0
twining          8   26.7         6   30.0        14   28.0
Total           30  100.0        20  100.0        50  100.0
Note: items, not fragments.`;

describe('A printed table pasted from a page', () => {
  it('comes to its first verdict after two clicks and one paste, and shows what its columns were taken for', async () => {
    const desk = await bench.open();
    const { page } = desk;
    await desk.go('Printed figures');
    const done = await countedActions(page);
    await page.getByText('Paste a printed table').click();
    await page.getByLabel('As it stands on the page, with its caption and notes').fill(PASTED);
    await page.getByRole('button', { name: 'Take this table' }).click();
    await said(desk)
      .getByText(/Of 24 printed figures/)
      .waitFor();
    await said(desk)
      .getByText(/10 \+ 9|10 and 9|is 19/)
      .first()
      .waitFor();
    expect(await done()).toEqual({ click: 2, keydown: 0 });
    const ask = page.getByRole('region', { name: 'The figures of a paper' });
    await ask.getByText(/Read as: Saltmere n: counts; Saltmere %: per cents/).waitFor();
    const axe = await new AxeBuilder({ page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'])
      .analyze();
    expect(axe.violations.map(({ id }) => id)).toEqual([]);
    await page.screenshot({
      path: join(await mkdtemp(join(tmpdir(), 'thrum-pasted-')), 'pasted-table.png'),
      fullPage: true,
    });
    await desk.close();
  });
});

describe('The cells of a printed table in the workbench', () => {
  it('are corrected, and the verdicts follow, there and back', async () => {
    const desk = await withTable('site;tabby;twill;total\nA;12;7;19\nB;3;9;13\ntotal;15;16;31\n');
    const { page } = desk;
    await said(desk)
      .getByText(/2 cannot be/)
      .waitFor();
    await cell(desk, 'B, total: cannot be').focus();
    await chosen(desk).getByText('3 + 9 is 12', { exact: false }).first().waitFor();
    await cell(desk, 'B, total: cannot be').fill('12');
    await page.keyboard.press('Enter');
    await said(desk)
      .getByText(/, 9 agree;/)
      .waitFor();
    // The cell below has the keyboard, with its new verdict in its name.
    await cell(desk, 'total, total: agrees').and(page.locator(':focus')).waitFor();
    await page.getByRole('button', { name: /^Undo: B, total/ }).click();
    await cell(desk, 'B, total: cannot be').waitFor();
    await desk.close();
  });

  it('that cannot be read say where and why, and the table stays open to be mended', async () => {
    const desk = await withTable('site,tabby,twill\nA,12,7\nB,3,9\n');
    await cell(desk, 'B, twill').fill('nine');
    await desk.page.keyboard.press('Enter');
    await chosen(desk).getByText('Not read yet: kinds: B / twill: “nine”').waitFor();
    await cell(desk, 'B, twill').fill('9');
    await desk.page.keyboard.press('Enter');
    await chosen(desk).getByText('Not read yet').waitFor({ state: 'detached' });
    await desk.close();
  });

  it('together with typed figures are saved as files of which the terminal says the same, byte for byte', async () => {
    const desk = await withTable('site,tabby,twill,total\nA,12,7,19\ntotal,12,7,19\n');
    const { page } = desk;
    await page.getByRole('button', { name: 'Add a row' }).click();
    for (const [name, text] of [
      ['label of row 4', 'Upper, "new"'],
      ['Upper, "new", tabby', '3'],
      ['Upper, "new", twill', '9'],
      ['Upper, "new", total', '13'],
    ] as const) {
      await cell(desk, name).fill(text);
      await page.keyboard.press('Enter');
    }
    await said(desk)
      .getByText(/Of 9 printed figures/)
      .waitFor();
    await page.getByRole('button', { name: 'Add a figure' }).click();
    await page.getByLabel('As it is printed').fill('31');
    await page.getByRole('button', { name: /What it is/ }).click();
    await page.getByRole('option', { name: 'n', exact: true }).click();
    await said(desk)
      .getByText(/Of 10 printed figures/)
      .waitFor();
    const verdicts = await saved(page, page.getByRole('button', { name: 'Save the verdicts: JSON' }));
    const claims = await saved(page, page.getByRole('button', { name: 'The claims themselves' }));
    await page.getByRole('button', { name: 'Open the table kinds.csv' }).click();
    const table = await saved(page, page.getByRole('button', { name: 'Save the table kinds.csv' }));
    expect([claims.name, table.name]).toEqual(['claims.csv', 'kinds.csv']);
    const folder = await mkdtemp(join(tmpdir(), 'thrum-'));
    for (const { name, text } of [claims, table]) await writeFile(join(folder, name), text);
    const check = await thrum(
      'check',
      join(folder, claims.name),
      '--table',
      join(folder, table.name),
      '--json',
    );
    expect(check.status).toBe(1);
    expect(JSON.parse(check.out).figures).toHaveLength(10);
    expect(verdicts.text).toBe(check.out);
    expect(desk.errors).toEqual([]);
    await desk.close();
  });

  it('are typed from nothing by keyboard alone, and are free of accessibility faults that a machine can find', async () => {
    const desk = await bench.open();
    const { page } = desk;
    await desk.go('Printed figures');
    await page.getByRole('button', { name: 'Type a printed table' }).focus();
    await page.keyboard.press('Enter');
    // Brown & Heathers 2017, p. 364: a mean of 5.19 is not possible for 28 whole numbers.
    await cell(desk, 'head of column 2').waitFor();
    await page.waitForFunction(
      () => document.activeElement?.getAttribute('aria-label') === 'head of column 2',
    );
    for (const text of ['n', 'mean', 'step', 'ages', '28', '5.19', '1']) {
      await page.keyboard.type(text);
      await page.keyboard.press('Tab');
    }
    await cell(desk, 'ages, mean: cannot be').focus();
    await chosen(desk).getByText('145/28 = 5.1786 and 146/28 = 5.2143').first().waitFor();
    const { violations } = await new AxeBuilder({ page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
      .analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    await desk.close();
  });
});
