import { describe, expect, it } from 'vitest';
import { checkStudy } from '../../src/study/load.ts';
import { prepareStudy } from '../../src/study/prepare.ts';
import { readinessOf } from '../../src/study/readiness/readiness.ts';
import { runStudy } from '../../src/study/run-study.ts';

/** Invented finds of two places; three of them are known only to be of one or the other. */
function table(): string {
  const lines = ['Cat. no.,Site,Structure,Row spacing (mm)'];
  for (let at = 0; at < 12; at++) {
    lines.push(`h${at},Harrow,${at < 9 ? 'open twining' : 'tabby'},${8 + (at % 4)}`);
    lines.push(`k${at},Kelder,${at < 3 ? 'open twining' : 'tabby'},${8 + (at % 5)}`);
  }
  for (let at = 0; at < 3; at++) lines.push(`b${at},Harrow Strand and Kelder,open twining,30`);
  return `${lines.join('\n')}\n`;
}

const files = new Map([['finds.csv', new TextEncoder().encode(table())]]);
const studyWith = (names: readonly object[]) =>
  checkStudy(
    {
      title: 't',
      sources: [{ file: 'finds.csv' }],
      witness: { is: 'row' },
      names,
      analyses: [
        { id: 'differ', kind: 'contrast', of: ['rowSpacing'], by: 'site', resamples: 199 },
        { id: 'table', kind: 'crosstab', rows: 'site', columns: 'structure', resamples: 199 },
      ],
    },
    'study.json',
  );
const run = (names: readonly object[]) => runStudy(studyWith(names), files).analyses;
const compound = { attribute: 'site', name: 'Harrow Strand and Kelder' };

const sitesOf = (rows: readonly (readonly unknown[])[] | undefined) =>
  new Set((rows ?? []).flatMap((row) => row.filter((cell) => typeof cell === 'string')));

describe('a site that is named as two', () => {
  it('is no third site in any answer, and the answers say so', () => {
    const { table: crossed, differ } = run([]);
    expect(JSON.stringify(crossed?.tables.counts?.rows ?? crossed?.tables)).not.toContain('Strand');
    const turns = differ?.words.unless.filter(({ what }) => what.includes('names of their own')) ?? [];
    expect(turns).toHaveLength(1);
    expect(turns[0]?.what).toContain('Harrow Strand and Kelder (Harrow or Kelder)');
    expect(differ?.words.answer).not.toContain('three groups');
  });

  it('is asked about before any answer', () => {
    const lines = readinessOf(prepareStudy(studyWith([]), files)).filter(
      ({ topic }) => topic === 'compounds',
    );
    expect(lines).toMatchObject([{ state: 'ask', says: expect.stringContaining('3 fragments') }]);
    const labels = readinessOf(prepareStudy(studyWith([]), files)).find(({ topic }) => topic === 'labels');
    expect(labels?.says).toContain('site unknown of 3');
  });

  it('once called one of the two, is tried as either', () => {
    const { differ } = run([{ ...compound, oneOf: ['Harrow', 'Kelder'] }]);
    const said = differ?.words.unless.map(({ what }) => what).filter((what) => what.startsWith('Taken at'));
    expect(said).toEqual([
      'Taken at the first of what each may be: Harrow Strand and Kelder as Harrow',
      'Taken at the last of what each may be: Harrow Strand and Kelder as Kelder',
    ]);
    expect(differ?.words.unless.some(({ what }) => what.includes('names of their own'))).toBe(false);
  });

  it('is a site of its own where somebody says so, and one of a single place where that is said', () => {
    const own = run([{ ...compound, not: ['Harrow', 'Kelder'] }]);
    expect(sitesOf(own.table?.tables.counts?.rows)).toContain('Harrow Strand and Kelder');
    const one = run([{ attribute: 'site', name: 'Harrow', also: ['Harrow Strand and Kelder'] }]);
    expect(JSON.stringify(one.table?.tables)).not.toContain('Strand');
    expect(one.differ?.words.unless.some(({ what }) => /Taken at|names of their own/.test(what))).toBe(false);
  });
});
