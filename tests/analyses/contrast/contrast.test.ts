import { describe, expect, it } from 'vitest';
import { contrast } from '../../../src/analyses/contrast/index.ts';
import { printTurn } from '../../../src/analyses/phrasing.ts';
import { available, expectClose } from '../../numerics/close.ts';
import { kSample } from '../../numerics/rank-values.ts';
import { reference } from '../../references/reference.ts';
import { faultsOfAnswer } from '../answer-rules.ts';
import { ask, everyNumber, inputFrom, linesOf } from '../ask.ts';
import { demoAnswer, numbersWithoutSource, readable } from '../demo-answer.ts';

const quick = { relabellings: 199, resamples: 199 };

/** One row a value; items one each unless named. */
const rowsOf = (groups: Readonly<Record<string, readonly number[]>>, attribute = 'rowSpacing') =>
  Object.entries(groups).flatMap(([site, values]) => values.map((value) => ({ site, [attribute]: value })));

interface Kinds {
  readonly sprays: {
    readonly groups: Record<string, number[]>;
    readonly h: number[];
    readonly p: number[];
    readonly u: number[];
  };
}
const { sprays, tool, version } = reference<Kinds>('comparing-groups');

describe(`several groups, against ${tool} (${version}), relative 1e-9`, () => {
  it.each(Object.entries(kSample).filter(([, { groups, welch }]) => groups.length > 2 && welch !== null))(
    '%s: Kruskal-Wallis, Brown-Forsythe, both analyses of variance',
    (_, sample) => {
      const groups = Object.fromEntries(sample.groups.map((values, place) => [`g${place}`, values]));
      const { tables } = ask(contrast, inputFrom(rowsOf(groups)), {
        of: ['rowSpacing'],
        by: 'site',
        means: true,
        ...quick,
      });
      const by = Object.fromEntries(
        linesOf(tables.tests).map((line) => [String(line.test).split(' ')[0], line]),
      );
      const lines = linesOf(tables.tests);
      const line = (name: string) => lines.find(({ test }) => String(test).startsWith(name)) ?? {};
      expectClose(by['Kruskal-Wallis'].statistic as number, sample.kruskal.statistic);
      if (by['Kruskal-Wallis'].method === 'chi-squared')
        expectClose(by['Kruskal-Wallis'].p as number, sample.kruskal.p);
      expectClose(line('Brown-Forsythe').statistic as number, sample.brownForsythe.statistic);
      expectClose(line('Brown-Forsythe').p as number, sample.brownForsythe.p, 1e-7);
      expectClose(line('Analysis of variance').statistic as number, sample.anova.statistic);
      expectClose(line('Welch').statistic as number, sample.welch?.statistic ?? Number.NaN);
      expectClose(line('Welch').p as number, sample.welch?.p ?? Number.NaN, 1e-7);
      expectClose(
        by['Kruskal-Wallis'].epsilonSquared as number,
        sample.kruskal.statistic / (sample.groups.flat().length - 1),
      );
    },
    60_000,
  );

  it('small groups get the exact p: 179294/252252 for table 6.1 of Hollander & Wolfe 1999', () => {
    const groups = { a: [2.9, 3.0, 2.5, 2.6, 3.2], b: [3.8, 2.7, 4.0, 2.4], c: [2.8, 3.4, 3.7, 2.2, 2.0] };
    const { tables } = ask(contrast, inputFrom(rowsOf(groups)), { of: ['rowSpacing'], by: 'site', ...quick });
    const [line] = linesOf(tables.tests);
    expectClose(line.statistic as number, 27 / 35);
    expectClose(line.p as number, 179294 / 252252);
    expect(line.method).toBe('exact, all 252252 ways to deal the items');
  });

  it('U is that of the first group, as W in R', () => {
    const { tables } = ask(contrast, inputFrom(rowsOf({ C: sprays.groups.C, D: sprays.groups.D })), {
      of: ['rowSpacing'],
      by: 'site',
      ...quick,
    });
    expect(linesOf(tables.tests)[0].statistic).toBe(sprays.u[0]);
  });
});

