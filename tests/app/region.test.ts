import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { benchForTests } from './bench.ts';

const bench = benchForTests(undefined, 'as it stands');

describe('the region', () => {
  it('draws two thread counts against each other, by panels and as a ratio, and marks a find', async () => {
    const desk = await bench.open();
    const { page } = desk;
    await desk.demo();
    await desk.go('Region');
    await page.locator('.drawing .main-svg').first().waitFor();
    const drawing = page.locator('section.drawing');
    await expect.poll(() => drawing.getAttribute('aria-label')).toContain('Star: the find.');
    await expect
      .poll(() => page.locator('.drawing .xtitle').first().textContent())
      .toBe('Density of system 1 (per cm), logarithmic');
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
    await expect.poll(() => page.locator('.drawing .xtitle').first().textContent()).toBe('Grid east (km)');
    await page.getByRole('radio', { name: 'Network', exact: true }).click();
    await expect
      .poll(() => drawing.getAttribute('aria-label'))
      .toContain('Lines: 2 pairs that lean the same way');
    await page.getByRole('button', { name: /Show/ }).first().click();
    await page.getByRole('option', { name: 'Through time' }).click();
    await expect
      .poll(() => drawing.getAttribute('aria-label'))
      .toContain('one panel a kind, in slices of 100 years');
    await expect
      .poll(() => page.locator('.parts').textContent())
      .toContain('None of five kinds is shown to come later');
    await page.getByRole('button', { name: /Which figure/ }).click();
    await page.getByRole('option', { name: 'Phases in order' }).click();
    await expect
      .poll(() => drawing.getAttribute('aria-label'))
      .toContain('in the order of time, the earliest above');
    expect(desk.foreign).toEqual([]);
    expect(page.url()).toContain('#/region?ask=');
    expect(desk.errors).toEqual([]);
    await desk.close();
  });

  it('saves a figure for print: one column or both wide, letters as outlines, 300 dots an inch', async () => {
    const desk = await bench.open();
    const { page } = desk;
    await desk.demo();
    await desk.go('Region');
    await page.locator('.drawing .main-svg').first().waitFor();
    const save = async (format: string) => {
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: `Save the figure as ${format}`, exact: true }).click(),
      ]);
      return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
    };
    const svg = await save('SVG');
    expect(svg.name).toMatch(/\.174mm\.svg$/);
    expect(svg.bytes.toString()).toMatch(/ width="174mm"/);
    expect(svg.bytes.toString()).not.toContain('<text');
    await page.getByRole('radio', { name: '84 mm', exact: true }).click();
    const png = await save('PNG');
    expect(png.name).toMatch(/\.84mm\.png$/);
    // W3C, Portable Network Graphics: width stands after the signature, length and name of the first chunk.
    expect(png.bytes.readUInt32BE(16)).toBe(Math.round((84 / 25.4) * 300));
    const density = png.bytes.indexOf('pHYs');
    expect(png.bytes.readUInt32BE(density + 4)).toBe(11811);
    expect((await save('PDF')).bytes.toString('latin1')).toMatch(/^%PDF-1\.4/);
    expect(desk.foreign).toEqual([]);
    expect(desk.errors).toEqual([]);
    await desk.close();
  });
});
