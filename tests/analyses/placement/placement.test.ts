import { describe, expect, it } from 'vitest';
import type { AnalysisInput } from '../../../src/analyses/contract.ts';
import { printTurn } from '../../../src/analyses/phrasing.ts';
import { computePlacement } from '../../../src/analyses/placement/compute.ts';
import { placement } from '../../../src/analyses/placement/index.ts';
import { type PlacementOptions, placementOptions } from '../../../src/analyses/placement/options.ts';
import { placementTables } from '../../../src/analyses/placement/tables.ts';
import { takeRows } from '../../../src/fragments/subset.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { prepareDemo } from '../../demo/prepared.ts';
import { faultsOfAnswer } from '../answer-rules.ts';
import { linesOf } from '../ask.ts';
import { demoAnswer, numbersWithoutSource, readable } from '../demo-answer.ts';
import { attribute, type MadeColumn, madeInput } from '../grouping/made-table.ts';

const demo = prepareDemo();
const input: AnalysisInput = { ...demo.prepared, unit: 'item', random: createRandom(20) };
const options = (more: Partial<PlacementOptions>): PlacementOptions => placementOptions.parse(more);
const OF = ['structure', 'rowSlant', 'twist1', 'density1', 'density2', 'diameter1', 'fibre'];
const FIND = {
  structure: 'open twining',
  rowSpacing: 'c. 32 mm',
  density1: '2-3',
  rowSlant: 'Z',
  twist1: 'straight',
  diameter1: '1.7',
  fibre: 'tree bast',
};

/** Two sites of numbers that lie far apart, and a third too small to judge. */
function twoSites(): AnalysisInput {
  const random = createRandom(4);
  const sites = [...Array<string>(30).fill('north'), ...Array<string>(30).fill('south'), 'islet', 'islet'];
  const centre: Record<string, number> = { north: 2, south: 8, islet: 5 };
  const values = (spread: number) => sites.map((site) => centre[site] + spread * (random.next() - 0.5));
  const columns: MadeColumn[] = [
    { attribute: attribute('site', 'context', 'nominal'), values: sites },
    { attribute: attribute('size', 'spacing', 'ratio', { unit: 'mm' }), values: values(2) },
    { attribute: attribute('width', 'spacing', 'ratio', { unit: 'mm' }), values: values(2) },
    {
      attribute: attribute('colour', 'fibre', 'nominal'),
      values: sites.map((site) => (site === 'south' ? 'red' : 'blue')),
    },
  ];
  return madeInput(columns, { unit: 'item' });
}

it('a block of which nothing was compared is said to be so, and not to differ', () => {
  const input = twoSites();
  const columns = new Map(input.records.columns);
  const colour = columns.get('colour');
  if (colour?.kind !== 'term') throw new Error('no colour');
  // Nobody has recorded a colour in the south, near which the find is put.
  const south = colour.codes.map((code) => (colour.levels[code] === 'red' ? -1 : code));
  const state = colour.state.map((one, row) => (south[row] < 0 ? 2 : one));
  columns.set('colour', { ...colour, codes: Int32Array.from(south), state: Uint8Array.from(state) });
  const found = computePlacement(
    { ...input, records: { ...input.records, columns } },
    options({ of: ['size', 'width', 'colour'], find: { size: '8', width: '8', colour: 'blue' } }),
  );
  const lines = linesOf(placementTables(found).neighbours);
  expect(lines.length).toBeGreaterThan(3);
  for (const line of lines) expect(line.fibre).toEqual({ why: 'not compared' });
});

