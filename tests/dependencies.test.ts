import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

interface Lock {
  readonly packages: Readonly<Record<string, { readonly version?: string; readonly license?: string }>>;
}

const root = (file: string): string => readFileSync(new URL(`../${file}`, import.meta.url), 'utf8');
const manifest = JSON.parse(root('package.json')) as Record<
  'dependencies' | 'devDependencies',
  Record<string, string>
>;
const lock = JSON.parse(root('package-lock.json')) as Lock;

/** Rows "| `name` … | version | licence |" of the page's tables. */
const documented = new Map(
  [...root('docs/dependencies.md').matchAll(/^\| `([^`]+)`[^|]*\| ([\d.]+) +\| ([^|]+) \|/gm)].map(
    ([, name, version, licence]) => [name!, { version: version!, licence: licence!.trim() }],
  ),
);

describe('docs/dependencies.md', () => {
  const direct = { ...manifest.dependencies, ...manifest.devDependencies };

  it('names every direct dependency and no other', () => {
    expect([...documented.keys()].sort()).toEqual(Object.keys(direct).sort());
  });

  it.each(Object.keys(direct))('states the installed version and licence of %s', (name) => {
    const installed = lock.packages[`node_modules/${name}`]!;
    expect(documented.get(name)).toEqual({ version: installed.version, licence: installed.license });
  });

  it('every direct dependency is pinned to one version', () => {
    for (const wanted of Object.values(direct)) expect(wanted).toMatch(/^(npm:@?[\w/-]+@)?\d+\.\d+\.\d+$/);
  });
});