describe('Hollander & Wolfe 1999, table 4.1 (data from memory): two groups', () => {
  const first = [0.8, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46];
  const second = [1.15, 0.88, 0.9, 0.74, 1.21];
  const { tables, words } = ask(contrast, inputFrom(rowsOf({ a: first, b: second })), {
    of: ['rowSpacing'],
    by: 'site',
    ...quick,
  });
  const [line] = linesOf(tables.tests);
  const [pair] = linesOf(tables.pairs);

  it('gives U = 35, exact two-sided p = 0.2544123 (R wilcox.test) and the shift 0.305', () => {
    expect(line).toMatchObject({ statistic: 35, method: 'exact' });
    expectClose(line.p as number, 0.2544122544, 1e-7);
    expectClose(pair.shift as number, 0.305);
  });

  it('says that the groups are not told apart, and what could have been missed', () => {
    expect(words.answer).toBe('RowSpacing could not be shown to differ between a and b.');
    expect(words.because[0]).toMatch(
      /^rowSpacing, n = 15 items: Mann-Whitney U 35, p = 0.25 \(exact\); Cliff’s delta 0\.4 /,
    );
    expect(words.because[1]).toMatch(/^Medians: 1\.4\d* mm in a \(n = 10 items\) and 0\.9 mm in b/);
    expect(words.because[2]).toMatch(
      /^A difference below delta 0\.\d+, about [\d.]+ mm, would be found less often than 80 % of the time; .*alike within 20 % is not shown/,
    );
  });

  it('effects favour the first group where they are positive', () => {
    expect(pair.delta).toBeCloseTo((2 * 35) / 50 - 1, 12);
    expect(pair.shift as number).toBeGreaterThan(0);
    expect(pair.deltaLow as number).toBeLessThan(pair.delta as number);
  });
});

describe('items', () => {
  // Two items a group, six fragments each: whole items can be dealt in six ways only.
  const rows = ['a', 'b'].flatMap((site, s) =>
    [0, 1].flatMap((item) =>
      Array.from({ length: 6 }, (_, i) => ({
        site,
        item: `${site}${item}`,
        rowSpacing: 10 * s + item + i / 10,
      })),
    ),
  );

  it('with their fragments are dealt whole: 24 fragments of 4 items allow no p below 1/3', () => {
    const { tables, words } = ask(contrast, inputFrom(rows), { of: ['rowSpacing'], by: 'site', ...quick });
    const [line] = linesOf(tables.tests);
    expect(line.p).toBeCloseTo(2 / 6, 12);
    expect(line.method).toBe('exact, all 6 ways to deal the items');
    const turns = words.unless.map(printTurn).join(' ');
    expect(turns).toContain('24 fragments of 4 items, which were dealt and drawn whole');
    expect(turns).toContain('So few items (2 and 2) allow no p below 0.33');
    expect(words.answer).toBe(
      'RowSpacing could not be shown to differ between a and b, and could not be with so few items.',
    );
    // Groups too small to be quoted are not quoted: no median of theirs is evidence.
    expect(words.because.join(' ')).not.toContain('Medians');
  });

  it('as units give one value each', () => {
    const { found, tables } = ask(contrast, inputFrom(rows, 'item'), {
      of: ['rowSpacing'],
      by: 'site',
      ...quick,
    });
    expect(found.n).toEqual({ fragments: 24, items: 4, setAside: [] });
    expect(linesOf(tables.groups).map(({ n, items, fragments }) => [n, items, fragments])).toEqual([
      [2, 2, 12],
      [2, 2, 12],
    ]);
  });

  it('in two groups are counted and said', () => {
    const straddling = [...rows, { site: 'b', item: 'a0', rowSpacing: 3 }];
    const { words } = ask(contrast, inputFrom(straddling), { of: ['rowSpacing'], by: 'site', ...quick });
    expect(words.unless.map((turn) => turn.what).join(' ')).toContain(
      '1 item has fragments in more than one group',
    );
  });
});

