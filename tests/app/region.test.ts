import { describe, expect, it } from 'vitest';
import { benchForTests } from './bench.ts';

const bench = benchForTests();

describe('the region', () => {
  it('draws two thread counts against each other, by panels and as a ratio, and marks a find', async () => {
    const desk = await bench.open();
    const { page } = desk;
    await desk.demo();
    await desk.go('Region');
    await page.locator('.drawing .main-svg').first().waitFor();
    const drawing = page.locator('section.drawing');
    await expect.poll(() => drawing.getAttribute('aria-label')).toContain('Star: the find.');
    expect(await page.locator('.drawing .xtitle').first().textContent()).toBe(
      'Density of system 1 (per cm), logarithmic',
    );
    await page.getByLabel('The find: Density of system 1 (per cm)').fill('');
    await page.keyboard.press('Tab');
    await expect.poll(() => drawing.getAttribute('aria-label')).not.toContain('Star');
    await page.getByRole('radio', { name: 'Their ratio', exact: true }).click();
    await expect
      .poll(() => page.locator('.drawing .xtitle').first().textContent())
      .toBe('Density of system 1 / density of system 2, logarithmic');
    await page.getByRole('button', { name: /Show/ }).first().click();
    await page.getByRole('option', { name: 'Map and network of places' }).click();
    await expect.poll(() => drawing.getAttribute('aria-label')).toContain('Map of 6 places');
    expect(await page.locator('.drawing .xtitle').first().textContent()).toBe('Grid east (km)');
    await page.getByRole('radio', { name: 'Network', exact: true }).click();
    await expect
      .poll(() => drawing.getAttribute('aria-label'))
      .toContain('Lines: 2 pairs that lean the same way');
    expect(desk.foreign).toEqual([]);
    expect(page.url()).toContain('#/region?ask=');
    expect(desk.errors).toEqual([]);
    await desk.close();
  });
});
