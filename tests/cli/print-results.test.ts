import { createColors } from 'picocolors';
import { describe, expect, it } from 'vitest';
import type { Answer, ResultColumn } from '../../src/analyses/contract.ts';
import { yearColumn } from '../../src/analyses/years.ts';
import { printAnalysis } from '../../src/cli/print-results.ts';
import type { AnalysisResult } from '../../src/study/results/results.ts';

/** What is printed of one answer in brief. */
function inBrief(words: Answer, most: number): readonly string[] {
  let text = '';
  const quiet = () => undefined;
  const out = (more: string) => {
    text += more;
  };
  const result = {
    title: 'Spacing',
    words,
    tables: {},
    figures: {},
    n: { setAside: [] },
  } as unknown as AnalysisResult;
  const terminal = {
    out,
    err: quiet,
    width: 60,
    colour: createColors(false),
    progress: quiet,
    endProgress: quiet,
  };
  printAnalysis(terminal, 'spacing', result, { detail: 'brief', report: 'out/report.html' }, most);
  return text.trim().split('\n');
}

describe('an answer in brief', () => {
  const unless = [
    {
      what: 'Were the ranges read at their ends',
      size: 'the groups are no longer told apart',
      overturns: true,
    },
    { what: 'Few items', size: 'nothing', overturns: false },
  ];
  const because = [
    'n = 20 items (10 and 10); medians 3 and 4 mm; Mann-Whitney U 12, p = 0.03',
    'A second line.',
  ];

  it('says the answer, the first of the evidence, the worst that would change it whole, how many more, and where', () => {
    const lines = inBrief({ answer: 'An answer.', because, unless }, 1);
    expect(lines[0]).toBe('spacing  Spacing  (0 tables and 0 figures: #spacing)');
    expect(lines[1]).toBe('An answer.');
    expect(lines[2]).toBe('  · n = 20 items (10 and 10); medians 3 and 4 mm … (+1)');
    expect(lines.slice(3).join(' ').replace(/ +/g, ' ')).toBe(
      ' ! Were the ranges read at their ends: the groups are no longer told apart. (+1)',
    );
  });

  it('cuts what long turns come to, between clauses, and never what is done otherwise', () => {
    const clause = 'so long a clause that it fills a good part of a line of the terminal by itself';
    const turn = (what: string, size: string) => [{ what, size, overturns: false }];
    const told = (one: typeof unless) =>
      inBrief({ answer: 'A.', because: [], unless: one }, 1).slice(2).join(' ').replace(/ +/g, ' ');
    expect(told(turn('Were it so', `first; ${clause}; ${clause}; ${clause}`))).toBe(
      ` ! Were it so: first; ${clause} …`,
    );
    const long = `${clause}; ${clause}; ${clause}`;
    expect(told(turn(long, 'the last'))).toContain(`${clause}: the last.`);
  });

  it('cuts evidence between clauses only, never within brackets, and not at all where there is no such place', () => {
    const long = 'one two three four five six seven eight nine ten eleven twelve thirteen fourteen';
    expect(
      inBrief({ answer: 'A.', because: [long], unless: [] }, 1)
        .slice(2)
        .join(' '),
    ).toContain('fourteen');
    const bracket = `Row spacing (3 mm; 4 mm; ${long}); p = 0.03`;
    expect(inBrief({ answer: 'A.', because: [bracket], unless: [] }, 1).join(' ')).not.toContain('…');
  });
});

/** What a person sees of a table in the terminal. The table is invented. */
function printed(
  rows: readonly (readonly (string | number | null)[])[],
  columns: readonly ResultColumn[] = ['site', 'mean', 'recorder'].map((id) => ({ id, label: id })),
): string {
  let text = '';
  const terminal = {
    out: (more: string) => {
      text += more;
    },
    err: () => {},
    width: 100,
    colour: createColors(false),
    progress: () => {},
    endProgress: () => {},
  };
  const result = {
    title: 'Spacing',
    words: { answer: 'A sentence.', because: [], unless: [] },
    n: { fragments: 2, items: 2, setAside: [] },
    tables: { summary: { title: 'Summary', columns, rows } },
  } as unknown as AnalysisResult;
  printAnalysis(terminal, 'spacing', result, { detail: 'full' });
  return text;
}

describe('a table in the terminal', () => {
  it('leaves out a column that holds no value at all, and keeps one that holds any', () => {
    const without = printed([
      ['Holm', 3, null],
      ['Pell', 4, null],
    ]);
    expect(without).toMatch(/site +mean/);
    expect(without.split('\n').find((line) => line.includes('mean'))).not.toContain('recorder');
    const with_ = printed([
      ['Holm', 3, null],
      ['Pell', 4, 'A. B.'],
    ]);
    expect(with_.split('\n').find((line) => line.includes('mean'))).toContain('recorder');
  });

  it('says years as BC and AD', () => {
    const text = printed(
      [['Holm', -399, 79]],
      [{ id: 'site', label: 'site' }, yearColumn('from', 'from'), yearColumn('to', 'to')],
    );
    expect(text).toMatch(/site +from +to\n/);
    expect(text).toMatch(/Holm +400 BC +AD 79/);
  });
});