describe('placing the find of the demo', () => {
  const found = computePlacement(input, options({ of: OF, find: FIND }));

  it('puts it among open twinings of tree bast, and judges its own tradition in and the far one out', () => {
    // The truth behind the demo: open twinings belong to the Shelf; Tazzimbe is of another tradition.
    const structure = input.records.columns.get('kind');
    const near = found.neighbours.map(({ row }) =>
      structure?.kind === 'term' ? structure.levels[structure.codes[row]] : '',
    );
    expect(new Set(near)).toEqual(new Set(['open twining']));
    const verdict = (label: string) =>
      linesOf(placementTables(found).typicality).find((line) => line.label === label)?.at90;
    expect(verdict('Quorrimel Cave')).toBe('cannot be excluded');
    expect(verdict('Tazzimbe Gallery')).toBe('excluded');
  });

  it('the parts of each block add up to the distance', () => {
    for (const { distance, blocks } of found.neighbours) {
      const sum = blocks.reduce((total, { contribution }) => total + (contribution ?? 0), 0);
      expect(sum).toBeCloseTo(distance, 14);
    }
  });

  it('names its source and row, and places it on the map with a cloud of its ranges', () => {
    expect(found.neighbours[0].source).toMatch(/\.csv$/);
    expect(found.neighbours[0].sourceRow).toBeGreaterThan(1);
    if ('why' in found.position) throw new Error(found.position.why);
    expect(found.position.cloud.length).toBe(60);
    expect(placementTables(found).position.rows.length).toBe(61);
  });

  it('gives the same answer twice, and after another find has been placed in between', () => {
    const other = computePlacement(input, options({ of: OF, find: { structure: 'netting' } }));
    expect(other.unplaced).toBeNull();
    const again = computePlacement(input, options({ of: OF, find: FIND }));
    expect(JSON.stringify(placementTables(again))).toBe(JSON.stringify(placementTables(found)));
    const fresh = computePlacement(
      { ...input, records: { ...input.records } },
      options({ of: OF, find: FIND }),
    );
    expect(JSON.stringify(placementTables(fresh))).toBe(JSON.stringify(placementTables(found)));
  });

  it('never says what it is', () => {
    const { answer, because, unless, next = [] } = placement.words(found);
    expect(answer).toContain('cannot be excluded');
    expect([answer, ...because, ...unless.map(printTurn), ...next].join(' ')).not.toMatch(
      /\bproves?\b|\bis a (cape|bag|garment|net)\b/,
    );
  });

  it('draws figures that say their n, and no raw text of a source as markup', () => {
    const figures = placement.figures(found);
    expect(Object.keys(figures)).toContain('map');
    for (const figure of Object.values(figures)) {
      expect(figure.caption.length).toBeGreaterThan(40);
      expect(JSON.stringify(figure.data)).not.toMatch(/<(?!extra|\/extra)/);
    }
  });
});

