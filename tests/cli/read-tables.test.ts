import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { StudyInput } from '../../src/study/schema.ts';
import { thrum } from './thrum.ts';

/** Invented tables about spindle whorls; what is expected follows from their texts. */
const folder = mkdtempSync(join(tmpdir(), 'thrum-tables-'));
const write = (name: string, text: string) => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};
const SHAPES = ['disc', 'cone', 'sphere'];
const a = write(
  'a.csv',
  `Whorl,Site,Mass (g),Bore,Shape,Holed\n${Array.from(
    { length: 12 },
    (_, i) =>
      `W${i},${i % 2 ? 'Ottmere' : 'Pell'},${12 + i},${6 + (i % 4)},${SHAPES[i % 3]},${i % 5 ? 'yes' : 'no'}`,
  ).join('\n')}\n`,
);
const b = write('b.csv', 'Whorl;Site;Mass (g);Shape\nX1;Garth;11;disc\nX2;Garth;13;cone\nX3;Pell;9;disc\n');
const places = write(
  'places.csv',
  'Site,Region,from,to\nOttmere,Coast,-400,-100\nPell,Coast,-50,100\nGarth,Hills,1,200\n',
);

describe('thrum read --as-is', () => {
  it('takes every column that nothing claims by what its cells hold, shows three of them, and writes the attributes', async () => {
    const { status, out } = await thrum('read', a, '--as-is', '--save-study');
    expect(status).toBe(0);
    expect(out).toMatch(
      /1 column of numbers[\s\S]*Bore +6 · 7 · 8[\s\S]*1 column of kinds[\s\S]*Shape[\s\S]*yes or no[\s\S]*Holed/,
    );
    const study = JSON.parse(readFileSync(join(folder, 'a.study.json'), 'utf8')) as StudyInput;
    expect(study.attributes?.map(({ id, scale }) => [id, scale])).toEqual([
      ['bore', 'ratio'],
      ['shape', 'nominal'],
      ['holed', 'presence'],
    ]);
    const run = await thrum('run', join(folder, 'a.study.json'), '--out', join(folder, 'out'), '--no-report');
    expect([run.status, run.err]).toEqual([0, '']);
    expect(run.out).not.toContain('Could not be computed');
    expect(study.analyses?.map(({ kind }) => kind)).toEqual([
      'summary',
      'summary',
      'contrast',
      'crosstab',
      'grouping',
    ]);
  });
});

describe('several tables at once', () => {
  it('are shown side by side, joined by key, and begin one study', async () => {
    const { status, out } = await thrum(
      'read',
      a,
      b,
      places,
      '--as-is',
      '--save-study',
      join(folder, 'all.json'),
      '--save-profile',
    );
    expect(status).toBe(0);
    expect(out).toMatch(/Shape +Shape +Shape/);
    expect(out).toMatch(/"places\.csv" describes the rows of "a\.csv" by Site and is joined to them: 2 of 2/);
    expect(out).toMatch(/Ready: 3 tables, 15 rows, 3 sites; 2 columns of numbers and 2 of kinds/);
    const study = JSON.parse(readFileSync(join(folder, 'all.json'), 'utf8')) as StudyInput;
    expect(study.sources.map(({ file }) => file)).toEqual(['a.csv', 'b.csv', 'places.csv']);
    const run = await thrum('run', join(folder, 'all.json'), '--out', join(folder, 'all'), '--no-report');
    expect([run.status, run.err]).toEqual([0, '']);
    const results = JSON.parse(readFileSync(join(folder, 'all', 'results.json'), 'utf8')) as {
      study: { sources: { role: string; rowsKept: number }[] };
    };
    expect(results.study.sources.map(({ role, rowsKept }) => [role, rowsKept])).toEqual([
      ['fragments', 12],
      ['fragments', 3],
      ['assemblages', 3],
    ]);
  });

  it('are refused what is said of one alone', async () => {
    const { status, err } = await thrum('read', a, b, '--profile', join(folder, 'x.json'));
    expect([status, err]).toEqual([
      2,
      '--profile is for one table, and 2 are named; read that table by itself.\n',
    ]);
  });
});

