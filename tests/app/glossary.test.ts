import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import { describe, expect, it } from 'vitest';
import { GLOSSARY } from '../../src/analyses/glossary.ts';
import { benchForTests } from './bench.ts';

const bench = benchForTests();

describe('what the words mean', () => {
  it.each([1440, 400])('is one press away from every page, by keyboard too (%i wide)', async (width) => {
    const desk = await bench.open(width);
    const { page } = desk;
    await page.getByRole('button', { name: /^Words/ }).focus();
    await page.keyboard.press('Enter');
    const dialog = page.getByRole('dialog', { name: 'What the words mean' });
    await dialog.waitFor();
    const words = GLOSSARY.flatMap((section) => section.words);
    expect(await dialog.locator('dt').allTextContents()).toEqual(words.map(({ word }) => word));
    expect(await dialog.locator('dd').allTextContents()).toEqual(words.map(({ meaning }) => meaning));
    const drawn = words.filter((one) => one.drawn !== undefined).map(({ word }) => word);
    expect(drawn.length).toBeGreaterThan(10);
    await dialog
      .locator('.word-schema')
      .nth(drawn.length - 1)
      .waitFor();
    const wide = await dialog
      .locator('.word-schema')
      .evaluateAll((images) => images.map((image) => (image as HTMLImageElement).naturalWidth));
    expect(wide.filter((one) => one > 0)).toHaveLength(drawn.length);
    const { violations } = await new AxeBuilder({ page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'])
      .analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    await page.screenshot({ path: join(mkdtempSync(join(tmpdir(), 'thrum-words-')), `words-${width}.png`) });
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'detached' });
    expect(desk.errors).toEqual([]);
    await desk.close();
  });
});