describe('placing, where the truth is plain', () => {
  const made = twoSites();
  const place = (find: Record<string, string>, more: Partial<PlacementOptions> = {}) =>
    computePlacement(made, options({ of: ['size', 'width', 'colour'], find, ...more }));
  const verdicts = (found: ReturnType<typeof place>) =>
    Object.fromEntries(linesOf(placementTables(found).typicality).map(({ label, at90 }) => [label, at90]));

  it('a find like the north is in there, out of the south, and the islet is too small to say', () => {
    expect(verdicts(place({ size: '2', width: '2.1', colour: 'blue' }))).toEqual({
      north: 'cannot be excluded',
      south: 'excluded',
      islet: 'too few to judge',
    });
  });

  it('a find unlike all that can be judged is not "none of these" while a small one is left', () => {
    const found = place({ size: '14', width: '14' });
    expect(found.novelty[0]).toMatchObject({ verdict: 'only small ones left', tooFew: ['islet'] });
    expect(found.sets.find(({ asked }) => asked)).toMatchObject({
      kept: [],
      tooFew: ['islet'],
      excluded: ['south', 'north'],
    });
    const tables = placementTables(found);
    expect(tables.novelty.rows[0][2]).toBe('only small ones left');
    expect(tables.sets.rows.map((row) => row[3])).toEqual(Array(3).fill('too few to exclude: islet'));
    const words = placement.words(found);
    expect(words.answer).toBe('By site only islet is left, of too few records to exclude.');
    expect(words.unless.map(printTurn).join(' ')).toContain('Size lies above everything recorded: n = 62.');
    expect(faultsOfAnswer(words)).toEqual([]);
    const figure = placement.figures(found)['typicality-site'];
    const traces = figure.data as { name?: string; y: string[]; marker: { symbol: string } }[];
    const filling = (symbol: string) => /(?:-open)?(?:-dot)?$/.exec(symbol)?.[0];
    const legend = traces.filter(({ name }) => name !== undefined);
    expect(legend.map(({ name, marker: { symbol } }) => [name, filling(symbol)])).toEqual([
      ['cannot be excluded', ''],
      ['excluded', '-open'],
      ['too few to exclude', '-open-dot'],
    ]);
    const points = traces.filter(({ name }) => name === undefined);
    expect(points.map(({ y, marker: { symbol } }) => [y[0], filling(symbol)])).toEqual([
      ['north (30)', '-open'],
      ['south (30)', '-open'],
      ['islet (2)', '-open-dot'],
    ]);
    // Each has the shape of its label, whatever is said of it.
    expect(new Set(points.map(({ marker: { symbol } }) => symbol.split('-')[0])).size).toBe(3);
  });

  it('a find unlike all, where every label was judged, is none of these', () => {
    const large = twoSites();
    const rows = Array.from({ length: 60 }, (_, row) => row);
    const table = takeRows(large.records, rows);
    const found = computePlacement(
      { ...large, records: table, fragments: table },
      options({ of: ['size', 'width', 'colour'], find: { size: '14', width: '14' } }),
    );
    expect(found.novelty[0].verdict).toBe('none of these');
    expect(placement.words(found).answer).toBe('By site it is unlike all two known here.');
  });

  it('a lower level excludes more, and the set of each level is in the table', () => {
    const found = place({ size: '2', width: '2.1', colour: 'blue' }, { level: 0.85 });
    expect(found.sets.map(({ level, asked }) => [level, asked])).toEqual([
      [0.8, false],
      [0.85, true],
      [0.9, false],
      [0.95, false],
    ]);
    for (const { kept, tooFew, excluded } of found.sets)
      expect([...kept, ...tooFew, ...excluded].sort()).toEqual(['islet', 'north', 'south']);
    expect(placement.words(found).answer).toBe(
      'By site two of three cannot be excluded at 85 % (north and islet).',
    );
  });

  it('a range that reaches from one site to the other is said to be fragile', () => {
    const found = place({ size: '1-9' });
    const moved = found.moves.filter(({ change, turned }) => change === 'its own ranges' && turned > 0);
    expect(moved.map(({ label }) => label)).toContain('north');
    expect(
      placement
        .words(found)
        .unless.map((turn) => turn.what)
        .join(' '),
    ).toContain('with the find’s values moved within their ranges');
  });

  it('the missing measurement that tells the sites apart is expected to shrink the set', () => {
    const between = place({ width: '5' });
    expect(between.next.map(({ id }) => id).sort()).toEqual(['colour', 'size']);
    const blank = computePlacement(
      made,
      options({ of: ['size', 'width', 'colour'], find: { colour: 'blue' } }),
    );
    const size = blank.next.find(({ id }) => id === 'size')!;
    expect(size.expected).toBeLessThanOrEqual(size.now);
  });

  it('gives the percentile of a measurement within each site', () => {
    const found = place({ size: '2' });
    const row = found.percentiles.find(({ group }) => group === 'south')!;
    expect(row.bounds).toEqual({ low: 0, high: 0, n: 30, outside: 'below' });
  });

  it('everything missing, a text that is not understood: a useful sentence', () => {
    for (const find of [{}, { size: '?' }, { size: 'quite large' }]) {
      const found = place(find as Record<string, string>);
      const words = placement.words(found);
      expect(words.answer).toBe(
        'Where the find belongs cannot be told: nothing is known of the find that the comparanda record too.',
      );
      expect(words.next?.join(' ')).toContain('Give at least one of what the comparanda record: size, width');
      expect(faultsOfAnswer(words)).toEqual([]);
      expect(placement.figures(found)).toEqual({});
    }
  });

  it('contradictory attributes and an unknown structure are said (pile length on a net)', () => {
    const net = computePlacement(
      input,
      options({ of: OF, find: { structure: 'netting', pileLength: '20 mm' } }),
    );
    expect(
      placement
        .words(net)
        .unless.map((turn) => turn.what)
        .join(' '),
    ).toContain('makes no sense for the structure');
    const odd = computePlacement(
      input,
      options({ of: OF, find: { structure: 'blorple weave', fibre: 'flax' } }),
    );
    expect(odd.unplaced).toBeNull();
    expect(
      placement
        .words(odd)
        .unless.map((turn) => turn.what)
        .join(' '),
    ).toMatch(/blorple/);
  });

  it('does not change its input', () => {
    const before = JSON.stringify([...made.records.columns.values()].map((column) => column.raw));
    place({ size: '3' });
    expect(JSON.stringify([...made.records.columns.values()].map((column) => column.raw))).toBe(before);
  });
});

