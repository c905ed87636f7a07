import { describe, expect, it } from 'vitest';
import { printNumber, printTurn } from '../../../src/analyses/phrasing.ts';
import { COEFFICIENTS } from '../../../src/analyses/shared/options/coefficient.ts';
import { similarity } from '../../../src/analyses/similarity/index.ts';
import { condensedIndex } from '../../../src/numerics/dissimilarity/condensed.ts';
import { r } from '../../numerics/assemblages-values.ts';
import { expectClose } from '../../numerics/close.ts';
import { faultsOfAnswer } from '../answer-rules.ts';
import { ask, everyNumber, inputFrom, linesOf } from '../ask.ts';
import { demoAnswer, numbersWithoutSource, readable } from '../demo-answer.ts';

const quick = { relabellings: 199, resamples: 199 };
const question = { assemblages: 'site', of: 'fibre', ...quick };

type Extra = Readonly<Record<string, number | readonly [number, number]>>;
const rowsOf = (
  table: Readonly<Record<string, readonly number[]>>,
  extra: Readonly<Record<string, Extra>> = {},
) =>
  Object.entries(table).flatMap(([site, line]) =>
    line.flatMap((count, kind) =>
      Array.from({ length: count }, () => ({ site, fibre: `k${kind}`, ...extra[site] })),
    ),
  );

const { dune, similarity: wanted, tool, version } = r;

describe(`likeness, against ${tool} (${version}), absolute 1e-9`, () => {
  // Four meadows of the dune data, kinds none of them has left out by the analysis itself.
  const meadows = [0, 1, 4, 9];
  const rows = rowsOf(Object.fromEntries(meadows.map((row) => [`s${row}`, dune[row]])));
  it.each(COEFFICIENTS.filter((name) => name !== 'chi-square' && wanted[name] !== undefined))(
    '%s',
    (coefficient) => {
      const { tables } = ask(similarity, inputFrom(rows), { ...question, coefficient });
      linesOf(tables.pairs).forEach((line, pair) => {
        const [i, j] = [
          [0, 1],
          [0, 4],
          [0, 9],
          [1, 4],
          [1, 9],
          [4, 9],
        ][pair];
        expect(
          Math.abs((line.likeness as number) - wanted[coefficient][condensedIndex(dune.length, i, j)]),
        ).toBeLessThan(1e-9);
        expect(line.low as number).toBeLessThanOrEqual(line.likeness as number);
        expect(line.high as number).toBeGreaterThanOrEqual(line.likeness as number);
      });
    },
  );
});

describe('worked values', () => {
  it('Brainerd-Robinson of (10, 30, 60) and (20, 20, 60) is 180 (200 minus 20, by hand after Robinson 1951)', () => {
    const { tables } = ask(similarity, inputFrom(rowsOf({ a: [10, 30, 60], b: [20, 20, 60] })), question);
    expectClose(linesOf(tables.pairs)[0].likeness as number, 180);
  });

  it('correspondence analysis of the smoking table (Greenacre 1984; inertias from R ca)', () => {
    const smoke = {
      SM: [4, 2, 3, 2],
      JM: [4, 3, 7, 4],
      SE: [25, 10, 12, 4],
      JE: [18, 24, 33, 13],
      SC: [10, 6, 7, 2],
    };
    const { tables } = ask(similarity, inputFrom(rowsOf(smoke)), question);
    const inertias = linesOf(tables.axes).map(({ inertia }) => inertia as number);
    [0.0747591059, 0.0100171805, 0.0004135741].forEach((value, axis) => {
      expectClose(inertias[axis], value, 1e-7);
    });
    const axis1 = Object.fromEntries(
      linesOf(tables.assemblagesOnAxes).map(({ assemblage, axis1: at }) => [
        assemblage,
        Math.abs(at as number),
      ]),
    );
    for (const [name, at] of Object.entries({
      SM: 0.06577,
      JM: 0.25896,
      SE: 0.38059,
      JE: 0.23295,
      SC: 0.20109,
    })) {
      expectClose(axis1[name], at, 1e-4);
    }
  });

  it('an assemblage placed afterwards lies where an active one of the same profile lies', () => {
    const table = { a: [8, 2, 1], b: [1, 9, 3], c: [2, 3, 9], late: [4, 1, 0.5].map((count) => 2 * count) };
    const { tables } = ask(similarity, inputFrom(rowsOf(table)), {
      ...question,
      supplementary: ['late'],
    });
    const lines = linesOf(tables.assemblagesOnAxes);
    const at = (name: string) => lines.find(({ assemblage }) => assemblage === name)?.axis1 as number;
    expect(lines.find(({ assemblage }) => assemblage === 'late')?.role).toBe('placed afterwards');
    expectClose(at('late'), at('a'));
  });
});

