import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { printTurn } from '../../src/analyses/phrasing.ts';
import { addressOf } from '../../src/app/state/address.ts';
import { checkStudy, studyFiles } from '../../src/study/load.ts';
import type { Results } from '../../src/study/results.ts';
import { runStudy } from '../../src/study/run-study.ts';
import { ROOT } from '../cli/thrum.ts';
import { benchForTests } from './bench.ts';
import type { Desk } from './workbench.ts';

/** What a screen shows of a question of the study is what the library answers, word for word. */

const DEMO = join(ROOT, 'datasets/demo');
let desk: Desk;
let results: Results;
let asked: { readonly id: string; readonly kind: string }[];

benchForTests(async (bench) => {
  desk = await bench.open();
  await desk.demo();
  const study = checkStudy(JSON.parse(readFileSync(join(DEMO, 'study.json'), 'utf8')), 'study.json');
  const files = new Map(
    studyFiles(study).map((name) => [name, new Uint8Array(readFileSync(join(DEMO, name)))]),
  );
  asked = [...(study.analyses as typeof asked)];
  results = runStudy(study, files);
});

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

describe('the answer on a screen', () => {
  it.each(SHOWN)('$screen shows what the library answers to "$id"', { timeout: 240_000 }, async (shown) => {
    const { page } = desk;
    const { words } = results.analyses[shown.id];
    const asks = asked.filter(({ id }) => id === shown.id);
    await page.evaluate(
      (hash) => {
        location.hash = hash;
      },
      addressOf(shown.screen, asks as never),
    );
    if (shown.screen === 'assemblages') {
      await page.getByRole('button', { name: /Show/ }).click();
      await page.getByRole('option', { name: shown.choice }).click();
    } else if (shown.choice !== null) await page.getByRole('radio', { name: shown.choice }).click();
    const said = page.locator('.said').filter({ hasText: words.answer });
    await said.waitFor();
    // A quick preview may stand first; it gives way to the full answer.
    await page.getByText('A quick preview').waitFor({ state: 'hidden' });
    expect(await said.locator('.because li').allTextContents()).toEqual(words.because);
    expect(await said.locator('.cautions li').allTextContents()).toEqual(words.unless.map(printTurn));
    expect(await said.locator('.next li').allTextContents()).toEqual(words.next ?? []);
  });
});
