import { describe, expect, it } from 'vitest';
import { threadcount } from '../../../src/analyses/threadcount/index.ts';
import { faultsOfAnswer } from '../answer-rules.ts';
import { ask, inputFrom, linesOf } from '../ask.ts';

/** R 4.2.2: cor(1:6, 9 - ((0:5 * 5) %% 6), method = "spearman") */
const R_RHO = 0.142857142857143;

type Row = Readonly<Record<string, string | number | readonly [number, number]>>;

/** Two kinds that differ in both counts; within each the two have nothing to do with each other. */
const apart: Row[] = Array.from({ length: 24 }, (_, i) => {
  const fine = i >= 12;
  const [a, b] = [i % 4, Math.floor((i % 12) / 4) % 3];
  return {
    structure: fine ? 'closeTwining' : 'openTwining',
    density1: (fine ? 12 : 3) + a,
    density2: (fine ? 11 : 2) + b,
  };
});
const line = (count: number, of: (i: number) => Row): Row[] => Array.from({ length: count }, (_, i) => of(i));
const answer = (rows: readonly Row[], options: object = {}, unit: 'fragment' | 'item' = 'fragment') =>
  ask(threadcount, inputFrom(rows, unit), { by: 'structure', within: [], draws: 50, ...options });

describe('how two counts go together', () => {
  it('says that they rise together', () => {
    const rising = (structures: readonly string[]) =>
      answer(
        line(20, (i) => ({
          structure: structures[i % structures.length],
          density1: 5 + i,
          density2: 3 + i - (i % 3),
        })),
      );
    const { found, words } = rising(['openTwining', 'closeTwining']);
    expect(found.verdict).toBe('rise together');
    expect(words.answer).toMatch(
      /^Density1 and density2 rise together, also within one structure; the former is the greater/,
    );
    expect(faultsOfAnswer(words)).toEqual([]);
    // Where there is but one structure, within one is all that was said already.
    expect(rising(['woven']).words.answer).toMatch(/^Density1 and density2 rise together; the former/);
  });

  it('says that they run against each other, with the sign below 0', () => {
    const { found, words, tables } = answer(
      line(20, (i) => ({ structure: 'woven', density1: 5 + i, density2: 60 - 2 * i + (i % 3) })),
    );
    expect(found.verdict).toBe('run against each other');
    expect(words.answer).toMatch(/run against each other.*; the latter is the greater, by median/);
    expect(linesOf(tables.relation)[0].statistic).toBeLessThan(-0.9);
  });

  it('a relation that two kinds feign is not said to hold within one', () => {
    const { found, words } = answer(apart);
    expect(found.verdict).toBe('rise together across groups');
    expect(found.within[0]).toMatchObject({ told: 'not told apart', overturns: true });
    expect(words.answer).toMatch(
      /rise together on the whole, but are not shown to do so within one structure/,
    );
    expect(faultsOfAnswer(words)).toEqual([]);
  });

  it('a relation within each kind that their differing hides is found', () => {
    const rows = line(30, (i) => {
      const fine = i >= 15;
      const step = i % 15;
      return {
        structure: fine ? 'closeTwining' : 'openTwining',
        density1: (fine ? 0 : 13) + step + 1,
        density2: (fine ? 14 : 0) + step + 1,
      };
    });
    const { found } = answer(rows);
    expect(found.verdict).toBe('rise together within groups');
    expect((found.all.rho as number) * 1).toBeLessThan(0.2);
  });

  it('says where preservation alone makes them rise together', () => {
    const rows = apart.map((row) => ({
      density1: row.density1,
      density2: row.density2,
      structure: 'woven',
      site: row.structure,
    }));
    const { found, words } = answer(rows, { within: ['site'] });
    expect(found.verdict).toBe('rise together');
    expect(words.unless[0]).toMatchObject({ what: 'within site', overturns: true });
  });

  it('counts an item once, however many fragments it came in', () => {
    const rows = line(6, (i) => ({
      item: `i${i}`,
      structure: 'woven',
      density1: 5 + i,
      density2: 9 - ((i * 5) % 6),
    }));
    const { found } = answer([...rows, ...line(40, () => rows[5])], { draws: 0 });
    expect(found.all.n).toBe(6);
    expect(found.points).toHaveLength(46);
    expect(found.all.rho).toBeCloseTo(R_RHO, 12);
  });

  it('cannot be told of constants, few and none', () => {
    const same = answer(line(8, () => ({ structure: 'woven', density1: 5, density2: 6 })));
    expect(same.found.verdict).toBe('cannot be told');
    expect(same.words.answer).toMatch(
      /^Cannot be told how density1 and density2 go together: one of the two does not vary/,
    );
    const none = answer([
      { structure: 'woven', density1: 5 },
      { structure: 'woven', density2: 5 },
    ]);
    expect(none.words.answer).toBe('Cannot be told: no fragment has both density1 and density2.');
    expect(none.figures).toEqual({});
  });

  it('refuses what is no measurement', () => {
    expect(() => answer(apart, { x: 'structure' })).toThrow('"structure" (structure) is not a number');
  });
});

