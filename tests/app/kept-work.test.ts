import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { serve } from '../../src/cli/serve.ts';
import { servedFiles } from '../../src/cli/verbs/open.ts';
import { benchForTests } from './bench.ts';
import { builtApp } from './built-app.ts';
import { saved } from './workbench.ts';

const bench = benchForTests();

const PATIENCE = 240_000;

const HEAD = 'id,site,structure,length (mm),row spacing (mm)';
const ROWS = Array.from(
  { length: 24 },
  (_, i) => `f${i},${i % 2 ? 'Ness' : 'Holm'},${i % 3 ? 'tabby' : 'twill'},${i + 3},${5 + (i % 7)}`,
);
const TABLE = `${HEAD}\n${ROWS.join('\n')}\n`;

function studyFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'thrum-served-'));
  writeFileSync(join(folder, 'finds.csv'), TABLE);
  const study = { title: 'Small', sources: [{ file: 'finds.csv' }], analyses: [] };
  writeFileSync(join(folder, 'study.json'), JSON.stringify(study));
  return folder;
}

async function opened(
  path: string,
): Promise<{ url: string; context: BrowserContext; close: () => Promise<void> }> {
  const serving = await serve(await builtApp(), await servedFiles([path]), 0);
  const context = await bench.browser.newContext({ viewport: { width: 1440, height: 900 } });
  context.setDefaultTimeout(120_000);
  return {
    url: serving.url,
    context,
    close: async () => {
      await context.close();
      await serving.close();
    },
  };
}

const go = (page: Page, screen: string) =>
  page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: screen }).click();
const isKept = (page: Page) => page.locator('[data-kept="kept"]').waitFor({ state: 'attached' });
const heading = (page: Page, text: RegExp) => page.getByRole('heading', { level: 1, name: text }).waitFor();

describe('a served study', () => {
  it('keeps its edits, their undoing and what is being typed over a reload', {
    timeout: PATIENCE,
  }, async () => {
    const { url, context, close } = await opened(join(studyFolder(), 'study.json'));
    try {
      const page = await context.newPage();
      await page.goto(url);
      await heading(page, /./);
      await go(page, 'Take away');
      await page.getByRole('textbox', { name: 'Title', exact: true }).fill('Small, corrected');
      await page.getByRole('textbox', { name: 'Title', exact: true }).press('Tab');
      await page.getByText('1 edit on study.json').waitFor();
      await isKept(page);
      await page.reload();
      await page.getByText('1 edit on study.json').waitFor();
      await expect
        .poll(() => page.getByRole('textbox', { name: 'Title', exact: true }).inputValue())
        .toBe('Small, corrected');
      await page.getByRole('button', { name: 'Undo: change the title' }).click();
      await expect
        .poll(() => page.getByRole('textbox', { name: 'Title', exact: true }).inputValue())
        .toBe('Small');
      await go(page, 'Placement');
      const cell = page.getByLabel('Row spacing').first();
      await cell.fill('c. 7');
      await page.reload();
      await heading(page, /where does this find belong/i);
      await expect.poll(() => cell.inputValue()).toBe('c. 7');
      // The page goes in the very moment of the last letter, before the store can have answered.
      const anew = page.waitForEvent('load');
      await cell.evaluate((input: HTMLInputElement) => {
        Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(input, 'c. 7.5');
        input.dispatchEvent(new Event('input', { bubbles: true }));
        location.reload();
      });
      await anew;
      await heading(page, /where does this find belong/i);
      await expect.poll(() => cell.inputValue()).toBe('c. 7.5');
    } finally {
      await close();
    }
  });

  it('says when the file has changed since, and goes on from either', { timeout: PATIENCE }, async () => {
    const folder = studyFolder();
    const path = join(folder, 'study.json');
    const first = await servedFiles([path]);
    let now = first;
    const serving = await serve(
      await builtApp(),
      {
        study: 'study.json',
        get text() {
          return now?.text ?? '';
        },
        get files() {
          return now?.files ?? new Map();
        },
      },
      0,
    );
    const context = await bench.browser.newContext();
    context.setDefaultTimeout(120_000);
    try {
      const page = await context.newPage();
      await page.goto(serving.url);
      await go(page, 'Take away');
      await page.getByRole('textbox', { name: 'Title', exact: true }).fill('Mine');
      await page.getByRole('textbox', { name: 'Title', exact: true }).press('Tab');
      await isKept(page);
      const changed = { ...JSON.parse(readFileSync(path, 'utf8')), title: 'Theirs' };
      writeFileSync(path, JSON.stringify(changed));
      now = await servedFiles([path]);
      await page.reload();
      await page.getByText('The file on the disk has changed').waitFor();
      await expect
        .poll(() => page.getByRole('textbox', { name: 'Title', exact: true }).inputValue())
        .toBe('Mine');
      await page.getByRole('button', { name: 'Take the file' }).click();
      await expect
        .poll(() => page.getByRole('textbox', { name: 'Title', exact: true }).inputValue())
        .toBe('Theirs');
      await expect.poll(() => page.getByText('The file on the disk has changed').count()).toBe(0);
    } finally {
      await context.close();
      await serving.close();
    }
  });
});

