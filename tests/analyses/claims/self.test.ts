import { describe, expect, it } from 'vitest';
import { reference } from '../../references/reference.ts';
import { check, type Row, verdictOf } from './claims.ts';

const one = (rows: readonly Omit<Row, 'id'>[], tables?: Record<string, string>) => {
  const found = check(
    rows.map((row, i) => ({ id: `c${i + 1}`, set: 's', ...row })),
    tables,
  );
  return (id: number | string) => verdictOf(found, typeof id === 'number' ? `c${id}` : id);
};

describe('means and deviations on a grid', () => {
  // Brown & Heathers 2017, Soc. Psychol. Pers. Sci. 8:363, worked examples.
  it.each([
    ['3.48', '20', '1', 'cannot be'],
    ['5.19', '28', '1', 'cannot be'],
    ['5.18', '28', '1', 'agrees'],
    ['5.93', '49', '1', 'agrees only if rounded by truncation'],
    // 139/40 = 3.475, half up 3.48; of 40 steps a unit, two fifths of all two-decimal means exist.
    ['3.48', '20', '0.5', 'agrees'],
    ['3.49', '20', '0.5', 'cannot be'],
  ])('mean %s of %s in steps of %s: %s', (mean, n, step, says) => {
    const at = one([
      { quantity: 'mean', printed: mean, step },
      { quantity: 'n', printed: n },
    ]);
    expect(at(1).says).toBe(says);
  });

  it('says nothing of a mean whose grid is not stated, and says what is missing', () => {
    const at = one([
      { quantity: 'mean', printed: '3.48' },
      { quantity: 'n', printed: '20' },
    ]);
    expect(at(1).verdict).toBe('cannot be checked');
    expect(at(1).why).toContain('the step of the readings');
  });

  // 2 whole numbers of mean 3 are 3 +- k, so their deviation is k sqrt(2): 1.41, 2.83, 4.24 (arithmetic).
  it.each([
    ['1.41', 'agrees'],
    ['2.83', 'agrees'],
    ['2.00', 'agrees'],
    ['1.80', 'cannot be'],
  ])('two whole numbers of mean 3.0 and deviation %s: %s', (sd, verdict) => {
    const at = one([
      { quantity: 'n', printed: '2' },
      { quantity: 'mean', printed: '3.0', step: '1' },
      { quantity: 'sd', printed: sd },
    ]);
    expect(at(3).verdict).toBe(verdict);
  });
});

describe('what the figures of one sample allow each other', () => {
  const sample = (more: Omit<Row, 'id'>) =>
    one([
      { quantity: 'n', printed: '10' },
      { quantity: 'min', printed: '2.0' },
      { quantity: 'max', printed: '6.0' },
      { quantity: 'mean', printed: '3.0' },
      more,
    ])(5);

  // By hand from what may stand behind the print (max to 6.1, min from 1.95, mean 2.95 to 3.1). Bhatia & Davis:
  // at most sqrt((6.1 - 3.1)(3.1 - 1.95) 10/9) = 1.958. Below: sqrt((0.85^2 + 2.85^2 + 2^2/8) / 10) = 0.967.
  it.each([
    ['1.9', 'cannot be checked'],
    ['2.1', 'cannot be'],
    ['1.0', 'cannot be checked'],
    ['0.8', 'cannot be'],
    ['-1.5', 'cannot be'],
  ])('a deviation of %s: %s', (printed, verdict) => {
    expect(sample({ quantity: 'sd', printed }).verdict).toBe(verdict);
  });

  it.each([
    ['median', '6.5', 'cannot be'],
    ['median', '3.1', 'cannot be checked'],
    ['range', '4.0', 'agrees'],
    ['range', '4.5', 'cannot be'],
  ] as const)('a %s of %s: %s', (quantity, printed, verdict) => {
    expect(sample({ quantity, printed }).verdict).toBe(verdict);
  });

  it.each([
    ['0.47', 'agrees'],
    ['0.50', 'agrees'],
    ['0.40', 'cannot be'],
  ])('sd 1.5 of n 10 and an error of %s: %s (1.5/√10 = 0.474, 1.5/√9 = 0.5)', (printed, verdict) => {
    const at = one([
      { quantity: 'n', printed: '10' },
      { quantity: 'sd', printed: '1.5' },
      { quantity: 'se', printed },
    ]);
    expect(at(3).verdict).toBe(verdict);
  });
});

