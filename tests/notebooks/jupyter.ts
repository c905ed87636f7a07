/**
 * Runs a notebook as Jupyter does: Debian's `jupyter nbconvert` starts the TypeScript kernel that
 * notebooks/write-kernel.ts describes, and stops at the first cell that fails.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export interface Output {
  readonly output_type: string;
  readonly text?: readonly string[];
  readonly data?: Readonly<Record<string, unknown>>;
}
export interface Cell {
  readonly cell_type: 'markdown' | 'code';
  readonly id: string;
  readonly source: readonly string[];
  readonly outputs?: readonly Output[];
}
export interface Notebook {
  readonly cells: readonly Cell[];
}

const root = fileURLToPath(new URL('../../', import.meta.url));

/** Without it (apt-get install jupyter-nbconvert) notebooks are not run. */
export const hasJupyter = spawnSync('jupyter', ['nbconvert', '--version']).status === 0;

/** File names of the notebooks. */
export const NOTEBOOKS = readdirSync(join(root, 'notebooks')).filter((name) => name.endsWith('.ipynb'));

export function committed(name: string): Notebook {
  return JSON.parse(readFileSync(join(root, 'notebooks', name), 'utf8')) as Notebook;
}

/** The notebook with what its cells put out; throws where one fails. */
export function executed(name: string): Notebook {
  buildWhereStale();
  const folder = mkdtempSync(join(tmpdir(), 'thrum-notebook-'));
  execFileSync(process.execPath, ['--import', 'tsx', 'notebooks/write-kernel.ts', folder], { cwd: root });
  const arguments_ = [
    'nbconvert',
    '--to',
    'notebook',
    '--execute',
    `notebooks/${name}`,
    '--output-dir',
    folder,
  ];
  const done = spawnSync('jupyter', [...arguments_, '--ExecutePreprocessor.timeout=240'], {
    cwd: root,
    env: { ...process.env, JUPYTER_PATH: folder, NO_COLOR: '1' },
    encoding: 'utf8',
  });
  if (done.status !== 0) throw new Error(`the notebook stopped:\n${done.stderr.slice(-4000)}`);
  return JSON.parse(readFileSync(join(folder, name), 'utf8')) as Notebook;
}

/** What a cell said, and the tables it showed (Markdown). */
export function textOf(notebook: Notebook, id: string): string {
  const outputs = notebook.cells.find((cell) => cell.id === id)?.outputs ?? [];
  return outputs.map(({ text, data }) => joined(text ?? data?.['text/markdown'])).join('\n');
}

/** Notebooks keep texts whole or as a list of lines. */
function joined(text: unknown): string {
  return Array.isArray(text) ? text.join('') : String(text ?? '');
}

/** The plotly figures of all cells. */
export function figuresOf(notebook: Notebook): { readonly data: readonly unknown[] }[] {
  return notebook.cells
    .flatMap(({ outputs }) => outputs ?? [])
    .map(({ data }) => data?.['application/vnd.plotly.v1+json'] as { data: unknown[] } | undefined)
    .filter((figure) => figure !== undefined);
}

/** The library is built anew where the sources are younger than what stands in dist. */
function buildWhereStale(): void {
  const newest = readdirSync(join(root, 'src'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .reduce((time, entry) => Math.max(time, statSync(join(entry.parentPath, entry.name)).mtimeMs), 0);
  const built = statSync(join(root, 'dist/index.js'), { throwIfNoEntry: false })?.mtimeMs ?? 0;
  if (built < newest) execFileSync('npm', ['run', '--silent', 'build:library'], { cwd: root, stdio: 'pipe' });
}
