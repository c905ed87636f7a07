import { describe, expect, it } from 'vitest';
import { check, type Row, verdictOf } from './claims.ts';

/** What a reviewer must not miss. Where no source is named the expectation is arithmetic, done by hand. */

const found = (rows: readonly Row[], tables: Record<string, string> = {}) =>
  check(
    rows.map((row, i) => ({ id: `c${i}`, ...row })),
    tables,
  );
const statistic = (printed: string, more: Row = {}): Row => ({ quantity: 'statistic', printed, ...more });
const one = (rows: readonly Row[], id: string, tables: Record<string, string> = {}) =>
  verdictOf(found(rows, tables), id);

describe('misses in a report', () => {
  it('p is held to its t also where an effect size follows', () => {
    expect(one([statistic('t(18) = 2.31, p = .33, d = 0.8')], 'c0 (p)').verdict).toBe('differs');
  });

  it('a coarse p settles no statistic, and says how little it proves', () => {
    const said = found([statistic('χ²(4) = 830.41, p < .001')]);
    expect(verdictOf(said, 'c0').verdict).toBe('cannot be checked');
    // Tables of chi-squared: 18.467 at 4 degrees of freedom and p = .001.
    expect(verdictOf(said, 'c0 (p)').why).toContain('every chi-squared above 18.46');
  });

  it('chi-squared is at most n times the root of its degrees of freedom', () => {
    expect(one([statistic('χ²(4, N = 60) = 830.41, p < .001')], 'c0').verdict).toBe('differs');
    expect(one([statistic('χ²(4, N = 60) = 119.9, p < .001')], 'c0').verdict).not.toBe('differs');
  });

  it('U(12, 10) has two numbers of records and no degrees of freedom', () => {
    const { judged } = found([statistic('U(12, 10) = 31, p = .06')]);
    expect(judged.map(({ figure }) => figure.quantity)).toEqual(['statistic', 'n', 'n', 'p']);
  });

  it.each([
    ['df = 7, 7', 'F = 2.94, df = 7, 7, p = .089'],
    ['(38 df)', 't = 2.31 (38 df), p = .026'],
    ['a comma between a coarse p and an interval', 't=2.31,df=38,p<0.05,95% CI [0.1, 1.5]'],
  ])('%s is read to its last word', (_, text) => {
    const said = found([statistic(text)]);
    expect(said.unread).toEqual([]);
    expect(said.judged.some(({ figure }) => figure.quantity === 'df')).toBe(true);
  });

  // R: 2 * (1 - pf(2.94, 19, 19)) = 0.0234.
  it('p of a ratio of two variances has two tails', () => {
    const both = one([statistic('F(19, 19) = 2.94, p = .023')], 'c0 (p)');
    expect(both.says).toBe('agrees under both tails of a ratio of two variances');
    expect(one([statistic('F(19, 19) = 2.94, p = .053')], 'c0 (p)').verdict).toBe('differs');
  });

  it('an interval that leaves nought out goes with no t that falls short', () => {
    expect(one([statistic('t(38) = 1.95, p = .058, 95% CI [1.98, 107.98]')], 'c0 (low)').verdict).toBe(
      'differs',
    );
    // R: t.test of morley, runs 1 and 2.
    expect(one([statistic('t(38) = 1.95, p = .058, 95% CI [-1.98, 107.98]')], 'c0 (low)').verdict).toBe(
      'agrees',
    );
  });

  it('the interval of a correlation is that of Fisher’s z', () => {
    // R: cor.test of a correlation of .45 of 20 pairs: 0.0093 to 0.7443.
    const r = (ci: string) =>
      one([{ quantity: 'correlation', printed: `r(18) = .45, p = .046, 95% CI ${ci}` }], 'c0 (low)');
    expect(r('[.01, .74]').verdict).toBe('agrees');
    expect(r('[.30, .74]').verdict).toBe('differs');
  });

  it('an odds ratio lies within its interval', () => {
    const or = (ci: string) =>
      one([statistic(`χ²(1, N = 60) = 4.2, p = .04, OR = 2.4, 95% CI ${ci}`)], 'c0 (low)');
    expect(or('3.1-5.2').verdict).toBe('differs');
    expect(or('1.1-5.2').verdict).not.toBe('differs');
  });

  it('p values printed together may be adjusted after Holm, all of them', () => {
    // R: p.adjust(2 * pt(-c(2.31, 2.9, 1.31), 18), "holm") = 0.0659, 0.0286, 0.2067.
    const family = (p: readonly string[]) =>
      found(['2.31', '2.90', '1.31'].map((t, i) => statistic(`t(18) = ${t}, p = ${p[i]}`)));
    expect(verdictOf(family(['.066', '.029', '.207']), 'c0 (p)').says).toContain('3 tests after Holm');
    expect(verdictOf(family(['.099', '.029', '.207']), 'c0 (p)').says).not.toContain('Holm');
  });
});

