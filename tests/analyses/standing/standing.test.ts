import { describe, expect, it } from 'vitest';
import { printTurn } from '../../../src/analyses/phrasing.ts';
import { standing } from '../../../src/analyses/standing/index.ts';
import { condensedIndex } from '../../../src/numerics/dissimilarity/condensed.ts';
import { r } from '../../numerics/assemblages-values.ts';
import { expectClose } from '../../numerics/close.ts';
import { faultsOfAnswer } from '../answer-rules.ts';
import { ask, everyNumber, inputFrom, linesOf } from '../ask.ts';

const quick = { relabellings: 199, resamples: 199 };
const question = { site: 'p', of: 'fibre', ...quick };

type Extra = Readonly<Record<string, number | string | readonly [number, number]>>;
const rowsOf = (
  table: Readonly<Record<string, readonly number[]>>,
  extra: Readonly<Record<string, Extra>> = {},
) =>
  Object.entries(table).flatMap(([site, line]) =>
    line.flatMap((count, kind) =>
      Array.from({ length: count }, () => ({ site, fibre: `k${kind}`, ...extra[site] })),
    ),
  );
const lineOf = (lines: ReturnType<typeof linesOf>, label: string) =>
  lines.find((line) => line.label === label) ?? {};

const { dune, similarity: wanted, tool, version } = r;

describe(`likeness of one assemblage to the others, against ${tool} (${version}), absolute 1e-9`, () => {
  const meadows = [0, 1, 4, 9];
  const rows = rowsOf(Object.fromEntries(meadows.map((row) => [`s${row}`, dune[row]])));
  it.each(['brainerd-robinson', 'bray-curtis', 'morisita-horn', 'jaccard'] as const)('%s', (coefficient) => {
    const { tables } = ask(standing, inputFrom(rows), { ...question, site: 's4', coefficient });
    const lines = linesOf(tables.likeness);
    expect(lines).toHaveLength(3);
    for (const other of [0, 1, 9]) {
      const value = lineOf(lines, `s${other}`).likeness as number;
      expect(Math.abs(value - wanted[coefficient][condensedIndex(dune.length, other, 4)])).toBeLessThan(1e-9);
    }
    const values = lines.map(({ likeness }) => likeness as number);
    expect(values).toEqual([...values].sort((a, b) => b - a));
  });
});

describe('relations', () => {
  const table = { p: [9, 3, 2], q: [9, 3, 2], r: [1, 4, 9], s: [2, 9, 3] };

  it('an assemblage equal to the site is fully alike, lies where it lies and is not distinguishable', () => {
    const { tables, words } = ask(standing, inputFrom(rowsOf(table)), question);
    const first = linesOf(tables.likeness)[0];
    expect(first.label).toBe('q');
    expectClose(first.likeness as number, 200);
    expect(first.p).toBe(1);
    const axes = linesOf(tables.axes);
    expectClose(axes[0].axis1 as number, lineOf(axes.slice(1), 'q').axis1 as number);
    expect(words.answer).toBe('In fibre p is most like q; it is not told apart from q.');
    const unlike = linesOf(tables.unlike);
    expect(unlike[0].label).toBe('q');
  });

  it('its items differ from those of an equal assemblage by the share of unequal pairs (by hand)', () => {
    const { tables } = ask(standing, inputFrom(rowsOf({ p: [2, 1], q: [1, 2] })), question);
    // Of 9 pairs 5 differ in kind (2 x 2 and 1 x 1); among the 3 pairs of the site 2 do.
    const [line] = linesOf(tables.unlike);
    expectClose(line.between as number, 5 / 9);
    expectClose(line.siteWithin as number, 2 / 3);
    expectClose(line.excess as number, 5 / 9 - 2 / 3);
  });

  it('fragments of one item count once, whatever the unit', () => {
    const twice = rowsOf(table).flatMap((row, place) => [
      { ...row, item: `i${place}` },
      { ...row, item: `i${place}` },
    ]);
    const values = (rows: Parameters<typeof inputFrom>[0]) =>
      linesOf(ask(standing, inputFrom(rows), question).tables.likeness).map(({ items, likeness }) => [
        items,
        likeness,
      ]);
    expect(values(twice)).toEqual(values(rowsOf(table)));
  });

  it('all items of a disjoint site are at home there, of one item among strangers none is', () => {
    const home = (rows: Parameters<typeof inputFrom>[0]) => {
      const { atHome } = ask(standing, inputFrom(rows), question).found;
      if ('why' in atHome) throw new Error(atHome.why);
      return atHome;
    };
    expect(home(rowsOf({ p: [6, 0], q: [0, 6] })).elsewhere).toEqual([]);
    const one = home(rowsOf({ p: [5, 1], q: [0, 6] }));
    expect(one.elsewhere.map(({ home: at, share }) => [at, share])).toEqual([['q', 1]]);
    expectClose(one.expected, 6 / 11);
  });
});

