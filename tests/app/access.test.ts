import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { grave } from './axe.ts';
import { benchForTests } from './bench.ts';
import type { Desk } from './workbench.ts';

const bench = benchForTests();

const drawn = (page: Page) => page.locator('.drawing .main-svg').first().waitFor();
const said = (page: Page) => page.locator('.say .sentence').waitFor();

const show = async (page: Page, view: string) => {
  await page.getByRole('button', { name: /Show/ }).click();
  await page.getByRole('option', { name: view }).click();
};

/** Screen, the part of it that is looked at, and how one comes there. */
const PLACES: readonly (readonly [screen: string, part: string, reach: (page: Page) => Promise<void>])[] = [
  ['Sources', 'a table', async () => {}],
  ['Assemblages', 'what there is', drawn],
  [
    'Assemblages',
    'how alike they are',
    async (page) => {
      await show(page, 'How alike they are');
      await page.getByRole('radio', { name: 'All against all' }).waitFor();
      await drawn(page);
      await page.getByText('Set a new site among them').click();
    },
  ],
  ['Contrasts', 'points', drawn],
  ['Kinship', 'the map', drawn],
  ['Placement', 'a find', said],
  [
    'Placement',
    'a whole site',
    async (page) => {
      await page.getByRole('radio', { name: 'a whole site' }).click();
      await drawn(page);
      await said(page);
    },
  ],
  ['Printed figures', 'a list', said],
  ['Take away', 'the files', async () => {}],
];

describe('read by axe-core (WCAG 2.2 AA)', () => {
  let desk: Desk;
  beforeAll(async () => {
    desk = await bench.open();
  });
  afterAll(() => desk?.close());

  it('the first page, and a screen that waits for tables, have no serious fault', async () => {
    expect(await grave(desk.page)).toEqual([]);
    await desk.go('Kinship');
    await desk.page.getByText('bring tables first').waitFor();
    expect(await grave(desk.page)).toEqual([]);
    await desk.go('Sources');
    await desk.demo();
  });

  it.each([...PLACES])('%s, %s, has no serious fault', async (screen, _, reach) => {
    await desk.go(screen);
    await reach(desk.page);
    expect(await grave(desk.page)).toEqual([]);
  });
});

/** Goes on by Tab until the wanted control has the keyboard; every stop on the way must be seen to have it. */
async function tabTo(page: Page, role: 'button' | 'textbox' | 'combobox' | 'radio', name: string | RegExp) {
  const wanted = page.getByRole(role, { name }).first();
  await wanted.waitFor();
  for (let press = 0; press < 150; press++) {
    await page.keyboard.press('Tab');
    if (await wanted.evaluate((element) => element === document.activeElement)) {
      const ring = await page.evaluate(() => {
        const style = getComputedStyle(document.activeElement as Element);
        return style.outlineStyle === 'none' ? 0 : Number.parseFloat(style.outlineWidth);
      });
      expect(ring, `the ring around ${name}`).toBeGreaterThanOrEqual(2);
      return;
    }
  }
  throw new Error(`no way by key to ${name}`);
}

describe('by keyboard alone', () => {
  it('a find is placed: from the first page to the answer and the study that is taken away', async () => {
    const desk = await bench.open();
    const { page } = desk;
    const { keyboard } = page;
    await keyboard.press('Tab');
    await expect.poll(() => page.locator(':focus').textContent()).toContain('Go to the page');
    await tabTo(page, 'button', 'Open the demo study');
    await keyboard.press('Enter');
    await page.locator('.raw-grid .raw-cell').first().waitFor();
    // The opened page begins anew at its top, as after a click.
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());

    await tabTo(page, 'button', /^It means tabby/);
    await keyboard.press('Enter');
    await page.getByRole('button', { name: /^Undo/, disabled: false }).waitFor();

    await page.locator('.row').getByRole('button', { name: 'Sources' }).focus();
    await tabTo(page, 'button', 'Placement');
    await keyboard.press('Enter');
    await said(page);
    await tabTo(page, 'button', 'New find');
    await keyboard.press('Enter');
    await page.getByText('Give at least one attribute of the find.').waitFor();
    // A question that was taken back is not shown as being computed for ever.
    await page.locator('.working').waitFor({ state: 'detached' });
    await tabTo(page, 'combobox', /^Structure/);
    await keyboard.type('twin');
    await page.getByRole('option', { name: 'twined', exact: true }).waitFor();
    await keyboard.press('ArrowDown');
    await keyboard.press('Enter');
    await tabTo(page, 'textbox', /^Density of system 1/);
    await keyboard.type('c. 2-3');
    await page.getByText(/read as .* per cm/).waitFor();
    await page.locator('.say .sentence', { hasText: 'cannot be excluded' }).waitFor();
    await page.locator('.row').getByRole('button', { name: 'Placement' }).focus();
    await tabTo(page, 'button', 'Take away');
    await keyboard.press('Enter');
    await tabTo(page, 'button', /^Save the study/);
    const [download] = await Promise.all([page.waitForEvent('download'), keyboard.press('Enter')]);
    expect(download.suggestedFilename()).toMatch(/\.study\.json$/);
    expect(desk.errors).toEqual([]);
    await desk.close();
  });
});
