import { execFileSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, relative } from 'node:path';
import { createColors } from 'picocolors';
import type { Browser, Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { printTurn } from '../../src/analyses/phrasing.ts';
import { printResults } from '../../src/cli/print-results.ts';
import { runFiles } from '../../src/report/run-files.ts';
import { loadStudy, studyFiles } from '../../src/study/load.ts';
import { prepareStudy } from '../../src/study/prepare.ts';
import type { Results } from '../../src/study/results/results.ts';
import { sharedBrowser } from '../app/browser.ts';
import { freshFolder, ROOT } from '../cli/thrum.ts';
import { demoRun } from '../demo/demo-run.ts';

/** The demo's report and brief on paper and on a screen without scripts, as Chromium lays them out. */

const PATIENCE = 300_000;
const demo = join(ROOT, 'datasets/demo');
const folder = freshFolder();
let results: Results;
let live: Map<string, string>;
let still: Map<string, string>;
let browser: Browser;

beforeAll(async () => {
  const study = loadStudy(readFileSync(join(demo, 'study.json'), 'utf8'), 'study.json');
  const files = new Map(
    studyFiles(study).map((name) => [name, new Uint8Array(readFileSync(join(demo, name)))]),
  );
  const prepared = prepareStudy(study, files);
  const run = await demoRun();
  results = run.results;
  const read = (name: string) => readFileSync(createRequire(import.meta.url).resolve(name));
  const font = read(
    '@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2',
  ).toString('base64');
  live = new Map(
    readdirSync(run.folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name))
      .map((path) => [relative(run.folder, path), readFileSync(path, 'utf8')]),
  );
  still = runFiles(prepared, results, { font });
  mkdirSync(join(folder, 'still'));
  for (const name of ['report.html', 'brief.html']) {
    writeFileSync(join(folder, name), live.get(name) ?? '');
    writeFileSync(join(folder, 'still', name), still.get(name) ?? '');
  }
  browser = await sharedBrowser();
}, PATIENCE);

const MILLIMETRE = 96 / 25.4;
/** Width of the text on A4, the narrower paper: 210 mm less the two margins of the page. */
const TEXT_WIDTH = Math.round((210 - 36) * MILLIMETRE);

async function opened(name: string, scripts = true): Promise<Page> {
  const context = await browser.newContext({
    javaScriptEnabled: scripts,
    viewport: { width: 1100, height: 900 },
  });
  const page = await context.newPage();
  page.setDefaultTimeout(PATIENCE);
  await page.goto(`file://${join(folder, name)}`);
  return page;
}

async function printed(name: string, format: 'A4' | 'Letter'): Promise<number> {
  const page = await opened(name);
  const pdf = await page.pdf({ format });
  await page.context().close();
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
}

describe('the demo in the terminal', () => {
  const lines = (detail: 'brief' | 'full') => {
    let text = '';
    const quiet = () => undefined;
    const colour = createColors(false);
    const out = (more: string) => {
      text += more;
    };
    printResults({ out, err: quiet, width: 100, colour, progress: quiet, endProgress: quiet }, results, {
      detail,
      report: 'out/report.html',
    });
    return text.split('\n');
  };

  it('takes at most 130 lines of 100 columns, with every answer whole; in full it says all', () => {
    const brief = lines('brief');
    expect(brief.length).toBeLessThanOrEqual(130);
    expect(Math.max(...brief.map((line) => line.length))).toBeLessThanOrEqual(100);
    const told = brief.join(' ').replace(/\s+/g, ' ');
    const all = lines('full').join(' ').replace(/\s+/g, ' ');
    for (const [id, { words }] of Object.entries(results.analyses)) {
      expect(told).toContain(words.answer);
      expect(told).toContain(`#${id})`);
      for (const line of [
        words.answer,
        ...words.because,
        ...words.unless.map(printTurn),
        ...(words.next ?? []),
      ])
        expect(all).toContain(line);
    }
  });
});

describe('the report of the demo on paper', () => {
  it.each([
    ['A4', 23],
    ['Letter', 24],
  ] as const)(
    'leaves room on paper of %s: at most %d pages',
    async (format, most) => {
      const pages = await printed('report.html', format);
      expect(pages).toBeGreaterThan(8);
      expect(pages).toBeLessThanOrEqual(most);
    },
    PATIENCE,
  );

  it.each([false, true])(
    'cuts no table, figure or letter at the margin of A4 (all unfolded: %s)',
    async (unfolded) => {
      const page = await opened('report.html');
      await page.emulateMedia({ media: 'print' });
      await page.setViewportSize({ width: TEXT_WIDTH, height: 1000 });
      const outside = await page.evaluate((open) => {
        for (const one of document.querySelectorAll('details')) one.open = open;
        const edge = document.body.getBoundingClientRect().right + 1;
        const name = (one: Element) => `${one.tagName} ${one.textContent?.trim().slice(0, 60)}`;
        const wide = [...document.querySelectorAll('table, figure, svg, p, li, pre, h2')].filter(
          (one) => one.getBoundingClientRect().right > edge,
        );
        const cut = [...document.querySelectorAll('figure svg')].flatMap((svg) => {
          const box = svg.getBoundingClientRect();
          return [...svg.querySelectorAll('text')].filter((text) => {
            const own = text.getBoundingClientRect();
            return (
              own.left < box.left - 2 ||
              own.right > box.right + 2 ||
              own.top < box.top - 3 ||
              own.bottom > box.bottom + 3
            );
          });
        });
        return {
          tables: document.querySelectorAll('table').length,
          wide: wide.map(name),
          cut: cut.map(name),
        };
      }, unfolded);
      await page.context().close();
      expect(outside.tables).toBeGreaterThan(50);
      expect(outside.wide).toEqual([]);
      expect(outside.cut).toEqual([]);
    },
    PATIENCE,
  );

  it('is under 3 MB with one copy of the plotting code, and under 1.5 MB without', () => {
    const [whole, plain] = [live.get('report.html') ?? '', still.get('report.html') ?? ''];
    expect(Buffer.byteLength(whole)).toBeLessThan(3_000_000);
    expect(whole.split('id="plotting"')).toHaveLength(2);
    expect(Buffer.byteLength(plain)).toBeLessThan(1_500_000);
    expect(plain).not.toContain('<script');
  });
});

