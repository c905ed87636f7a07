import { describe, expect, it } from 'vitest';
import { readTable } from '../../../../src/analyses/claims/reading/printed-table.ts';
import { readPrinted } from '../../../../src/analyses/claims/reading/printed-text.ts';
import { alignedRuns } from '../../../../src/analyses/claims/reading/table/aligned-runs.ts';
import { claimsLetter } from '../../../../src/report/claims-letter.ts';
import { check } from '../claims.ts';

const parts = (text: string, quantity: Parameters<typeof readPrinted>[1]) =>
  readPrinted(text, quantity)?.parts.map((part) => part.quantity) ?? null;
const table = (text: string) => readTable(new TextEncoder().encode(text), 'table.txt');

/** R's t.test on two samples of its own data set "sleep" (R 4.2, help page of t.test). */
const WELCH = `
	Welch Two Sample t-test

data:  extra by group
t = -1.8608, df = 17.776, p-value = 0.07939
alternative hypothesis: true difference in means between group 1 and group 2 is not equal to 0
95 percent confidence interval:
 -3.3654832  0.2054832
sample estimates:
mean in group 1 mean in group 2
           0.75            2.33
`;

describe('what programs print of a test', () => {
  it('is a statistic, its degrees of freedom, p and interval; estimates of groups are told as not read', () => {
    expect(parts(WELCH, 'statistic')).toEqual(['statistic', 'df', 'p', 'low', 'high']);
    expect(readPrinted(WELCH, 'statistic')?.unused).toEqual(['mean in group 1 mean in group 2 0.75 2.33']);
  });

  it('is read where a table is pasted, and as a claim, the only one of its file', () => {
    const found = check([], { 'table.txt': WELCH });
    expect(found.judged.map(({ figure, verdict }) => `${figure.quantity} ${verdict}`)).toContain('p agrees');
    expect(check([{ quantity: 'statistic', printed: WELCH }]).judged).toHaveLength(5);
  });

  it('is found out where its p is not of its t', () => {
    const wrong = check([{ quantity: 'statistic', printed: WELCH.replace('0.07939', '0.04939') }]);
    const p = wrong.judged.find(({ figure }) => figure.quantity === 'p');
    expect(p?.verdict).toMatch(/^(?:differs|cannot be)$/);
  });

  it('keeps what a named record says beside, and names no test that it does not know', () => {
    expect(
      parts(
        'TtestResult(statistic=np.float64(-1.86), pvalue=np.float64(0.079), df=np.float64(17.8))',
        'statistic',
      ),
    ).toEqual(
      ['statistic', 'p', 'df'].sort(
        (a, b) => ['statistic', 'df', 'p'].indexOf(a) - ['statistic', 'df', 'p'].indexOf(b),
      ),
    );
    expect(readPrinted('KstestResult(statistic=0.55, pvalue=0.01)', 'statistic')?.unused).toEqual([
      'statistic 0.55',
    ]);
  });
});

describe('heads and columns', () => {
  it('a head with a size is a group, whatever it is called', () => {
    const { columns } = table(
      'Measure\tF (n=47)\tM (n=97)\tP value\nMass, mean (SD)\t2.4 (0.3)\t2.9 (0.5)\t<.001\nLength, mean (SD)\t9.2 (1.4)\t11.3 (2.5)\t<.001',
    );
    expect(columns.map(({ role }) => role)).toEqual(['mean', 'mean']);
  });

  it('parts columns that stand one blank apart, and leaves thousands together', () => {
    const cells = (text: string) =>
      alignedRuns(text.split('\n')).map((line) => line.map(({ text: cell }) => cell));
    expect(cells('     <6m >6m Sum\nNo    24  32  56\nSum   49  51 100')[2]).toEqual([
      'Sum',
      '49',
      '51',
      '100',
    ]);
    expect(cells('Site     finds\nEast    12 345\nWest     9 120')[1]).toEqual(['East', '12 345']);
  });

  it('takes a line above those that add up to it as their sum', () => {
    const { rows } = table(
      'Kind\tn\nEarly\t12\n   tabby\t5\n   twill\t7\nLate\t9\n   tabby\t4\n   twill\t5\nTotal\t21',
    );
    expect(rows.map(({ line }) => line)).toEqual([
      'subtotal',
      'part',
      'part',
      'subtotal',
      'part',
      'part',
      'total',
    ]);
  });
});

describe('the letter', () => {
  it('says an open question of a table', () => {
    const found = {
      ...check([{ quantity: 'p', printed: '0.03' }]),
      doubts: ['The table t is of other records.'],
    };
    expect(claimsLetter(found)).toContain('## Open questions\n\n- The table t is of other records.');
  });
});
