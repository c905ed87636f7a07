import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { madeCsv } from '../bench/tools/made-csv.ts';
import { writeLargeDemo } from './large-demo.ts';
import { measured } from './measured.ts';
import type { Notebook } from './notebook.ts';

/** What is asked of a very large table; each writes what it needs into a folder and names the words of the command line. */
const ASKED: readonly (readonly [what: string, prepare: (folder: string) => readonly string[]])[] = [
  [
    '100,000 fragments: the whole demo study, with its report',
    (folder) => ['run', writeLargeDemo(folder, 100_000).path, '--out', join(folder, 'out'), '--quiet'],
  ],
  [
    '300,000 fragments: read, summarised and contrasted',
    (folder) => [
      ...['run', writeLargeDemo(folder, 300_000, ['summary', 'contrast']).path],
      ...['--out', join(folder, 'out'), '--no-report', '--quiet'],
    ],
  ],
  [
    '1,000,000 rows of one table: read and summarised',
    (folder) => {
      writeFileSync(join(folder, 'finds.csv'), madeCsv(1_000_000));
      const study = {
        title: 'A million rows',
        sources: [{ file: 'finds.csv' }],
        analyses: [{ id: 'spacing', kind: 'summary', of: ['rowSpacing'], by: ['site'], resamples: 199 }],
      };
      writeFileSync(join(folder, 'study.json'), JSON.stringify(study));
      return [
        ...['run', join(folder, 'study.json'), '--out', join(folder, 'out')],
        ...['--no-report', '--quiet'],
      ];
    },
  ],
];

/** Time and memory of very large tables. @returns lines of a table. */
export async function large(notebook: Notebook): Promise<readonly string[]> {
  const rows: string[] = [];
  for (const [what, prepare] of ASKED) {
    const folder = mkdtempSync(join(tmpdir(), 'thrum-large-'));
    const { processor, wall, memory } = await notebook.once(what, () => measured(prepare(folder)));
    rmSync(folder, { recursive: true });
    rows.push(`| ${what} | ${processor.toFixed(0)} | ${wall.toFixed(0)} | ${memory.toFixed(0)} |`);
  }
  return ['| | seconds of processor | seconds | MB at most |', '|---|---|---|---|', ...rows];
}