describe('likeness', () => {
  it('of two groups within 20 % is shown by two one-sided tests on logarithms', () => {
    const base = Array.from({ length: 30 }, (_, i) => 10 + (i % 7) / 5);
    const { tables, words } = ask(
      contrast,
      inputFrom(rowsOf({ a: base, b: base.map((value) => value * 1.01) })),
      { of: ['rowSpacing'], by: 'site', ...quick },
    );
    const [pair] = linesOf(tables.pairs);
    expectClose(pair.meanRatio as number, 1 / 1.01, 1e-9);
    expect(pair.alikeP as number).toBeLessThan(0.001);
    expect(words.answer).toBe(
      'RowSpacing could not be shown to differ between a and b, and alike within 20 %.',
    );
    expect(pair.alike).toBe('shown');
  });
});

describe('ranges', () => {
  it('are tried at their ends, and the caution says when the verdict hangs on them', () => {
    const rows = [
      ...[1, 2, 3, 4, 5, 6].map((low) => ({ site: 'a', rowSpacing: [low, low + 20] as const })),
      ...[13, 14, 15, 16, 17, 18].map((value) => ({ site: 'b', rowSpacing: value })),
    ];
    const { tables, words } = ask(contrast, inputFrom(rows), { of: ['rowSpacing'], by: 'site', ...quick });
    const ps = linesOf(tables.otherwise)
      .filter(({ change }) => change === 'as asked' || change === 'ends of the readings')
      .map(({ p }) => p as number);
    expect(ps).toHaveLength(5);
    // All low ends below b: U = 0 of 36, two of 924 arrangements are as extreme.
    expectClose(ps[1], 2 / 924, 1e-9);
    // At their middles (11 to 16 against 13 to 18) U = 8 of 36, p = 0.13: not told apart.
    expect(words.answer).toBe('RowSpacing could not be shown to differ between a and b.');
    expect(words.unless[0]).toEqual({
      what: 'with all readings at their low ends of rowSpacing',
      size: 'the groups are told apart (p = 0.0022)',
      overturns: true,
    });
  });

  it('that are open-ended stand at their known end and as infinite at the other', () => {
    const rows = [
      ...rowsOf({ a: [1, 2, 3], b: [5, 6] }),
      { site: 'b', rowSpacing: [7, Number.POSITIVE_INFINITY] as const },
    ];
    const { tables } = ask(contrast, inputFrom(rows), { of: ['rowSpacing'], by: 'site', ...quick });
    expect(linesOf(tables.groups)[1]).toMatchObject({ openEnded: 1, max: 7 });
    expect(everyNumber([tables.tests, tables.otherwise]).some(Number.isNaN)).toBe(false);
  });
});

