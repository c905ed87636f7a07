import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import ts from 'typescript';

/** Which tests could notice that a file is broken: those that import it, over however many others. */
export interface Importers {
  /** Test files that import the file, relative to the root: those of the same folder first. */
  readonly testsOf: (file: string, seconds: (test: string) => number) => readonly string[];
}

/** Tests that drive a browser or an installed package work on what was built before, not on the broken file. */
const BUILT = /^(?:playwright-core|deno)$/;

/** Reads every import of src/ and tests/; imports of types alone do not count, since they are gone when tests run. */
export function readImporters(root: string): Importers {
  const files = ['src', 'tests'].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((path) => /\.tsx?$/.test(path) && !path.includes('node_modules'))
      .map((path) => `${folder}/${path.replaceAll('\\', '/')}`),
  );
  const importedBy = new Map<string, string[]>();
  for (const file of files)
    for (const name of importsOf(file, readFileSync(join(root, file), 'utf8'))) {
      const to = name.startsWith('.') ? normalize(join(dirname(file), name)) : name;
      importedBy.set(to, [...(importedBy.get(to) ?? []), file]);
    }
  const reaching = (to: string) => distancesFrom(to, importedBy);
  const built = new Set(
    [...importedBy.keys()].filter((name) => BUILT.test(name)).flatMap((name) => [...reaching(name).keys()]),
  );
  return {
    testsOf: (file, seconds) => {
      const distance = reaching(file);
      const tests = [...distance.keys()].filter((path) => path.endsWith('.test.ts') && !built.has(path));
      // Then those of a folder nearby, the quick before the slow: a bound on time then leaves out the fewest.
      const near = new Map(tests.map((test) => [test, sharedFolders(test, file)]));
      return tests.sort(
        (a, b) => (near.get(b) ?? 0) - (near.get(a) ?? 0) || seconds(a) - seconds(b) || (a < b ? -1 : 1),
      );
    },
  };
}

function importsOf(file: string, text: string): string[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, false);
  const lasting = source.statements.flatMap((statement) => {
    if (ts.isImportDeclaration(statement) && !isOfTypes(statement.importClause))
      return [statement.moduleSpecifier];
    if (ts.isExportDeclaration(statement) && !statement.isTypeOnly && statement.moduleSpecifier !== undefined)
      return [statement.moduleSpecifier];
    return [];
  });
  const lazy = [...text.matchAll(/\bimport\(\s*'([^']+)'\s*\)/g)].map(([, name]) => name);
  return [...lasting.map((node) => (node as ts.StringLiteral).text), ...lazy];
}

function isOfTypes(clause: ts.ImportClause | undefined): boolean {
  return clause?.phaseModifier === ts.SyntaxKind.TypeKeyword;
}

function distancesFrom(
  file: string,
  importedBy: ReadonlyMap<string, readonly string[]>,
): ReadonlyMap<string, number> {
  const distance = new Map([[file, 0]]);
  for (const [path, steps] of distance)
    for (const next of importedBy.get(path) ?? []) if (!distance.has(next)) distance.set(next, steps + 1);
  return distance;
}

/** src/analyses/map/words.ts and tests/analyses/map/shown.test.ts share two. */
function sharedFolders(test: string, file: string): number {
  const [own, other] = [test, file].map((path) => path.split('/').slice(1, -1));
  const differ = own.findIndex((name, at) => name !== other[at]);
  return differ < 0 ? own.length : differ;
}
