import { mkdtempSync, readlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { serve } from '../../src/cli/serve.ts';
import { servedFiles } from '../../src/cli/verbs/open.ts';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { LONG } from '../long.ts';
import { browserPath } from './browser.ts';
import { builtApp } from './built-app.ts';

const PATIENCE = 600_000;
const KILLS = LONG ? 25 : 4;

async function served() {
  const folder = mkdtempSync(join(tmpdir(), 'thrum-kept-'));
  const rows = Array.from({ length: 24 }, (_, at) => `f${at},${at % 2 ? 'Ness' : 'Holm'},tabby,${at + 3}`);
  writeFileSync(join(folder, 'finds.csv'), `id,site,structure,length (mm)\n${rows.join('\n')}\n`);
  const path = join(folder, 'study.json');
  writeFileSync(path, JSON.stringify({ title: 'Small', sources: [{ file: 'finds.csv' }], analyses: [] }));
  return serve(await builtApp(), await servedFiles([path]), 0);
}

const title = (page: Page) => page.getByRole('textbox', { name: 'Title', exact: true });

async function nameIt(page: Page, name: string): Promise<void> {
  await title(page).fill(name);
  await title(page).press('Tab');
}

async function keepAs(page: Page, name: string): Promise<void> {
  await nameIt(page, name);
  await page.locator('[data-kept="kept"]').waitFor({ state: 'attached' });
}

describe('the store of the browser', () => {
  it('says that it is full, in a sentence with the way out, and still holds what was kept before', {
    timeout: PATIENCE,
  }, async () => {
    const serving = await served();
    const profile = mkdtempSync(join(tmpdir(), 'thrum-browser-'));
    const opened = async () => {
      const context = await ownBrowser(profile);
      const page = await context.newPage();
      return { context, page, devtools: await context.newCDPSession(page) };
    };
    const { origin } = new URL(serving.url);
    try {
      const before = await opened();
      await before.page.goto(`${serving.url}#/take-away`);
      await keepAs(before.page, 'Kept');
      await before.context.close();

      // A browser that has just been opened asks how much room there is; later it goes by what it was told for a while.
      const { context, page, devtools } = await opened();
      await devtools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
      await page.goto(`${serving.url}#/take-away`);
      await expect.poll(() => title(page).inputValue(), { timeout: 60_000 }).toBe('Kept');
      await nameIt(page, 'Too much');
      await page
        .getByText('The browser has no room left to keep this work. Save the study on Take away')
        .waitFor();
      await expect.poll(() => title(page).inputValue()).toBe('Too much');
      await page.reload();
      await expect.poll(() => title(page).inputValue(), { timeout: 60_000 }).toBe('Kept');

      await devtools.send('Storage.overrideQuotaForOrigin', { origin });
      await keepAs(page, 'Room again');
      await page.reload();
      await expect.poll(() => title(page).inputValue(), { timeout: 60_000 }).toBe('Room again');
      await context.close();
    } finally {
      await serving.close();
    }
  });

  it(`holds the state before or after a save, however it is killed (${KILLS} times)`, {
    timeout: PATIENCE,
  }, async () => {
    const serving = await served();
    const profile = mkdtempSync(join(tmpdir(), 'thrum-browser-'));
    const random = createRandom(8);
    const found: string[] = [];
    let before = 'Small';
    try {
      for (let kill = 0; kill <= KILLS; kill++) {
        const context = await ownBrowser(profile);
        const page = await context.newPage();
        await page.goto(`${serving.url}#/take-away`);
        await title(page).waitFor();
        const last = kill === 0 ? 'Small' : `Title ${kill - 1}`;
        const now = await title(page).inputValue();
        expect([before, last]).toContain(now);
        found.push(now === last ? 'after' : 'before');
        before = now;
        if (kill === KILLS) {
          await context.close();
          break;
        }
        await nameIt(page, `Title ${kill}`);
        await wait(random.next() * 250);
        // The lock names the process of this browser, which this test has started.
        process.kill(Number(readlinkSync(join(profile, 'SingletonLock')).split('-').at(-1)), 'SIGKILL');
        await context.close().catch(() => undefined);
      }
    } finally {
      await serving.close();
    }
    expect(found).toHaveLength(KILLS + 1);
  });
});

async function ownBrowser(profile: string): Promise<BrowserContext> {
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: browserPath(),
    args: ['--no-sandbox', '--disable-quic', '--disable-background-networking', '--disable-sync'],
  });
  context.setDefaultTimeout(120_000);
  return context;
}
