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
  await page.locator('.say .sentence').waitFor();
  await page.locator('.drawing .main-svg').first().waitFor();
}

/** What each screen must have drawn before its picture is taken. */
const READY: Readonly<Record<string, (page: Page) => Promise<unknown>>> = {
  Sources: (page) => page.locator('.raw-grid .raw-cell').first().waitFor(),
  Assemblages: drawn,
  Region: drawn,
  Contrasts: drawn,
  Kinship: async (page) => {
    await page.locator('.say .sentence').waitFor();
    await page.locator('.drawing .main-svg').first().waitFor();
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
}
await browser.close();
await served.close();