describe('shares and totals', () => {
  it.each([
    ['35 %', 'agrees'],
    ['35.3 %', 'agrees'],
    ['0.353', 'agrees'],
    ['35.2 %', 'agrees only if rounded'],
    ['36 %', 'cannot be'],
  ])('12 of 34 as %s: %s (35.294 %%)', (printed, verdict) => {
    const at = one([
      { quantity: 'n', printed: '34' },
      { quantity: 'count', printed: '12', counted: 'fibre in wool' },
      { quantity: 'share', printed, counted: 'fibre in wool' },
    ]);
    expect(at(3).verdict).toBe(verdict);
  });

  // 43.2 % = 16/37; no whole number of 37 gives 42.0 % (Brown & Heathers' arithmetic).
  it.each([
    ['43.2 %', 'agrees'],
    ['42.0 %', 'cannot be'],
  ])('%s of 37 without a count: %s', (printed, verdict) => {
    const at = one([
      { quantity: 'n', printed: '37' },
      { quantity: 'share', printed, counted: 'fibre in wool' },
    ]);
    expect(at(2).verdict).toBe(verdict);
  });

  it('names the other base when exactly one printed number of records gives the share', () => {
    const at = one([
      { quantity: 'n', printed: '22', select: 'site in A' },
      { quantity: 'n', printed: '36', select: 'site in B' },
      { quantity: 'count', printed: '12', select: 'site in A', counted: 'fibre in wool' },
      { quantity: 'share', printed: '33.3 %', select: 'site in A', counted: 'fibre in wool' },
    ]);
    expect(at(4).verdict).toBe('differs');
    expect(at(4).explained).toContain('12/36');
  });

  it.each([
    ['24', 'agrees'],
    ['25', 'cannot be'],
  ])('12 + 7 + 5 with a total of %s: %s', (printed, verdict) => {
    const at = one([
      { quantity: 'count', printed: '12', counted: 'fibre in wool' },
      { quantity: 'count', printed: '7', counted: 'fibre in flax' },
      { quantity: 'count', printed: '5', counted: 'fibre in hemp' },
      { quantity: 'total', printed },
    ]);
    expect(at(4).verdict).toBe(verdict);
  });

  it('finds the one cell whose change would mend its row and its column', () => {
    const at = one([{ quantity: 'n', printed: '1' }], {
      'sites.csv': 'site,wool,flax,total\nA,12,7,19\nB,5,13,19\ntotal,17,21,38\n',
    });
    expect(at('sites: B / total').verdict).toBe('cannot be');
    expect(at('sites: B / total').explained).toContain('sites: B / flax');
    expect(at('sites: B / total').explained).toContain('14 instead of 13');
    expect(at('sites: A / wool').verdict).not.toBe('cannot be');
  });
});

