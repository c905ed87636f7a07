import { describe, expect, it } from 'vitest';
import { COUNTED_KIND } from '../../src/sources/layout/counts.ts';
import { checkStudy } from '../../src/study/load.ts';
import { prepareStudy } from '../../src/study/prepare.ts';
import type { AnalysisResult } from '../../src/study/results/results.ts';
import { analyse } from '../../src/study/run-study.ts';
import { reference } from '../references/reference.ts';
import { bytes } from '../sources/support.ts';

/**
 * Every question that counts can answer, asked of a table of counts as a source. Inertias: R package ca, see
 * references/scripts/count-tables.R; what is expected of the small tables follows from their texts.
 */
const profile = (attribute: string) => JSON.stringify({ layout: { counts: { attribute } } });

function asked(
  tables: Readonly<Record<string, string>>,
  sources: readonly object[],
  analyses: readonly object[],
): Readonly<Record<string, AnalysisResult>> {
  const study = checkStudy({ title: 'counts', attributes: [COUNTED_KIND], sources, analyses }, 'study.json');
  const files = new Map(Object.entries(tables).map(([name, text]) => [name, bytes(text)]));
  return analyse(prepareStudy(study, files), files).analyses as Readonly<Record<string, AnalysisResult>>;
}

const COUNTS =
  'Site,jar,bowl,beaker,lid,Total\nHolm,12,4,0,1,17\nPell,3,9,2,0,14\nVell,20,1,5,3,29\nTarn,2,9,3,1,15\nTotal,37,23,10,5,75\n';

describe('a table of counts is asked', () => {
  const of = COUNTED_KIND.id;
  const answers = asked(
    { 'c.csv': COUNTS, 'c.profile.json': profile(of) },
    [{ file: 'c.csv', profile: 'c.profile.json' }],
    [
      { id: 'table', kind: 'crosstab', rows: 'site', columns: of },
      { id: 'alike', kind: 'similarity', assemblages: 'site', of },
      { id: 'what', kind: 'summary', of: [of], by: ['site'] },
      { id: 'axes', kind: 'ordination', method: 'ca', rows: 'site', columns: of, supplementary: ['Tarn'] },
      { id: 'standing', kind: 'standing', site: 'Holm', of },
      { id: 'where', kind: 'placement', find: { [of]: 'lid' }, labels: ['site'] },
    ],
  );

  it.each(Object.keys(answers))('%s and answers', (id) => {
    const { why, words } = answers[id] as AnalysisResult;
    expect(why).toBeUndefined();
    expect(words.answer).not.toBe('');
  });

  it('and counts objects, not lines: 75 of them', () => {
    for (const id of ['table', 'alike', 'what'])
      expect(answers[id]?.words.because.join(' '), id).toMatch(/\b75 fragments/);
    expect(answers.what?.words.because.join(' ')).toMatch(/jar 37 .*bowl 23 .*beaker 10 .*lid 5 /);
  });

  it('and a supplementary place has no say: three rows carry the axes', () => {
    expect(answers.axes?.words.answer).toContain('of 3 rows and 4 columns');
    const placed = answers.axes?.tables.coordinates?.rows.map((row) => row.slice(0, 2));
    expect(placed).toContainEqual(['Tarn', 'supplementary row']);
    expect(placed).toContainEqual(['Holm', 'row']);
  });
});

describe('counts beside fragments', () => {
  const answers = asked(
    {
      'c.csv': 'Site,tabby,twill\nHolm,4,2\nPell,1,5\n',
      'c.profile.json': profile('structure'),
      'f.csv':
        'Find no.,Site,Weave\n1,Vell,tabby\n2,Vell,tabby\n3,Vell,2/2 twill\n4,Vell,twill\n5,Holm,tabby\n',
    },
    [{ file: 'c.csv', profile: 'c.profile.json' }, { file: 'f.csv' }],
    [{ id: 'table', kind: 'crosstab', rows: 'site', columns: 'structure' }],
  );

  it('are one table, at the level to which both were recorded', () => {
    const { tables, why } = answers.table as AnalysisResult;
    expect(why).toBeUndefined();
    const counts = tables.counts ?? Object.values(tables)[0];
    const rows = Object.fromEntries((counts?.rows ?? []).map((row) => [String(row[0]), row.slice(1, 3)]));
    expect(rows.Holm).toEqual([5, 2]);
    expect(rows.Pell).toEqual([1, 5]);
    expect(rows.Vell).toEqual([2, 2]);
  });
});

interface Solved {
  readonly table: { readonly rows: string[]; readonly columns: string[]; readonly counts: number[][] };
  readonly inertias: number[];
}
const solved = reference<Record<'smoke' | 'author', Solved>>('count-tables');

it.each(['smoke', 'author'] as const)('%s, asked as a source, has the inertias of R ca', (name) => {
  const { table, inertias } = solved[name];
  const quoted = (cells: readonly string[]) =>
    cells.map((cell) => (/[",]/.test(cell) ? `"${cell}"` : cell)).join(',');
  const text = [['', ...table.columns], ...table.rows.map((row, i) => [row, ...table.counts[i].map(String)])]
    .map(quoted)
    .join('\n');
  const { axes } = asked(
    { 't.csv': text, 't.profile.json': profile(COUNTED_KIND.id) },
    [{ file: 't.csv', profile: 't.profile.json' }],
    [{ id: 'axes', kind: 'ordination', method: 'ca', rows: 'site', columns: COUNTED_KIND.id, axes: 3 }],
  );
  const found = (axes?.tables.axes?.rows ?? []).map((row) => Number(row[1]));
  expect(found.length).toBeGreaterThanOrEqual(3);
  for (const [k, value] of found.entries()) expect(Math.abs(value - inertias[k])).toBeLessThan(1e-9);
});
