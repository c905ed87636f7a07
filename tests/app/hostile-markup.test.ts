import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { freshFolder, thrum } from '../cli/thrum.ts';
import { benchForTests } from './bench.ts';

const bench = benchForTests();

/** Names that would act if any page took them for its own markup, turn the line round, or stand for a part of an object. */
const SITES = [
  `<img src=x onerror="window.acted=1">`,
  `"><script>window.acted=1</script>`,
  `</script><script>window.acted=1</script>`,
  `<a href="javascript:window.acted=1">Ness</a>`,
  '__proto__',
  'constructor',
  'Holm \u202eetirw\u202c',
  `Long ${'name '.repeat(50)}`,
];
const STRUCTURES = ['tabby', '2/2 twill', 'open twining'];
const STUDY = {
  title: `<img src=x onerror="window.acted=1"> ${SITES[6]}`,
  sources: [{ file: 'finds.csv' }],
  marks: { site: SITES },
  analyses: [
    { id: 'made', kind: 'summary', title: SITES[0], of: ['structure', 'length'], by: ['site'] },
    { id: 'differ', kind: 'contrast', title: SITES[2], of: ['length'], by: 'site' },
    { id: 'table', kind: 'crosstab', rows: 'site', columns: 'structure' },
    { id: 'alike', kind: 'similarity', assemblages: 'site', of: 'structure' },
    { id: 'groups', kind: 'grouping', of: ['structure', 'length'], method: 'medoids', k: 3 },
    { id: 'axes', kind: 'ordination', method: 'pcoa', of: ['structure', 'length'] },
    { id: 'where', kind: 'placement', find: { length: '30', structure: 'tabby' }, labels: ['site'] },
    { id: 'standing', kind: 'standing', site: SITES[0] },
  ],
};

function table(): string {
  const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`;
  const rows = SITES.flatMap((site, place) =>
    Array.from({ length: 8 }, (_, at) =>
      [
        quoted(`${site}${at}`),
        quoted(site),
        STRUCTURES[(at + place) % STRUCTURES.length],
        20 + ((at * 7 + place * 3) % 17),
        quoted(SITES[at]!),
      ].join(','),
    ),
  );
  return ['id,site,structure,length (mm),note', ...rows].join('\n');
}

async function hasActed(page: Page): Promise<unknown> {
  return page.evaluate(() => ({
    acted: 'acted' in window,
    pictures: document.querySelectorAll('img[src="x"], a[href^="javascript:"]').length,
    inherited: 'acted' in {},
  }));
}

const QUIET = { acted: false, pictures: 0, inherited: false };

describe('names and notes that are written like markup', () => {
  it('are text in the report, the brief and their live figures', async () => {
    const folder = freshFolder();
    mkdirSync(join(folder, 'study'));
    writeFileSync(join(folder, 'study', 'finds.csv'), table());
    writeFileSync(join(folder, 'study', 'study.json'), JSON.stringify(STUDY));
    const out = join(folder, 'out');
    const { status, err } = await thrum('run', join(folder, 'study', 'study.json'), '--out', out);
    expect([status, err]).toEqual([0, '']);
    const desk = await bench.open();
    const { page } = desk;
    await page.goto(`file://${join(out, 'brief.html')}`);
    expect(await hasActed(page)).toEqual(QUIET);
    await page.goto(`file://${join(out, 'report.html')}`);
    const closer = page.getByRole('button', { name: 'Look closer' });
    await closer.evaluateAll((buttons) => {
      for (const button of buttons) (button as HTMLButtonElement).click();
    });
    await expect.poll(() => closer.count(), { timeout: 60_000 }).toBe(0);
    await page.locator('.js-plotly-plot .main-svg').first().waitFor();
    expect(await hasActed(page)).toEqual(QUIET);
    const text = await page.locator('body').textContent();
    for (const site of [SITES[0]!, '__proto__', 'constructor']) expect(text).toContain(site);
    expect(desk.errors).toEqual([]);
    await desk.close();
  });

  it('are text on every screen of the workbench', async () => {
    const desk = await bench.open();
    const { page } = desk;
    const file = (name: string, text: string) => ({
      name,
      mimeType: 'text/plain',
      buffer: Buffer.from(text),
    });
    await page
      .locator('input[type=file]')
      .first()
      .setInputFiles([file('study.json', JSON.stringify(STUDY)), file('finds.csv', table())]);
    await page.locator('.raw-grid .raw-cell').first().waitFor();
    const screens = await page.getByRole('navigation', { name: 'Screens' }).getByRole('button').all();
    for (const screen of screens) {
      await screen.click();
      await page.getByRole('main').getByText('computing').first().waitFor({ state: 'detached' });
      expect(await hasActed(page), (await screen.textContent()) ?? '').toEqual(QUIET);
    }
    expect(desk.errors).toEqual([]);
    await desk.close();
  });
});
