import { execFileSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { typesReject } from './by-types.ts';
import { readImporters } from './importers.ts';
import { keptVitest } from './kept-vitest.ts';
import type { Site } from './sites.ts';
import { drawn } from './watched.ts';

/**
 * How much of what could go wrong would a test notice? Breaks the code at seeded places, one at a time, in a copy of
 * what is committed, and runs the tests that import the broken file, those of its own folder first, until one fails or their
 * times add up to `--each` seconds. What no test noticed is shown to the compiler, which counts by itself.
 *
 *     npm run mutate -- --count 60 --minutes 20 --seed 1 --in src/analyses/map
 */

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
/** Seconds that each test file took when it was last run here; only the bound on the tests of one break leans on them. */
const TIMES = join(ROOT, 'out/mutation-times.json');
const UNKNOWN_SECONDS = 3;

const { values } = parseArgs({
  options: {
    count: { type: 'string', default: '60' },
    minutes: { type: 'string', default: '30' },
    each: { type: 'string', default: '60' },
    seed: { type: 'string', default: '1' },
    in: { type: 'string' },
  },
});

const copy = mkdtempSync(join(tmpdir(), 'thrum-broken-'));
execFileSync('git', ['clone', '--quiet', ROOT, copy]);
symlinkSync(join(ROOT, 'node_modules'), join(copy, 'node_modules'));
if (existsSync(join(ROOT, 'dist'))) symlinkSync(join(ROOT, 'dist'), join(copy, 'dist'));

const took: Record<string, number> = existsSync(TIMES) ? JSON.parse(readFileSync(TIMES, 'utf8')) : {};
const importers = readImporters(copy);
const vitest = keptVitest(copy);
const until = performance.now() + Number(values.minutes) * 60_000;
let noticed = 0;
/** The file that was broken last and is whole again, which the kept vitest does not know yet. */
let mended: string[] = [];
/** Test files that have passed on whole code, and those that fail there too and so notice nothing. */
const [sound, unsound] = [new Set<string>(), new Set<string>()];
const missed: Site[] = [];
try {
  for (const site of drawn(copy, Number(values.count), createRandom(Number(values.seed)), values.in)) {
    if (performance.now() > until) break;
    const by = await noticedBy(site);
    if (by === null) missed.push(site);
    else noticed++;
    process.stderr.write(
      `${by === null ? 'MISSED ' : 'noticed'} ${said(site)}${by === null ? '' : ` [${by}]`}\n`,
    );
  }
  const rejects = missed.length > 0 ? typesReject(copy) : () => false;
  const byTypes = missed.filter((site) => rejects(site.file, brokenText(site)));
  report(byTypes);
} finally {
  vitest.end();
  mkdirSync(join(ROOT, 'out'), { recursive: true });
  writeFileSync(TIMES, JSON.stringify(took));
  rmSync(copy, { recursive: true, force: true });
}

/** The test that fails on the broken file; null where none of those near enough does. */
async function noticedBy(site: Site): Promise<string | null> {
  const path = join(copy, site.file);
  const whole = readFileSync(path, 'utf8');
  for (;;) {
    const tests = importers.testsOf(site.file, secondsOf).filter((test) => !unsound.has(test));
    writeFileSync(path, brokenText(site));
    try {
      const heard = await asked([...mended, site.file], nearEnough(tests));
      if (heard === null) return null;
      const [test] = heard.split(': ');
      if (sound.has(test) || !tests.includes(test)) return heard;
      writeFileSync(path, whole);
      const alone = await asked([site.file], [test]);
      (alone === null ? sound : unsound).add(test);
      if (alone === null) return heard;
    } finally {
      writeFileSync(path, whole);
      mended = [site.file];
    }
  }
}

async function asked(changed: readonly string[], tests: readonly string[]): Promise<string | null> {
  const heard = await vitest.ask({ changed, tests });
  Object.assign(took, heard.took);
  return heard.failed;
}

function secondsOf(test: string): number {
  return took[test] ?? UNKNOWN_SECONDS;
}

function nearEnough(tests: readonly string[]): readonly string[] {
  let seconds = 0;
  return tests.filter((test) => {
    const own = secondsOf(test);
    if (seconds > 0 && seconds + own > Number(values.each)) return false;
    seconds += own;
    return true;
  });
}

function brokenText({ file, start, end, wrong }: Site): string {
  const whole = readFileSync(join(copy, file), 'utf8');
  return whole.slice(0, start) + wrong + whole.slice(end);
}

function report(byTypes: readonly Site[]): void {
  const tried = noticed + missed.length;
  const percent = (part: number) => (tried === 0 ? '0' : ((100 * part) / tried).toFixed(0));
  const both = noticed + byTypes.length;
  process.stdout.write(
    `\nof ${tried} breaks, seed ${values.seed}: tests noticed ${noticed} (${percent(noticed)} %), ` +
      `the compiler ${byTypes.length} more; together ${both} (${percent(both)} %)\n`,
  );
  for (const test of unsound) process.stdout.write(`fails without any break, and was left out: ${test}\n`);
  for (const site of missed)
    process.stdout.write(`${byTypes.includes(site) ? 'by types' : 'missed  '} ${said(site)}\n`);
}

function said({ file, start, what }: Site): string {
  const line = readFileSync(join(copy, file), 'utf8').slice(0, start).split('\n').length;
  return `${file}:${line}: ${what}`;
}
