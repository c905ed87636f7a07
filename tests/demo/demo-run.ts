import { mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Results } from '../../src/study/results/results.ts';
import { type Outcome, ROOT, thrum } from '../cli/thrum.ts';
import { KEPT, madeOnce } from '../made-once.ts';

/** The demo study as `thrum run --full` leaves it: computed once for all workers, since it takes half a minute. */
export interface DemoRun {
  /** What it printed, and its status. */
  readonly outcome: Outcome;
  /** Where results.json, report.html, brief.html and the tables lie; only to be read. */
  readonly folder: string;
  readonly results: Results;
}

export async function demoRun(): Promise<DemoRun> {
  const folder = join(KEPT, 'demo');
  const mark = join(folder, 'outcome.json');
  await madeOnce(mark, async () => {
    await rm(folder, { recursive: true, force: true });
    const out = join(folder, 'out');
    const outcome = await thrum('run', join(ROOT, 'datasets/demo/study.json'), '--out', out, '--full');
    await mkdir(folder, { recursive: true });
    await writeFile(mark, JSON.stringify(outcome));
  });
  return {
    outcome: JSON.parse(await readFile(mark, 'utf8')),
    folder: join(folder, 'out'),
    results: JSON.parse(await readFile(join(folder, 'out/results.json'), 'utf8')),
  };
}