describe('order, time and space', () => {
  const table = {
    p: [9, 3, 0, 0],
    q: [6, 6, 1, 0],
    r: [3, 8, 4, 0],
    s: [1, 5, 8, 1],
    t: [0, 3, 8, 5],
    u: [0, 0, 6, 9],
  };
  const placed = Object.fromEntries(
    Object.keys(table).map((site, i) => [
      site,
      { date: [100 * i, 100 * i + 50] as const, east: 10 * i, north: (i % 2) * 3 },
    ]),
  );
  const { found, tables, words, figures } = ask(similarity, inputFrom(rowsOf(table, placed)), {
    ...question,
    places: ['east', 'north'],
  });

  it('a battleship series comes out in the order of its dates, early first', () => {
    expect(linesOf(tables.order).map(({ assemblage }) => assemblage)).toEqual(['p', 'q', 'r', 's', 't', 'u']);
    expect(words.because.join(' ')).toContain(
      'The order along the first axis goes with the dates (Spearman rho 1',
    );
    expect(words.because.join(' ')).toContain('likeness falls with distance in');
    // Of 720 orders two are perfect.
    const axes = found.axes;
    if ('why' in axes || 'why' in axes.againstDates) throw new Error('expected an order against dates');
    expectClose(axes.againstDates.p, 2 / 720);
  });

  it('unlikeness grows with distance in space and in time', () => {
    const lines = linesOf(tables.distances);
    expect(lines.map(({ against, apartFrom }) => [against, apartFrom])).toEqual([
      ['space', null],
      ['time', null],
      ['space', 'time'],
      ['time', 'space'],
    ]);
    expect(lines[0].statistic as number).toBeGreaterThan(0.8);
    expect(lines[1].p as number).toBeLessThan(0.05);
    expect(lines[1].n).toBe(6);
  });

  it('without dates and places says so and still compares', () => {
    const bare = ask(similarity, inputFrom(rowsOf(table)), question);
    expect(linesOf(bare.tables.distances).map(({ p }) => p)).toEqual([
      { why: 'no source records latitude and longitude, and no "places" are named' },
      { why: 'no assemblage is dated' },
      { why: 'no source records latitude and longitude, and no "places" are named' },
      { why: 'no source records latitude and longitude, and no "places" are named' },
    ]);
    expect(Object.keys(bare.figures)).toEqual(['matrix', 'biplot', 'diversity']);
  });

  it('draws the matrix in an order in which neighbours are alike', () => {
    // The tree joins what is most alike first, so each pair of neighbours in the series stands together.
    const order = linesOf(tables.matrix).map(({ assemblage }) => String(assemblage));
    expect([...order].sort()).toEqual(['p', 'q', 'r', 's', 't', 'u']);
    const joined = found.likeness.values.indexOf(Math.max(...found.likeness.values));
    const pairs = ['p', 'q', 'r', 's', 't', 'u'].flatMap((a, i, all) => all.slice(i + 1).map((b) => [a, b]));
    expect(Math.abs(order.indexOf(pairs[joined][0]) - order.indexOf(pairs[joined][1]))).toBe(1);
    expect(Object.keys(figures)).toEqual(['matrix', 'biplot', 'order', 'diversity']);
    expect(figures.matrix.caption).toContain('86 in all');
    expect(everyNumber(figures).some(Number.isNaN)).toBe(false);
  });
});

describe('one source', () => {
  it('equal assemblages are not distinguishable, disjoint ones are', () => {
    const p = (table: Record<string, number[]>) =>
      linesOf(ask(similarity, inputFrom(rowsOf(table)), question).tables.pairs)[0].p as number;
    expect(p({ a: [6, 6], b: [6, 6] })).toBe(1);
    expect(p({ a: [12, 0], b: [0, 12] })).toBeLessThan(0.01);
  });
  it('items of many fragments are dealt whole', () => {
    const rows = ['a', 'b'].flatMap((site, s) =>
      [0, 1].flatMap((item) =>
        Array.from({ length: 8 }, () => ({ site, item: `${site}${item}`, fibre: `k${s}` })),
      ),
    );
    expectClose(linesOf(ask(similarity, inputFrom(rows), question).tables.pairs)[0].p as number, 2 / 6);
  });
});

