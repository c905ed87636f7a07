import { readFile } from 'node:fs/promises';
import type { Browser, Download, Locator, Page } from 'playwright-core';
import { builtApp } from './built-app.ts';
import { lightStudy } from './light-study.ts';
import { type Served, serveFolder } from './serve.ts';

/** The built workbench in a browser, watched for errors and for anything that leaves the machine. */
export interface Bench {
  readonly browser: Browser;
  readonly served: Served;
  readonly open: (width?: number) => Promise<Desk>;
  /** Closes every page that was opened, and the server; not the browser. */
  readonly close: () => Promise<void>;
}

export interface Desk {
  readonly page: Page;
  /** Errors of the page and of its content policy; a missing served study is none. */
  readonly errors: string[];
  /** Addresses asked for that are not on this server. */
  readonly foreign: string[];
  readonly demo: () => Promise<void>;
  readonly go: (screen: string) => Promise<void>;
  readonly close: () => Promise<void>;
}

/** How often the questions of the demo study ask chance: as it stands, or as seldom as they may. */
export type Demo = 'as it stands' | 'light';

export async function openBench(browser: Browser, demo: Demo = 'light'): Promise<Bench> {
  const served = await serveFolder(await builtApp(), (name, body) =>
    demo === 'light' && DEMO_STUDY.test(name) ? lightStudy(body.toString()) : body,
  );
  const desks: Desk[] = [];
  return {
    browser,
    served,
    open: async (width) => {
      const desk = await openDesk(browser, served, width ?? 1440);
      desks.push(desk);
      return desk;
    },
    close: async () => {
      for (const desk of desks) await desk.close();
      await served.close();
    },
  };
}

/** What the bundler calls the demo's study file. */
const DEMO_STUDY = /^study-[\w-]+\.json$/;

async function openDesk(browser: Browser, served: Served, width: number): Promise<Desk> {
  const context = await browser.newContext({ viewport: { width, height: 900 }, acceptDownloads: true });
  context.setDefaultTimeout(120_000);
  const page = await context.newPage();
  const errors: string[] = [];
  const foreign: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('console', (message) => {
    const absent = message.location().url.endsWith('/study/manifest.json');
    if (message.type() === 'error' && !absent) errors.push(message.text());
  });
  context.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(served.address) && !url.startsWith('blob:') && !url.startsWith('data:'))
      foreign.push(url);
  });
  await page.goto(served.address);
  await page.locator('h1').waitFor();
  const go = async (screen: string) => {
    await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: screen }).click();
  };
  return {
    page,
    errors,
    foreign,
    go,
    demo: async () => {
      await page.getByRole('button', { name: 'Open the demo study' }).click();
      await page.locator('.raw-grid .raw-cell').first().waitFor();
    },
    close: () => context.close(),
  };
}

/** What a press of this button hands over to be saved. */
export async function saved(page: Page, button: Locator): Promise<{ name: string; text: string }> {
  const { name, bytes } = await savedBytes(page, button);
  return { name, text: bytes.toString('utf8') };
}

export async function savedBytes(page: Page, button: Locator): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([
    page.waitForEvent('download', { timeout: 120_000 }) as Promise<Download>,
    button.click(),
  ]);
  return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
}