describe('where somebody is', () => {
  it('stands in the address: Back, Forward, a reload and a link lead there', {
    timeout: PATIENCE,
  }, async () => {
    const { url, context, close } = await opened(join(studyFolder(), 'study.json'));
    try {
      const page = await context.newPage();
      await page.goto(url);
      await heading(page, /./);
      await go(page, 'Contrasts');
      await heading(page, /do these groups differ/i);
      expect(page.url()).toContain('#/contrasts');
      await page.getByText('Compare means as well').click();
      await page.waitForFunction(() => location.hash.includes('means'));
      const link = page.url();
      await go(page, 'Kinship');
      await heading(page, /akin/i);
      await page.goBack();
      await heading(page, /do these groups differ/i);
      await expect.poll(() => page.getByLabel('Compare means as well').isChecked()).toBe(true);
      await page.goBack();
      await page.waitForFunction(() => !location.hash.includes('means'));
      await page.goForward();
      await page.goForward();
      await heading(page, /akin/i);
      await page.reload();
      await heading(page, /akin/i);
      const other = await context.browser()?.newContext();
      const fresh = await other?.newPage();
      await fresh?.goto(link);
      await fresh?.getByRole('heading', { level: 1, name: /do these groups differ/i }).waitFor();
      expect(await fresh?.getByLabel('Compare means as well').isChecked()).toBe(true);
      await other?.close();
    } finally {
      await close();
    }
  });
});

describe('what was looked at', () => {
  it('can be kept with a title and a note, there and on Take away, over a reload', {
    timeout: PATIENCE,
  }, async () => {
    const { url, context, close } = await opened(join(studyFolder(), 'study.json'));
    try {
      const page = await context.newPage();
      await page.goto(url);
      await go(page, 'Contrasts');
      const bar = page.getByRole('region', { name: 'Keep what is seen' });
      await bar.waitFor();
      await bar.getByRole('button').click();
      await bar.getByLabel('Title of the finding').fill('Lengths by site');
      await bar.getByLabel('Note on the finding').fill('for chapter 3');
      await page.reload();
      await bar.waitFor();
      await expect.poll(() => bar.getByLabel('Note on the finding').inputValue()).toBe('for chapter 3');
      await bar.getByRole('button', { name: 'Keep', exact: true }).click();
      await bar.waitFor({ state: 'detached' });
      await go(page, 'Assemblages');
      await page.getByRole('region', { name: 'Keep what is seen' }).waitFor();
      await go(page, 'Take away');
      const open = page.getByRole('region', { name: 'Looked at, not kept' });
      await open.waitFor();
      await expect.poll(() => open.getByRole('listitem').count()).toBeGreaterThan(0);
      const study = await saved(page, page.getByRole('button', { name: /^Save the study as/ }));
      const [kept] = (JSON.parse(study.text) as { analyses: { title?: string; note?: string }[] }).analyses;
      expect([kept?.title, kept?.note]).toEqual(['Lengths by site', 'for chapter 3']);
      const report = await saved(page, page.getByRole('button', { name: /^Save the report as/ }));
      expect(report.text).toContain('for chapter 3');
    } finally {
      await close();
    }
  });
});

describe('two windows on one study', () => {
  it('notice each other, and neither writes over the other unasked', { timeout: PATIENCE }, async () => {
    const { url, context, close } = await opened(join(studyFolder(), 'study.json'));
    try {
      const one = await context.newPage();
      await one.goto(`${url}#/take-away`);
      const two = await context.newPage();
      await two.goto(`${url}#/take-away`);
      await one.getByText('open in another window').waitFor();
      const name = async (page: Page, title: string) => {
        await page.getByRole('textbox', { name: 'Title', exact: true }).fill(title);
        await page.getByRole('textbox', { name: 'Title', exact: true }).press('Tab');
      };
      await name(one, 'First');
      await isKept(one);
      await two.getByText('Another window has changed this study').waitFor();
      await name(two, 'Second');
      await two.reload();
      await expect
        .poll(() => two.getByRole('textbox', { name: 'Title', exact: true }).inputValue())
        .toBe('First');
      await name(one, 'Third');
      await name(two, 'Fourth');
      await two.getByText('Another window has changed this study').waitFor();
      await two.getByRole('button', { name: 'Keep what this window has' }).click();
      await isKept(two);
      await one.reload();
      await expect
        .poll(() => one.getByRole('textbox', { name: 'Title', exact: true }).inputValue())
        .toBe('Fourth');
    } finally {
      await close();
    }
  });
});
