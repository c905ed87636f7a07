import { readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const SOURCE = resolve(import.meta.dirname, '../../src');
const IMPORT = /^(?:import|export)\s+(?!type\b)(?:[^'"]*?\sfrom\s+)?'(\.[^']+)'/gms;

/** Files that are loaded with one, by imports that are no types and are not awaited. */
function loadedWith(file: string, seen = new Set<string>()): ReadonlySet<string> {
  if (seen.has(file)) return seen;
  seen.add(file);
  for (const [, path] of readFileSync(file, 'utf8').matchAll(IMPORT))
    loadedWith(join(dirname(file), path!), seen);
  return seen;
}

const named = (file: string) => [...loadedWith(join(SOURCE, file))].map((one) => relative(SOURCE, one));

describe('the command line loads what it is asked for', () => {
  it('for a table, no analysis and nothing that checks a study', () => {
    const files = named('cli/verbs/read.ts');
    expect(files).toContain('sources/read-source.ts');
    expect(files.filter((file) => /^analyses\/[^/]+\//.test(file))).toEqual([]);
    expect(files.filter((file) => /^study\/(?:load|schema|run-study|start-study)\.ts$/.test(file))).toEqual(
      [],
    );
  });
  it('for the version, no verb', () => {
    expect(named('cli/main.ts').filter((file) => file.startsWith('cli/verbs/'))).toEqual([]);
    expect(named('cli/main.ts').filter((file) => /^(?:sources|analyses|attributes)\//.test(file))).toEqual(
      [],
    );
  });
  it('for a study, the analyses: what is looked at here finds them', () => {
    expect(named('cli/verbs/run.ts')).toContain('analyses/summary/compute.ts');
  });
});

describe('the workbench loads what a screen shows', () => {
  it('on the page no analysis that computes and no study that runs: its worker does', () => {
    const computes = (file: string) => /^analyses\/[^/]+\/(?:compute|index)\.ts$/.test(file);
    const page = named('app/main.tsx');
    expect(page).toContain('app/screens/kinship/index.tsx');
    expect(page.filter(computes)).toEqual([]);
    expect(page.filter((file) => /^study\/(?:load|schema|run-study|prepare)\.ts$/.test(file))).toEqual([]);
    expect(named('app/engine/worker.ts').filter(computes)).toContain('analyses/typology/compute.ts');
  });
});
