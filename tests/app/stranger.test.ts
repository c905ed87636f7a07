import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { benchForTests } from './bench.ts';

/** Five foreign tables dropped at once, as a stranger brings them: invented, in the image of the field's. */
const bench = benchForTests();

const rows = (count: number, row: (i: number) => string) =>
  Array.from({ length: count }, (_, i) => row(i)).join('\n');
const of = <T>(list: readonly T[], i: number): T => list[i % list.length] as T;
const TABLES: Readonly<Record<string, string>> = {
  'katalog.csv': `Fund-Nr.;Fundort;Bindung;Kette/cm;Schuss/cm\n${rows(14, (i) => `${i + 1};${of(['Oberwies', 'Unterwies'], i)};${of(['Leinwandbindung', 'Köper', 'Zwirnbindung'], i)};${8 + (i % 7)},5;${6 + (i % 5)}`)}\n`,
  'tissus.tsv': `N° inv.\tSite\tArmure\tChaîne/cm\tTrame/cm\n${rows(12, (i) => `V.${i}\t${of(['Aubrelle', 'Montfaux'], i)}\t${of(['toile', 'sergé'], i)}\t${9 + (i % 6)}\t${7 + (i % 4)}`)}\n`,
  'lithics.csv': `ID,Square,Raw material,Length (mm),Width (mm),Thickness (mm),Platform\n${rows(12, (i) => `L${i},B${i % 4},${of(['chert', 'quartz'], i)},${20 + 3 * i},${10 + 2 * i},${3 + (i % 4)},${of(['plain', 'cortical'], i)}`)}\n`,
  'graves.csv': `Grave,Sex,Age,Depth (cm),Coffin,Knife,Beads\n${rows(12, (i) => `${i + 1},${of(['F', 'M'], i)},${of(['adult', 'juvenile'], i)},${40 + 5 * i},${of(['Y', 'N'], i)},${i % 2},${(3 * i) % 7}`)}\n`,
  'counts.csv': 'Site,jar,bowl,lid,Total\nHolm,12,4,1,17\nPell,3,9,2,14\nVell,20,1,5,26\nTarn,6,6,3,15\n',
};

/** Clicks until nothing is asked of a table but single questions that may wait. */
async function settle(page: Page, name: string): Promise<number> {
  await page.locator('.source-way', { hasText: name }).click();
  let clicks = 1;
  const together = [
    /^Yes, of kinds of their own$/,
    /^Take the \d+ suggestions beyond doubt$/,
    /^Take all \d+ as they are$/,
  ];
  for (const answer of together) {
    const button = page.getByRole('button', { name: answer });
    if ((await button.count()) === 0) continue;
    await button.first().click();
    await button.first().waitFor({ state: 'detached' });
    clicks++;
  }
  return clicks;
}

it('A stranger comes from five foreign tables dropped at once to a map of kin in at most ten clicks a table', async () => {
  const desk = await bench.open();
  const { page } = desk;
  const files = Object.entries(TABLES).map(([name, text]) => ({
    name,
    mimeType: 'text/plain',
    buffer: Buffer.from(text),
  }));
  await page.locator('input[type=file]').setInputFiles(files);
  await page.locator('.source-way', { hasText: 'katalog.csv' }).getByText('14 rows').waitFor();
  const clicks: Record<string, number> = {};
  for (const name of Object.keys(TABLES)) clicks[name] = await settle(page, name);
  for (const [name, count] of Object.entries(clicks)) expect(count, name).toBeLessThanOrEqual(9);
  await page.getByRole('heading', { name: 'The tables side by side' }).waitFor();
  await desk.go('Kinship');
  await page.locator('.drawing .main-svg').first().waitFor();
  await expect.poll(() => page.locator('.drawing .points path').count()).toBeGreaterThan(10);
  expect(desk.errors).toEqual([]);
  await desk.close();
});
