import { createColors } from 'picocolors';
import { describe, expect, it } from 'vitest';
import type { ResultColumn } from '../../src/analyses/contract.ts';
import { yearColumn } from '../../src/analyses/years.ts';
import { printAnalysis } from '../../src/cli/print-results.ts';
import type { AnalysisResult } from '../../src/study/results.ts';

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