describe('refusals', () => {
  const refused = (rows: Parameters<typeof inputFrom>[0], options: object) => () =>
    ask(contrast, inputFrom(rows), { by: 'site', ...quick, ...options });

  it('kinds are sent to the crosstab', () => {
    expect(
      refused(
        [
          { site: 'a', structure: 'woven' },
          { site: 'b', structure: 'twined' },
        ],
        { of: ['structure'] },
      ),
    ).toThrow(
      'attribute of kinds, whose counts a contrast of numbers cannot compare; ask for a crosstab with "rows": "site" and "columns": "structure".',
    );
  });

  it('one group cannot be contrasted', () => {
    expect(refused(rowsOf({ a: [1, 2, 3] }), { of: ['rowSpacing'] })).toThrow(
      'only one group ("a") of "site" has a value of "rowSpacing" (rowSpacing), and a contrast needs two',
    );
  });

  it('equal values, single items and groups without spread are answered in words, never in NaN', () => {
    const say = (groups: Record<string, number[]>) =>
      ask(contrast, inputFrom(rowsOf(groups)), { of: ['rowSpacing'], by: 'site', means: true, ...quick });
    expect(say({ a: [2, 2, 2], b: [2, 2] }).words.answer).toBe(
      'Whether rowSpacing differs by site cannot be told: all values are equal.',
    );
    expect(say({ a: [2], b: [3] }).words.answer).toBe(
      'Whether rowSpacing differs by site cannot be told: fewer than two groups have values of two items or more (single ones: "a", "b").',
    );
    const still = say({ a: [2, 2, 2], b: [3, 3, 3] });
    const lines = linesOf(still.tables.tests);
    expect(lines.find(({ test }) => String(test).startsWith('Brown'))?.p).toEqual({
      why: 'all values are equal',
    });
    expect(everyNumber([still.tables, still.figures]).some(Number.isNaN)).toBe(false);
    const single = say({ a: [1, 2, 3], b: [4, 5, 6], c: [9] });
    expect(single.found.n.setAside.map(({ reason }) => reason)).toEqual([
      'rowSpacing: group "c" has a single item and is shown but not tested',
    ]);
  });
});

describe('several attributes', () => {
  const rows = Array.from({ length: 24 }, (_, i) => ({
    site: i < 12 ? 'a' : 'b',
    rowSpacing: (i < 12 ? 3 : 9) + (i % 5) / 4,
    density1: 4 + ((i * 7) % 11),
    structure: i % 2 === 0 ? 'woven' : 'openTwining',
  }));
  const { found, tables, words } = ask(contrast, inputFrom(rows), {
    of: ['rowSpacing', 'density1', 'structure'],
    by: 'site',
    ...quick,
  });

  it('are tested one by one with p adjusted over the family, and together', () => {
    const place = linesOf(tables.tests).filter(({ question }) => question === 'place');
    const [low, high] = place.map(({ p }) => p as number).sort((a, b) => a - b);
    const adjusted = place.map(({ pAdjusted }) => pAdjusted as number).sort((a, b) => a - b);
    expect(adjusted).toEqual([2 * low, Math.max(2 * low, high)]);
    expect(linesOf(tables.together).map(({ items }) => items)).toEqual([24, 24, 24]);
    expect(words.answer).toBe('One of two attributes differs by site (rowSpacing); together they differ.');
    expect(words.because[2]).toMatch(/^All together, n = 24 items: permutational analysis of variance F /);
    expect(words.unless.map(printTurn).join(' ')).toContain(
      'Structure is of kinds: compared only together with the other attributes',
    );
  });

  it('keep R squared = 1 - within / total', () => {
    const together = found.together;
    if (together === null) throw new Error('expected a joint test');
    const { place } = available(together);
    const { rSquared, sumOfSquaresTotal, sumOfSquaresWithin } = available(place);
    expectClose(rSquared, 1 - sumOfSquaresWithin / sumOfSquaresTotal);
  });
});

it('numbers that cannot be weighed together are still answered one by one', () => {
  const rows = Array.from({ length: 12 }, (_, i) => ({
    site: i % 2 === 0 ? 'a' : 'b',
    rowSpacing: 0,
    density1: 0,
  }));
  const { words } = ask(contrast, inputFrom(rows), { of: ['rowSpacing', 'density1'], by: 'site', ...quick });
  expect(words.because).toContain('rowSpacing: all values are equal.');
  expect(words.because[2]).toMatch(/^All together: /);
  expect(words.answer).toBe(
    'None of two attributes could be shown to differ by site; all together cannot be tested.',
  );
});