describe('tests', () => {
  // A larger p may be adjusted for several tests, a little smaller one exact: it differs, and no more is said.
  it.each([
    ['t(18) = 2.31, p = .033', '', 'agrees'],
    ['t(18) = 2.31, p = .016', '', 'differs'],
    ['t(18) = 2.31, p = .016', 'one', 'agrees'],
    ['t(18) = 2.31, p = .05', '', 'differs'],
    ['t(18) = 2.31, p < .05', '', 'agrees'],
    ['t(18) = 2.31, p < .01', '', 'differs'],
    ['t(18) = 2.31, n.s.', '', 'differs'],
    // Nothing that is ordinary makes a p so small.
    ['t(18) = 1.00, p = .010', '', 'cannot be'],
    ['t(18) = 1.00, p < .001', '', 'cannot be'],
    ['F(2, 27) = 4.51, n.s.', '', 'differs'],
    ['F(2, 27) = 4.51, p = .020', '', 'agrees'],
    ['F(2, 27) = 4.51, p = .20', '', 'differs'],
    ['χ²(4, n = 60) = 9.49, p = .05', '', 'agrees'],
    ['z = 1.96, p = .05', '', 'agrees'],
    ['r(28) = .31, p = .096', '', 'agrees'],
    ['r(28) = 1.31, p = .096', '', 'cannot be'],
  ])('%s %s: %s', (printed, sided, verdict) => {
    const found = check([{ id: 'c1', set: 's', quantity: 'statistic', printed, sided }]);
    const worst = found.judged.map((each) => each.verdict);
    if (verdict === 'agrees')
      expect(worst.every((each) => each === 'agrees' || each === 'cannot be checked')).toBe(true);
    expect(worst).toContain(verdict);
  });

  it('names the one-sided p that would explain the difference', () => {
    const found = check([{ id: 'c1', set: 's', quantity: 'statistic', printed: 't(18) = 2.31, p = .016' }]);
    expect(verdictOf(found, 'c1 (p)').explained).toBe('a one-sided p');
  });

  it('agrees with R on chi-squared and Fisher from the printed table, and finds another digit out', () => {
    type Table = { cells: number[]; two: [number]; less: [number]; pearson: [number]; yates: [number] };
    for (const { cells, two, less, pearson, yates } of reference<{ tables: Table[] }>('printed-tests')
      .tables) {
      const csv = `site,x,y\nA,${cells[0]},${cells[1]}\nB,${cells[2]},${cells[3]}\n`;
      const said = (quantity: string, test: string, printed: string) =>
        one([{ quantity, test, printed, set: 'counts' } as Row], { 'counts.csv': csv })(1).verdict;
      expect(said('statistic', 'chi-squared', pearson[0].toFixed(2))).toBe('agrees');
      expect(said('statistic', 'chi-squared', yates[0].toFixed(2))).toBe('agrees');
      expect(said('statistic', 'chi-squared', (pearson[0] + 0.37).toFixed(2))).toBe('cannot be');
      expect(said('p', 'fisher', two[0].toFixed(3))).toBe('agrees');
      expect(said('p', 'fisher', less[0].toFixed(3))).toBe('agrees');
      // None of the ways gives 0.6 or so for these tables.
      if (two[0] < 0.1) expect(said('p', 'fisher', '0.600')).toBe('cannot be');
    }
  });

  it.each([
    ['7', 'p = .03', 'agrees'],
    ['60', 'p = .03', 'cannot be'],
  ])('U of %s from 8 and 7 records', (u, p, verdict) => {
    const at = one([
      { quantity: 'n', printed: '8', select: 'site in A' },
      { quantity: 'n', printed: '7', select: 'site in B' },
      { quantity: 'statistic', test: 'U', printed: u },
      { quantity: 'p', test: 'U', printed: p },
    ]);
    // 8 x 7 = 56 pairs: a U of 60 does not exist.
    if (verdict === 'cannot be') expect(at(3).verdict).toBe('cannot be');
    else expect(at(3).verdict).not.toBe('cannot be');
  });
});

describe('assemblages and spacing', () => {
  // (10, 30, 60) against (20, 20, 60): 200 - 20 = 180 (Robinson 1951, arithmetic).
  const csv = 'site,x,y,z\nA,10 %,30 %,60 %\nB,20 %,20 %,60 %\n';

  it.each([
    ['180', 'agrees'],
    ['178', 'agrees'],
    ['170', 'cannot be'],
  ])('Brainerd-Robinson %s from printed percentages: %s', (printed, verdict) => {
    const row = { quantity: 'similarity', set: 'shares', select: 'A', versus: 'B', printed } as Row;
    expect(one([row], { 'shares.csv': csv })(1).verdict).toBe(verdict);
  });

  it.each([
    ['A', 'C'],
    ['C', 'A'],
  ])('says nothing of a likeness of %s to %s where only one of the two is printed', (select, versus) => {
    const row = { quantity: 'similarity', set: 'shares', select, versus, printed: '170' } as Row;
    expect(one([row], { 'shares.csv': csv })(1).verdict).toBe('cannot be checked');
  });

  it.each([
    ['shannon', '0.90', 'agrees'],
    ['shannon', '1.30', 'agrees'],
    ['shannon', '2.10', 'cannot be'],
    ['simpson', '0.54', 'agrees'],
    ['simpson', '0.70', 'cannot be'],
  ])('%s %s of 10, 30, 60 %%: %s (0.898 nats, 1.295 bits; 0.54)', (test, printed, verdict) => {
    const row = { quantity: 'diversity', set: 'shares', select: 'A', test, printed } as Row;
    expect(one([row], { 'shares.csv': csv })(1).verdict).toBe(verdict);
  });

  it.each([
    ['reading', '5.0', '2.0', 'agrees'],
    ['reading', '5.0', '4.0', 'cannot be'],
    ['mean', '5.0', '3.0', 'cannot be checked'],
    ['mean', '5.0', '1.5', 'cannot be'],
  ] as const)('%s spacing %s mm with %s per cm: %s', (quantity, spacing, density, verdict) => {
    const at = one([
      { quantity, attribute: 'rowSpacing', printed: spacing },
      { quantity, attribute: 'density2', printed: density },
    ]);
    expect(at(2).verdict).toBe(verdict);
  });

  it('sees readings that end in 0 and 5 only, and blames nobody', () => {
    const rows = Array.from({ length: 60 }, (_, i) => ({
      id: `r${i}`,
      set: 's',
      quantity: 'reading',
      printed: `${2 + (i % 7)}.${i % 2 === 0 ? 0 : 5}`,
    }));
    const [digits] = check(rows).digits;
    expect([digits.n, digits.zeroOrFive]).toEqual([60, 1]);
    expect(digits.p).toBeLessThan(1e-10);
    expect(check(rows).counts['cannot be']).toBe(0);
  });
});

