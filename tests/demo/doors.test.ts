import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { printTurn } from '../../src/analyses/phrasing.ts';
import { ANALYSES } from '../../src/analyses/register.ts';
import { createEngine } from '../../src/app/engine/engine.ts';
import { complete } from '../../src/app/state/workspace.ts';
import { escapeHtml } from '../../src/report/html-parts.ts';
import { checkStudy, studyFiles } from '../../src/study/load.ts';
import type { Results } from '../../src/study/results.ts';
import { runStudy } from '../../src/study/run-study.ts';
import { askingOnly } from '../../src/study/some-asked.ts';
import { freshFolder, ROOT, thrum } from '../cli/thrum.ts';
import { LONG } from '../long.ts';
import { type Document, openStudy } from './open-study.ts';

/** The same question is answered in the same words and numbers by the library, the terminal, the report and the screens. */

/** Kinds that take little time; all of them in the long run. */
const KINDS = LONG ? ANALYSES.map(({ kind }) => kind) : ['summary', 'crosstab', 'contrast', 'claims'];

function demoStudy(): { readonly folder: string; readonly document: Document } {
  const folder = freshFolder();
  cpSync(join(ROOT, 'datasets/demo'), folder, { recursive: true });
  return { folder, document: JSON.parse(readFileSync(join(folder, 'study.json'), 'utf8')) };
}

describe.each([
  ['the demo', demoStudy],
  ['an open study', openStudy],
] as const)('one answer through every door: %s', (_, made) => {
  let document: Document;
  let files: Map<string, Uint8Array>;
  let results: Results;
  let library: Results;
  let printed = '';
  let report = '';

  beforeAll(async () => {
    const { folder, document: whole } = made();
    const out = join(folder, 'out');
    document = askingOnly(
      whole,
      whole.analyses.filter(({ kind }) => KINDS.includes(kind)),
    ) as Document;
    writeFileSync(join(folder, 'study.json'), JSON.stringify(document));
    const run = await thrum('run', join(folder, 'study.json'), '--out', out, '--full');
    printed = run.out.replace(/\s+/g, ' ');
    results = JSON.parse(readFileSync(join(out, 'results.json'), 'utf8'));
    report = readFileSync(join(out, 'report.html'), 'utf8');
    const study = checkStudy(document, 'study.json');
    files = new Map(
      studyFiles(study).map((name) => [name, new Uint8Array(readFileSync(join(folder, name)))]),
    );
    library = runStudy(study, files);
  }, 600_000);

  it('is computed for every question', () => {
    expect(Object.keys(results.analyses)).toEqual(document.analyses.map(({ id }) => id));
    expect(document.analyses.length).toBeGreaterThan(3);
    expect(Object.values(results.analyses).filter(({ why }) => why !== undefined)).toEqual([]);
  });

  it('is the same from the library as in results.json, to the last number of tables and figures', () => {
    expect(JSON.parse(JSON.stringify(library.analyses))).toEqual(results.analyses);
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
