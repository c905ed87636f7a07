import { describe, expect, it } from 'vitest';
import { contrast } from '../../../../src/analyses/contrast/index.ts';
import { crosstab } from '../../../../src/analyses/crosstab/index.ts';
import { ordination } from '../../../../src/analyses/ordination/index.ts';
import { kindStyle } from '../../../../src/analyses/shared/figure/kinds.ts';
import { marksOf, styleOf } from '../../../../src/analyses/shared/figure/marks.ts';
import { summary } from '../../../../src/analyses/summary/index.ts';
import { threadcount } from '../../../../src/analyses/threadcount/index.ts';
import { kinMap } from '../../../../src/app/parts/pictures/kin-map.ts';
import { ask, inputFrom, register } from '../../ask.ts';

/** Sites in the order of the alphabet are not in that of their fragments: Zell has the most. */
const SITES = ['Anger', 'Moor', 'Zell'];
const rows = SITES.flatMap((site, at) =>
  Array.from({ length: 8 + 4 * at }, (_, i) => ({
    item: `${site}${i}`,
    site,
    structure: i % 3 === 0 ? 'woven' : 'closeTwining',
    fibre: i % 4 === 0 ? 'nettle' : 'limeBast',
    density1: 4 + ((i * 7) % 11) + 3 * at,
    density2: 3 + ((i * 5) % 7),
  })),
);
const input = inputFrom(rows);
const COLOURS = new Map([
  ['Zell', kindStyle(0).colour],
  ['Moor', kindStyle(1).colour],
  ['Anger', kindStyle(2).colour],
]);

interface Trace {
  readonly name?: string;
  readonly y?: readonly unknown[];
  readonly hovertemplate?: string;
  readonly marker?: { readonly color?: string };
}

/** Colour of the marks of each site, whether it stands in the name or on the axis of its trace. */
function coloursIn(data: readonly Readonly<Record<string, unknown>>[]): Map<string, string> {
  const found = new Map<string, string>();
  for (const { name = '', y = [], hovertemplate = '', marker } of data as readonly Trace[]) {
    const site = SITES.find((label) =>
      [name, String(y[0]), hovertemplate.split('<extra>')[1] ?? ''].some((text) => text.startsWith(label)),
    );
    if (site !== undefined && typeof marker?.color === 'string') found.set(site, marker.color);
  }
  return found;
}

describe('a site has one colour in every figure', () => {
  const contrasted = ask(contrast, input, { of: ['density1'], by: 'site' }).figures;
  const asked: [string, readonly Readonly<Record<string, unknown>>[]][] = [
    ...Object.entries(contrasted)
      .filter(([name]) => !/pair|effect|pooled|trend/i.test(name))
      .map(([name, figure]): (typeof asked)[number] => [`contrast ${name}`, figure.data]),
    [
      'summary',
      Object.values(ask(summary, input, { of: ['density1'], by: ['site'], resamples: 0 }).figures)[0].data,
    ],
    ['threadcount', ask(threadcount, input, { by: 'site', draws: 0 }).figures.counts.data],
    [
      'ordination',
      ask(ordination, input, { method: 'pca', of: ['density1', 'density2'], by: 'site' }).figures.map.data,
    ],
    [
      'kin map',
      kinMap({
        points: rows.map(({ item, site, density1, density2 }) => ({
          id: item,
          kind: site,
          x: density1,
          y: density2,
          about: [],
        })),
        axes: ['1', '2'],
        by: 'site',
        order: [...marksOf(input, 'site').keys()],
        picked: [],
        unit: 'item',
      }).data,
    ],
  ];
  it.each(asked)('%s', (_, data) => {
    expect(Object.fromEntries(coloursIn(data))).toEqual(Object.fromEntries(COLOURS));
  });

  it('that of the study’s own order, where it names one', () => {
    const marked = { ...input, marks: { site: ['Moor'] } };
    const [first] = Object.values(ask(contrast, marked, { of: ['density1'], by: 'site' }).figures);
    expect(coloursIn(first.data).get('Moor')).toBe(kindStyle(0).colour);
    expect(coloursIn(first.data).get('Zell')).toBe(kindStyle(1).colour);
  });
});

describe('a kind has one colour in every figure', () => {
  it('in bars of shares by any grouping', () => {
    const colours = (data: readonly Readonly<Record<string, unknown>>[]) =>
      Object.fromEntries(
        (data as readonly Trace[]).flatMap(({ name = '', marker }) =>
          marker?.color === undefined ? [] : [[name, marker.color]],
        ),
      );
    const wanted = { 'lime bast': kindStyle(0).colour, nettle: kindStyle(1).colour };
    expect(colours(ask(crosstab, input, { rows: 'site', columns: 'fibre' }).figures.shares.data)).toEqual(
      wanted,
    );
    expect(
      colours(Object.values(ask(summary, input, { of: ['fibre'], by: ['structure'] }).figures)[0].data),
    ).toEqual(wanted);
  });

  it('a broader term that stands for narrower ones has that of the commonest of them', () => {
    const fold = { label: 'tree bast', narrower: ['lime bast'], records: 9, because: [] };
    const marks = marksOf(input, 'fibre', [fold]);
    expect(styleOf(marks, 'tree bast')).toEqual(kindStyle(0));
    expect(styleOf(marks, 'wool').colour).toBe(styleOf(new Map(), 'anything').colour);
  });

  it('numbers and what nobody recorded have none', () => {
    expect(marksOf(input, 'density1').size).toBe(0);
    expect(marksOf(input, 'period').size).toBe(0);
    expect(register.attributes.has('period')).toBe(true);
  });
});
