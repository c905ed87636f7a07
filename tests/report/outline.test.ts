import { describe, expect, it } from 'vitest';
import type { ResultTable } from '../../src/analyses/contract.ts';
import { ANALYSES } from '../../src/analyses/register.ts';
import { cite, outlineOf } from '../../src/report/page/outline.ts';
import type { Results } from '../../src/study/results/results.ts';

const table = (rows: number, title = 't'): ResultTable => ({
  title,
  columns: [{ id: 'n', label: 'n' }],
  rows: Array.from({ length: rows }, (_, row) => [row]),
});
const figure = { data: [], layout: {}, caption: 'c' };

const outline = (
  ...questions: { kind?: string; tables: Record<string, ResultTable>; figures?: string[] }[]
) =>
  outlineOf({
    analyses: Object.fromEntries(
      questions.map(({ kind = 'claims', tables, figures = [] }, at) => [
        `q${at + 1}`,
        { kind, tables, figures: Object.fromEntries(figures.map((name) => [name, figure])) },
      ]),
    ),
  } as unknown as Results);

describe('figures and tables of a report', () => {
  it('are numbered through all questions, each with the file that holds all of it', () => {
    const [first, second] = outline(
      { tables: { a: table(3), b: table(2) }, figures: ['x', 'y'] },
      { tables: { a: table(1) }, figures: ['x'] },
    );
    expect([first.figure?.number, first.furtherFigures.map(({ number }) => number)]).toEqual([1, [2]]);
    expect([second.figure?.number, second.furtherFigures]).toEqual([3, []]);
    expect([first.table?.number, first.furtherTables.map(({ number }) => number)]).toEqual([1, [2]]);
    expect([second.table?.number, second.table?.file, second.table?.name]).toEqual([
      3,
      'tables/q2-a.csv',
      'q2-a',
    ]);
  });

  it('leave out tables without lines, and keep those of more than 30 out of the text', () => {
    const [question] = outline({ tables: { none: table(0), long: table(31), fits: table(30) } });
    expect(question.table?.table.rows).toHaveLength(30);
    expect(question.furtherTables.map((one) => one.table.rows.length)).toEqual([31]);
    const [long] = outline({ tables: { long: table(31) } });
    expect([long.table, long.furtherTables.length]).toEqual([null, 1]);
  });

  it.each(
    ANALYSES.filter(({ leads }) => leads?.table !== undefined).map(
      ({ kind, leads }) => [kind, leads!] as const,
    ),
  )('of %s begin with what leads its answer', (kind, leads) => {
    const [question] = outline({
      kind,
      tables: { aaa: table(2), [leads.table ?? '']: table(2) },
      figures: ['aaa', ...(leads.figure === undefined ? [] : [`${leads.figure}-width`])],
    });
    expect(question.table?.name).toBe(`q1-${leads.table}`);
    expect(question.figure?.name).toBe(leads.figure === undefined ? 'q1-aaa' : `q1-${leads.figure}-width`);
  });

  it('have addresses without blanks', () => {
    const [question] = outline({ tables: { 'a b/c': table(1) } });
    expect(question.table?.name).toBe('q1-a-b-c');
  });

  it.each([
    [[], ''],
    [[3], 'Figure 3'],
    [[3, 4], 'Figures 3 and 4'],
    [[3, 4, 5], 'Figures 3 to 5'],
  ])('%j are cited as "%s"', (numbers, cited) => {
    expect(cite('Figure', numbers)).toBe(cited);
  });
});