describe('the order of the labels', () => {
  const made = twoSites();
  const place = (more: Partial<PlacementOptions> = {}) =>
    computePlacement(
      made,
      options({ of: ['size', 'width'], find: { size: '2.6', width: '2.4' }, level: 0.9, ...more }),
    );

  it('comes from likelihood, with what leaving out says of it, in table, chart and words alike', () => {
    const found = place();
    const tables = placementTables(found);
    expect(linesOf(tables.typicality).map(({ label, rank }) => [label, rank])).toEqual([
      ['north', 1],
      ['islet', 2],
      ['south', 3],
    ]);
    const [line] = linesOf(tables.order);
    expect(line).toMatchObject({ n: 62, labels: 3, first: 'north', verdict: 'better than a guess' });
    expect(Number(line.right)).toBeGreaterThanOrEqual(60);
    const said = `right for ${line.right} of 62 records left out in turn, a plain nearest neighbour for ${line.nearestRight}`;
    expect(line.said).toBe(said);
    expect(placement.words(found).because.join(' ')).toContain(
      `site at 90 %, likeliest first (${said}): not`,
    );
    const figure = placement.figures(found)['typicality-site'];
    expect(figure.caption).toContain(`From the top in order of likelihood: ${said}.`);
    const axis = figure.layout.yaxis as { categoryarray: string[] };
    expect(axis.categoryarray.at(-1)).toBe('north (30)');
  });

  it('is no better than a guess where labels say nothing, and is said to be so', () => {
    const random = createRandom(8);
    const site = Array.from({ length: 60 }, () => `s${random.integer(4)}`);
    const made = madeInput([
      { attribute: attribute('site', 'context', 'nominal'), values: site },
      { attribute: attribute('size', 'spacing', 'ratio'), values: site.map(() => 1 + random.next()) },
    ]);
    const found = computePlacement(made, options({ of: ['size'], find: { size: '1.5' } }));
    expect(found.rankings[0].accuracy).toMatchObject({ verdict: 'no better than a guess', labels: 4 });
    expect(placement.words(found).because.join(' ')).toContain(
      'likeliest first (no better than a guess, right',
    );
  });
});

describe('a find recorded better than its comparanda', () => {
  /** Thirty records of one site, evenly from 1 to 3 mm, the larger third without its size. */
  const made = (lack: boolean) => {
    const place = Array.from({ length: 30 }, (_, at) => at);
    return madeInput([
      { attribute: attribute('site', 'context', 'nominal'), values: place.map(() => 'north') },
      {
        attribute: attribute('size', 'spacing', 'interval', { label: 'Size' }),
        values: place.map((at) => (lack && at >= 20 ? null : 1 + at / 15)),
      },
      {
        attribute: attribute('width', 'spacing', 'interval'),
        values: place.map((at) => ((at * 7) % 30) / 10),
      },
    ]);
  };
  const place = (lack: boolean) =>
    computePlacement(
      made(lack),
      options({ of: ['size', 'width'], labels: ['site'], find: { size: '3.6', width: '1.4' } }),
    );

  it('is set against each without what that lacks, so that the large are not strange for being measured', () => {
    const found = place(true);
    expect(found.judged[0].verdict).toBe('cannot be excluded');
    expect(found.lacked).toEqual({ records: 10, of: 30, attributes: [{ label: 'Size', records: 10 }] });
    const turns = placement.words(found).unless.map(printTurn).join(' ');
    expect(turns).toContain('10 of 30 comparanda lack something that the find has');
    expect(turns).toContain(': size 10; sets are the larger for it');
  });

  it('and it is said what the records that lack nothing would say alone', () => {
    const found = place(true);
    const [move] = found.moves.filter(({ change }) => change === 'complete records alone');
    expect(move).toMatchObject({ label: 'north', verdict: 'cannot be excluded', turned: 1, tried: 1 });
    expect(move.highest).toBeLessThanOrEqual(0.1);
    expect(placement.words(found).unless.map(printTurn)[0]).toBe(
      'With only those records that lack nothing of what the find has: north (1 of 1) would drop out or be too few to judge.',
    );
  });

  it('counts no lack where the structure has no such thing: nets and coils lack no pile', () => {
    const found = computePlacement(
      input,
      options({ of: ['structure', 'pile'], find: { structure: 'twined', pile: 'yes' } }),
    );
    const structures = demo.prepared.records.columns.get('structure');
    const pile = demo.prepared.records.columns.get('pile');
    if (structures?.kind !== 'term' || pile?.kind !== 'term') throw new Error('the demo records both');
    const named = (row: number) => structures.levels[structures.codes[row]] ?? '';
    const without = Array.from(pile.codes.keys()).filter((row) => pile.codes[row] < 0);
    const nets = without.filter((row) => /net|coil/i.test(named(row))).length;
    const lacking = found.lacked.attributes.find(({ label }) => label.startsWith('Pile'))?.records ?? 0;
    expect(nets).toBeGreaterThan(30);
    expect(lacking).toBeLessThanOrEqual(without.length - nets);
    expect(lacking).toBeGreaterThan(0);
  });

  it('says nothing of it where nothing lacks', () => {
    const found = place(false);
    expect(found.lacked).toMatchObject({ records: 0, attributes: [] });
    expect(found.moves.filter(({ change }) => change === 'complete records alone')).toEqual([]);
    expect(placement.words(found).unless.map(printTurn).join(' ')).not.toContain('comparanda lack');
  });
});

