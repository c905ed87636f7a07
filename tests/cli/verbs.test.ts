import { copyFileSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { AnalysisResult } from '../../src/study/results/results.ts';
import type { StudyInput } from '../../src/study/schema.ts';
import { demoRun } from '../demo/demo-run.ts';
import { freshFolder, ROOT, thrum } from './thrum.ts';

const DEMO = join(ROOT, 'datasets/demo');
const folder = freshFolder();

describe('thrum read', () => {
  it('shows dialect, columns and ledger of a table it was never told of', async () => {
    const { status, out, err } = await thrum('read', join(DEMO, 'quorrimel-katalog.csv'));
    expect([status, err]).toEqual([0, '']);
    expect(out).toContain('87 rows read: 86 kept, 1 set aside.');
    expect(out).toContain('Encoding windows-1252, cells divided by semicolon, decimal mark ","');
    expect(out).toMatch(/Reihenabstand \(mm\) +rowSpacing +mm/);
    expect(out).toMatch(/Ledger: \d+ entries/);
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(160);
  });

  it('saves a profile with which the table reads the same again', async () => {
    const table = join(folder, 'katalog.csv');
    copyFileSync(join(DEMO, 'quorrimel-katalog.csv'), table);
    const first = await thrum('read', table, '--save-profile', '--json');
    const second = await thrum('read', table, '--profile', join(folder, 'katalog.profile.json'), '--json');
    expect([first.status, second.status]).toEqual([0, 0]);
    type Reading = { columns: { header: string; attributes: string[]; unit?: string }[]; rowsKept: number };
    const essence = (text: string) => {
      const { columns, rowsKept } = JSON.parse(text) as Reading;
      return { rowsKept, columns: columns.map(({ header, attributes, unit }) => [header, attributes, unit]) };
    };
    expect(essence(second.out)).toEqual(essence(first.out));
  });

  it('writes a study to begin with, which runs, and never over one that is there', async () => {
    const table = join(folder, 'begin.csv');
    const rows = Array.from(
      { length: 12 },
      (_, i) => `f${i},${i % 2 ? 'Ness' : 'Holm'},${i % 3 ? 'tabby' : 'twill'},${i + 3}`,
    );
    writeFileSync(table, `id,site,structure,density 1 (per cm)\n${rows.join('\n')}\n`);
    const begun = await thrum('read', table, '--save-study');
    expect([begun.status, begun.err]).toEqual([0, '']);
    const study = join(folder, 'begin.study.json');
    const { sources, analyses } = JSON.parse(readFileSync(study, 'utf8')) as StudyInput;
    expect(sources).toEqual([{ file: 'begin.csv', profile: 'begin.profile.json' }]);
    expect(analyses?.map(({ kind }) => kind)).toEqual([
      'summary',
      'summary',
      'contrast',
      'crosstab',
      'grouping',
    ]);
    const run = await thrum('run', study, '--out', join(folder, 'begun'), '--no-report');
    expect([run.status, run.err]).toEqual([0, '']);
    expect(run.out).not.toContain('Could not be computed');
    const older = join(folder, 'begun', 'report.html');
    writeFileSync(older, 'of an earlier run');
    const anew = await thrum('run', study, '--out', join(folder, 'begun'), '--no-report');
    expect(anew.out).toContain('Not of this run, and left as it is: report.html\n');
    expect(readFileSync(older, 'utf8')).toBe('of an earlier run');
    const again = await thrum('read', table, '--save-study');
    expect([again.status, again.err]).toEqual([
      2,
      `${study}: this file is there already; name another file with --save-study.\n`,
    ]);
  });

  it('reads a table as its data package says, and begins a study with that as the profile', async () => {
    const own = freshFolder();
    const table = join(own, 'packed.csv');
    writeFileSync(table, 'id;site;length (mm)\na;Ness;35,5\nb;Ness;-9\n');
    const described = {
      resources: [
        {
          path: 'packed.csv',
          dialect: { delimiter: ';' },
          schema: {
            fields: [{ name: 'length (mm)', type: 'number', decimalChar: ',' }],
            missingValues: ['-9'],
          },
        },
      ],
    };
    const descriptor = join(own, 'datapackage.json');
    writeFileSync(descriptor, JSON.stringify(described));
    const { status, out } = await thrum('read', table, '--profile', descriptor, '--save-study', '--json');
    expect(status).toBe(0);
    // Read without the package, -9 is a length that is hardly possible.
    expect(JSON.parse(out)).toMatchObject({ dialect: { delimiter: ';' }, quality: { outOfBounds: [] } });
    const { sources } = JSON.parse(readFileSync(join(own, 'packed.study.json'), 'utf8')) as StudyInput;
    expect(sources).toEqual([{ file: 'packed.csv', profile: 'packed.profile.json' }]);
    expect(JSON.parse(readFileSync(join(own, 'packed.profile.json'), 'utf8'))).toMatchObject({
      delimiter: ';',
      missing: { '-9': 'not-observed' },
    });
    const other = await thrum('read', join(DEMO, 'assemblages.csv'), '--profile', descriptor);
    expect([other.status, other.err]).toEqual([
      2,
      `${descriptor}: the data package does not describe assemblages.csv; name one of its tables: packed.csv.\n`,
    ]);
  });

  it('uses a near match only when told to, and then only what is beyond doubt', async () => {
    const near = join(freshFolder(), 'near.csv');
    const rows = ['wool', 'wool', 'flax', 'flax'].map((fibre, row) => `${row},Holm,${4 + row},${fibre}\n`);
    writeFileSync(near, `Cat. no.,Site,Row spacng (mm),Fibr\n${rows.join('')}`);
    const columns = async (...more: string[]) => {
      const { out } = await thrum('read', near, '--json', ...more);
      return (
        JSON.parse(out) as { columns: { header: string; status: string; suggestion?: { sure: boolean } }[] }
      ).columns;
    };
    const open = await columns();
    const left = (await columns('--accept-suggestions')).filter(({ status }) => status === 'suggested');
    const suggested = open.filter(({ status }) => status === 'suggested');
    expect(suggested.some(({ suggestion }) => suggestion?.sure)).toBe(true);
    expect(left.map(({ header }) => header)).toEqual(
      suggested.filter(({ suggestion }) => !suggestion?.sure).map(({ header }) => header),
    );
  });

  it('reads a sheet of a spreadsheet, and asks which where several hold something', async () => {
    const book = join(ROOT, 'tests/references/workbook.xlsx');
    const unnamed = await thrum('read', book);
    expect([unnamed.status, unnamed.err]).toEqual([
      2,
      'workbook.xlsx: 2 sheets hold something; name one of "Liste Nord", "Liste Süd".\n',
    ]);
    const named = await thrum('read', book, '--sheet', 'Liste Nord');
    expect([named.status, named.err]).toEqual([0, '']);
    expect(named.out).toMatch(/rows read: [1-9]/);
  });

  it('writes the ledger as CSV, one line an entry', async () => {
    const ledger = join(folder, 'ledger.csv');
    const { out } = await thrum('read', join(DEMO, 'tazzimbe-ysketh.csv'), '--ledger', ledger, '--json');
    const { ledger: entries } = JSON.parse(out) as { ledger: unknown[] };
    const lines = readFileSync(ledger, 'utf8').split('\r\n').length - 2;
    expect(lines).toBeGreaterThan(50);
    expect(lines).toBe(entries.length);
  });
});

describe('thrum demo', () => {
  it('writes the hard cases as a study of their own, which can be read', async () => {
    const own = freshFolder();
    const { out, status } = await thrum('demo', '--hard-cases', own);
    expect(status).toBe(0);
    expect(out).toContain('1 file that it names');
    const read = await thrum('read', join(own, 'varnath-hard-cases.csv'), '--study', join(own, 'study.json'));
    expect(read.out).toContain('17 rows read: 17 kept');
    expect((await thrum('demo', '--hard-cases', own)).err).toContain('is there already');
  });
});

describe('thrum run', () => {
  it('writes the same bytes twice', async () => {
    const study = join(ROOT, 'datasets/open/iris-study.json');
    const outs = [join(folder, 'once'), join(folder, 'twice')];
    for (const out of outs) expect((await thrum('run', study, '--out', out)).status).toBe(0);
    for (const name of ['results.json', 'report.html', 'fragments.csv', 'ledger.csv', 'datapackage.json']) {
      const [once, twice] = outs.map((out) => readFileSync(join(out, name)));
      expect(once.equals(twice), name).toBe(true);
    }
  });

  it('computes every analysis of the demo, and prints a summary that fits the terminal', async () => {
    const { outcome, results } = await demoRun();
    expect([outcome.status, outcome.err]).toEqual([0, '']);
    expect(Object.values(results.analyses).filter(({ why }) => why !== undefined)).toEqual([]);
    expect(outcome.out).toContain('396 fragments of 258 items');
    // The names of the files it wrote are as long as their folder's.
    const [summary = ''] = outcome.out.split('\nWritten: ');
    expect(Math.max(...summary.split('\n').map((line) => line.length))).toBeLessThanOrEqual(100);
  }, 180_000);

  it('with --json prints the very bytes of results.json', async () => {
    const out = join(folder, 'json');
    const run = await thrum('run', join(ROOT, 'datasets/open/countries-study.json'), '--out', out, '--json');
    expect(run.out).toBe(readFileSync(join(out, 'results.json'), 'utf8'));
  });
});

describe('thrum place', () => {
  const study = join(DEMO, 'study.json');

  it('sets a find among the records, attributes named by id or by synonym', async () => {
    const find = [
      '--find',
      'rowSpacing=c. 32 mm',
      '--find',
      'Bindung=Zwirnbindung mit Abstand',
      '--find',
      'fibre=lime bast',
    ];
    const { status, out } = await thrum('place', study, ...find, '--json');
    expect(status).toBe(0);
    const result = JSON.parse(out) as AnalysisResult;
    expect(result.kind).toBe('placement');
    expect(result.options.find).toEqual({
      rowSpacing: 'c. 32 mm',
      structure: 'Zwirnbindung mit Abstand',
      fibre: 'lime bast',
    });
    expect((await thrum('place', study, ...find)).out).toContain('nearest');
  });

  it.each([
    [['--find', 'rowSpaceing=3'], 'write "rowSpacing" if that is meant'],
    [['--find', 'rowSpacing'], 'write it as "attribute=value"'],
    [[], 'no --find is given'],
  ])('refuses %j in one sentence', async (find, said) => {
    const { status, err } = await thrum('place', study, ...find);
    expect(status).toBe(2);
    expect(err).toContain(said);
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });
});
