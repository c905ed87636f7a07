import { mkdtemp, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import { beforeAll, describe, expect, it } from 'vitest';
import { thrum } from '../cli/thrum.ts';
import { benchForTests } from './bench.ts';
import { type Desk, saved } from './workbench.ts';

const DEMO = new URL('../../datasets/demo/', import.meta.url).pathname;

const bench = benchForTests();

const said = ({ page }: Desk) => page.getByRole('region', { name: 'What can be said' });
const chosen = ({ page }: Desk) => page.getByRole('region', { name: 'The chosen figure' });

async function fill(desk: Desk, printed: string, quantity: string, more: Record<string, string> = {}) {
  const { page } = desk;
  await page.getByLabel('As it is printed').fill(printed);
  await page.getByRole('button', { name: /What it is/ }).click();
  await page.getByRole('option', { name: quantity, exact: true }).click();
  for (const [label, text] of Object.entries(more)) {
    await chosen(desk).getByLabel(label, { exact: true }).fill(text);
    await page.keyboard.press('Enter');
  }
}

async function open(desk: Desk, ...files: { name: string; text: string }[]) {
  await desk.page
    .getByRole('region', { name: 'The figures of a paper' })
    .locator('input[type=file]')
    .setInputFiles(
      files.map(({ name, text }) => ({ name, mimeType: 'text/csv', buffer: Buffer.from(text) })),
    );
}

describe('Printed figures without any data', () => {
  it('are typed one by one from the first page on, and the working of the chosen one opens beside it', async () => {
    const desk = await bench.open();
    const { page } = desk;
    await page.getByRole('button', { name: 'Check printed figures' }).click();
    await page.getByRole('button', { name: 'Type a figure' }).click();
    // Brown & Heathers 2017, p. 364: a mean of 5.19 is not possible for 28 whole numbers.
    await fill(desk, '28', 'n', { Set: 'ages' });
    await page.getByRole('button', { name: 'Next figure' }).click();
    await fill(desk, '5.19', 'mean', { 'Step of the readings': '1' });
    await said(desk)
      .getByText(/1 cannot be/)
      .waitFor();
    await chosen(desk).getByText('145/28 = 5.1786 and 146/28 = 5.2143').first().waitFor();
    await chosen(desk).getByLabel('As it is printed').fill('5.18');
    await page.keyboard.press('Enter');
    await said(desk)
      .getByText(/2 agree;/)
      .waitFor();
    await page.getByRole('button', { name: /^Undo/ }).click();
    await said(desk)
      .getByText(/1 cannot be/)
      .waitFor();
    expect(desk.foreign).toEqual([]);
    expect(desk.errors).toEqual([]);
    await desk.close();
  });

  it('say what a row lacks, and the other rows are checked all the same', async () => {
    const desk = await bench.open();
    await desk.go('Printed figures');
    await open(desk, {
      name: 'paper.csv',
      text: 'id,quantity,set,select,printed\na,n,s,,12\nb,mean,s,rowSpacing > 2,4.5\nc,min,s,,5\nd,max,s,,4\n',
    });
    await said(desk)
      .getByText(/of 3 printed figures/i)
      .waitFor();
    await said(desk)
      .getByText(/What could not be read is left out/)
      .first()
      .waitFor({ state: 'attached' });
    await desk.page.locator('.verdict', { hasText: '4.5' }).click();
    await chosen(desk)
      .getByText(/Not read yet: .*use >= or <=/)
      .waitFor();
    await desk.close();
  });

  it('take whole printed tables, opened or pasted, and find the total that does not add up', async () => {
    const desk = await bench.open();
    const { page } = desk;
    await desk.go('Printed figures');
    await open(desk, {
      name: 'kinds.csv',
      text: 'site,tabby,twill,total\nA,12,7,19\nB,3,9,13\ntotal,15,16,31\n',
    });
    await said(desk)
      .getByText(/2 cannot be/)
      .waitFor();
    await page.locator('.verdict', { hasText: 'kinds: B / total' }).click();
    await chosen(desk).getByText('3 + 9 is 12', { exact: false }).first().waitFor();
    await chosen(desk).getByText('one slip, in kinds: B / total: 12 instead of 13').waitFor();
    await page.getByText('Paste a printed table').click();
    await page
      .getByLabel('As it stands on the page, with its caption and notes')
      .fill('site\tx\ty\nA\t1\t2\nB\t3\t4\n');
    await page.getByRole('button', { name: 'Take this table' }).click();
    await said(desk)
      .getByText(/Of 13 printed figures/)
      .waitFor();
    await desk.close();
  });

  it('dropped on the first page are known for claims, and the study that keeps them runs in the terminal', async () => {
    const desk = await bench.open();
    const { page } = desk;
    const text = await readFile(join(DEMO, 'claims.csv'), 'utf8');
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'claims.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
    await said(desk)
      .getByText(/Of 43 printed figures/)
      .waitFor();
    const markdown = await saved(page, page.getByRole('button', { name: /List for a letter/ }));
    await desk.go('Take away');
    const study = await saved(page, page.getByRole('button', { name: /^Save the study/ }));
    const claims = await saved(page, page.getByRole('button', { name: /Save the file claims.csv/ }));
    const folder = await mkdtemp(join(tmpdir(), 'thrum-'));
    await writeFile(join(folder, study.name), study.text);
    await writeFile(join(folder, claims.name), claims.text);
    const run = await thrum('run', join(folder, study.name), '--out', join(folder, 'out'), '--json');
    expect(run.out).toContain('Of 43 printed figures');
    const check = await thrum('check', join(folder, claims.name), '--markdown', join(folder, 'letter.md'));
    expect(check.status).toBe(1);
    expect(markdown.text).toBe(await readFile(join(folder, 'letter.md'), 'utf8'));
    await desk.close();
  });
});

describe('Printed figures of the demo’s invented paper', () => {
  let desk: Desk;
  beforeAll(async () => {
    desk = await bench.open();
    await desk.demo();
    await desk.go('Printed figures');
  });

  it('are held against the open study, each difference with its reason', async () => {
    await said(desk)
      .getByText('1 cannot be as printed, 8 differ, 33 agree and 1 cannot be checked', { exact: false })
      .waitFor();
    await desk.page.locator('.verdict', { hasText: 'c25' }).click();
    await chosen(desk).getByText('the divisor n instead of n − 1').waitFor();
    await desk.page.getByText('Recompute them from the open study’s data as well').click();
    await said(desk).getByText('held against each other', { exact: false }).waitFor();
    await desk.page.getByRole('button', { name: /^Undo/ }).click();
    await said(desk).getByText('8 differ', { exact: false }).waitFor();
  });

  it('are saved as JSON, table and page, byte for byte as the terminal writes them', async () => {
    const { page } = desk;
    const folder = await mkdtemp(join(tmpdir(), 'thrum-'));
    const [csv, html] = [join(folder, 'v.csv'), join(folder, 'v.html')];
    const check = await thrum(
      'check',
      join(DEMO, 'claims.csv'),
      '--study',
      join(DEMO, 'study.json'),
      '--json',
      '--csv',
      csv,
      '--html',
      html,
    );
    const button = (name: string) => page.getByRole('button', { name: `Save the verdicts: ${name}` });
    expect((await saved(page, button('JSON'))).text).toBe(check.out);
    expect((await saved(page, button('Table'))).text).toBe(await readFile(csv, 'utf8'));
    const own = (text: string) => text.replaceAll(/<(title|h1)>[^<]*</g, '<$1><');
    expect(own((await saved(page, button('Page with every working'))).text)).toBe(
      own(await readFile(html, 'utf8')),
    );
  });

  it('can be walked by keyboard: an arrow key opens the next one', async () => {
    const { page } = desk;
    await page.locator('.verdict', { hasText: 'c31' }).click();
    await page.keyboard.press('ArrowDown');
    await page.getByRole('region', { name: 'Working of c32' }).getByText('the two groups swapped').waitFor();
  });

  it('are free of accessibility faults that a machine can find', async () => {
    const { violations } = await new AxeBuilder({ page: desk.page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag22aa'])
      .analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    expect(desk.errors).toEqual([]);
    await desk.close();
  });
});
