import { describe, expect, it } from 'vitest';
import type { ClaimsFound } from '../../../src/analyses/claims/found.ts';
import { check } from './claims.ts';

/** Forms of R 4.2.2, scipy 1.17.1 and statsmodels 0.15.0, of data that are invented here. */
const told = ({ judged }: ClaimsFound) =>
  judged.map(
    ({ figure: { quantity, selectText, values }, verdict }) =>
      `${[quantity, selectText].filter((part) => part !== '').join(' of ')} ${values.map(({ text }) => text.trim()).join(', ')}: ${verdict}`,
  );
const pasted = (text: string) => check([], { 'table.txt': text });
const against = ({ judged }: ClaimsFound) =>
  judged.filter(({ verdict }) => verdict === 'differs' || verdict === 'cannot be').map(({ why }) => why);

const TWO_SAMPLES = (first: string) => `
	Welch Two Sample t-test

data:  spacing by phase
t = -1.735, df = 148.92, p-value = 0.08481
alternative hypothesis: true difference in means between group early and group late is not equal to 0
95 percent confidence interval:
 -5.4932936  0.3567857
sample estimates:
mean in group early  mean in group late
           ${first}            63.21111
`;

describe('what a program prints of a test', () => {
  it('gives the mean of each group, held against the interval', () => {
    const right = check([{ quantity: 'statistic', printed: TWO_SAMPLES('60.64286') }]);
    expect(told(right)).toEqual(
      expect.arrayContaining(['mean of early 60.64286: agrees', 'mean of late 63.21111: agrees']),
    );
    expect(right.unread).toEqual([]);
    expect(against(check([{ quantity: 'statistic', printed: TWO_SAMPLES('61.64286') }]))).toEqual([
      expect.stringContaining('−1.56826'),
    ]);
  });

  it('shows what it was tested against, where that is not nought', () => {
    const text =
      '\n\tOne Sample t-test\n\ndata:  x\nt = 2.1, df = 20, p-value = 0.0486\nalternative hypothesis: true mean is not equal to 12\n95 percent confidence interval:\n 12.01 14.99\nsample estimates:\nmean of x\n     13.5\n';
    const found = check([{ quantity: 'statistic', printed: text }]);
    expect(found.unread.join()).toContain('tested against 12');
    expect(told(found)).toContain('mean 13.5: agrees');
  });

  it('takes a count of pairs for no t', () => {
    const text =
      "\n\tKendall's rank correlation tau\n\ndata:  a and b\nT = 90, p-value = 0.001104\nalternative hypothesis: true tau is not equal to 0\nsample estimates:\n       tau \n-0.4461538 \n";
    const found = check([{ quantity: 'correlation', printed: text }]);
    expect(found.judged.map(({ figure }) => figure.method)).not.toContain('t');
    expect(found.unread.join()).toContain('T = 90');
  });

  it('shows the arrays of a record with their numbers', () => {
    const text =
      'Chi2ContingencyResult(statistic=np.float64(3.2), pvalue=np.float64(0.0736), dof=1, expected_freq=array([[5.5, 7.5],\n       [5.5, 7.5]]))';
    expect(check([{ quantity: 'statistic', printed: text }]).unread.join()).toContain('5.5, 7.5');
  });
});

describe('what a program prints of groups', () => {
  it('reads summaries below one another, each of its group', () => {
    const found = pasted(
      'phase: early\n   Min. 1st Qu.  Median    Mean 3rd Qu.    Max. \n  0.500   0.525   0.750   1.440   1.075   7.300 \n----------------------------------------- \nphase: late\n   Min. 1st Qu.  Median    Mean 3rd Qu.    Max. \n   0.40    0.90    1.55    3.41    3.95   25.50 \n',
    );
    expect(told(found)).toContain('median of late 1.55: cannot be checked');
    expect(told(found)).toContain('max of early 7.300: cannot be checked');
    expect(against(found)).toEqual([]);
  });

  it('reads the summary of a frame, and shows its gaps', () => {
    const found = pasted(
      "    length          weight     \n Min.   :39.00   Min.   :-16.00  \n 1st Qu.:56.00   1st Qu.:  0.00  \n Median :63.00   Median :  6.00  \n Mean   :62.09   Mean   : 10.05  \n 3rd Qu.:69.00   3rd Qu.: 15.00  \n Max.   :82.00   Max.   : 68.00  \n                 NA's   :12      ",
    );
    expect(told(found)).toEqual(
      expect.arrayContaining([
        'mean of weight 10.05: cannot be checked',
        'min of length 39.00: cannot be checked',
      ]),
    );
    expect(found.unread).toEqual(["table: “NA's :12”"]);
  });

  it('takes the numbers of lines for no labels, and drops no column', () => {
    const found = pasted('    diet   weight\n1 diet 1 263.9136\n2 diet 2 485.4250\n3 diet 3 523.1282');
    expect(found.tables[0].rows.map(({ label }) => label)).toEqual(['diet 1', 'diet 2', 'diet 3']);
    expect(found.judged.map(({ figure }) => figure.printed)).toEqual(['263.9136', '485.4250', '523.1282']);
  });

  it('reads values below their names, whose point parts no thousands', () => {
    const found = pasted('  d16   d20   d21 \n2.720 2.955 2.105 ');
    expect(found.judged.map(({ figure }) => figure.values[0].number)).toContainEqual({
      digits: 2720n,
      decimals: 3,
    });
  });

  it('reads a list of all pairs with a verdict at its end', () => {
    const list = (difference: string) =>
      `Multiple Comparison of Means - Tukey HSD, FWER=0.05\n====\n group1 group2 meandiff p-adj  lower  upper  reject\n----\n early   late   ${difference} 0.085 -0.3579 5.4944  False\n----\n`;
    expect(told(pasted(list('2.5683')))).toContain('difference of early vs. late 2.5683: agrees');
    expect(against(pasted(list('6.5683')))).not.toEqual([]);
  });
});