describe('the report of the demo', () => {
  it('numbers figures and tables through, cites each, and lists each with its file', () => {
    const html = still.get('report.html') ?? '';
    const numbers = (word: string) =>
      [...html.matchAll(new RegExp(`<b>${word} (\\d+)\\.</b>`, 'g'))].map(([, number]) => Number(number));
    const figures = Object.values(results.analyses).flatMap((result) => Object.keys(result.figures));
    expect(numbers('Figure')).toEqual(figures.map((_, at) => at + 1));
    const tables = Object.entries(results.analyses).flatMap(([id, result]) =>
      Object.entries(result.tables).flatMap(([name, { rows }]) => (rows.length > 0 ? [`${id}-${name}`] : [])),
    );
    expect([...new Set(numbers('Table'))].sort((a, b) => a - b)).toEqual(tables.map((_, at) => at + 1));
    const listed = html.slice(html.indexOf('id="listed"'));
    for (const file of tables) {
      expect(listed).toContain(`: ${file}.csv</li>`);
      expect(live.has(`tables/${file}.csv`)).toBe(true);
    }
    for (const [id] of Object.entries(results.analyses)) {
      const section = html.slice(html.indexOf(`<section id="${id}"`)).split('</section>')[0];
      expect(section, id).toMatch(/<p class="cited">Shown in <a href="#(?:figure|table)-/);
    }
  });

  it(
    'is read with scripts off: every figure is drawn, every link leads somewhere',
    async () => {
      const page = await opened('report.html', false);
      const figures = await page.locator('figure').count();
      expect(figures).toBeGreaterThan(20);
      expect(await page.locator('figure svg').count()).toBe(figures);
      const html = live.get('report.html') ?? '';
      const dead = [...html.matchAll(/href="#([^"]+)"/g)].filter(([, to]) => !html.includes(`id="${to}"`));
      expect(dead.map(([link]) => link)).toEqual([]);
      await page.context().close();
    },
    PATIENCE,
  );

  it(
    'draws its figures as valid SVG that asks nothing from outside',
    () => {
      const drawings = (still.get('report.html') ?? '').match(/<svg[\s\S]*?<\/svg>/g) ?? [];
      expect(drawings.length).toBeGreaterThan(20);
      const paths = drawings.map((svg, at) => {
        expect(svg.replace('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:|NaN|undefined|Infinity/);
        const path = join(folder, `drawing-${at}.svg`);
        writeFileSync(path, svg);
        return path;
      });
      // Debian's libxml2-utils; the browser test above parses them as well.
      execFileSync('xmllint', ['--noout', ...paths]);
    },
    PATIENCE,
  );
});

describe('the brief of the demo', () => {
  it.each(['A4', 'Letter'] as const)(
    'is two pages of %s',
    async (format) => {
      expect(await printed('brief.html', format)).toBe(2);
    },
    PATIENCE,
  );

  it(
    'fills both pages, and names no answer that has no room',
    async () => {
      const page = await opened('brief.html', false);
      await page.emulateMedia({ media: 'print' });
      await page.setViewportSize({ width: TEXT_WIDTH, height: 1000 });
      const high = await page.evaluate(() =>
        [...document.querySelectorAll('.sheet')].map((sheet) => sheet.getBoundingClientRect().height),
      );
      await page.context().close();
      expect(high).toHaveLength(2);
      // Letter, the lower paper, leaves 279 mm less the two margins of the page.
      for (const one of high) {
        expect(one / MILLIMETRE).toBeGreaterThan(0.9 * (279 - 34));
        expect(one / MILLIMETRE).toBeLessThan(279 - 34);
      }
      expect(live.get('brief.html')).not.toContain('No room here for');
    },
    PATIENCE,
  );

  it('says whether the data are ready, three to five answers with a figure and what overturns them, how to cite', () => {
    const html = live.get('brief.html') ?? '';
    expect(html).toContain('<h2>Are the data ready?</h2>');
    const answers = html.split('<section class="answer">').slice(1);
    expect(answers.length).toBeGreaterThanOrEqual(3);
    expect(answers.length).toBeLessThanOrEqual(5);
    for (const answer of answers) {
      expect(answer.split('<svg')).toHaveLength(2);
      expect(answer).toContain('<h3>What would change this</h3>');
    }
    expect(html).toMatch(/How to cite[\s\S]*seed 20; results\.json, SHA-256 [0-9a-f]{64}/);
    expect(html).not.toContain('<script');
  });
});
