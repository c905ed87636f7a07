/**
 * Runs the notebook as Jupyter does: Debian's `jupyter nbconvert` starts the TypeScript kernel that
 * notebooks/write-kernel.ts describes, and stops at the first cell that fails.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';

interface Output {
  readonly output_type: string;
  readonly text?: readonly string[];
  readonly data?: Readonly<Record<string, unknown>>;
}
interface Cell {
  readonly cell_type: 'markdown' | 'code';
  readonly id: string;
  readonly source: readonly string[];
  readonly outputs?: readonly Output[];
}
interface Notebook {
  readonly cells: readonly Cell[];
}

const root = fileURLToPath(new URL('../../', import.meta.url));
const file = 'notebooks/position-a-site.ipynb';
const source = JSON.parse(readFileSync(join(root, file), 'utf8')) as Notebook;
const jupyter = spawnSync('jupyter', ['nbconvert', '--version']).status === 0;

/** The library is built anew where the sources are younger than what stands in dist. */
function buildWhereStale(): void {
  const newest = readdirSync(join(root, 'src'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .reduce((time, entry) => Math.max(time, statSync(join(entry.parentPath, entry.name)).mtimeMs), 0);
  const built = statSync(join(root, 'dist/index.js'), { throwIfNoEntry: false })?.mtimeMs ?? 0;
  if (built < newest) execFileSync('npm', ['run', '--silent', 'build:library'], { cwd: root, stdio: 'pipe' });
}

describe('position-a-site.ipynb as committed', () => {
  it('carries no outputs, so that a change shows what was changed by hand', () => {
    const code = source.cells.filter(({ cell_type }) => cell_type === 'code');
    expect(code.length).toBeGreaterThan(4);
    expect(code.flatMap(({ outputs }) => outputs ?? [])).toEqual([]);
  });
});

// "Jupyter's nbconvert is not installed (apt-get install jupyter-nbconvert): the notebook was not run."
describe.skipIf(!jupyter)("position-a-site.ipynb in Jupyter (needs Debian's jupyter-nbconvert)", () => {
  let run: Notebook;

  beforeAll(() => {
    buildWhereStale();
    const folder = mkdtempSync(join(tmpdir(), 'thrum-notebook-'));
    execFileSync(process.execPath, ['--import', 'tsx', 'notebooks/write-kernel.ts', folder], { cwd: root });
    const arguments_ = ['nbconvert', '--to', 'notebook', '--execute', file, '--output-dir', folder];
    const done = spawnSync('jupyter', [...arguments_, '--ExecutePreprocessor.timeout=240'], {
      cwd: root,
      env: { ...process.env, JUPYTER_PATH: folder, NO_COLOR: '1' },
      encoding: 'utf8',
    });
    if (done.status !== 0) throw new Error(`the notebook stopped:\n${done.stderr.slice(-4000)}`);
    run = JSON.parse(readFileSync(join(folder, 'position-a-site.ipynb'), 'utf8')) as Notebook;
  }, 300_000);

  const textOf = (id: string): string => {
    const cell = run.cells.find((each) => each.id === id);
    return (cell?.outputs ?? []).flatMap(({ text }) => text ?? []).join('');
  };

  it('runs every cell to its end', () => {
    const failed = run.cells
      .flatMap(({ outputs }) => outputs ?? [])
      .filter((each) => each.output_type === 'error');
    expect(failed).toEqual([]);
  });

  it('shows its figures as plotly figures', () => {
    const figures = run.cells
      .flatMap(({ outputs }) => outputs ?? [])
      .map(({ data }) => data?.['application/vnd.plotly.v1+json'] as { data: unknown[] } | undefined)
      .filter((figure) => figure !== undefined);
    expect(figures.length).toBeGreaterThanOrEqual(3);
    for (const { data } of figures) expect(data.length).toBeGreaterThan(0);
  });

  it('says how many fragments and items it stands on', () => {
    expect(textOf('reading')).toContain('396 fragments of 258 items');
  });

  it('finds the hold more like the mixture that was planted than like any one region', () => {
    const likeness = [...textOf('like').matchAll(/^(.+?)(?: \(n = \d+\))?: (\d+) \(95 % of draws/gm)];
    const values = Object.fromEntries(likeness.map(([, name, value]) => [name!, Number(value)]));
    const { 'Shelf and Strand in equal parts': mixture, ...regions } = values;
    expect(Object.keys(regions)).toEqual(['High Shelf', 'Strand without the wreck', 'Inner Range']);
    for (const [region, value] of Object.entries(regions)) expect(value, region).toBeLessThan(mixture!);
  });
});
