import { describe, expect, it } from 'vitest';
import { sourceFiles } from './source-files.ts';

/** The picture of docs/architecture.md: each folder and the folders below it that it may import. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  numerics: [],
  attributes: ['numerics'],
  cells: ['attributes', 'numerics'],
  fragments: ['cells', 'attributes', 'numerics'],
  sources: ['fragments', 'cells', 'attributes', 'numerics'],
  analyses: ['sources', 'fragments', 'cells', 'attributes', 'numerics'],
  study: ['analyses', 'sources', 'fragments', 'cells', 'attributes', 'numerics'],
  frames: ['sources', 'fragments', 'cells', 'attributes', 'numerics'],
  report: ['study', 'analyses', 'sources', 'fragments', 'cells', 'attributes', 'numerics'],
  app: ['report', 'study', 'analyses', 'sources', 'fragments', 'cells', 'attributes', 'numerics'],
  cli: ['report', 'frames', 'study', 'analyses', 'sources', 'fragments', 'cells', 'attributes', 'numerics'],
};

/** The library's public face may show everything that runs in a browser. */
const INDEX_MAY_IMPORT = ['report', ...(MAY_IMPORT.report ?? [])];

const files = sourceFiles();
const folderOf = (path: string) => (path.includes('/') ? path.split('/')[0] : path);

describe('imports point down the picture only', () => {
  it('knows every folder of src', () => {
    const folders = new Set(files.map(({ path }) => folderOf(path)).filter((name) => !name.includes('.')));
    expect([...folders].filter((name) => !(name in MAY_IMPORT))).toEqual([]);
    expect(files.length).toBeGreaterThan(100);
  });

  it('no folder imports one that stands above it', () => {
    const upward = files.flatMap(({ path, imports }) => {
      const from = folderOf(path);
      const allowed = from === 'index.ts' ? INDEX_MAY_IMPORT : (MAY_IMPORT[from] ?? []);
      return imports
        .map(folderOf)
        .filter((to) => to !== from && to !== 'errors.ts' && !allowed.includes(to))
        .map((to) => `${path} imports ${to}`);
    });
    expect(upward).toEqual([]);
  });

  it('no analysis imports another, nor do the parts that they share; only the register knows them all', () => {
    const crossing = files.flatMap(({ path, imports }) => {
      const [top, own, inner] = path.split('/');
      if (top !== 'analyses' || inner === undefined) return [];
      return imports
        .filter(
          (to) =>
            to.startsWith('analyses/') &&
            to.split('/').length > 2 &&
            ![own, 'shared'].includes(to.split('/')[1]),
        )
        .map((to) => `${path} imports ${to}`);
    });
    expect(crossing).toEqual([]);
  });

  it('every import names an existing file', () => {
    const present = new Set(files.map(({ path }) => path));
    const dangling = files.flatMap(({ path, imports }) =>
      imports.filter((to) => /\.tsx?$/.test(to) && !present.has(to)).map((to) => `${path} imports ${to}`),
    );
    expect(dangling).toEqual([]);
  });
});

describe('what runs in a browser', () => {
  const nodeOnly = (path: string) =>
    /^(?:cli|frames|report\/writing)\//.test(path) || path === 'report/write.ts';

  it('reaches for no Node module outside cli, frames and the writing of the report', () => {
    const reaching = files.filter(
      ({ path, packages }) => !nodeOnly(path) && packages.some((name) => name.startsWith('node:')),
    );
    expect(reaching.map(({ path }) => path)).toEqual([]);
  });

  it('never imports a file that does', () => {
    const dragging = files.flatMap(({ path, imports }) =>
      nodeOnly(path) ? [] : imports.filter(nodeOnly).map((to) => `${path} imports ${to}`),
    );
    expect(dragging).toEqual([]);
  });

  it('frames are imported by the cli alone, and lazily', () => {
    const eager = files.flatMap(({ path, imports, lazy }) =>
      path.startsWith('frames/')
        ? []
        : imports
            .filter((to) => to.startsWith('frames/'))
            .filter((to) => !(path.startsWith('cli/') && lazy.includes(to)))
            .map((to) => `${path} imports ${to}`),
    );
    expect(eager).toEqual([]);
  });
});
