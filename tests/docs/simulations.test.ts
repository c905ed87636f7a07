import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const names = readdirSync(`${root}tests/simulations`)
  .filter((name) => name.endsWith('.ts') && name !== 'run.ts')
  .map((name) => name.replace('.ts', ''));
const run = (...more: string[]) =>
  spawnSync('npx', ['tsx', 'tests/simulations/run.ts', ...more], { cwd: root, encoding: 'utf8' });

describe('simulations by name', () => {
  it('lists each with what it asks, when none is named', () => {
    const { status, stdout } = run();
    expect(status).toBe(0);
    for (const name of names) expect(stdout).toMatch(new RegExp(`^ {2}${name} +[A-Z].*[?.:]$`, 'm'));
  });

  it('lists them and says so, when a wrong one is named', () => {
    const { status, stdout, stderr } = run('placement-cover');
    expect(status).toBe(2);
    expect(stderr).toContain('No simulation is named "placement-cover".');
    expect(stdout).toContain('placement-coverage');
  });

  it('refuses a number of runs that is none', () => {
    const { status, stderr } = run('limits-of-few', 'many');
    expect(status).toBe(2);
    expect(stderr).toContain('"many" is no number of runs');
  });

  it.each(names)('%s has its result in a page of the methods', (name) => {
    const pages = readdirSync(`${root}docs/methods`).map((page) =>
      readFileSync(`${root}docs/methods/${page}`, 'utf8'),
    );
    expect(pages.some((page) => page.includes(name))).toBe(true);
  });
});