describe('what sets it apart', () => {
  const rows = [
    ...[8, 9, 10, 11, 12].map((density1) => ({ site: 'p', fibre: 'k0', density1 })),
    ...[1, 2, 3, 4, 5].map((density1) => ({ site: 'q', fibre: 'k0', density1 })),
    ...[2, 3, 4, 5, 6].map((density1) => ({ site: 'r', fibre: 'k1', density1 })),
  ];
  it('numbers wholly above the others have delta 1 and the exact p 2 / (15 choose 5), adjusted by Holm', () => {
    const { tables, words, figures } = ask(standing, inputFrom(rows), question);
    const [first] = linesOf(tables.apart);
    expect([first.attribute, first.effect, first.says]).toEqual([
      'density1',
      1,
      'median 10 per cm against 3.5 per cm',
    ]);
    expectClose(first.p as number, 2 / 3003, 1e-9);
    expectClose(first.pAdjusted as number, (2 * 2) / 3003, 1e-9);
    expect(first.told).toBe('told apart');
    expect(words.because[2]).toContain(
      'density1 (median 10 per cm against 3.5 per cm; Cliff’s delta 1, p = 0.0013)',
    );
    // Filled: told apart; hollow: not. Right of 0: larger at the site.
    const drawn = figures.apart.data.map(({ name, x, y, marker }) => ({
      name,
      x,
      y,
      hollow: String((marker as { symbol: string }).symbol).endsWith('-open'),
    }));
    const hollow = tables.apart.rows.some((row) => row[8] === 'not told apart');
    expect(drawn[0]).toEqual({ name: 'Cliff’s delta', x: [1], y: ['density1 (5, 10)'], hollow: false });
    expect(drawn.slice(1).every((trace) => trace.hollow === hollow)).toBe(true);
    expect(figures.apart.caption).toContain('right: larger at the site');
  });
  it('kinds have Fisher’s exact p', () => {
    const { tables } = ask(standing, inputFrom(rows), question);
    const kinds = linesOf(tables.apart).find(({ attribute }) => attribute === 'fibre');
    // Hypergeometric, all 5 of k1 among the other 10: 252/3003; the other tail, all of p k1, is 1/3003; 4 of k1 at p 50/3003.
    expectClose(kinds?.p as number, (252 + 1 + 50) / 3003, 1e-9);
  });
});