describe('refusals', () => {
  it('a stranger among those to be placed is named with those there are', () => {
    expect(() =>
      ask(similarity, inputFrom(rowsOf({ a: [1, 2], b: [2, 1] })), { ...question, supplementary: ['z'] }),
    ).toThrow('supplementary: there is no assemblage "z" to be placed afterwards; name one of "a", "b".');
  });
  it('one assemblage has nothing to be compared with', () => {
    expect(() => ask(similarity, inputFrom(rowsOf({ a: [1, 2] })), question)).toThrow(
      'has only one value ("a")',
    );
  });
  it('the smallest assemblages give words or numbers, never NaN, and the same for the same seed', () => {
    const answer = () => ask(similarity, inputFrom(rowsOf({ a: [1, 0], b: [0, 1], c: [3, 4] })), question);
    expect(everyNumber(answer()).some(Number.isNaN)).toBe(false);
    expect(faultsOfAnswer(answer().words)).toEqual([]);
    expect(JSON.stringify(answer())).toBe(JSON.stringify(answer()));
  });
});

describe('assemblages placed afterwards', () => {
  const table = { p: [9, 3, 2], q: [3, 9, 1], r: [1, 4, 9], s: [2, 2, 9] };
  const site = (label: string, counts: Readonly<Record<string, number>>) => ({
    ...question,
    newSites: [{ label, counts }],
  });

  it('one with the counts of another lies on it, and is as alike as can be', () => {
    const { tables, words, figures } = ask(
      similarity,
      inputFrom(rowsOf(table)),
      site('new', { k0: 9, k1: 3, k2: 2 }),
    );
    const [line] = linesOf(tables.newcomers);
    const twin = linesOf(tables.assemblagesOnAxes).find(({ assemblage }) => assemblage === 'p');
    expect(Math.abs((line.axis1 as number) - (twin?.axis1 as number))).toBeLessThan(1e-9);
    expect(Math.abs((line.axis2 as number) - (twin?.axis2 as number))).toBeLessThan(1e-9);
    expect((line.low1 as number) < (line.axis1 as number)).toBe(true);
    expect((line.high1 as number) > (line.axis1 as number)).toBe(true);
    const [likest] = linesOf(tables.newcomerLikeness);
    expect([likest.label, likest.likeness]).toEqual(['p', 200]);
    expect(words.answer).toMatch(/^In fibre new is most like p; of the others most alike are r and s/);
    expect(words.because.join(' ')).toContain('new (n = 14): nearest p 200 of 200');
    expect(figures.biplot.caption).toContain('Stars: placed afterwards');
  });

  it('leaves every other answer as it is without the new site', () => {
    const plain = ask(similarity, inputFrom(rowsOf(table)), question);
    const { tables } = ask(similarity, inputFrom(rowsOf(table)), site('new', { k0: 1 }));
    for (const name of Object.keys(plain.tables)) expect(tables[name]).toEqual(plain.tables[name]);
  });

  it('one of the table that is named is drawn again too', () => {
    const { found, tables } = ask(similarity, inputFrom(rowsOf(table)), {
      ...question,
      supplementary: ['s'],
    });
    const [line] = linesOf(tables.newcomers);
    expect([line.label, line.n, line.unplaced]).toEqual(['s', 13, 0]);
    expect(found.newcomers[0].cloud).toHaveLength(quick.resamples);
  });

  it('kinds that no assemblage has are counted, do not move it, and lower its likeness', () => {
    const [few, many] = [0, 14].map((strange) =>
      ask(similarity, inputFrom(rowsOf(table)), site('new', { k0: 9, k1: 3, k2: 2, limeBast: strange })),
    );
    const [a, b] = [few, many].map(({ tables }) => linesOf(tables.newcomers)[0]);
    expect([b.n, b.unplaced]).toEqual([28, 14]);
    expectClose(a.axis1 as number, b.axis1 as number);
    // Half of it is of a kind that p lacks: shares differ by 100 each way, 200 - 100.
    expectClose(linesOf(many.tables.newcomerLikeness)[0].likeness as number, 100);
  });

  it('is refused in words: nothing counted, a name that is taken, a kind that nobody knows', () => {
    const refused = (options: object) => () => ask(similarity, inputFrom(rowsOf(table)), options);
    expect(refused(site('new', { k0: 0 }))).toThrow('the new site "new" has no counts');
    expect(refused(site('p', { k0: 1 }))).toThrow('there is an assemblage "p" already');
    expect(refused(site('new', { oter: 1 }))).toThrow(
      '"oter" is no kind that is known; write one of "k0", "k1", "k2".',
    );
  });
});