describe('the ratio of two counts', () => {
  it('is the first divided by the second, with the bounds that ranges allow', () => {
    const { found } = answer(
      line(9, (i) => ({ structure: 'woven', density1: [8 + i, 12 + i], density2: 5 + i })),
    );
    // By hand: the fifth of nine has (8 to 12) + 4 over 9, at its middle 14 / 9.
    expect(found.ratio?.median).toBeCloseTo(14 / 9, 12);
    expect(found.ratio?.bounds).toEqual({ low: 12 / 9, high: 16 / 9 });
    expect(found.ratio?.greater).toBe('first');
  });

  it('is not given where the units differ', () => {
    const { found, tables, figures } = answer(
      apart.map((row, i) => ({ ...row, rowSpacing: 3 + i })),
      { y: 'rowSpacing' },
    );
    expect(found.ratio).toBeNull();
    expect(tables.relation.note).toContain('different units');
    expect(Object.keys(figures)).toEqual(['counts', 'panels']);
  });

  it('of a balance that nobody can tell, neither is the greater', () => {
    const { found, words } = answer(
      line(16, (i) => ({ structure: 'woven', density1: 5 + (i % 4), density2: 5 + ((i + 2) % 4) })),
    );
    expect(found.ratio?.greater).toBe('neither');
    expect(words.answer).toMatch(/; neither is shown to be the greater\.$/);
  });
});