describe('like with like, space and time', () => {
  const table = { p: [9, 3, 0], q: [6, 6, 1], r: [3, 8, 4], s: [1, 5, 8], t: [0, 3, 8] };
  const placed = Object.fromEntries(
    Object.keys(table).map((site, i) => [
      site,
      { date: [100 * i, 100 * i + 50] as const, east: i * i, north: (i % 2) * 3 },
    ]),
  );
  it('says what is not recorded', () => {
    const { tables, words } = ask(standing, inputFrom(rowsOf(table)), question);
    expect(linesOf(tables.sameWithin)[0].likeness).toEqual({ why: 'no source records preservation' });
    expect(words.because[3]).toContain(
      'Whether likeness falls with distance in space or time cannot be told: no source records latitude and longitude',
    );
    expect(words.unless.map(printTurn).join(' ')).toContain('since no source records preservation');
    expect(words.next).toContain('A record of preservation, so that like can be compared with like.');
  });
  it('tests both where places and dates are known', () => {
    const { tables } = ask(standing, inputFrom(rowsOf(table, placed)), {
      ...question,
      places: ['east', 'north'],
    });
    const lines = linesOf(tables.nearer);
    expect(lines.every(({ statistic }) => typeof statistic === 'number')).toBe(true);
    // Its unlikeness rises with time to each of the other four: rho 1, one of 24 orders.
    const own = lines.find(({ who, against }) => who === 'this one' && against === 'time');
    expectClose(own?.statistic as number, 1);
    expectClose(own?.p as number, 1 / 24);
  });
  it('within one value counts only its items, and names who has none', () => {
    const rows = [
      ...rowsOf({ p: [4, 2], q: [4, 2] }).map((row) => ({ ...row, structure: 'tabby' })),
      ...rowsOf({ q: [0, 9], r: [3, 3] }).map((row) => ({ ...row, structure: 'plain twining' })),
    ];
    const { tables } = ask(standing, inputFrom(rows), { ...question, sameWithin: ['structure'] });
    const lines = linesOf(tables.sameWithin);
    expect(lines.map(({ label, items }) => [label, items])).toEqual([
      ['q', 6],
      ['r', 0],
    ]);
    expectClose(lines[0].likeness as number, 200);
  });
});

describe('within its region', () => {
  const rows = [
    ...rowsOf({ p: [4, 2], q: [4, 2], r: [1, 5] }).map((row) => ({ ...row, structure: 'tabby' })),
    ...rowsOf({ s: [6, 1], t: [5, 2] }).map((row) => ({ ...row, structure: 'plain twining' })),
    ...rowsOf({ p: [0, 1] }).map((row) => ({ ...row, structure: 'plain twining' })),
  ];
  it('compares only what shares the commonest value of the site, and counts what it leaves out', () => {
    const { found, words, figures } = ask(standing, inputFrom(rows), {
      ...question,
      confineTo: ['structure'],
      attributes: ['fibre'],
    });
    expect(found.likeness.map(({ label }) => label)).toEqual(['q', 'r']);
    // 7 of s, 7 of t and the one of the site that is twined.
    expect(found.n.fragments).toBe(18);
    expect(found.n.setAside).toEqual([{ reason: 'structure is not tabby, or not recorded', fragments: 15 }]);
    expect(words.answer).toBe(
      'Within structure tabby, in fibre p is most like q, though r cannot be ruled out; it is not told apart from q and r.',
    );
    expect(figures.likeness.caption).toContain('Only items of structure tabby are compared.');
    const alone = rows.filter(({ structure }) => structure === 'tabby');
    const plain = ask(standing, inputFrom(alone), { ...question, attributes: ['fibre'] });
    expect(found.likeness).toEqual(plain.found.likeness);
  });
  it('refuses where nobody shares it, and where it is not recorded', () => {
    const asked = { ...question, confineTo: ['structure'] };
    const lonely = rows.map((row) => (row.site === 'p' ? row : { ...row, structure: 'plain twining' }));
    expect(() => ask(standing, inputFrom(lonely), asked)).toThrow(
      'no other has structure tabby, which "p" has; confine the comparison to less.',
    );
    const bare = rows.map(({ site, fibre, structure }) =>
      site === 'p' ? { site, fibre } : { site, fibre, structure },
    );
    expect(() => ask(standing, inputFrom(bare), asked)).toThrow(
      'cannot be confined to the structure of "p": structure is not recorded for the site',
    );
  });
  it('gives the effect within like items for every attribute of like with like, not the first alone', () => {
    const made = [8, 9, 10, 1, 1, 2, 3, 9].map((density1, i) => ({
      site: i < 4 ? 'p' : 'q',
      fibre: i < 4 ? 'k0' : 'k1',
      density1,
      structure: 'tabby',
      spacingClass: i % 4 === 3 ? 'open' : 'close',
    }));
    // Of another structure, so that tabby alone is less than all; without a count, so that no pair is added.
    const other = { site: 'q', fibre: 'k1', structure: 'plain twining', spacingClass: 'open' };
    const { tables } = ask(standing, inputFrom([...made, other]), {
      ...question,
      sameWithin: ['structure', 'spacingClass'],
    });
    const line = linesOf(tables.apart).find(({ attribute }) => attribute === 'density1');
    // Of 16 pairs 10 are above (8: 3, 9: 3, 10: 4), 4 below (8 and 1 against 9, 1 against 2 and 3), 2 equal.
    expectClose(line?.effect as number, (10 - 4) / 16);
    expectClose(line?.within1 as number, (10 - 4) / 16);
    expectClose(line?.within2 as number, 1);
  });
});

