import { execFile } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { Worker } from 'node:worker_threads';
import { describe, expect, it } from 'vitest';
import { readStudy } from '../../src/cli/study-on-disk.ts';
import { analyseSideBySide } from '../../src/cli/threads/analyse-side-by-side.ts';
import { startCrew } from '../../src/cli/threads/crew.ts';
import { commonCount, countedBy, type Handed } from '../../src/cli/threads/errand.ts';
import { prepareStudy } from '../../src/study/prepare.ts';
import { analyse } from '../../src/study/run-study.ts';
import { freshFolder, ROOT, thrum } from './thrum.ts';

const BUILT = join(ROOT, 'dist/cli/main.js');

/** Five questions, four of which draw at random and one of which cannot be answered. */
function study(): string {
  const folder = freshFolder();
  const rows = Array.from({ length: 40 }, (_, at) => {
    const site = at % 2 === 0 ? 'Ness' : 'Holm';
    return `f${at},${site},${(at * 7) % 13},${at % 3 === 0 ? 'tabby' : '2/2 twill'}`;
  });
  writeFileSync(join(folder, 'own.csv'), `id,site,length (mm),structure\n${rows.join('\n')}\n`);
  const analyses = [
    { id: 'lengths', kind: 'summary', of: ['length'], by: ['site'] },
    { id: 'longer', kind: 'contrast', of: ['length'], by: 'site' },
    { id: 'none', kind: 'contrast', of: ['rowSpacing'], by: 'site' },
    { id: 'alike', kind: 'similarity', assemblages: 'site', of: 'structure' },
    { id: 'table', kind: 'crosstab', rows: 'site', columns: 'structure' },
  ];
  const path = join(folder, 'study.json');
  writeFileSync(path, JSON.stringify({ title: 'Small', sources: [{ file: 'own.csv' }], analyses }));
  return path;
}

async function material() {
  const { study: read, files, sheets } = await readStudy(study(), {});
  return { prepared: prepareStudy(read, files, { sheets }), files };
}

describe('a run on several cores', () => {
  it('writes the same bytes on one and on three', async () => {
    const path = study();
    const [alone, three] = await Promise.all(
      ['1', '3'].map(async (threads) => {
        const out = freshFolder();
        // As built: from its sources no further thread is had in every version of Node.
        const words = [BUILT, 'run', path, '--out', out, '--no-report', '--threads', threads];
        await promisify(execFile)(process.execPath, words);
        return readFileSync(join(out, 'results.json'), 'utf8');
      }),
    );
    expect(three).toBe(alone);
    expect(Object.keys(JSON.parse(alone).analyses)).toEqual(['lengths', 'longer', 'none', 'alike', 'table']);
  });

  it('gives each question to one thread, which hands over what it answered', async () => {
    const { prepared, files } = await material();
    const count = commonCount();
    const claim = countedBy(count, prepared);
    expect([claim(), claim()]).toEqual([0, 1]);
    const source = new URL('../../src/cli/threads/thread.ts', import.meta.url).href;
    const loader = `import('tsx/esm/api').then(({ tsImport }) => tsImport(${JSON.stringify(source)}, ${JSON.stringify(source)}))`;
    const thread = new Worker(loader, {
      eval: true,
    });
    thread.postMessage({ prepared, files, count });
    const handed = await new Promise<Handed>((done, failed) => {
      thread.once('message', done);
      thread.once('error', failed);
    });
    expect([...handed.answers.keys()]).toEqual(['none', 'alike', 'table']);
    expect(handed.answers.get('table')).toEqual(analyse(prepared, files).analyses.table);
    expect(handed.faults).toEqual([]);
    expect(claim()).toBeNull();
  });

  it('hands out the questions that take longest first, each once', async () => {
    const { prepared } = await material();
    const kinds = ['summary', 'typology', 'grouping', 'crosstab', 'grouping'];
    const analyses = kinds.map((kind, at) => ({ id: `${at}`, kind }));
    const claim = countedBy(commonCount(), { ...prepared, study: { ...prepared.study, analyses } });
    expect(Array.from({ length: 6 }, claim)).toEqual([2, 4, 1, 0, 3, null]);
  });

  it('computes here what a thread leaves undone', async () => {
    // No thread can be started from the sources in this process, or it is: the results are the same.
    const { prepared, files } = await material();
    const crew = startCrew(prepared.study, 4);
    expect(await analyseSideBySide(prepared, files, crew)).toEqual(analyse(prepared, files));
    crew.dismiss();
    expect(crew.send({ prepared, files, count: commonCount() })).toEqual([]);
  });

  it('refuses a number of threads that is none', async () => {
    const { status, err } = await thrum('run', join(ROOT, 'none.json'), '--threads', '0');
    expect([status, err]).toEqual([
      2,
      '--threads wants a whole number from 1 to 9999, not "0"; write --threads 1.\n',
    ]);
  });
});
