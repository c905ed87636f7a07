import { expect, it } from 'vitest';
import { benchForTests } from './bench.ts';

const bench = benchForTests();

it('Kinship places the finds of a site on the axes of the others: hollow, in the legend and in the table', async () => {
  const desk = await bench.open();
  await desk.demo();
  await desk.go('Kinship');
  const { page } = desk;
  await page.locator('.drawing .main-svg').first().waitFor();
  await page.getByRole('button', { name: 'Place some finds without a say in the map' }).click();
  await page.getByRole('button', { name: /condition 1: add a term/ }).click();
  const option = page.getByRole('option').first();
  const site = ((await option.textContent()) ?? '').replace(/\d+$/, '').trim();
  await option.click();
  await page
    .getByText(/^\d[\d,]* supplementary items? placed without|supplementary items? placed without a say/)
    .waitFor();
  const names = page.locator('.drawing .legendtext');
  await names.filter({ hasText: 'supplementary' }).first().waitFor();
  await page.getByText(/Hollow: \d+ supplementary, placed without a say in the axes/).waitFor();
  await page.getByRole('button', { name: `Undo: place finds on the map without a say` }).click();
  await names.filter({ hasText: 'supplementary' }).first().waitFor({ state: 'detached' });
  expect(site).not.toBe('');
  expect(desk.errors).toEqual([]);
  await desk.close();
});

it('Kinship draws other maps, their attributes and hulls, and compares in other ways, as the study can', async () => {
  const desk = await bench.open();
  await desk.demo();
  await desk.go('Kinship');
  const { page } = desk;
  await page.locator('.drawing .main-svg').first().waitFor();
  await page.getByRole('button', { name: 'How the map is made' }).click();
  await page
    .getByRole('button', { name: /Method$/ })
    .last()
    .click();
  await page.getByRole('option', { name: /^principal components of numbers/ }).click();
  await page.getByText(/The map cannot be drawn.*compare fewer, or choose principal coordinates/).waitFor();
  await page.getByRole('button', { name: /Gaps$/ }).click();
  await page.getByRole('option', { name: 'mean' }).click();
  await page.getByRole('radio', { name: 'What the axes are made of' }).click();
  await page.getByText(/loadings of the attributes/).waitFor();
  await page.getByRole('radio', { name: 'Map', exact: true }).click();
  await page.getByRole('button', { name: /Symbols show/ }).click();
  await page.getByRole('option', { name: 'site', exact: true }).click();
  await page.locator('.check', { hasText: 'with hulls and ellipses' }).click();
  await page.getByText(/Thin outlines: convex hulls/).waitFor();
  await page.getByRole('button', { name: 'How two finds are compared' }).click();
  await page.getByLabel('Least overlap').fill('7');
  await page.getByText('Must be a number from 0 to 1.').waitFor();
  await page.getByRole('button', { name: /Skewed attributes$/ }).click();
  await page.getByRole('option', { name: /^plain/ }).click();
  await page.getByRole('button', { name: 'Undo: Skewed attributes' }).waitFor();
  await page.getByRole('button', { name: 'How much single attributes count' }).click();
  await page.getByLabel('Weight of structure', { exact: true }).fill('0');
  await page.getByLabel('Weight of structure', { exact: true }).press('Enter');
  await page.getByRole('button', { name: 'Undo: structure counts 0' }).waitFor();
  await page.getByRole('button', { name: 'More about the groups' }).click();
  await page.getByRole('button', { name: /Compare with/ }).click();
  await page.getByRole('option', { name: /^Structure/ }).click();
  await page.getByRole('radio', { name: /Agreement/ }).waitFor();
  expect(desk.errors).toEqual([]);
  await desk.close();
});