describe('trend', () => {
  const rows = Array.from({ length: 20 }, (_, i) => ({
    site: ['early', 'middle', 'late', 'last'][Math.floor(i / 5)],
    rowSpacing: 2 + i / 3,
    date: [-400 + 100 * Math.floor(i / 5), -300 + 100 * Math.floor(i / 5)] as const,
  }));

  it('that rises has a positive rho, and groups come in the order of their dates', () => {
    const { found, tables, words } = ask(contrast, inputFrom(rows), {
      of: ['rowSpacing'],
      by: 'site',
      trend: true,
      ...quick,
    });
    const [spearman, jonckheere] = linesOf(tables.trend);
    expect(spearman.statistic as number).toBeGreaterThan(0.9);
    expect(jonckheere.statistic as number).toBeGreaterThan(3);
    expect(spearman.low as number).toBeLessThanOrEqual(spearman.high as number);
    expect(words.answer).toMatch(/; it rises with time\.$/);
    expect(words.because[1]).toMatch(/^With time: Spearman’s rho 0\.9\d*, .*n = 20 in 4 spans of years\.$/);
    const back = ask(contrast, inputFrom(rows.map((row) => ({ ...row, rowSpacing: 20 - row.rowSpacing }))), {
      of: ['rowSpacing'],
      by: 'site',
      trend: true,
      ...quick,
    });
    expect(back.words.answer).toMatch(/; it falls with time\.$/);
    const trend = found.attributes[0].trend;
    expect(trend !== null && !('why' in trend) && trend.order).toEqual(['early', 'middle', 'late', 'last']);
  });

  it('without dates is refused in words', () => {
    const { words } = ask(contrast, inputFrom(rowsOf({ a: [1, 2, 3], b: [2, 3, 4] })), {
      of: ['rowSpacing'],
      by: 'site',
      trend: true,
      ...quick,
    });
    expect(words.unless.map(printTurn)).toContain(
      'No trend of rowSpacing was tested: no source records dates.',
    );
    expect(words.answer).toMatch(/; whether it changes with time cannot be told\.$/);
  });

  it('is judged at the confidence asked, and not at a fixed level', () => {
    // Four items a date and a weak trend: rho about 0.5, p between 0.01 and 0.05.
    const weak = Array.from({ length: 20 }, (_, i) => ({
      site: i % 2 === 0 ? 'a' : 'b',
      rowSpacing: Math.floor(i / 4) + [0, 5, 1, 4][i % 4],
      date: [-500 + 100 * Math.floor(i / 4), -400 + 100 * Math.floor(i / 4)] as const,
    }));
    const told = (confidence: number) => {
      const { found } = ask(contrast, inputFrom(weak), {
        of: ['rowSpacing'],
        by: 'site',
        trend: true,
        confidence,
        relabellings: 1999,
        resamples: 199,
      });
      const trend = found.attributes[0].trend;
      if (trend === null || 'why' in trend) throw new Error('expected a trend');
      const [rho] = trend.tests;
      if ('why' in rho) throw new Error(rho.why);
      return rho;
    };
    const usual = told(0.95);
    expect(usual.p).toBeGreaterThan(0.01);
    expect(usual.p).toBeLessThan(0.05);
    expect(usual.told).toBe('told apart');
    expect(told(0.99).told).toBe('not told apart');
  });
});

