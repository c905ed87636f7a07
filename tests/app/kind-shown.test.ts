import { describe, expect, it } from 'vitest';
import { benchForTests } from './bench.ts';
import type { Desk } from './workbench.ts';

let desk: Desk;
benchForTests(async (opened) => {
  desk = await opened.open();
  await desk.demo();
});

const cards = async () => {
  await desk.page.locator('.trace .card').first().waitFor();
  await desk.page
    .locator('.trace .card', { hasText: /twining|tabby|bindung/i })
    .first()
    .waitFor();
  return await desk.page.locator('.trace .card .stack > span.small:not(.soft)').allTextContents();
};

describe('a fabric is called by its kind, in the order of the trade', () => {
  it('on the cards of the nearest comparanda and on the record behind one', async () => {
    await desk.go('Placement');
    const said = await cards();
    expect(said.filter((text) => /^(open|close) twining$/.test(text)).length).toBeGreaterThan(0);
    expect(said).not.toContain('structure not recorded');
    const card = desk.page.locator('.trace .card', { hasText: /(open|close) twining/ }).first();
    await card.getByRole('button').click();
    await desk.page
      .locator('.record')
      .getByText(/^(open|close) twining$/)
      .first()
      .waitFor();
  });

  it('in the symbols of the map and in what is counted first', async () => {
    const { page } = desk;
    await page
      .getByRole('button', { name: /Symbols show/ })
      .first()
      .click();
    await page.getByRole('option', { name: /^kind of fabric/i }).click();
    await page
      .locator('.see .drawing')
      .getByText(/^open twining \(\d+\)$/)
      .first()
      .waitFor();
  });

  it('in the language of the study', async () => {
    const { page } = desk;
    await desk.go('Take away');
    await page.getByRole('button', { name: /Kinds of fabric are named in/ }).click();
    await page.getByRole('option', { name: 'German' }).click();
    await desk.go('Placement');
    await page.locator('.trace .card', { hasText: 'Zwirnbindung' }).first().waitFor();
    const said = await cards();
    expect(said.filter((text) => /^(offene|dichte) Zwirnbindung$/.test(text)).length).toBeGreaterThan(0);
    expect(said.filter((text) => / twining$/.test(text))).toEqual([]);
    expect(desk.errors).toEqual([]);
  });

  it('weights of facets can be moved where a find is placed', async () => {
    const { page } = desk;
    await page.getByRole('button', { name: 'How much single attributes count' }).click();
    const weight = page.getByRole('textbox', { name: /^Weight of row slant/ });
    await weight.fill('0');
    await weight.press('Enter');
    await page.getByRole('button', { name: /^Undo/, disabled: false }).waitFor();
    await desk.go('Take away');
    await desk.go('Placement');
    await page.getByRole('button', { name: 'How much single attributes count' }).click();
    await expect
      .poll(() => page.getByRole('textbox', { name: /^Weight of row slant/ }).inputValue())
      .toBe('0');
  });
});
