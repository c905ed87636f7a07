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
import { freshFolder, ROOT, thrum } from '../cli/thrum.ts';
import { LONG } from '../long.ts';

/** The same question is answered in the same words and numbers by the library, the terminal, the report and the screens. */

/** Three kinds that take little time; all of them in the long run. */
const KINDS = LONG ? ANALYSES.map(({ kind }) => kind) : ['summary', 'crosstab', 'contrast'];
const folder = freshFolder();
const out = join(folder, 'out');
let results: Results;
let printed = '';
let report = '';
let library: Results;
let document: { analyses: { id: string; kind: string }[]; brief?: string[] };
let files: Map<string, Uint8Array>;

beforeAll(async () => {
  cpSync(join(ROOT, 'datasets/demo'), folder, { recursive: true });
  document = JSON.parse(readFileSync(join(folder, 'study.json'), 'utf8'));
  document.analyses = document.analyses.filter(({ kind }) => KINDS.includes(kind));
  document.brief = document.brief?.filter((id) => document.analyses.some((kept) => kept.id === id)) ?? [];
  writeFileSync(join(folder, 'study.json'), JSON.stringify(document));
  const run = await thrum('run', join(folder, 'study.json'), '--out', out, '--full');
  printed = run.out.replace(/\s+/g, ' ');
  results = JSON.parse(readFileSync(join(out, 'results.json'), 'utf8'));
  report = readFileSync(join(out, 'report.html'), 'utf8');
  const study = checkStudy(document, 'study.json');
  files = new Map(studyFiles(study).map((name) => [name, new Uint8Array(readFileSync(join(folder, name)))]));
  library = runStudy(study, files);
}, 600_000);

describe('one answer through every door', () => {
  it('is the same from the library as in results.json', () => {
    expect(Object.keys(results.analyses).length).toBeGreaterThan(3);
    for (const [id, { words, n }] of Object.entries(results.analyses)) {
      expect(library.analyses[id].words).toEqual(words);
      expect(library.analyses[id].n).toEqual(n);
    }
  });

  it('stands in the terminal and in the report, with its evidence and what would change it', () => {
    for (const { words } of Object.values(results.analyses))
      for (const line of [words.answer, ...words.because, ...words.unless.map(printTurn)]) {
        expect(printed).toContain(line.replace(/\s+/g, ' '));
        expect(report).toContain(escapeHtml(line));
      }
  });

  it('is what the worker behind the screens answers, to the last number of its tables', async () => {
    const engine = createEngine();
    engine.keepFiles(files, []);
    for (const analysis of document.analyses) {
      const shown = await engine.run(complete(document as never), analysis as never, () => {});
      expect(shown.words, analysis.id).toEqual(results.analyses[analysis.id].words);
      expect(JSON.parse(JSON.stringify(shown.tables)), analysis.id).toEqual(
        results.analyses[analysis.id].tables,
      );
    }
  }, 600_000);
});