describe('the pictures', () => {
  const ranged = [
    ...apart,
    { structure: 'openTwining', density1: [2, 9] as const, density2: 3 },
    { structure: 'openTwining', density1: [4, Infinity] as const, density2: 3 },
  ];
  const { figures } = answer(ranged, { find: { density1: '8-10', density2: '7' } });
  const { counts, panels, ratio } = figures;

  it('draw one count against the other on logarithmic axes that say so', () => {
    expect(counts.layout.xaxis).toMatchObject({
      type: 'log',
      title: { text: 'density1 (per cm), logarithmic' },
    });
    expect(counts.layout.yaxis).toMatchObject({
      type: 'log',
      title: { text: 'density2 (per cm), logarithmic' },
    });
    expect(counts.caption).toBe(
      'density1 against density2 of 26 fragments, symbols by structure; in brackets fragments. Both axes are logarithmic. Thin lines: equal ratio of the two. Bars: the ranges of 2 readings, every value within them being possible; 1 bar runs on beyond the figure. 1 reading with an open end stands at the end that is known. Star: the find.'.replace(
        'Density1',
        'density1',
      ),
    );
  });

  it('draw ranges as bars on both sides, and open ends as none', () => {
    const open = counts.data.find(({ name }) => String(name).startsWith('open twining')) as Record<
      string,
      { array: number[]; arrayminus: number[] }
    >;
    const at = (open.customdata as unknown as string[]).indexOf('f25');
    expect([open.error_x.arrayminus[at], open.error_x.array[at]]).toEqual([3.5, 3.5]);
    const ended = (open.customdata as unknown as string[]).indexOf('f26');
    expect([open.error_x.arrayminus[ended], open.error_x.array[ended]]).toEqual([0, 0]);
  });

  it('draw lines of equal ratio: up is density2, so that 1 : 2 lies above', () => {
    const slope = (name: string) => {
      const trace = counts.data.find((one) => one.name === name && one.mode === 'lines') as unknown as {
        x: number[];
        y: number[];
      };
      return trace.y[1] / trace.x[1];
    };
    expect(slope('1 : 1')).toBeCloseTo(1, 12);
    expect(slope('1 : 2')).toBeCloseTo(2, 12);
    expect(slope('2 : 1')).toBeCloseTo(0.5, 12);
  });

  it('mark the find with its range, on top', () => {
    const last = counts.data.at(-1) as Record<string, unknown>;
    expect(last).toMatchObject({ name: 'the find', x: [9], y: [7], marker: { symbol: 'star' } });
    expect(last.error_x).toMatchObject({ array: [1], arrayminus: [1] });
  });

  it('give each kind a panel on the same axes, and the ratio an even line at 1', () => {
    expect(panels.layout.xaxis2).toMatchObject({ matches: 'x' });
    expect(panels.layout.yaxis2).toMatchObject({ matches: 'y' });
    expect((panels.layout.annotations as { text: string }[]).map(({ text }) => text)).toEqual([
      'open twining (14)',
      'close twining (12)',
      'density1 (per cm), logarithmic',
      'density2 (per cm), logarithmic',
    ]);
    expect(ratio.layout.shapes).toMatchObject([{ x0: 1, x1: 1 }]);
    expect(ratio.layout.xaxis).toMatchObject({
      type: 'log',
      title: { text: 'density1 / density2, logarithmic' },
    });
  });

  it('are plain where a reading is 0, and say nothing of logarithms', () => {
    const { figures: plain } = answer([...apart, { structure: 'woven', density1: 0, density2: 3 }]);
    expect(plain.counts.layout.xaxis).not.toHaveProperty('type');
    expect(plain.counts.caption).not.toContain('logarithmic');
  });

  it('draw outlines from the number of points asked for', () => {
    const with40 = answer(
      line(40, (i) => ({ structure: 'woven', density1: 5 + (i % 7), density2: 4 + (i % 5) })),
      { contoursFrom: 40 },
    );
    expect(with40.figures.counts.data[0]).toMatchObject({ type: 'contour' });
    expect(with40.figures.counts.caption).toContain(
      'Outlines hold the densest half and nine tenths of the points.',
    );
    expect(counts.data.some(({ type }) => type === 'contour')).toBe(false);
  });

  it('show what a source wrote, not what it marks up', () => {
    const { figures: marked } = answer(
      apart.map((row, i) => ({ ...row, id: `<b>f${i}`, site: '<a href="x">Ness</a>' })),
      { by: 'site' },
    );
    const shown = JSON.stringify(marked, (key, value) => (key === 'customdata' ? undefined : value));
    expect(shown).not.toMatch(/<b>f|<a href/);
    expect(shown).toContain('&lt;a href');
  });
});

describe('symbols and colours', () => {
  const rows = [
    ...line(12, (i) => ({ site: 'Ness', structure: 'woven', density1: 3 + i, density2: 4 + i })),
    ...line(9, (i) => ({ site: 'Holm', structure: 'woven', density1: 3 + i, density2: 4 + i })),
  ];
  const colourOf = (input: ReturnType<typeof inputFrom>, label: string) => {
    const { figures } = ask(threadcount, input, { by: 'site', within: [], draws: 0 });
    return (
      figures.counts.data.find(({ name }) => String(name).startsWith(label)) as {
        marker: { color: string; symbol: string };
      }
    ).marker;
  };

  it('go by the number of fragments in the whole study, not in the question', () => {
    expect(colourOf(inputFrom(rows), 'Ness')).toMatchObject({ color: '#1E2C5C', symbol: 'circle' });
    expect(colourOf(inputFrom(rows), 'Holm')).toMatchObject({ color: '#DB8436', symbol: 'square' });
    // Fewer of Ness have both counts, and it keeps its place.
    const gaps = rows.map((row, i) => (i < 8 ? { site: row.site, structure: row.structure } : row));
    expect(colourOf(inputFrom(gaps), 'Ness')).toMatchObject({ color: '#1E2C5C' });
  });

  it('are those that the study gives', () => {
    const given = { ...inputFrom(rows), marks: { site: ['Holm'] } };
    expect(colourOf(given, 'Holm')).toMatchObject({ color: '#1E2C5C' });
    expect(colourOf(given, 'Ness')).toMatchObject({ color: '#DB8436' });
  });
});
