import { describe, expect, it } from 'vitest';
import { crosstab } from '../../../src/analyses/crosstab/index.ts';
import { printTurn } from '../../../src/analyses/phrasing.ts';
import { expectClose } from '../../numerics/close.ts';
import { r } from '../../numerics/counts-and-trends-values.ts';
import { faultsOfAnswer } from '../answer-rules.ts';
import { ask, everyNumber, inputFrom, linesOf } from '../ask.ts';
import { demoAnswer, numbersWithoutSource, readable } from '../demo-answer.ts';

const quick = { relabellings: 199, resamples: 199 };
const question = { rows: 'site', columns: 'fibre', ...quick };

/** One row a count. */
const rowsOf = (table: readonly (readonly number[])[]) =>
  table.flatMap((line, row) =>
    line.flatMap((count, column) =>
      Array.from({ length: count }, () => ({ site: `r${row}`, fibre: `c${column}` })),
    ),
  );

const { contingency, tool, version } = r;

describe(`counts, against ${tool} (${version}), relative 1e-9`, () => {
  const cases = Object.entries(contingency).filter(([, { table }]) =>
    table.flat().every((count) => count < 120),
  );
  it.each(cases)('%s', (_, wanted) => {
    const { tables } = ask(crosstab, inputFrom(rowsOf(wanted.table)), question);
    const lines = linesOf(tables.tests);
    const line = (name: string) => lines.find(({ test }) => test === name) ?? {};
    expectClose(line('chi-square').statistic as number, wanted.chiSquared);
    expect(line('chi-square').df).toBe(wanted.df);
    expectClose(line('chi-square').p as number, wanted.p, 1e-7);
    expectClose(line('likelihood ratio G').statistic as number, wanted.g);
    expectClose(line("Cramér's V").statistic as number, wanted.cramersV);
    const residuals = linesOf(tables.cells).map(({ residual }) => residual as number);
    wanted.residuals.flat().forEach((value, i) => {
      expectClose(residuals[i], value);
    });
  });

  it('has at least three tables to check', () => expect(cases.length).toBeGreaterThanOrEqual(3));
});

describe('the test', () => {
  it('is exact where cells are small: 3 1 / 1 3 gives 34/70 (Fisher 1935, The Design of Experiments)', () => {
    const { tables, words } = ask(
      crosstab,
      inputFrom(
        rowsOf([
          [3, 1],
          [1, 3],
        ]),
      ),
      question,
    );
    const [chosen] = linesOf(tables.tests);
    expect(chosen.test).toBe('chosen: Fisher’s exact test');
    expectClose(chosen.p as number, 34 / 70);
    expect(chosen.reason).toBe('4 of 4 expected counts are below 5, the smallest is 2');
    expect(words.answer).toBe('Site and fibre could not be shown to go together.');
    expect(words.because[0]).toBe(
      'n = 8 items, two by two: Fisher’s exact test, p = 0.49; chi-square 2, df 1.',
    );
    expect(words.because[2]).toBe('No single cell with enough records stands out.');
    expect(words.next).toEqual(['More records in the smallest lines.']);
  });

  it('is chi-square where the expected counts carry it, and whatever was asked for when asked', () => {
    const large = rowsOf([
      [30, 10],
      [10, 30],
    ]);
    expect(linesOf(ask(crosstab, inputFrom(large), question).tables.tests)[0].test).toBe(
      'chosen: chi-square',
    );
    expect(
      linesOf(ask(crosstab, inputFrom(large), { ...question, test: 'exact' }).tables.tests)[0].test,
    ).toBe('chosen: Fisher’s exact test');
    const asked = ask(
      crosstab,
      inputFrom(
        rowsOf([
          [3, 1],
          [1, 3],
        ]),
      ),
      { ...question, test: 'chi-square' },
    );
    expect(asked.words.unless.map(printTurn)[0]).toBe(
      'Chi-square was asked for where the expected counts do not carry it: its p is doubtful, the smallest expected count is 2.',
    );
  });

  it('deals items whole: ten fragments of one item are one thing', () => {
    const rows = ['a', 'b'].flatMap((site, s) =>
      [0, 1].flatMap((item) =>
        Array.from({ length: 10 }, () => ({ site, item: `${site}${item}`, fibre: s === 0 ? 'c0' : 'c1' })),
      ),
    );
    const { tables, words } = ask(crosstab, inputFrom(rows), question);
    const [chosen] = linesOf(tables.tests);
    // Two of the six ways to deal four items give a table as extreme.
    expectClose(chosen.p as number, 2 / 6);
    expect(words.because[0]).toContain('n = 4 items in 40 fragments');
    expect(chosen.reason).toContain('40 fragments come from 4 items');
    expect(words.answer).toBe('Site and fibre could not be shown to go together.');
    expect(linesOf(tables.cells)[0]).toMatchObject({ count: 20, fragments: 20, items: 2 });
  });
});

