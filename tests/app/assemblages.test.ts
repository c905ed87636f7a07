import { describe, expect, it } from 'vitest';
import { checkStudy } from '../../src/study/load.ts';
import { benchForTests } from './bench.ts';
import { type Desk, saved } from './workbench.ts';

let desk: Desk;
const show = async (view: string) => {
  await desk.page.getByRole('button', { name: /Show$/ }).click();
  await desk.page.getByRole('option', { name: view }).click();
};
benchForTests(async (opened) => {
  desk = await opened.open();
  await desk.demo();
  await desk.go('Assemblages');
});

describe('Assemblages', () => {
  it('shows what there is, when it dates to, and what is recorded where', async () => {
    const { page } = desk;
    const drawn = page.locator('.see .drawing .main-svg').first();
    await page.getByText('numbers in the bars', { exact: false }).waitFor();
    await show('When they date to');
    await page.getByText('When each dates to', { exact: false }).waitFor();
    await page.locator('.more').getByRole('radio', { name: 'Spans of time' }).waitFor();
    await show('What is recorded where');
    await page.getByText('have a value of each attribute', { exact: false }).waitFor();
    await drawn.waitFor();
    expect(desk.errors).toEqual([]);
  });

  it('sets a new site, known by its counts, on the map of places and kinds, and in the study', async () => {
    const { page } = desk;
    await show('How alike they are');
    await page.getByRole('button', { name: 'Set a new site among them' }).click();
    await page.getByLabel('Its name').fill('Trench 9');
    await page.getByLabel('balanced tabby', { exact: true }).fill('12');
    await page.getByLabel('twined', { exact: true }).fill('24');
    await page.getByLabel('coiled').fill('ten');
    await page.getByText('Type whole numbers').waitFor();
    await expect.poll(() => page.getByRole('button', { name: 'Set it among them' }).isDisabled()).toBe(true);
    await page.getByLabel('coiled').fill('10');
    await page.getByRole('button', { name: 'Set it among them' }).click();
    await page
      .locator('.say .sentence', { hasText: 'Trench 9 is equally like Quorrimel Cave and Ulvombre Terraces' })
      .waitFor();
    await page.getByRole('radio', { name: 'Map of places and kinds' }).click();
    await page.getByText('Stars: placed afterwards', { exact: false }).waitFor();
    await desk.go('Take away');
    const study = await saved(page, page.getByRole('button', { name: /^Save the study/ }));
    const alike = checkStudy(JSON.parse(study.text), study.name).analyses.find(
      ({ kind }) => kind === 'similarity',
    );
    expect(alike).toMatchObject({
      newSites: [{ label: 'Trench 9', counts: { 'balanced tabby': 12, twined: 24, coiled: 10 } }],
    });
    expect(desk.errors).toEqual([]);
  });
});