describe('the verdict', () => {
  const words = (table: Readonly<Record<string, readonly number[]>>, options: object = {}) => {
    const said = ask(similarity, inputFrom(rowsOf(table)), { ...question, ...options }).words;
    expect(faultsOfAnswer(said)).toEqual([]);
    return said;
  };

  it('calls a tie of pairs a tie', () => {
    const { answer } = words({ a: [9, 1], b: [18, 2], c: [1, 9], d: [2, 18] });
    expect(answer).toMatch(/^In fibre equally alike are a with b and c with d, a tie of two pairs/);
  });

  it('ranks no assemblage of fewer than five items, and names it as left out', () => {
    const { answer, unless } = words({ a: [12, 3], b: [3, 1], c: [6, 9], d: [1, 14] });
    expect(answer).not.toMatch(/ b /);
    expect(unless.map(printTurn).join(' ')).toContain('b (4); b is not ranked');
  });

  it('says of two whether they are told apart', () => {
    expect(words({ a: [20, 1], b: [1, 20] }).answer).toBe('In fibre a and b are told apart.');
    expect(words({ a: [10, 10], b: [11, 9] }).answer).toBe('In fibre a and b are not told apart.');
  });

  it('names a rival of the most alike, and how often it comes first', () => {
    const { answer, unless } = words({ a: [10, 5, 0], b: [9, 6, 0], c: [0, 6, 9], d: [0, 4, 11] });
    expect(answer).toMatch(/most alike are|equally alike/);
    expect(answer).toContain('cannot be ruled out');
    expect(unless.map(printTurn).join(' ')).toMatch(/most alike come .* of draws of the items/);
  });

  it('tells apart at the confidence that was asked for', () => {
    const pair = (confidence: number) =>
      ask(similarity, inputFrom(rowsOf({ a: [9, 3], b: [4, 8] })), { ...question, confidence }).found
        .sameSource[0];
    const { pAdjusted, told } = pair(0.95);
    expect(told).toBe('not told apart');
    expect(pair(1 - pAdjusted).told).toBe('told apart');
  });
});

describe('diversity', () => {
  const diversityOf = (table: Readonly<Record<string, readonly number[]>>, options: object = {}) =>
    ask(similarity, inputFrom(rowsOf(table)), { ...question, ...options });

  it('is compared at the coverage of the least complete assemblage, whatever the sizes', () => {
    const { tables, found } = diversityOf({ a: [20, 10, 5, 2, 1, 1], b: [6, 2, 1, 1, 1, 0] });
    const [a, b] = linesOf(tables.diversity);
    expectClose(found.coverageTo as number, b.coverage as number);
    expectClose(b.atCoverage as number, 5);
    expect(a.atCoverage as number).toBeLessThan(6);
    expect(a.coverage as number).toBeGreaterThan(b.coverage as number);
  });

  it('gives numbers of kinds on the scale of the entropy and of Simpson, with limits that end', () => {
    const [a] = linesOf(diversityOf({ a: [9, 5, 3, 2, 1], b: [4, 4, 4, 4, 4] }).tables.diversity);
    for (const end of ['', 'Low', 'High']) {
      expectClose(Math.log(a[`common${end}`] as number), a[`shannon${end}`] as number, 1e-9);
    }
    expectClose(1 - 1 / (a.dominant as number), a.simpson as number, 1e-9);
    // Of kinds so even that 1 less Simpson's index reaches 0 within its limits, the number of kinds still has an end.
    const [even] = linesOf(diversityOf({ a: [1, 1, 1, 2], b: [4, 4, 4, 4] }).tables.diversity);
    expect(even.simpsonHigh).toBe(1);
    expect(even.dominantHigh as number).toBeGreaterThan(even.dominant as number);
    expect(even.dominantHigh as number).toBeLessThan(1000);
  });

  it('never gives limits that leave out their value or have no width, however poor the sample', () => {
    const poor = { a: [1, 0, 0], b: [5, 1, 0], c: [2, 2, 2], d: [0, 0, 9], e: [1, 1, 1], f: [12, 1, 0] };
    const lines = linesOf(diversityOf(poor).tables.diversity);
    let seen = 0;
    for (const line of lines) {
      for (const id of ['rarefied', 'atCoverage', 'chao1', 'common', 'dominant', 'shannon', 'simpson']) {
        const [value, low, high] = [line[id], line[`${id}Low`], line[`${id}High`]];
        if (typeof low !== 'number' || typeof high !== 'number' || typeof value !== 'number') continue;
        seen++;
        expect(low).toBeLessThanOrEqual(value);
        expect(high).toBeGreaterThanOrEqual(value);
        expect(high).toBeGreaterThan(low);
      }
    }
    expect(seen).toBeGreaterThan(15);
  });

  it('has wider limits at a higher confidence', () => {
    const width = (confidence: number) => {
      const [a] = linesOf(
        diversityOf({ a: [9, 5, 3, 2, 1], b: [4, 4, 4, 4, 4] }, { confidence }).tables.diversity,
      );
      return (a.shannonHigh as number) - (a.shannonLow as number);
    };
    expect(width(0.99)).toBeGreaterThan(1.2 * width(0.9));
  });
});