describe('shares', () => {
  const { tables, words } = ask(
    crosstab,
    inputFrom(
      rowsOf([
        [0, 7],
        [15, 10],
      ]),
    ),
    question,
  );
  it('say their base: 0/7 on a small one, percent on a larger', () => {
    const lines = linesOf(tables.rowShares);
    expect(lines[0]).toMatchObject({ row: 'r0', column1: '0/7', column2: '7/7', n: 'n = 7' });
    expect(lines[1]).toMatchObject({ column1: '60 % of 25', column2: '40 % of 25' });
    expect(linesOf(tables.columnShares)[0]).toMatchObject({
      column1: '0/15',
      column2: '7/17',
      n: '22 % of 32',
    });
  });
  it('and counts add up', () => {
    expect(linesOf(tables.counts)[2]).toMatchObject({
      row: 'all',
      column1: 15,
      column2: 17,
      total: 32,
    });
    const parts = linesOf(tables.cells).reduce((sum, { contribution }) => sum + (contribution as number), 0);
    expectClose(parts, 1);
  });
  it('name the cells that stand out, the right way round', () => {
    // 0 of 7 against 15 of 25: c0 is rarer in r0 than expected, c1 commoner.
    expect(words.answer).toBe('Site and fibre go together: more c1 in r0 and more c0 in r1.');
    expect(linesOf(tables.cells).map(({ stands }) => stands)).toEqual(['fewer', 'more', 'more', 'fewer']);
    expect(words.because[2]).toContain('more c1 in r0 (7/7)');
    expect(words.because[2]).toContain('fewer c0 in r0 (0/7)');
  });
});

describe('what is left out', () => {
  it('is counted by what is lacking', () => {
    const { found, words } = ask(
      crosstab,
      inputFrom([
        ...rowsOf([
          [3, 4],
          [4, 3],
        ]),
        { site: 'r0' },
        { fibre: 'c1' },
      ]),
      question,
    );
    expect(found.n).toEqual({
      fragments: 14,
      items: 14,
      setAside: [
        { reason: 'fibre not recorded', fragments: 1 },
        { reason: 'site not recorded', fragments: 1 },
      ],
    });
    expect(words.unless.map(printTurn)).toContain(
      '2 fragments could not be counted (fibre not recorded and site not recorded): beside 14 that were.',
    );
  });
  it('a verdict that one line alone makes says so', () => {
    const { words } = ask(
      crosstab,
      inputFrom(
        rowsOf([
          [10, 10],
          [10, 10],
          [0, 14],
        ]),
      ),
      question,
    );
    expect(words.answer).toBe('Site and fibre go together only as long as r2 is counted.');
    expect(words.unless.filter(({ overturns }) => overturns).map(({ what }) => what)).toEqual([
      'with r2 left out',
    ]);
  });
  it('a table of its own for each row is said, since recorder and row cannot be told apart then', () => {
    const input = inputFrom(
      rowsOf([
        [15, 5],
        [5, 15],
      ]),
    );
    const origin = input.records.origin.map((one, row) => ({ ...one, source: row < 20 ? 0 : 1 }));
    const records = { ...input.records, origin, sources: ['a.csv', 'b.csv'] };
    const { words } = ask(crosstab, { ...input, records, fragments: records }, question);
    expect(words.answer).toMatch(/, which cannot be told from a difference between sources\.$/);
    expect(words.unless.map(printTurn)).toContain(
      'Among finds of one source: there are none to compare: no two groups by site share a source.',
    );
    expect(words.next).toContain(
      'Let one person record fibre of some finds of each site again, or bring a table in which one recorder describes finds of more than one site.',
    );
  });
  it('judges at the confidence asked: p = 0.03 is told apart at 95 % and not at 99 %', () => {
    // R 4.2: fisher.test(matrix(c(8,3,2,9),2))$p.value = 0.0300
    const rows = rowsOf([
      [8, 2],
      [3, 9],
    ]);
    expect(ask(crosstab, inputFrom(rows), question).found.told).toBe('told apart');
    const strict = ask(crosstab, inputFrom(rows), { ...question, confidence: 0.99 });
    expect(strict.found.told).toBe('not told apart');
    expect(strict.figures.residuals.caption).toContain('beyond ±2.58');
  });
});

