import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Random } from '../../src/numerics/foundation/random.ts';
import { type Site, sitesOf } from './sites.ts';

/** What only a browser runs; its tests work on what was built before. */
const IN_BROWSER = /^src\/app\/engine\/(?:worker|client|use-[a-z-]+)\.ts$/;

/** Stands in files that a script writes: their numbers are whatever it found. */
const BY_SCRIPT = 'not to be changed by hand';

/**
 * Places drawn without repetition, the folders in turn, so that a large one does not hide a small one. Each folder
 * directly under src/analyses stands for itself, and so do the files that lie between them.
 */
export function drawn(root: string, count: number, random: Random, within = ''): readonly Site[] {
  const pools = new Map<string, Site[]>();
  const listed = execFileSync('git', ['ls-files', 'src'], { cwd: root, encoding: 'utf8' }).split('\n');
  for (const file of listed) {
    const pool = poolOf(file);
    if (pool === null || !file.startsWith(within)) continue;
    const text = readFileSync(join(root, file), 'utf8');
    if (!text.includes(BY_SCRIPT)) pools.set(pool, [...(pools.get(pool) ?? []), ...sitesOf(file, text)]);
  }
  const picked: Site[] = [];
  while (picked.length < count && [...pools.values()].some((sites) => sites.length > 0))
    for (const sites of pools.values())
      if (sites.length > 0) picked.push(...sites.splice(random.integer(sites.length), 1));
  return picked.slice(0, count);
}

/** Where the verdicts, their words and their pictures are made. */
function poolOf(file: string): string | null {
  if (!/\.tsx?$/.test(file) || IN_BROWSER.test(file)) return null;
  const analysis = /^src\/analyses\/(?:[^/]+\/)?/.exec(file)?.[0];
  return analysis ?? /^src\/(?:fragments|study|report|app\/engine)\//.exec(file)?.[0] ?? null;
}
