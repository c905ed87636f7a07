import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { writeLargeDemo } from './large-demo.ts';
import { measured, type Taken } from './measured.ts';
import type { Notebook } from './notebook.ts';

/** About how many fragments the demo is made of each time: n, 2n, 4n, 8n. */
const SIZES = [1600, 3200, 6400, 12800];

/** What is asked of each size, by what a reader would call it; the kinds of analysis that the study then holds. */
const ASKED: readonly (readonly [
  what: string,
  kinds: readonly string[],
  args: (at: At) => readonly string[],
])[] = [
  ['read one catalogue', ['summary'], ({ folder }) => ['read', join(folder, 'quorrimel-katalog.csv')]],
  ['summary and report', ['summary'], ({ study, out }) => ['run', study, '--out', out, '--quiet']],
  ['contrast', ['contrast'], ({ study, out }) => ['run', study, '--out', out, '--no-report', '--quiet']],
  ['crosstab', ['crosstab'], ({ study, out }) => ['run', study, '--out', out, '--no-report', '--quiet']],
  ['grouping', ['grouping'], ({ study, out }) => ['run', study, '--out', out, '--no-report', '--quiet']],
  [
    'placement of a find',
    ['placement'],
    ({ study }) => ['place', study, '--find', 'rowSpacing=c. 32 mm', '--find', 'structure=open twining'],
  ],
];

interface At {
  readonly folder: string;
  readonly study: string;
  readonly out: string;
}

/**
 * Processor time and memory of the main verbs as the demo grows, and the power of n by which the time grows over the
 * last doubling, the start of the program (an empty run) taken off. What the notebook holds already is not measured again.
 *
 * @returns lines of a table.
 */
export async function growth(notebook: Notebook): Promise<readonly string[]> {
  const { processor: start } = await notebook.once('start', () => measured(['explain', 'summary']));
  const taken: Taken[][] = ASKED.map(() => []);
  const sizes: number[] = [];
  for (const size of SIZES) {
    const folder = mkdtempSync(join(tmpdir(), 'thrum-growth-'));
    for (const [place, [what, kinds, args]] of ASKED.entries()) {
      const { path, fragments } = writeLargeDemo(folder, size, kinds);
      if (place === 0) sizes.push(fragments);
      taken[place]!.push(
        await notebook.once(`${what}, ${fragments} fragments`, () =>
          measured(args({ folder, study: path, out: join(folder, `out-${place}`) })),
        ),
      );
    }
    rmSync(folder, { recursive: true });
  }
  const rows = ASKED.map(([what], place) => {
    const times = taken[place]!.map(({ processor }) => processor);
    const [before, last] = times.slice(-2).map((time) => Math.max(time - start, 0.01));
    const [smaller, larger] = sizes.slice(-2);
    const power = Math.log(last! / before!) / Math.log(larger! / smaller!);
    const memory = taken[place]!.at(-1)!.memory;
    return `| ${[what, ...times.map((time) => time.toFixed(1)), power.toFixed(2), memory.toFixed(0)].join(' | ')} |`;
  });
  return [
    `| processor seconds, by fragments | ${sizes.join(' | ')} | grows by n to the | MB at most |`,
    `|---|${sizes.map(() => '---').join('|')}|---|---|`,
    ...rows,
  ];
}
