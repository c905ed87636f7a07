import { describe, expect, it } from 'vitest';
import { chronology } from '../../../src/analyses/chronology/index.ts';
import { faultsOfAnswer } from '../answer-rules.ts';
import { ask, everyNumber, inputFrom, linesOf } from '../ask.ts';

type Row = Readonly<Record<string, string | number | readonly [number, number]>>;

const line = (count: number, of: (i: number) => Row): Row[] => Array.from({ length: count }, (_, i) => of(i));
const answer = (rows: readonly Row[], options: object = {}, unit: 'fragment' | 'item' = 'fragment') =>
  ask(chronology, inputFrom(rows, unit), {
    of: 'structure',
    phases: 'period',
    draws: 50,
    relabellings: 499,
    ...options,
  });

/** Woven finds early and twined ones late, alike at two sites. */
const changing = line(40, (i) => ({
  site: i % 2 === 0 ? 'Ness' : 'Holm',
  structure: i < 20 ? 'woven' : 'closeTwining',
  period: i < 20 ? 'Early' : 'Late',
  date: i < 20 ? [-399 + i, -300 + i] : [1 + i, 100 + i],
}));

/** One site has woven finds and is early, the other has twined ones and is late. */
const bySite = changing.map((row, i) => ({ ...row, site: i < 20 ? 'Ness' : 'Holm' }));

describe('what changes through time', () => {
  it('says which kind comes earlier and which later, also within one site', () => {
    const { found, words, tables } = answer(changing);
    expect(found.changes.map(({ label, verdict }) => [label, verdict])).toEqual([
      ['woven', 'earlier'],
      ['close twining', 'later'],
    ]);
    expect(words.answer).toMatch(/^Woven comes earlier and close twining comes later, also within one site/);
    const deltas = new Map(linesOf(tables.changes).map(({ kind, effect }) => [kind, effect]));
    expect(deltas.get('woven')).toBe(-1);
    expect(deltas.get('close twining')).toBe(1);
    expect(faultsOfAnswer(words)).toEqual([]);
  });

  it('draws no dates where none are asked for, and says so', () => {
    const { found } = answer(changing, { draws: 0 });
    expect(found.changes.map(({ drawn }) => drawn)).toEqual([
      { why: 'not asked for' },
      { why: 'not asked for' },
    ]);
    expect(answer(changing).found.changes.some(({ drawn }) => 'why' in drawn)).toBe(false);
  });

  it('does not take a difference between sites for a change', () => {
    const { found, words } = answer(bySite);
    expect(found.verdict).toBe('across places');
    expect(words.answer).toMatch(/^On the whole woven comes earlier .* but not shown within one site/);
    expect(words.unless[0]).toMatchObject({ what: 'within one site', overturns: true });
    expect(faultsOfAnswer(words)).toEqual([]);
  });

  it('finds a change within each site that their differing hides', () => {
    // Holm has few woven finds and is early; at each site woven finds are the earlier ones.
    const rows = line(60, (i) => {
      const holm = i < 30;
      const woven = holm ? i < 6 : i < 54;
      const early = woven ? 0 : 60;
      return {
        site: holm ? 'Holm' : 'Ness',
        structure: woven ? 'woven' : 'closeTwining',
        date: (holm ? 0 : 200) + early + (i % 6),
      };
    });
    const { found, words } = answer(rows);
    const [woven] = found.changes.filter(({ label }) => label === 'woven');
    expect(woven.verdict).toBe('earlier within places');
    expect(woven.delta).toBeGreaterThan(0);
    expect(words.answer).toMatch(/^Within one site woven comes earlier .* not on the whole/);
    expect(faultsOfAnswer(words)).toEqual([]);
  });

  it('says where preservation alone makes a change', () => {
    const rows = changing.map((row, i) => ({ ...row, preservation: i < 20 ? 'charred' : 'dry' }));
    const { words } = answer(rows);
    expect(words.unless[0]).toMatchObject({ what: 'within one preservation', overturns: true });
    expect(faultsOfAnswer(words)).toEqual([]);
  });

  it('says that dates drawn within wide spans tell otherwise', () => {
    const rows = changing.map((row, i) => ({
      ...row,
      date: [-1000 + i, 1000 + (i < 20 ? -30 : 30) + i] as const,
    }));
    const { found, words } = answer(rows);
    expect(found.changes[0].told).toBe('told apart');
    expect(words.unless.find(({ what }) => what === 'dates drawn within the spans')).toMatchObject({
      overturns: true,
    });
  });

  it('counts an item once, however many fragments it came in', () => {
    const few = line(12, (i) => ({
      item: `i${i}`,
      structure: i < 6 ? 'woven' : 'closeTwining',
      date: i * 10,
    }));
    const { found } = answer([...few, ...line(60, () => few[0])], {}, 'item');
    expect(found.all.n).toBe(12);
    const fragments = answer([...few, ...line(60, () => few[0])], {}).found.changes[0];
    // 462 ways to deal six of each kind over twelve items; the fragments of one are no further evidence.
    expect(fragments.p).toBeGreaterThan(1 / 500);
  });

  it('cannot be told of few, of one date and of none', () => {
    const few = answer(changing.slice(16, 24));
    expect(few.words.answer).toMatch(/^Cannot be told which structure comes later or earlier: fewer than 5/);
    const same = answer(changing.map((row) => ({ ...row, date: 100 })));
    expect(same.words.answer).toMatch(
      /^Cannot be told which structure comes later or earlier: nothing varies/,
    );
    const none = answer([
      { structure: 'woven', date: [Number.NEGATIVE_INFINITY, 20] },
      { structure: 'woven' },
    ]);
    expect(none.words.answer).toBe('Cannot be told: no fragment has a date with both ends.');
    expect(none.figures).toEqual({});
    expect(none.found.n.setAside.map(({ reason }) => reason)).toEqual([
      'date not recorded',
      'date open-ended',
    ]);
    for (const { words, tables } of [few, same, none]) {
      expect(faultsOfAnswer(words)).toEqual([]);
      expect(everyNumber(tables).filter(Number.isNaN)).toEqual([]);
    }
  });

  it('does not put phases in order that share their one year', () => {
    const dated = (late: number) =>
      changing.map((row) => ({ ...row, date: row.period === 'Early' ? -299 : late }));
    const orders = (late: number) => answer(dated(late)).found.phases.map(({ order }) => order);
    expect(orders(-299)).toEqual(['first', 'overlaps']);
    expect(orders(-298)).toEqual(['first', 'after']);
  });

  it('refuses what is no date', () => {
    expect(() => answer(changing, { date: 'site' })).toThrow('is not a number of years');
    expect(() => answer(changing, { slice: 1 })).toThrow(
      /there would be \d+ slices of 1 year; ask for 1 to 200 slices/,
    );
    const measured = changing.map((row) => ({ ...row, rowSpacing: 4 }));
    expect(() => answer(measured, { date: 'rowSpacing' })).toThrow('is not a number of years');
    expect(() => answer(changing, { from: 200, to: 100 })).toThrow('run backwards');
  });
});

