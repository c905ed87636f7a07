import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../cli/thrum.ts';

interface Packed {
  readonly size: number;
  readonly files: readonly { readonly path: string }[];
}

const manifest = JSON.parse(readFileSync(`${ROOT}/package.json`, 'utf8')) as {
  readonly dependencies: Readonly<Record<string, string>>;
  readonly exports: Readonly<Record<string, string | { types: string; default: string }>>;
  readonly bin: Readonly<Record<string, string>>;
};

describe('the package', () => {
  // What npm would pack of the last build, as the README's test command makes it.
  const [packed] = JSON.parse(
    execFileSync('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], { cwd: ROOT, encoding: 'utf8' }),
  ) as readonly Packed[];
  const paths = new Set(packed?.files.map(({ path }) => path));

  it('is small, and holds what a user needs and no more', () => {
    expect(packed?.size).toBeLessThan(6 * 1024 * 1024);
    expect(
      [...paths].filter(
        (path) => !/^(?:dist|docs\/schemas|datasets\/demo)\/|^[A-Z]+(?:\.md)?$|^package\.json$/.test(path),
      ),
    ).toEqual([]);
    expect([...paths].filter((path) => path.endsWith('.map'))).toEqual([]);
    for (const path of ['README.md', 'LICENSE', 'SECURITY.md', 'datasets/demo/study.json'])
      expect(paths.has(path), path).toBe(true);
  });

  it('holds what it says that it exports', () => {
    const named = Object.values(manifest.exports).flatMap((one) =>
      typeof one === 'string' ? [one] : [one.types, one.default],
    );
    const plain = [...named, ...Object.values(manifest.bin)].filter((path) => !path.includes('*'));
    expect(plain.map((path) => path.replace('./', '')).filter((path) => !paths.has(path))).toEqual([]);
  });

  it('asks for nothing that the workbench has bundled, nor for data frames', () => {
    const needed = Object.keys(manifest.dependencies);
    expect(needed.filter((name) => /react|vollkorn|comlink|danfo/.test(name))).toEqual([]);
  });
});