describe('refusals and the smallest tables', () => {
  const rows = rowsOf({ p: [1, 2], q: [2, 1] });
  it('a stranger is named with those there are', () => {
    expect(() => ask(standing, inputFrom(rows), { ...question, site: 'z' })).toThrow(
      'there is no "z" among the values of "site" (site); name one of "p", "q".',
    );
  });
  it('a site without any recorded kind is refused', () => {
    const bare = [...rows, ...rowsOf({ r: [1, 1] }), { site: 'z', density1: 3 }];
    expect(() => ask(standing, inputFrom(bare), { ...question, site: 'z' })).toThrow(
      'no item of "z" has a value of "fibre" (fibre)',
    );
  });
  it('one assemblage has nothing to be compared with', () => {
    expect(() => ask(standing, inputFrom(rowsOf({ p: [1, 2] })), question)).toThrow(
      'has only one value ("p")',
    );
  });
  it('gives words or numbers, never NaN, and the same for the same seed', () => {
    for (const table of [
      { p: [1, 0], q: [0, 1] },
      { p: [1, 1], q: [0, 1], r: [2, 0] },
      { p: [6, 0], q: [0, 6], r: [6, 0] },
      { p: [0, 0, 3], q: [6, 6, 0] },
    ]) {
      const answer = () => ask(standing, inputFrom(rowsOf(table)), question);
      expect(faultsOfAnswer(answer().words)).toEqual([]);
      expect(everyNumber(answer()).some(Number.isNaN)).toBe(false);
      expect(JSON.stringify(answer())).toBe(JSON.stringify(answer()));
    }
  });
});

describe('the verdict', () => {
  const answer = (rows: Parameters<typeof inputFrom>[0], options: object = {}) =>
    ask(standing, inputFrom(rows), { ...question, ...options });

  it('calls a tie a tie, with everybody in it', () => {
    const { words } = answer(rowsOf({ p: [9, 1], q: [18, 2], r: [27, 3], s: [0, 20] }));
    expect(words.answer).toContain('equally like q and r, a tie of two');
    expect(words.answer).not.toContain('most like');
  });

  it('ranks nobody on fewer than five items, and says whom it left out', () => {
    const { words, found } = answer(rowsOf({ p: [9, 3], q: [3, 1], r: [6, 6] }));
    expect(found.likeness[0].label).toBe('q');
    expect(words.answer).toMatch(/^In fibre p is most like r/);
    expect(words.because[0]).not.toContain('q ');
    expect(words.unless.map(printTurn).join(' ')).toContain('q (4) could be ranked');
    expect(answer(rowsOf({ p: [3, 1], q: [6, 6] })).words.answer).toBe(
      'Whom p is like in fibre cannot be told: p has 4 of the 5 items that a ranking needs.',
    );
  });

  it('says in the answer who is the most alike among like items, where it is somebody else', () => {
    const rows = [
      ...rowsOf({ p: [8, 2], q: [2, 8], r: [8, 2] }).map((row) => ({ ...row, structure: 'tabby' })),
      ...rowsOf({ q: [12, 0], r: [0, 12] }).map((row) => ({ ...row, structure: 'plain twining' })),
    ];
    const { words, found } = answer(rows, { sameWithin: ['structure'] });
    expect(found.likeness[0].label).toBe('q');
    expect(words.answer).toContain(', but among items tabby alone most like r');
    expect(words.unless[0]).toMatchObject({ overturns: true, size: expect.stringContaining('most like r') });
  });

  it('says in the answer that the site alone is of its preservation', () => {
    const rows = [
      ...rowsOf({ p: [8, 2] }).map((row) => ({ ...row, structure: 'tabby' })),
      ...rowsOf({ q: [7, 3], r: [2, 8] }).map((row) => ({ ...row, structure: 'plain twining' })),
    ];
    const { words } = answer(rows, { sameWithin: ['structure'] });
    expect(words.answer).toContain('; only p is tabby, so structure may be why');
  });

  it('judges by the confidence that was asked for', () => {
    const rows = rowsOf({ p: [9, 3], q: [4, 8] });
    const told = (confidence: number) => answer(rows, { confidence }).found.likeness[0];
    const { pAdjusted } = told(0.95);
    expect(pAdjusted).toBeGreaterThan(0.05);
    expect(told(0.95).told).toBe('not told apart');
    expect(told(1 - pAdjusted).told).toBe('told apart');
  });

  it('draws no bar where limits are not known', () => {
    const { figures, found } = answer(rowsOf({ p: [9, 0], q: [0, 9], r: [3, 6] }));
    const unknown = found.likeness.filter(({ interval }) => 'why' in interval).map(({ label }) => label);
    expect(unknown).toEqual(['q']);
    const bare = figures.likeness.data.filter(({ error_x }) => error_x === undefined);
    expect(bare.flatMap(({ y }) => y)).toEqual(['q (9)']);
  });
});