describe('misses in samples', () => {
  it.each([
    ['similarity', '212', 'brainerd-robinson'],
    ['share', '112 %', ''],
    ['p', '1.3', ''],
    ['n', '12.5', ''],
    ['correlation', '1.2', ''],
    ['effect', '1.4', 'cramer-v'],
    ['effect', '1.1', 'eta-squared'],
    ['effect', '1.1', 'silhouette'],
    ['diversity', '1.2', 'evenness'],
  ])('a %s of %s cannot be', (quantity, printed, test) => {
    expect(one([{ quantity, printed, test }], 'c0').verdict).toBe('cannot be');
  });

  it('a figure printed twice switches no check off', () => {
    const rows = [
      ['mean', '5.2'],
      ['mean', '5.2'],
      ['sd', '9.9'],
      ['n', '10'],
      ['min', '4'],
      ['max', '6'],
    ].map(([quantity, printed]) => ({ quantity, printed, set: 's' }));
    expect(one(rows, 'c2').verdict).toBe('cannot be');
  });

  it('text and table are compared, to the same digit', () => {
    const table = { 't.csv': 'Site,n,Mean,SD\nA,10,5.2,1.3\nB,12,6.1,1.4\n' };
    const text = (printed: string) => found([{ quantity: 'mean', set: 't', select: 'A', printed }], table);
    expect(verdictOf(text('5.3'), 't: A / Mean').verdict).toBe('differs');
    expect(verdictOf(text('5.21'), 't: A / Mean').verdict).not.toBe('differs');
  });

  it('the ends of an interval are of one level', () => {
    // 10 -+ 2.131 * 2/4 = 8.93 and 11.07; 10 + 1.753 * 2/4 = 10.88.
    const rows = [
      ['mean', '10.00'],
      ['sd', '2.00'],
      ['n', '16'],
      ['interval', '8.93-10.88'],
    ].map(([quantity, printed]) => ({ quantity, printed, set: 's' }));
    const low = one(rows, 'c3');
    expect(low.verdict).toBe('differs');
    expect(low.explained).toContain('two levels: the lower at 95 %');
  });

  it.each([
    ['12', '5.25', 'cannot be'],
    ['12', '5.5', 'cannot be checked'],
    ['13', '5.5', 'cannot be'],
  ])('of %s whole readings a median of %s: %s', (n, printed, verdict) => {
    const rows = [
      { quantity: 'n', printed: n, set: 's' },
      { quantity: 'median', printed, step: '1', set: 's' },
    ];
    expect(one(rows, 'c1').verdict).toBe(verdict);
  });

  it('the range of the quartiles is their difference', () => {
    const iqr = (printed: string) =>
      one(
        [
          { quantity: 'q1', printed: '2.0', set: 's' },
          { quantity: 'q3', printed: '5.0', set: 's' },
          { quantity: 'iqr', printed, set: 's' },
        ],
        'c2',
      ).verdict;
    expect([iqr('3.0'), iqr('4.0')]).toEqual(['agrees', 'cannot be']);
  });

  it('chi-squared of counts alone is held against equal frequencies', () => {
    const counts = ['20', '31', '14'].map((printed, i) => ({
      quantity: 'count',
      printed,
      set: 's',
      counted: `kind in k${i}`,
    }));
    // By hand: expected 21.67; 0.128 + 4.021 + 2.713 = 6.86.
    const says = (text: string) => one([...counts, statistic(text, { set: 's' })], 'c3').says;
    expect(says('χ²(2) = 6.86, p = .032')).toContain('equal frequencies');
    expect(says('χ²(2) = 9.80, p = .007')).not.toContain('equal frequencies');
  });

  it('words name the figures of a sample', () => {
    const read = (printed: string) =>
      found([{ quantity: 'mean', printed }]).judged.map(({ figure }) => figure.quantity);
    expect(read('M = 5.2, SD = 1.4, n = 20')).toEqual(['mean', 'sd', 'n']);
    expect(read('5.2 (SD 1.4; range 2–9)')).toEqual(['mean', 'sd', 'min', 'max']);
    expect(read('5.2 ± 0.3 SE')).toEqual(['mean', 'se']);
    expect(read('mean 5,2 (s.d. 1,4)')).toEqual(['mean', 'sd']);
  });
});