describe('the answer', () => {
  const rows = rowsOf({
    a: [3, 1, 4, 1, 5, 9, 2, 6],
    b: [5, 3, 5, 8, 9, 7, 9, 3],
    c: [2, 3, 8, 4, 6, 2, 6, 4],
  });
  const answer = (seed: number) =>
    ask(contrast, inputFrom(rows, 'fragment', seed), { of: ['rowSpacing'], by: 'site', ...quick });

  it('is the same for the same seed', () => {
    expect(JSON.stringify(answer(4))).toBe(JSON.stringify(answer(4)));
    expect(JSON.stringify(answer(4).tables)).not.toBe(JSON.stringify(answer(5).tables));
  });

  it('does not depend on the order of the rows, but for chance', () => {
    const back = ask(contrast, inputFrom([...rows].reverse()), { of: ['rowSpacing'], by: 'site', ...quick });
    expectClose(
      linesOf(back.tables.tests)[0].statistic as number,
      linesOf(answer(1).tables.tests)[0].statistic as number,
    );
  });

  it('says n in every caption and draws no NaN', () => {
    const { figures } = answer(1);
    expect(Object.keys(figures)).toEqual([
      'rowSpacing',
      'rowSpacingOutlines',
      'rowSpacingCumulative',
      'rowSpacingMedians',
      'rowSpacingPooled',
      'rowSpacingEffects',
    ]);
    for (const { caption } of Object.values(figures)) expect(caption).toContain('24 shown');
    expect(everyNumber(figures).some(Number.isNaN)).toBe(false);
  });
});

describe('what is drawn and said of few items', () => {
  const apart = rowsOf({ a: [1, 2, 3, 4, 5], b: [11, 12, 13, 14, 15] });
  const { words, figures, found } = ask(contrast, inputFrom(apart), {
    of: ['rowSpacing'],
    by: 'site',
    ...quick,
  });

  it('groups wholly apart are told apart (exact p = 2/252), and nothing is said to have been missed', () => {
    expectClose(available(found.attributes[0].place).p, 2 / 252);
    expect(words.answer).toBe('RowSpacing tends to be larger in b than in a.');
    expect([...words.because, ...words.unless.map(printTurn)].join(' ')).not.toContain('missed');
    expect(found.attributes[0].pairs[0]).toMatchObject({ told: 'told apart', larger: 'second' });
  });

  it('groups wholly apart have a delta of 1 with a limit on its one side', () => {
    // Every draw of them gives delta -1; the limit is that of tests/numerics/tests/delta-limits.test.ts.
    const { data, layout } = figures.rowSpacingEffects;
    expect(data).toHaveLength(1);
    expect(data[0]).toMatchObject({ x: [-1], y: ['a against b'] });
    const { array, arrayminus } = data[0].error_x as { array: number[]; arrayminus: number[] };
    expectClose(array[0], 1 - 0.285405647862, 1e-9);
    expect(arrayminus[0]).toBe(0);
    expect(JSON.stringify(layout)).toContain('above 0: the first is larger');
  });

  it('an interval that could not be computed has no bar, and the caption says so', () => {
    const few = rowsOf({ a: [1, 2, 3], b: [2, 3, 4] });
    const shown = ask(contrast, inputFrom(few), { of: ['rowSpacing'], by: 'site', ...quick }).figures;
    const { data, caption } = shown.rowSpacingEffects;
    expect(data[0]).not.toHaveProperty('error_x');
    expect(caption).toContain('without a bar where no interval could be computed (1)');
  });

  it('a group that alone makes a difference is named in the answer', () => {
    const rows = rowsOf({
      a: [3, 4, 5, 6, 7, 8, 9, 10],
      b: [4, 5, 6, 7, 3, 9, 8, 10],
      c: [30, 31, 32, 33, 34, 35, 36, 37],
    });
    const answer = ask(contrast, inputFrom(rows), { of: ['rowSpacing'], by: 'site', ...quick });
    expect(answer.words.answer).toBe(
      'RowSpacing differs between three groups by site, most from a to c, two of three pairs told apart, as long as c is counted.',
    );
    expect(answer.words.unless[0]).toMatchObject({
      what: 'with c left out of rowSpacing',
      overturns: true,
    });
  });
});

it('the demo: row spacing by site, as read and kept', async () => {
  const result = demoAnswer('differ');
  expect(faultsOfAnswer(result.words)).toEqual([]);
  expect(numbersWithoutSource(result.words, result.tables, [result.n.items, 4])).toEqual([]);
  await expect(readable(result)).toMatchFileSnapshot('snapshots/demo-differ.txt');
});