describe('what a reviewer meets in a paper', () => {
  it('a test report that stands alone is checked against itself', () => {
    const at = one([{ set: '', quantity: 'statistic', printed: 't(37) = 2.34, p = .012' }]);
    expect(at('c1 (p)').verdict).toBe('differs');
    expect(at('c1 (p)').explained).toBe('a one-sided p');
    expect(at(1).resolve).toBe('Settle p “t(37) = 2.34, p = .012” first.');
  });

  it('a total of counts is exact, and a slip in it that would mend the grand total is named', () => {
    const at = one([], {
      'k.csv': 'phase,x,y,z,total\nI,14,3,22,39\nII,25,9,11,46\nIII,31,17,4,52\ntotal,70,29,37,136\n',
    });
    for (const id of ['k: II / total', 'k: total / total']) {
      expect(at(id).verdict).toBe('cannot be');
      expect(at(id).explained).toBe('one slip, in k: II / total: 45 instead of 46');
    }
    expect(at('k: I / total').verdict).toBe('agrees');
    expect(at('k: II / x').why).not.toContain('Nothing speaks against it');
  });

  it('a share is not explained by a number of another printed table that happens to fit', () => {
    const rows: readonly Omit<Row, 'id'>[] = [
      { quantity: 'n', printed: '41' },
      { quantity: 'count', printed: '14', counted: 'fibre in flax' },
      { quantity: 'share', printed: '37 %', counted: 'fibre in flax' },
    ];
    // 14/38 = 36.8 %, from a total of another table.
    expect(one(rows, { 'k.csv': 'a,x,y,total\nI,20,18,38\n' })(3).explained).toBe('');
    expect(one([...rows, { quantity: 'n', printed: '38', select: 'site in B' }])(3).explained).toContain(
      '14/38',
    );
  });

  it('a table of means may give the step of its readings', () => {
    const csv = (step: string) => `group,n,mean,step\nA,28,5.19,${step}\nB,28,5.18,${step}\n`;
    // Brown & Heathers 2017: 5.19 is no mean of 28 whole numbers.
    expect(one([], { 'm.csv': csv('1') })('m: A / mean').verdict).toBe('cannot be');
    expect(one([], { 'm.csv': csv('1') })('m: B / mean').verdict).toBe('agrees');
    expect(one([], { 'm.csv': csv('') })('m: A / mean').verdict).toBe('cannot be checked');
  });

  it('asks only for what is not printed yet', () => {
    const at = one([
      { quantity: 'n', printed: '17' },
      { quantity: 'mean', printed: '14.6' },
      { quantity: 'sd', printed: '3.2' },
      { quantity: 'min', printed: '9' },
      { quantity: 'max', printed: '21' },
    ]);
    expect(at(3).resolve).toBe('Print the step of the readings beside it, or give the table of readings.');
  });
});