describe('misses in tables', () => {
  const table = (text: string) => found([{ id: 'x', quantity: 'reading', printed: '1' }], { 't.csv': text });

  it('a line of all groups is held to the groups, and its mean lies among theirs', () => {
    const said = table('Site,n,Mean,SD\nA,10,5.2,1.3\nB,12,6.1,1.4\nTotal,22,7.7,1.4\n');
    expect(verdictOf(said, 't: Total / Mean').verdict).toBe('cannot be');
  });

  it('heads N and Σ are sums', () => {
    const said = table('Type,a,b,N\nA,10,5,15\nB,12,6,19\nΣ,22,11,33\n');
    expect(verdictOf(said, 't: B / N').verdict).toBe('cannot be');
    expect(verdictOf(said, 't: Σ / a').verdict).toBe('agrees');
  });

  it('expected counts and running shares are computed again', () => {
    const expected = table(
      'Observed (expected);x;y;Total\nA;10 (12.0);20 (18.0);30\nB;30 (28.0);40 (43.0);70\nTotal;40;60;100\n',
    );
    expect(verdictOf(expected, 't: B / x (expected)').verdict).toBe('agrees');
    expect(verdictOf(expected, 't: B / y (expected)').verdict).toBe('differs');
    const running = table(
      'Kind;n;%;Cumulative %\na;10;20.0;20.0\nb;15;30.0;50.0\nc;20;40.0;80.0\nd;5;10.0;100.0\n',
    );
    expect(verdictOf(running, 't: c / Cumulative %').verdict).toBe('differs');
  });

  it('chi-squared with a rare kind left out agrees, and says which', () => {
    const text = { 't.csv': ',x,y,z\nA,12,30,1\nB,25,14,0\n' };
    // By hand from 12, 30; 25, 14: n (ad - bc)² over the four sums, 81 · 582² / (42 · 39 · 37 · 44) = 10.29.
    const said = found([statistic('10.29', { test: 'chi-squared', set: 't' })], text);
    expect(verdictOf(said, 'c0').says).toBe('agrees under “z” left out');
  });

  it('columns of p, plain and adjusted, are no counts; letters beside p are statistics', () => {
    const pairs = table(
      'Pair;p;p adj. (Holm);p Bonferroni\na;.002;.023;.023\nb;.399;1.000;1.000\nc;.224;1.000;1.000\n',
    );
    expect(new Set(pairs.judged.slice(1).map(({ figure }) => figure.quantity))).toEqual(new Set(['p']));
    const tests = table('Pair;n1;n2;U;Z;p\na;8;8;1;-3.26;ns\nb;8;8;13;-2.00;*\n');
    expect(tests.unread).toEqual([]);
    expect(tests.judged.filter(({ figure }) => figure.quantity === 'statistic')).toHaveLength(4);
  });
});

describe('effects below nought', () => {
  // By hand: 4 (0.817 - 1) / (4 (0.817 - 1) + 30) = -0.732 / 29.268 = -0.025.
  it.each([
    ['−0.025', 'agrees'],
    ['−0.052', 'differs'],
  ])('omega squared of an F below 1, %s: %s', (omega, verdict) => {
    expect(one([statistic(`F(4, 25) = 0.817, p = .526, ω² = ${omega}`)], 'c0 (effect)').verdict).toBe(
      verdict,
    );
  });
});