describe('what the find is, and where it may come from', () => {
  const sites = Array.from({ length: 12 }, (_, site) => `s${site}`);
  const rows = sites.flatMap((site, at) =>
    Array.from({ length: 4 }, (_, row) => ({ site, region: at < 10 ? 'coast' : 'hill', row, at })),
  );
  const random = createRandom(9);
  const made = madeInput(
    [
      { attribute: attribute('site', 'context', 'nominal'), values: rows.map(({ site }) => site) },
      { attribute: attribute('region', 'context', 'nominal'), values: rows.map(({ region }) => region) },
      {
        attribute: attribute('size', 'spacing', 'interval'),
        values: rows.map(({ at }) => (at < 10 ? 0 : 9) + random.next()),
      },
    ],
    // Two fragments an item.
    { items: rows.map(({ site, row }) => `${site} ${row >> 1}`), unit: 'fragment' },
  );
  const judged = (more: Partial<PlacementOptions>) =>
    computePlacement(
      made,
      options({ of: ['size'], find: { size: '0.5' }, labels: ['region'], ...more }),
    ).judged.map(({ label, by, judgedBy, verdict }) => [label, by, judgedBy, verdict]);

  it('a find from another site is judged by whole sites, and too few of them are said to be so', () => {
    expect(judged({})).toEqual([
      ['coast', 'sites', 10, 'cannot be excluded'],
      ['hill', 'sites', 2, 'too few to judge'],
    ]);
  });

  it('a find from a site of the study is judged by records, a fragment by one of each item', () => {
    expect(judged({ findFrom: 'a site of the study' })).toEqual([
      ['coast', 'records', 20, 'cannot be excluded'],
      ['hill', 'records', 4, 'too few to judge'],
    ]);
    expect(judged({ findFrom: 'a site of the study', findIs: 'item' })).toEqual([
      ['coast', 'records', 40, 'cannot be excluded'],
      ['hill', 'records', 8, 'too few to judge'],
    ]);
  });

  it('says what stands for an item, and which labels whole sites judge', () => {
    const found = computePlacement(
      made,
      options({ of: ['size'], find: { size: '0.5' }, labels: ['region'] }),
    );
    const words = placement.words(found);
    expect(found.standsFor).toBe('one fragment an item');
    expect(words.because[0]).toContain('each by one of its fragments');
    expect(words.because[1]).toContain('too few sites to exclude hill (2)');
    expect(words.unless.map(printTurn).join(' ')).toContain('region is judged by whole sites');
    const whole = computePlacement(made, options({ of: ['size'], find: { size: '0.5' }, findIs: 'item' }));
    expect(whole.standsFor).toBe('dependent fragments');
    expect(placement.words(whole).unless.map(printTurn).join(' ')).toContain('p values are too sure');
  });
});

it('the demo: the find from the tideline, as read and kept', async () => {
  const result = demoAnswer('where');
  expect(faultsOfAnswer(result.words)).toEqual([]);
  expect(numbersWithoutSource(result.words, result.tables, [result.n.items, result.n.fragments, 10])).toEqual(
    [],
  );
  await expect(readable(result)).toMatchFileSnapshot('snapshots/demo-where.txt');
});
