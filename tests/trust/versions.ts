import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DEMO } from './large-demo.ts';
import { measured } from './measured.ts';

/** Releases of Node beside the one that runs, as the package registry carries them. */
const OTHERS = [22, 24];

/**
 * The demo on several releases of Node, fetched from the package registry: its results must be the same bytes.
 *
 * @returns lines of a table: release, the status of the run, the SHA-256 of its results.
 */
export async function versions(): Promise<readonly string[]> {
  const folder = mkdtempSync(join(tmpdir(), 'thrum-node-'));
  const engine = `node-${process.platform === 'win32' ? 'win' : process.platform}-${process.arch}`;
  const rows: string[] = [];
  for (const release of [null, ...OTHERS]) {
    const node =
      release === null ? process.execPath : fetched(join(folder, String(release)), engine, release);
    const out = join(folder, `results-${release ?? 'own'}`);
    const { status } = await measured(['run', join(DEMO, 'study.json'), '--out', out, '--quiet'], node);
    const bytes = createHash('sha256')
      .update(readFileSync(join(out, 'results.json')))
      .digest('hex');
    const version = execFileSync(node, ['--version'], { encoding: 'utf8' }).trim();
    rows.push(`| ${version} | ${status} | ${bytes.slice(0, 16)} … |`);
  }
  return ['| Node | status | SHA-256 of results.json |', '|---|---|---|', ...rows];
}

function fetched(folder: string, engine: string, release: number): string {
  execFileSync('npm', ['install', '--prefix', folder, '--no-audit', '--no-fund', `${engine}@${release}`], {
    stdio: 'ignore',
  });
  return join(folder, 'node_modules', engine, 'bin', 'node');
}
