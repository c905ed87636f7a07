import { describe, expect, it } from 'vitest';
import { grave } from './axe.ts';
import { benchForTests } from './bench.ts';
import type { Desk } from './workbench.ts';

let desk: Desk;
benchForTests(async (opened) => {
  desk = await opened.open();
  await desk.demo();
  await desk.go('Placement');
  await desk.page.getByRole('button', { name: 'New find' }).click();
});

const written = () => desk.page.getByRole('textbox', { name: 'As written' });
const parted = () => desk.page.locator('.ask .reading').first();
/** The field of a facet, by key or pointer; its accessible name carries its value. */
const field = (label: string) => desk.page.getByRole('button', { name: new RegExp(`${label}$`) });

describe('the structure of a find, written in one breath', () => {
  it('is parted as a cell of a table is, and only what applies to it is asked', async () => {
    const { page } = desk;
    await written().focus();
    await page.keyboard.type('Köper 2/2, kettbetont');
    await parted().getByText('read as structure: 2/2 twill · face: warp-faced').waitFor();
    await field('Face').waitFor();
    await expect.poll(() => field('Face').textContent()).toContain('warp-faced');
    await expect.poll(() => page.getByRole('combobox', { name: 'Structure' }).inputValue()).toBe('2/2 twill');
    // Rows, their slant and their engagement are told of twining.
    await field('Engagement').waitFor({ state: 'detached' });
    await page.locator('.say .sentence').waitFor();
    expect(await grave(page)).toEqual([]);
  });

  it('shows what was not used, and asks about a slip instead of taking it', async () => {
    const { page } = desk;
    await written().fill('open diagonal twning, blue, with pile');
    await parted().getByText('"blue" was not used: the word is not known').waitFor();
    await parted().getByText('"twning" is not known; it may mean "twining"').waitFor();
    await written().press('Tab');
    const means = page.getByRole('button', { name: 'It means twining' });
    await expect.poll(() => means.evaluate((element) => element === document.activeElement)).toBe(true);
    await page.keyboard.press('Enter');
    await parted().getByText('structure: twined').waitFor();
    await expect.poll(() => written().inputValue()).toBe('open diagonal twining, blue, with pile');
    await means.waitFor({ state: 'detached' });
  });

  it('fills the field of each facet, where another value goes before it until it is taken back', async () => {
    const { page } = desk;
    await written().fill('open diagonal twining with pile');
    await parted()
      .getByText('structure: twined · spacing class: open · engagement: diagonal · pile or tufts: present')
      .waitFor();
    await expect.poll(() => field('Spacing class').textContent()).toContain('open');
    await field('Spacing class').focus();
    await page.keyboard.press('Enter');
    await page.getByRole('option', { name: /^close/ }).click();
    await field('Spacing class').getByText('close').waitFor();
    await page.getByRole('button', { name: 'Spacing class as described' }).click();
    await field('Spacing class').getByText('open').waitFor();
    await page.locator('.say .sentence').waitFor();
    expect(await grave(page)).toEqual([]);
    expect(desk.errors).toEqual([]);
  });

  it('is kept in the study as it was written', async () => {
    await desk.go('Take away');
    await desk.go('Placement');
    await desk.page.getByRole('list', { name: 'Finds that are kept' }).getByText('Find 2').click();
    await expect.poll(() => written().inputValue()).toBe('open diagonal twining with pile');
  });
});
