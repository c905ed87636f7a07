import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { FileContent } from '../../../src/report/file-content.ts';
import { MANIFEST, type Manifest } from '../../../src/report/writing/manifest.ts';
import { hashOf } from '../../../src/report/writing/standing.ts';
import type { FileSet } from '../../../src/report/writing/write-set.ts';

/**
 * Files that a run of this version writes: some in every version, some in this one alone, one large and made piece by
 * piece, one that tells of those before it.
 */
export function setOf(version: number): FileSet {
  const files = new Map<string, FileContent>([
    ['results.json', JSON.stringify({ version })],
    ['report.html', Array.from({ length: 20 }, () => `version ${version} `.repeat(1000))],
  ]);
  for (let table = 0; table < 12; table++) files.set(`tables/always-${table}.csv`, `${version},${table}\r\n`);
  for (let table = 0; table < 4; table++) files.set(`tables/only-${version}-${table}.csv`, `${table}\r\n`);
  files.set('list.json', (before) => JSON.stringify([version, ...before]));
  return { files, writtenBy: 'a test', study: `version ${version}` };
}

/**
 * Which version lies in a folder: 'none' before the first, or what is amiss. Whole means: every file of one
 * version with its text, nothing of another version, nothing left over.
 */
export function versionIn(folder: string, strangers: readonly string[] = []): number | string {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8', withFileTypes: true })
    .filter((entry) => !entry.isDirectory())
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
    .filter((name) => !strangers.includes(name) && !name.startsWith('.thrum-writing'));
  if (names.length === 0) return 'none';
  if (!existsSync(join(folder, MANIFEST))) return `no list beside ${names.join(', ')}`;
  const { files, study } = JSON.parse(readFileSync(join(folder, MANIFEST), 'utf8')) as Manifest;
  const listed = [...Object.keys(files), MANIFEST].sort().join();
  if (names.sort().join() !== listed) return `listed ${listed}; there ${names.join()}`;
  const changed = Object.entries(files).filter(
    ([name, hash]) => hashOf(readFileSync(join(folder, name))) !== hash,
  );
  const version = Number(study.replace('version ', ''));
  const wanted = [...setOf(version).files.keys()].sort().join();
  if (Object.keys(files).sort().join() !== wanted) return 'another set than that version has';
  return changed.length === 0 ? version : `of another version: ${changed.map(([name]) => name).join()}`;
}
