/**
 * Pictures of the workbench with the demo study, at 1440 and 900 px, into docs/images:
 * `npx tsx docs/scripts/screenshots.ts [screen …]`. Builds the workbench first where it is out of date.
 */
import { mkdir } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { openBrowser } from '../../tests/app/browser.ts';
import { builtApp } from '../../tests/app/built-app.ts';
import { serveFolder } from '../../tests/app/serve.ts';

const IMAGES = new URL('../images/', import.meta.url).pathname;
const PATIENCE = 180_000;

/** A screen whose answer is a figure and a sentence. */
async function drawn(page: Page): Promise<void> {
  await page.locator('.say .sentence').first().waitFor();
  // A quick preview gives way to the full answer.
  await page.getByText('A quick preview').waitFor({ state: 'hidden' });
  await page.locator('.drawing .main-svg').first().waitFor();
}

/** What each screen must have drawn before its picture is taken. */
const READY: Readonly<Record<string, (page: Page) => Promise<unknown>>> = {
  Sources: (page) => page.locator('.raw-grid .raw-cell').first().waitFor(),
  Assemblages: drawn,
  Region: drawn,
  Contrasts: drawn,
  Kinship: async (page) => {
    await drawn(page);
    await page.getByRole('radio', { name: 'Membership', exact: true }).click();
    await page.locator('.more .pick').nth(0).click();
    await page
      .locator('.more .pick')
      .nth(8)
      .click({ modifiers: ['Shift'] });
    await page.locator('.trace .pair-head').waitFor();
  },
  Placement: async (page) => {
    await page.locator('.cards .card').first().waitFor();
    await page.locator('.drawing .main-svg').first().waitFor();
    await page.locator('.cut-label').first().waitFor();
  },
  'Type rules': async (page) => {
    await page
      .getByText(/Supported: /)
      .first()
      .waitFor();
    await page.locator('.drawing .main-svg').first().waitFor();
    await page.getByRole('radio', { name: 'Map of the types' }).click();
    await page.locator('.drawing .main-svg').first().waitFor();
  },
  'Printed figures': async (page) => {
    await page.locator('.verdict', { hasText: 'c33' }).click();
    await page.locator('.trace .verdict-head').waitFor();
  },
  'Take away': (page) => page.locator('.goods li').first().waitFor(),
};

/** A table as it is copied from the page of an invented paper, with one total that is not the sum. */
const PASTED = `Table 2. Kinds of fabric by site

                 Saltmere         Drommavel        Total
Kind             n      %         n      %         n      %
tabby           12   40.0         5   25.0        17   34.0
twill           10   33.3         9   45.0        18   38.0
twining          8   26.7         6   30.0        14   28.0
Total           30  100.0        20  100.0        50  100.0
Note: items, not fragments.`;

/** The same screen from a pasted table to its verdicts. */
async function pastedTable(page: Page): Promise<void> {
  await page.getByText('Paste a printed table').click();
  await page.getByLabel('As it stands on the page, with its caption and notes').fill(PASTED);
  await page.getByRole('button', { name: 'Take this table' }).click();
  await page
    .getByText(/printed figures/)
    .first()
    .waitFor();
}

/** Screens named on the command line; all of them if none is. */
const asked = process.argv.slice(2);

await mkdir(IMAGES, { recursive: true });
const served = await serveFolder(await builtApp());
const browser = await openBrowser();
for (const width of [1440, 900]) {
  const page = await browser.newPage({ viewport: { width, height: 900 } });
  page.setDefaultTimeout(PATIENCE);
  await page.goto(served.address);
  await page.locator('h1').waitFor();
  await page.screenshot({ path: `${IMAGES}welcome-${width}.png` });
  await page.getByRole('button', { name: 'Open the demo study' }).click();
  for (const [name, ready] of Object.entries(READY).filter(
    ([own]) => asked.length === 0 || asked.includes(own),
  )) {
    await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name }).click();
    await page.mouse.move(0, 0);
    await ready(page);
    await page.waitForFunction(() => document.querySelector('.working') === null);
    await page.evaluate(() => scrollTo(0, 0));
    await page.waitForTimeout(1200);
    const file = `${IMAGES}${name.toLowerCase().replace(' ', '-')}-${width}.png`;
    await page.screenshot({ path: file, fullPage: true });
    process.stderr.write(`${file}\n`);
  }
  await page.close();
  if (asked.length > 0 && !asked.includes('Pasted table')) continue;
  const alone = await browser.newPage({ viewport: { width, height: 900 } });
  alone.setDefaultTimeout(PATIENCE);
  await alone.goto(served.address);
  await alone.locator('h1').waitFor();
  await alone
    .getByRole('navigation', { name: 'Screens' })
    .getByRole('button', { name: 'Printed figures' })
    .click();
  await pastedTable(alone);
  await alone.waitForFunction(() => document.querySelector('.working') === null);
  await alone.waitForTimeout(1200);
  await alone.screenshot({ path: `${IMAGES}pasted-table-${width}.png`, fullPage: true });
  await alone.close();
}
await browser.close();
await served.close();
