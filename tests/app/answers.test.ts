import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { Answer } from '../../src/analyses/contract.ts';
import { printTurn } from '../../src/analyses/phrasing.ts';
import { addressOf } from '../../src/app/state/address.ts';
import { serve } from '../../src/cli/serve.ts';
import { servedFiles } from '../../src/cli/verbs/open.ts';
import { checkStudy, entriesOf } from '../../src/study/load.ts';
import { runStudy } from '../../src/study/run-study.ts';
import { demoAnswer } from '../analyses/demo-answer.ts';
import { bytesOf, openStudy } from '../demo/open-study.ts';
import { prepareDemo } from '../demo/prepared.ts';
import { benchForTests } from './bench.ts';
import { builtApp } from './built-app.ts';
import type { Desk } from './workbench.ts';

/** What a screen shows of a question of the study is what the library answers, word for word. */

let desk: Desk;
const bench = benchForTests(async (opened) => {
  desk = await opened.open();
  await desk.demo();
}, 'as it stands');

/** Each screen, a question of the study that it shows, and the choice that brings it into sight. */
const SHOWN = [
  { screen: 'assemblages', id: 'table', choice: 'What there is' },
  { screen: 'assemblages', id: 'alike', choice: 'How alike they are' },
  { screen: 'contrasts', id: 'differ', choice: null },
  { screen: 'kinship', id: 'groups', choice: null },
  { screen: 'kinship', id: 'axes', choice: null },
  { screen: 'type-rules', id: 'twiningTypes', choice: null },
  { screen: 'placement', id: 'where', choice: 'a find' },
  { screen: 'placement', id: 'standing', choice: 'a whole site' },
] as const;
/** Of the open study; its axes are asked with other weights than its groups. */
const OPEN = SHOWN.filter(({ id }) => id !== 'twiningTypes');
type Shown = Omit<(typeof SHOWN)[number], 'id'>;

async function showsAnswer(
  page: Page,
  { screen, choice }: Shown,
  asks: readonly object[],
  { answer, because, unless, next = [] }: Answer,
): Promise<void> {
  await page.evaluate(
    (hash) => {
      location.hash = hash;
    },
    addressOf(screen, asks as never),
  );
  if (screen === 'assemblages') {
    await page.getByRole('button', { name: /Show/ }).click();
    await page.getByRole('option', { name: choice ?? '' }).click();
  } else if (choice !== null) await page.getByRole('radio', { name: choice }).click();
  const said = page.locator('.said').filter({ hasText: answer });
  await said.waitFor();
  // A quick preview may stand first; it gives way to the full answer.
  await page.getByText('A quick preview').waitFor({ state: 'hidden' });
  await expect.poll(() => said.locator('.because li').allTextContents()).toEqual(because);
  await expect.poll(() => said.locator('.cautions li').allTextContents()).toEqual(unless.map(printTurn));
  await expect.poll(() => said.locator('.next li').allTextContents()).toEqual(next);
}

describe('the answer on a screen', () => {
  it.each(SHOWN)('$screen shows what the library answers to "$id"', async ({ id, ...shown }) => {
    const asks = entriesOf(prepareDemo([id]).study);
    await showsAnswer(desk.page, shown, asks, demoAnswer(id).words);
  });

  it('is that of the library of an open study, too', async () => {
    const { folder, document } = openStudy();
    const { analyses } = runStudy(checkStudy(document, 'study.json'), bytesOf(folder));
    const serving = await serve(await builtApp(), await servedFiles([join(folder, 'study.json')]), 0);
    const context = await bench.browser.newContext({ viewport: { width: 1440, height: 900 } });
    context.setDefaultTimeout(120_000);
    try {
      const page = await context.newPage();
      await page.goto(serving.url);
      await page.getByRole('heading', { level: 1 }).waitFor();
      for (const { id, ...shown } of OPEN)
        await showsAnswer(
          page,
          shown,
          document.analyses.filter((asked) => asked.id === id),
          analyses[id].words,
        );
    } finally {
      await context.close();
      await serving.close();
    }
  });
});