describe('refusals', () => {
  it('one value, and numbers, in words', () => {
    expect(() =>
      ask(
        crosstab,
        inputFrom([
          { site: 'a', fibre: 'wool' },
          { site: 'b', fibre: 'wool' },
        ]),
        question,
      ),
    ).toThrow(
      '"fibre" (fibre) has only one value ("wool") among the records that have both, and two are needed; choose another attribute, or select more fragments.',
    );
    expect(() =>
      ask(crosstab, inputFrom([{ site: 'a', rowSpacing: 2 }]), { ...question, columns: 'rowSpacing' }),
    ).toThrow('is a number and forms no groups');
  });
});

it('a line without any counted record is left out, said, and breaks nothing', () => {
  const rows = [
    ...rowsOf([
      [5, 2],
      [1, 6],
    ]),
    { site: 'bare' },
    { site: 'bare' },
  ];
  const { found } = ask(crosstab, inputFrom(rows), question);
  expect(found.table.rows).toHaveLength(2);
  expect(found.n.setAside.map(({ fragments }) => fragments)).toEqual([2]);
  expect(everyNumber(found).some(Number.isNaN)).toBe(false);
});

it('the same seed gives the same answer, without NaN, and captions say n', () => {
  const answer = () =>
    ask(
      crosstab,
      inputFrom(
        rowsOf([
          [5, 2, 1],
          [1, 6, 2],
        ]),
      ),
      question,
    );
  expect(JSON.stringify(answer())).toBe(JSON.stringify(answer()));
  expect(everyNumber(answer()).some(Number.isNaN)).toBe(false);
  for (const { caption } of Object.values(answer().figures)) expect(caption).toContain('17 fragments');
});

describe('the mosaic', () => {
  const counts = [
    [30, 10, 0],
    [10, 20, 30],
  ];
  const result = ask(crosstab, inputFrom(rowsOf(counts), undefined), question);
  const { data, layout, caption } = result.figures.mosaic;
  const bars = data as {
    x: number[];
    y: number[];
    width: number[];
    text: string[];
    marker: { color: number[] };
  }[];

  it('gives each tile the area of its share of all, strips that do not overlap, and rows that fill 100 %', () => {
    for (const [column, bar] of bars.entries())
      for (const [row, line] of counts.entries())
        expect((bar.x[row] * bar.width[row]) / 100).toBeCloseTo(line[column], 10);
    expect(bars.reduce((sum, bar) => sum + bar.x[1], 0)).toBeCloseTo(100, 10);
    const [{ y, width }] = bars;
    expect(y[0] + width[0] / 2).toBeLessThan(y[1] - width[1] / 2);
    const { range } = (layout as { yaxis: { range: number[] } }).yaxis;
    expect(range[0]).toBeCloseTo(y[1] + width[1] / 2, 10);
  });

  it('shades by the residuals of the table of cells, marks and names those that depart', () => {
    const cells = linesOf(result.tables.cells);
    expect(bars.flatMap(({ marker }) => marker.color).sort((a, b) => a - b)).toEqual(
      cells.map(({ residual }) => Number(residual)).sort((a, b) => a - b),
    );
    // R 4.2: chisq.test(matrix(c(30,10,10,20,0,30),2))$stdres is beyond 1.96 in columns 1 and 3 only.
    expect(bars.map(({ text }) => text.map((one) => /[+−]$/.exec(one)?.[0] ?? ''))).toEqual([
      ['+', '−'],
      ['', ''],
      ['', '+'],
    ]);
    expect(caption).toMatch(/Departing most: c[02] at r[01] \((?:more|fewer) than expected\)/);
    expect(caption).toContain('100 fragments');
  });
});

it('the demo: structures by site, as read and kept', async () => {
  const result = demoAnswer('table');
  expect(faultsOfAnswer(result.words)).toEqual([]);
  expect(numbersWithoutSource(result.words, result.tables, [result.n.items, result.n.fragments, 12])).toEqual(
    [],
  );
  await expect(readable(result)).toMatchFileSnapshot('snapshots/demo-table.txt');
});

describe('shares of small rows', () => {
  it('stand raw beside drawn towards what the rows have in common, the more the fewer their records', () => {
    const { tables, figures } = ask(
      crosstab,
      inputFrom(
        rowsOf([
          [60, 20],
          [15, 45],
          [3, 0],
        ]),
      ),
      question,
    );
    const [large, , small] = linesOf(tables.pooledShares).filter(({ kind }, _, all) => kind === all[0].kind);
    // By hand: 60 of 80 and 3 of 3; the three are drawn in far, the eighty hardly.
    expect([large.share, small.share]).toEqual([0.75, 1]);
    expect(Math.abs((large.pooled as number) - 0.75)).toBeLessThan(0.03);
    expect(small.pooled as number).toBeLessThan(0.9);
    expect(small.pooled as number).toBeGreaterThan(0.5);
    expect(figures.pooled.caption).toContain('raw');
  });
});