describe('counts in slices of time', () => {
  const span = (low: number, high: number): Row => ({ site: 'Ness', structure: 'woven', date: [low, high] });

  it('shares each find out over its span, as the worked example of aoristic weights has it', () => {
    // Span [-350, -150) in bins of a hundred years: 0.25, 0.50, 0.25 (as in Crema 2012, J. Archaeol. Method Theory 19:440).
    const { found } = answer([span(-349, -149)], { slice: 100 });
    expect(found.edges).toEqual([-399, -299, -199, -99]);
    expect(found.all.slices.map(({ expected }) => expected)).toEqual([0.25, 0.5, 0.25]);
    expect(found.all.slices[1]).toMatchObject({ sure: 0, possible: 1, apart: { low: 0, high: 1 } });
  });

  it('slices by centuries from AD 1 on and back, and names their years', () => {
    const { found, tables } = answer([span(-100, -100), span(100, 101)], { slice: 100 });
    expect(found.edges).toEqual([-199, -99, 1, 101]);
    expect(
      linesOf(tables.slices)
        .slice(0, 3)
        .map(({ from, to }) => [from, to]),
    ).toEqual([
      [-199, -100],
      [-99, 0],
      [1, 100],
    ]);
    expect(found.all.slices.map(({ sure }) => sure)).toEqual([1, 0, 1]);
  });

  it('has limits of the binomial distribution where all have one span, and wider ones where they go together', () => {
    const { found } = answer(
      line(30, (i) => ({ ...span(1, 401), item: `i${i}` })),
      { slice: 100, to: 400 },
    );
    // scipy 1.17.1: stats.binom(30, 0.25).ppf([0.025, 0.975])
    expect(found.all.slices[0].apart).toEqual({ low: 3, high: 12 });
    expect(found.all.slices[0].together).toEqual({ low: 0, high: 30 });
    expect(found.all.slices[0].expected).toBeCloseTo(7.5, 12);
  });

  it('lets fragments of one item share its date', () => {
    const { found } = answer(
      line(10, () => ({ ...span(1, 201), item: 'one' })),
      { slice: 100, to: 200 },
    );
    expect(found.all.slices[0].apart).toEqual({ low: 0, high: 10 });
  });

  it('counts what lies outside the slices asked for', () => {
    const { found, words } = answer([span(1, 100), span(1, 100), span(900, 950)], {
      from: 1,
      to: 200,
      slice: 50,
    });
    expect(found.outside).toBe(1);
    expect(words.unless.some(({ what }) => what === '1 fragment outside the slices')).toBe(true);
  });
});

describe('phases in the order of time', () => {
  it('goes by the years by which half were made, and says where years are shared', () => {
    const rows = [
      ...line(6, () => ({ structure: 'woven', period: 'A late name', date: [-399, -300] as const })),
      ...line(6, () => ({ structure: 'closeTwining', period: 'B', date: [1, 100] as const })),
      ...line(6, () => ({ structure: 'woven', period: 'C', date: [50, 160] as const })),
    ];
    const { found, tables, figures } = answer(rows);
    expect(found.phases.map(({ label, order }) => [label, order])).toEqual([
      ['A late name', 'first'],
      ['B', 'after'],
      ['C', 'overlaps'],
    ]);
    expect(linesOf(tables.phases)[2].order).toMatch(/^cannot be told/);
    expect(figures.phases.caption).toContain('The order of 1 period cannot be told');
  });
});

describe('figures of time', () => {
  const { figures } = answer(changing);

  it('say what the lines are, with n, and carry years on their axes', () => {
    expect(Object.keys(figures)).toEqual(['kinds', 'counts', 'spans', 'kindSpans', 'places', 'phases']);
    for (const figure of Object.values(figures)) expect(figure.caption).toMatch(/n = 40|in brackets|counts/);
    expect(figures.counts.caption).toContain('95 % limits of the count');
    const axis = figures.counts.layout.xaxis as { ticktext: readonly string[] };
    expect(axis.ticktext).toContain('AD 1');
  });

  it('draw a kind with one symbol in all, by the order of the study', () => {
    const symbolOf = (name: string, at: number) =>
      (figures[name].data.filter(({ mode }) => mode === 'markers')[at] as { marker: { color: string } })
        .marker.color;
    expect(symbolOf('kinds', 0)).toBe(symbolOf('kindSpans', 0));
    expect(symbolOf('kinds', 0)).not.toBe(symbolOf('kinds', 1));
  });
});
