import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { printTurn } from '../../src/analyses/phrasing.ts';
import { ANALYSES } from '../../src/analyses/register.ts';
import { createEngine } from '../../src/app/engine/engine.ts';
import { complete } from '../../src/app/state/workspace.ts';
import { escapeHtml } from '../../src/report/html-parts.ts';
import { checkStudy, studyFiles } from '../../src/study/load.ts';
import type { Results } from '../../src/study/results/results.ts';
import { runStudy } from '../../src/study/run-study.ts';
import { askingOnly } from '../../src/study/some-asked.ts';
import { demoAnswer } from '../analyses/demo-answer.ts';
import { freshFolder, type Outcome, ROOT, thrum } from '../cli/thrum.ts';
import { LONG } from '../long.ts';
import { demoRun } from './demo-run.ts';
import { type Document, openStudy } from './open-study.ts';

/** The same question is answered in the same words and numbers by the library, the terminal, the report and the screens. */

/** Kinds that take little time; all of them in the long run. */
const KINDS = LONG ? ANALYSES.map(({ kind }) => kind) : ['summary', 'crosstab', 'contrast', 'claims'];

/** A study, what its run in the terminal left, and what the library makes of it. */
interface Asked {
  readonly document: Document;
  readonly files: Map<string, Uint8Array>;
  readonly outcome: Outcome;
  /** Where the run wrote. */
  readonly out: string;
  readonly library: () => Results['analyses'];
}

function filesOf(document: Document, folder: string): Map<string, Uint8Array> {
  const names = studyFiles(checkStudy(document, 'study.json'));
  return new Map(names.map((name) => [name, new Uint8Array(readFileSync(join(folder, name)))]));
}

/** The whole demo is run once for all tests, and each of its questions answered once for those of this worker. */
async function wholeDemo(): Promise<Asked> {
  const folder = join(ROOT, 'datasets/demo');
  const document = JSON.parse(readFileSync(join(folder, 'study.json'), 'utf8')) as Document;
  const { outcome, folder: out } = await demoRun();
  const library = () => Object.fromEntries(document.analyses.map(({ id }) => [id, demoAnswer(id)]));
  return { document, files: filesOf(document, folder), outcome, out, library };
}

async function partOf(folder: string, whole: Document): Promise<Asked> {
  const asked = whole.analyses.filter(({ kind }) => KINDS.includes(kind));
  const document = askingOnly(whole, asked) as Document;
  writeFileSync(join(folder, 'study.json'), JSON.stringify(document));
  const out = join(folder, 'out');
  const outcome = await thrum('run', join(folder, 'study.json'), '--out', out, '--full');
  const files = filesOf(document, folder);
  const library = () => runStudy(checkStudy(document, 'study.json'), files).analyses;
  return { document, files, outcome, out, library };
}

function partOfDemo(): Promise<Asked> {
  const folder = freshFolder();
  cpSync(join(ROOT, 'datasets/demo'), folder, { recursive: true });
  return partOf(folder, JSON.parse(readFileSync(join(folder, 'study.json'), 'utf8')));
}

function openOne(): Promise<Asked> {
  const { folder, document } = openStudy();
  return partOf(folder, document);
}

describe.each([
  ['the demo', LONG ? wholeDemo : partOfDemo],
  ['an open study', openOne],
] as const)('one answer through every door: %s', (_, made) => {
  let document: Document;
  let files: Map<string, Uint8Array>;
  let results: Results;
  let library: Results['analyses'];
  let printed = '';
  let report = '';

  beforeAll(async () => {
    const asked = await made();
    ({ document, files } = asked);
    printed = asked.outcome.out.replace(/\s+/g, ' ');
    results = JSON.parse(readFileSync(join(asked.out, 'results.json'), 'utf8'));
    report = readFileSync(join(asked.out, 'report.html'), 'utf8');
    library = asked.library();
  }, 600_000);

  it('is computed for every question', () => {
    expect(Object.keys(results.analyses)).toEqual(document.analyses.map(({ id }) => id));
    expect(document.analyses.length).toBeGreaterThan(3);
    expect(Object.values(results.analyses).filter(({ why }) => why !== undefined)).toEqual([]);
  });

  it('is the same from the library as in results.json, to the last number of tables and figures', () => {
    expect(JSON.parse(JSON.stringify(library))).toEqual(results.analyses);
  });

  it('stands in the terminal and in the report, with its evidence and what would change it', () => {
    for (const { words } of Object.values(results.analyses))
      for (const line of [
        words.answer,
        ...words.because,
        ...words.unless.map(printTurn),
        ...(words.next ?? []),
      ]) {
        expect(printed).toContain(line.replace(/\s+/g, ' '));
        expect(report).toContain(escapeHtml(line));
      }
  });

  it('is what the worker behind the screens answers, to the last number of tables and figures', async () => {
    const engine = createEngine();
    engine.keepFiles(files, []);
    for (const analysis of document.analyses) {
      const shown = await engine.run(complete(document as never), analysis as never, () => {});
      const { words, n, tables, figures } = results.analyses[analysis.id];
      expect(JSON.parse(JSON.stringify({ ...shown })), analysis.id).toMatchObject({
        words,
        n,
        tables,
        figures,
      });
    }
  }, 600_000);
});
