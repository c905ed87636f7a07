import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser } from '../app/browser.ts';
import { freshFolder, ROOT, thrum } from '../cli/thrum.ts';

/** Milliseconds; a busy machine takes its time to draw. */
const PATIENCE = 180_000;

const folder = freshFolder();
let html: string;
let browser: Browser;

beforeAll(async () => {
  const { status, err } = await thrum(
    'run',
    join(ROOT, 'datasets/open/penguins-study.json'),
    '--out',
    folder,
  );
  expect(status, err).toBe(0);
  html = readFileSync(join(folder, 'report.html'), 'utf8');
  browser = await openBrowser();
});
afterAll(() => browser?.close());

describe('the report of a run', () => {
  it('is one file that loads nothing', () => {
    const own = html.replace(/<script>[\s\S]*?<\/script>/g, '');
    expect(own).not.toMatch(/(?:src|href)="(?!#|data:)[^"]+"/);
    expect(own).toContain("default-src 'none'");
  });

  it(
    'draws figures as they come into sight and all of them before printing, without a fault, and asks no network',
    async () => {
      const page = await browser.newPage({ viewport: { width: 900, height: 900 } });
      const faults: string[] = [];
      const asked: string[] = [];
      page.on('pageerror', (fault) => faults.push(fault.message));
      page.on('console', (message) => {
        if (message.type() === 'error') faults.push(message.text());
      });
      page.on('request', (request) => asked.push(request.url()));
      page.setDefaultTimeout(PATIENCE);
      await page.goto(`file://${join(folder, 'report.html')}`);
      await page.waitForFunction(() => document.querySelector('[data-figure] .main-svg') !== null);
      const undrawn = await page.locator('[data-figure]:not([data-drawn])').count();
      expect(undrawn).toBeGreaterThan(0);
      await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
      await page.waitForFunction(() => {
        const places = document.querySelectorAll('[data-figure]');
        return (
          places.length > 0 && document.querySelectorAll('[data-figure] .main-svg').length >= places.length
        );
      });
      const figures = await page.locator('figure').count();
      expect(await page.locator('figure figcaption').count()).toBe(figures);
      expect(
        await page.locator('.modebar-btn[data-title*="loud"], .modebar-btn[data-title*="lotly"]').count(),
      ).toBe(0);
      expect(faults).toEqual([]);
      expect(asked.filter((url) => !/^(?:file|data|blob):/.test(url))).toEqual([]);
      await page.close();
    },
    PATIENCE,
  );

  it('shows sentence, cautions, tables, sources with hashes, and what was set aside', () => {
    const results = JSON.parse(readFileSync(join(folder, 'results.json'), 'utf8')) as {
      study: { sources: { sha256: string }[]; cautions: string[] };
      analyses: Record<string, { tables: object; sentence: string }>;
    };
    for (const [id, { tables }] of Object.entries(results.analyses)) {
      expect(html).toContain(`<section id="${id}">`);
      expect(Object.keys(tables).length).toBeGreaterThan(0);
      for (const name of Object.keys(tables))
        expect(existsSync(join(folder, 'tables', `${id}-${name}.csv`))).toBe(true);
    }
    expect(html).toContain(results.study.sources[0].sha256);
    expect(html).toContain('What was set aside');
    expect(results.study.cautions.length).toBeGreaterThan(0);
  });
});
