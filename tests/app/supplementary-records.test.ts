import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import { type Bench, openBench } from './workbench.ts';

/** Generous, for machines that do much else at the same time. */
const PATIENCE = 300_000;
vi.setConfig({ testTimeout: PATIENCE, hookTimeout: PATIENCE });

let bench: Bench;
beforeAll(async () => {
  bench = await openBench();
});
afterAll(async () => {
  await bench?.close();
});

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