describe('counted at the level that all record', () => {
  const structure = (site: string, counts: Readonly<Record<string, number>>) =>
    Object.entries(counts).flatMap(([kind, count]) =>
      Array.from({ length: count }, () => ({ site, structure: kind })),
    );
  // The same finds: b writes only the broad term.
  const rows = [
    ...structure('a', { openTwining: 8, closeTwining: 8, tabby: 4 }),
    ...structure('b', { twined: 16, tabby: 4 }),
    ...structure('c', { openTwining: 8, closeTwining: 2, tabby: 10 }),
  ];
  const asked = (level: object = {}) =>
    ask(similarity, inputFrom(rows), { ...question, of: 'structure', ...level });

  it('finds two catalogues of the same finds alike, and says what the words alone would have said', () => {
    const { found, words, tables } = asked();
    const line = (a: string, b: string) =>
      linesOf(tables.pairs).find(({ first, second }) => first === a && second === b);
    expectClose(line('a', 'b')?.likeness as number, 200);
    expect(words.answer).toMatch(/most alike are a and b, .*; as recorded it would be a and c/);
    expect(words.unless[0]).toMatchObject({ what: 'Counted by the words as recorded', overturns: true });
    expect(found.level.folds[0].because[0]).toEqual({ label: 'b', broad: 16, of: 16 });
    expect(tables.counts.note).toContain('since b says no more of 16 of 16');
  });

  it('sets beside it what the rest tells apart, where a few of one place fold a branch for all', () => {
    // Counted as twined, a is most like b; open told from close, with three of twenty of b left out, most like c.
    const rest = [
      ...structure('a', { openTwining: 16, tabby: 4 }),
      ...structure('b', { closeTwining: 13, twined: 3, tabby: 4 }),
      ...structure('c', { openTwining: 14, tabby: 6 }),
    ];
    const { words, found } = ask(similarity, inputFrom(rest), { ...question, of: 'structure' });
    expect(found.level.folds[0].because[0]).toEqual({ label: 'b', broad: 3, of: 16 });
    expect(words.answer).toMatch(/most alike are a and b.*; in narrower kinds it would be a and c/);
    expect(words.unless[0].what).toBe(
      'with open twining and close twining told apart, the 3 of 16 of b that say no more than twined left out',
    );
    expect(words.unless[0]).toMatchObject({
      size: expect.stringMatching(/^most alike a with c/),
      overturns: true,
    });
    expect(faultsOfAnswer(words)).toEqual([]);
  });

  it('counts a new site, typed in by closer kinds, at the level too', () => {
    const counts = { openTwining: 10, closeTwining: 6, tabby: 4 };
    const { tables } = asked({ newSites: [{ label: 'new', counts }] });
    const [line] = linesOf(tables.newcomers);
    expect([line.n, line.unplaced]).toEqual([20, 0]);
    expectClose(linesOf(tables.newcomerLikeness)[0].likeness as number, 200);
  });

  it('counts the words as they stand where that is asked', () => {
    const { tables, words } = asked({ level: 'recorded' });
    const [first] = linesOf(tables.pairs);
    // a and b share tabby alone: 20 % of each.
    expectClose(first.likeness as number, 40);
    expect(words.answer).toMatch(/most alike are a and c/);
  });
});

describe('the demo', () => {
  it('is answered by the rules, as read and kept, with the numbers of its tables', async () => {
    const result = demoAnswer('alike');
    expect(faultsOfAnswer(result.words)).toEqual([]);
    await expect(readable(result)).toMatchFileSnapshot('snapshots/demo-alike.txt');
    const pairs = linesOf(result.tables.pairs).sort(
      (a, b) => (b.likeness as number) - (a.likeness as number),
    );
    expect(result.words.answer).toContain(`${pairs[0].first} and ${pairs[0].second}`);
    expect(result.words.because[0]).toContain(`${printNumber(pairs[0].likeness as number)} of 200`);
    expect(numbersWithoutSource(result.words, result.tables, [result.n.items])).toEqual([]);
  });
});
