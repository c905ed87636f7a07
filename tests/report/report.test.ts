import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { layFigure } from '../../src/report/drawing/draw-figure.ts';
import type { Results } from '../../src/study/results/results.ts';
import { sharedBrowser } from '../app/browser.ts';
import { freshFolder, ROOT, thrum } from '../cli/thrum.ts';

/** Milliseconds; a busy machine takes its time to draw. */
const PATIENCE = 180_000;

interface Plotting {
  newPlot(
    place: HTMLElement,
    data: unknown,
    layout: unknown,
  ): Promise<{ _fullLayout: Record<string, { range: unknown[]; type: string; _categories?: string[] }> }>;
  purge(place: HTMLElement): void;
}

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
  browser = await sharedBrowser();
});

describe('the report of a run', () => {
  it('is one file that loads nothing', () => {
    const own = html.replace(/<script[\s\S]*?<\/script>/g, '');
    expect(own).not.toMatch(/(?:src|href)="(?!#|data:)[^"]+"/);
    expect(own).toContain("default-src 'none'");
  });

  it(
    'brings a figure to life on request, puts the printed one back, and asks no network',
    async () => {
      const page = await browser.newPage({ viewport: { width: 1000, height: 900 } });
      const faults: string[] = [];
      const asked: string[] = [];
      page.on('pageerror', (fault) => faults.push(fault.message));
      page.on('console', (message) => {
        if (message.type() === 'error') faults.push(message.text());
      });
      page.on('request', (request) => asked.push(request.url()));
      page.setDefaultTimeout(PATIENCE);
      await page.goto(`file://${join(folder, 'report.html')}`);
      const figures = await page.locator('figure').count();
      expect(figures).toBeGreaterThan(5);
      expect(await page.locator('figure figcaption').count()).toBe(figures);
      expect(await page.locator('.alive').count()).toBe(0);
      const first = page.locator('figure').first();
      await first.getByRole('button', { name: 'Look closer' }).click();
      await first.locator('.alive .main-svg').first().waitFor();
      expect(await first.locator('.drawn > svg').isVisible()).toBe(false);
      const buttons = page.locator('.modebar-btn[data-title*="loud"], .modebar-btn[data-title*="lotly"]');
      expect(await buttons.count()).toBe(0);
      await first.getByRole('button', { name: 'As printed' }).click();
      expect(await first.locator('.drawn > svg').isVisible()).toBe(true);
      expect(await page.locator('.alive').count()).toBe(0);
      expect(faults).toEqual([]);
      expect(asked.filter((url) => !/^(?:file|data|blob):/.test(url))).toEqual([]);
      await page.close();
    },
    PATIENCE,
  );

  it(
    'draws every axis over the range that plotly gives it',
    async () => {
      const page = await browser.newPage({ viewport: { width: 1000, height: 900 } });
      page.setDefaultTimeout(PATIENCE);
      await page.goto(`file://${join(folder, 'report.html')}`);
      await page.locator('figure').first().getByRole('button', { name: 'Look closer' }).click();
      await page.locator('.alive .main-svg').first().waitFor();
      const results = JSON.parse(readFileSync(join(folder, 'results.json'), 'utf8')) as Results;
      const figures = Object.values(results.analyses).flatMap((result) => Object.values(result.figures));
      let compared = 0;
      for (const { data, layout } of figures) {
        const drawn = await page.evaluate(
          async ([traces, settings]) => {
            const { Plotly } = globalThis as unknown as { Plotly: Plotting };
            const place = document.createElement('div');
            document.body.append(place);
            const { _fullLayout } = await Plotly.newPlot(place, traces, settings);
            const axes = Object.entries(_fullLayout).filter(([key]) => /^[xy]axis\d*$/.test(key));
            const found = axes.map(([key, { range, type, _categories }]) => ({
              id: key.replace('axis', ''),
              range: range.map(Number),
              type,
              categories: _categories ?? [],
            }));
            Plotly.purge(place);
            place.remove();
            return found;
          },
          [data, layout] as const,
        );
        const { frame } = layFigure({ data, layout, caption: '' });
        for (const { id, range, type, categories } of drawn) {
          const own = frame.scales.get(id);
          if (own === undefined) continue;
          compared++;
          expect(own.kind).toBe(type === '-' ? 'linear' : type);
          if (type === 'category') expect(own.categories).toEqual(categories);
          const span = Math.abs(range[1] - range[0]);
          // Margins of the plot differ by some pixels, and with them the room that points are given.
          for (const end of [0, 1]) expect(Math.abs(own.range[end] - range[end])).toBeLessThan(span * 0.06);
        }
      }
      expect(compared).toBeGreaterThan(15);
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
      expect(html).toContain(`<section id="${id}" class="question">`);
      expect(Object.keys(tables).length).toBeGreaterThan(0);
      for (const name of Object.keys(tables))
        expect(existsSync(join(folder, 'tables', `${id}-${name}.csv`))).toBe(true);
    }
    expect(html).toContain(results.study.sources[0].sha256);
    expect(html).toContain('What was set aside');
    expect(results.study.cautions.length).toBeGreaterThan(0);
  });
});
