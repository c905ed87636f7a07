import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

export const SOURCE = fileURLToPath(new URL('../../src', import.meta.url));

export interface SourceFile {
  /** Relative to src/, with forward slashes. */
  readonly path: string;
  readonly text: string;
  /** Files under src/ that it imports, relative to src/. */
  readonly imports: readonly string[];
  /** Packages and node: modules that it imports. */
  readonly packages: readonly string[];
  /** Those imports that are `import('…')` expressions. */
  readonly lazy: readonly string[];
}

const STATIC =
  /(?:^|\n)\s*(?:import|export)\s[^'";]*?from\s*['"]([^'"]+)['"]|(?:^|\n)\s*import\s*['"]([^'"]+)['"]/g;
const LAZY = /\bimport\(\s*['"]([^'"]+)['"]\s*\)|new URL\(\s*['"](\.[^'"]+\.tsx?)['"]/g;

/** Every TypeScript file under src/, with what it imports. */
export function sourceFiles(): SourceFile[] {
  return readdirSync(SOURCE, { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.tsx?$/.test(path))
    .map((path) => path.replaceAll('\\', '/'))
    .sort()
    .map(read);
}

function read(path: string): SourceFile {
  const text = withoutComments(readFileSync(join(SOURCE, path), 'utf8'));
  const found = (pattern: RegExp) => [...text.matchAll(pattern)].map((match) => match[1] ?? match[2]);
  const lazy = found(LAZY);
  const all = [...found(STATIC), ...lazy];
  const local = (name: string) => name.startsWith('.');
  const resolve = (name: string) =>
    relative(SOURCE, normalize(join(SOURCE, dirname(path), name))).replaceAll('\\', '/');
  return {
    path,
    text,
    imports: all.filter(local).map(resolve),
    packages: all.filter((name) => !local(name)),
    lazy: lazy.filter(local).map(resolve),
  };
}

/**
 * Comments blanked out, line ends kept: blocks and lines that start a line, and remarks at its end. Told by
 * their place, not by pairing quotes, which a pattern such as /'/ would put out of step.
 */
export function withoutComments(text: string): string {
  const comments = /^[ \t]*\/\*[\s\S]*?\*\/|^[ \t]*\/\/[^\n]*|(?<=[;,{}()\]][ \t]+)\/\/[^\n]*/gm;
  return text.replace(comments, (comment) => comment.replace(/[^\n]/g, ' '));
}