describe('intervals in the words of six languages', () => {
  it.each([
    ['mean', 'moyenne = 7,1 [intervalle de confiance à 95 % 5,0 à 9,2; N = 44]'],
    ['mean', 'Mittelwert = 8,9 cm [95-%-KI 5,9–11,9; n = 68]'],
    ['mean', 'gennemsnit = 888,6 g (95 % konfidensinterval: 767,5–1.009,7)'],
    ['mean', 'M = 9,03 [IC del 95 % -4,66; 22,72; N = 16]'],
    ['mean', 'media 9,03 (intervallo di confidenza al 95 %: 8,01–10,05)'],
    ['mean', 'media 9,03 (intervalo de confianza del 95 %: 8,01–10,05)'],
    ['count', '59/160 (36,9 %; 95 % KI 29,8–44,6)'],
  ] as const)('%s: %s', (quantity, printed) => {
    const { judged, unread } = check([{ quantity, printed }]);
    expect(unread).toEqual([]);
    const ends = judged.filter(({ figure }) => figure.quantity === 'low' || figure.quantity === 'high');
    expect(ends.map(({ verdict, figure }) => [verdict, figure.level])).toEqual([
      ['agrees', 0.95],
      ['agrees', 0.95],
    ]);
  });

  it('finds a mean that lies in no interval of its own', () => {
    expect(
      against(check([{ quantity: 'mean', printed: 'mean 12.1 (95% CI 5.0 to 9.2; n = 44)' }])),
    ).toHaveLength(1);
    expect(against(check([{ quantity: 'mean', printed: 'mean 6.1 (95% CI 5.0 to 9.2; n = 44)' }]))).toEqual(
      [],
    );
  });
});

describe('what contradicts itself in one text', () => {
  it('a d below nought beside a t above it', () => {
    expect(
      against(check([{ quantity: 'statistic', printed: 't(18) = 2.31, p = .033, d = -1.03' }])),
    ).toHaveLength(1);
    expect(against(check([{ quantity: 'statistic', printed: 't(18) = -2.31, p = .033, d = 1.03' }]))).toEqual(
      [],
    );
  });
});

describe('kinds that are called "No"', () => {
  it('hold per cents beside "Yes (%)"', () => {
    const found = pasted('Sex\tn\tNo (%)\tYes (%)\nWomen\t65\t76.9\t23.1\nMen\t95\t69.5\t30.5');
    expect(found.tables[0].columns.map(({ role }) => role)).toEqual(['n', 'share', 'share']);
    expect(against(found)).toEqual([]);
  });
});

describe('right figures at the edge of what is printed', () => {
  it.each([
    [
      'no tail below the noise of computing',
      'F(103, 55) = 9.491, p = 1.332e-15, F test to compare two variances',
    ],
    ['nanoseconds behind a difference', 'diferencia de medias -30,67 ns (IC del 95 % -46,33 a -15,00)'],
  ])('%s', (_, printed) => {
    const quantity = printed.startsWith('F') ? 'statistic' : 'difference';
    const found = check([{ quantity, printed }]);
    expect(against(found)).toEqual([]);
    expect(found.judged.map(({ figure }) => figure.quantity)).not.toContain(
      quantity === 'difference' ? 'p' : 'low',
    );
  });

  it('numbers below nought are no per cents, whatever they add up to', () => {
    const found = pasted('       T  dof  p-val\nT-test  -1.0065  101  0.3166');
    expect(found.judged.map(({ figure }) => figure.quantity)).not.toContain('share');
  });
});

describe('pairs of n and % over two lines', () => {
  const table = (n: string, share: string) =>
    `Pupils\tF0 n\tF0 %\tF1 n\tF1 %\tF2 n\tF2 %\tF3 n\tF3 %\nboys\t${n}\t${share}\t14\t21.2\t21\t31.8\t14\t21.2\ngirls\t10\t12.5\t32\t40.0\t19\t23.8\t19\t23.8`;
  it('hold a count against the share beside it', () => {
    expect(against(pasted(table('17', '25.8')))).toEqual([]);
    expect(against(pasted(table('27', '25.8')))).not.toEqual([]);
  });
  it('hold a share of another base against its line', () => {
    expect(against(pasted(table('17', '63.0')))).not.toEqual([]);
  });
});
