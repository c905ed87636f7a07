import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { type Site, sitesOf } from './sites.ts';

/**
 * How much of what could go wrong would a test notice? Breaks the code at seeded places, one at a time, in a copy
 * of what is committed, and runs the tests of that folder. `npm run mutate -- --count 60 --minutes 20 --seed 1`.
 */

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** Where the verdicts, their words and their pictures are made, and the tests that should notice. */
const WATCHED: readonly (readonly [source: string, tests: readonly string[]])[] = [
  ['src/fragments', ['tests/fragments']],
  ...[
    'summary',
    'contrast',
    'crosstab',
    'similarity',
    'standing',
    'placement',
    'typology',
    'grouping',
    'ordination',
    'claims',
  ].map((kind): [string, string[]] => [`src/analyses/${kind}`, [`tests/analyses/${kind}`]]),
  ['src/study', ['tests/study']],
  ['src/report', ['tests/report']],
  ['src/app/engine', ['tests/demo', 'tests/app/workspace.test.ts', 'tests/app/settings.test.ts']],
];

const { values } = parseArgs({
  options: {
    count: { type: 'string', default: '60' },
    minutes: { type: 'string', default: '30' },
    seed: { type: 'string', default: '1' },
    in: { type: 'string' },
  },
});

const watched = WATCHED.filter(([source]) => values.in === undefined || source.startsWith(values.in));
const copy = mkdtempSync(join(tmpdir(), 'thrum-broken-'));
execFileSync('git', ['clone', '--quiet', ROOT, copy]);
symlinkSync(join(ROOT, 'node_modules'), join(copy, 'node_modules'));
if (existsSync(join(ROOT, 'dist'))) symlinkSync(join(ROOT, 'dist'), join(copy, 'dist'));

const until = performance.now() + Number(values.minutes) * 60_000;
const random = createRandom(Number(values.seed));
const noticed: Site[] = [];
const missed: Site[] = [];
try {
  for (const [site, tests] of drawn(Number(values.count))) {
    if (performance.now() > until) break;
    (notices(site, tests) ? noticed : missed).push(site);
    const line = `${noticed.includes(site) ? 'noticed' : 'MISSED '} ${placeOf(site)}: ${site.what}\n`;
    process.stderr.write(line);
  }
} finally {
  rmSync(copy, { recursive: true, force: true });
}
const tried = noticed.length + missed.length;
process.stdout.write(
  `\n${noticed.length} of ${tried} breaks noticed (${percent(noticed.length, tried)} %), seed ${values.seed}\n`,
);
for (const site of missed) process.stdout.write(`missed ${placeOf(site)}: ${site.what}\n`);

/** Places drawn without repetition, the folders in turn, so that a large one does not hide a small one. */
function drawn(count: number): [Site, readonly string[]][] {
  const pools = watched.map(([source, tests]) => {
    const files = execFileSync('git', ['ls-files', source], { cwd: copy, encoding: 'utf8' })
      .split('\n')
      .filter((file) => /\.tsx?$/.test(file));
    const sites = files.flatMap((file) => sitesOf(file, readFileSync(join(copy, file), 'utf8')));
    return { tests, sites };
  });
  const picked: [Site, readonly string[]][] = [];
  while (picked.length < count && pools.some(({ sites }) => sites.length > 0))
    for (const { tests, sites } of pools) {
      if (sites.length === 0) continue;
      const [site] = sites.splice(random.integer(sites.length), 1);
      picked.push([site, tests]);
    }
  return picked.slice(0, count);
}

/** Whether a test of the folder fails on the broken file. A file that no longer runs at all is noticed, too. */
function notices({ file, start, end, wrong }: Site, tests: readonly string[]): boolean {
  const path = join(copy, file);
  const whole = readFileSync(path, 'utf8');
  writeFileSync(path, whole.slice(0, start) + wrong + whole.slice(end));
  try {
    const command = ['vitest', 'run', '--config', 'tests/vitest.config.ts', '--bail', '1', ...tests];
    return spawnSync('npx', command, { cwd: copy, stdio: 'ignore', timeout: 600_000 }).status !== 0;
  } finally {
    writeFileSync(path, whole);
  }
}

function placeOf({ file, start }: Site): string {
  const line = readFileSync(join(ROOT, file), 'utf8').slice(0, start).split('\n').length;
  return `${relative('.', file)}:${line}`;
}

function percent(part: number, whole: number): string {
  return whole === 0 ? '0' : ((100 * part) / whole).toFixed(0);
}