describe('thrum read of a table of odd size', () => {
  it('shows of a cell of 50,000 letters as much as a line holds', async () => {
    const path = write(
      'long.csv',
      `Find no.,Site,Structure\n1,Pell,"${'y'.repeat(50_000)}"\n2,Pell,tabby\n3,Pell,tabby\n`,
    );
    const { status, out } = await thrum('read', path);
    expect(status).toBe(0);
    expect(out).toContain('(50000 letters)');
    expect(out.length).toBeLessThan(5000);
  });

  it('lists all columns that are understood, and of the others as many as anybody looks through', async () => {
    const others = Array.from({ length: 900 }, (_, i) => `V${i}`);
    const path = write(
      'wide.csv',
      `Find no.,Site,${others.join(',')},Row spacing (mm)\n1,Pell,${others.join(',')},3\n2,Pell,${others.join(',')},4\n`,
    );
    const { out } = await thrum('read', path);
    expect(out).toMatch(/^Row spacing \(mm\) +rowSpacing/m);
    expect(out).toContain('and 600 more that were not understood; --json has them all.');
    expect(out).toMatch(/^V299 /m);
    expect(out).not.toMatch(/^V300 /m);
  });
});

describe('which column names the object', () => {
  const text = `Find no.,Bundle,Site,Structure,Fibre\n${Array.from({ length: 18 }, (_, row) => {
    const object = row % 6;
    return `F${row},B${object},Ottmere,${['tabby', '2/2 twill'][object % 2]},${['wool', 'flax', 'hemp'][object % 3]}`;
  }).join('\n')}\n`;
  const bundles = write('bundles.csv', text);

  it('is asked, with what speaks for each and how to confirm one; the study that is begun says nothing of it', async () => {
    const { status, out } = await thrum('read', bundles, '--save-study');
    expect(status).toBe(0);
    const flat = out.replace(/\s+/g, ' ');
    expect(flat).toContain('Which column of bundles.csv names the object that a fragment is of?');
    expect(flat).toContain(
      '1. "Bundle": for it: 6 names in 18 rows, 3.0 rows each, rows of one name agree in 100 of 100 pairs, rows of different names in 0; nothing against it.',
    );
    expect(flat).toContain('Left open in the study, which column names the object:');
    expect(flat).toContain(
      'perhaps "Bundle". To confirm "Bundle": "witness": { "is": "column" } in the study',
    );
    const path = join(folder, 'bundles.study.json');
    const study = JSON.parse(readFileSync(path, 'utf8')) as StudyInput;
    expect(study).not.toHaveProperty('witness');
    expect(readFileSync(join(folder, 'bundles.profile.json'), 'utf8')).not.toContain('"item"');

    // What is printed is what confirms it.
    const profile = JSON.parse(readFileSync(join(folder, 'bundles.profile.json'), 'utf8'));
    const columns = profile.columns.map((rule: { header: string }) =>
      rule.header === 'Bundle' ? { header: 'Bundle', attribute: 'item' } : rule,
    );
    write('bundles.profile.json', JSON.stringify({ ...profile, columns }));
    write('bundles.study.json', JSON.stringify({ ...study, witness: { is: 'column' } }));
    const run = await thrum('run', path, '--out', join(folder, 'bundles-out'), '--no-report');
    expect(run.out).toContain('18 fragments of 6 items; one record one item.');
  });

  it('is in --json too, for one table and for several', async () => {
    const one = JSON.parse((await thrum('read', bundles, '--json')).out);
    expect(one.witness).toMatchObject([{ header: 'Bundle', names: 6, rows: 18, needsProfile: true }]);
    const two = JSON.parse((await thrum('read', a, bundles, '--json')).out);
    expect(two.tables.map(({ witness }: { witness: unknown[] }) => witness.length)).toEqual([0, 1]);
  });
});