describe('counted at the level that all record', () => {
  const structure = (site: string, counts: Readonly<Record<string, number>>) =>
    Object.entries(counts).flatMap(([kind, count]) =>
      Array.from({ length: count }, () => ({ site, structure: kind })),
    );
  // q is found like p, but its catalogue writes only the broad term.
  const rows = [
    ...structure('p', { openTwining: 8, closeTwining: 8, tabby: 4 }),
    ...structure('q', { twined: 16, tabby: 4 }),
    ...structure('r', { openTwining: 4, closeTwining: 4, tabby: 12 }),
  ];
  const asked = (level: 'common' | 'recorded') =>
    ask(standing, inputFrom(rows), { ...question, of: 'structure', level });

  it('where a few of one place fold a branch for all, whom the rest is like stands beside it', () => {
    const rest = [
      ...structure('p', { openTwining: 16, tabby: 4 }),
      ...structure('q', { closeTwining: 13, twined: 3, tabby: 4 }),
      ...structure('r', { openTwining: 14, tabby: 6 }),
    ];
    const { words } = ask(standing, inputFrom(rest), { ...question, of: 'structure', level: 'common' });
    expect(words.answer).toMatch(/^In structure p is most like q.*; in narrower kinds,? r/);
    expect(words.unless[0].what).toContain('the 3 of 16 of q that say no more than twined left out');
    expect(words.unless[0]).toMatchObject({ size: expect.stringMatching(/^most like r/), overturns: true });
    expect(faultsOfAnswer(words)).toEqual([]);
  });

  it('a catalogue that writes the broad term alone is not the least alike for its words', () => {
    const { words, found, tables } = asked('common');
    expect(found.likeness.map(({ label }) => label)).toEqual(['q', 'r']);
    expectClose(found.likeness[0].value, 200);
    expect(words.answer).toMatch(/^In structure p is most like q.*; as recorded r/);
    expect(words.unless[0]).toMatchObject({ what: 'Counted by the words as recorded', overturns: true });
    expect(tables.likeness.note).toContain('since q says no more of 16 of 16');
    const structures = linesOf(tables.apart).find(({ attribute }) => attribute === 'structure');
    expect(String(structures?.says)).toMatch(/^(twined|tabby): /);
    expect(faultsOfAnswer(words)).toEqual([]);
  });

  it('the words as they stand are counted where that is asked', () => {
    const { found } = asked('recorded');
    expect(found.likeness.map(({ label }) => label)).toEqual(['r', 'q']);
    // Of each 20 % tabby are in common.
    expectClose(found.likeness[1].value, 40);
  });
});
