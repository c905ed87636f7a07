import { describe, expect, it } from 'vitest';
import { map } from '../../../src/analyses/map/index.ts';
import { faultsOfAnswer } from '../answer-rules.ts';
import { ask, inputFrom, linesOf } from '../ask.ts';

const WILLOW: Readonly<Record<string, number>> = { Ness: 1, Holm: 2, Fell: 0, Dale: 1, Nowhere: 5 };

type Cell = string | number | readonly [number, number];
/** Ten records of a place: so many of lime bast, a few of willow bast, the others wool. */
const place = (site: string, east: Cell, north: Cell, lime: number, more: Record<string, Cell> = {}) =>
  Array.from({ length: 10 }, (_, i) => ({
    site,
    fibre: i < lime ? 'limeBast' : i >= 10 - (WILLOW[site] ?? 1) ? 'willowBast' : 'wool',
    ...(east === '' ? {} : { east, north }),
    ...more,
  }));
const rows = [
  ...place('Ness', 10, 20, 9, { structure: 'woven' }),
  ...place('Holm', 20, 30, 8, { structure: 'woven' }),
  ...place('Fell', 110, 80, 1, { structure: 'twined' }),
  ...place('Dale', [100, 110], [60, 70], 2),
  ...place('Nowhere', '', '', 2),
];
const OPTIONS = {
  of: 'fibre',
  places: ['east', 'north'],
  group: 'structure',
  share: 'lime bast',
  to: 'Dale',
  deals: 999,
};
const answer = (options: object = {}, more: object = {}) =>
  ask(map, { ...inputFrom(rows), ...more }, { ...OPTIONS, ...options });

describe('places that lean the same way', () => {
  const { found, words, tables } = answer();

  it('are joined where both have more of one kind, and never where they lean apart', () => {
    const drawn = found.lines
      .filter((line) => line.drawn)
      .map(({ first, second }) => [found.places[first].label, found.places[second].label].sort());
    expect(drawn).toEqual(
      expect.arrayContaining([
        ['Holm', 'Ness'],
        ['Dale', 'Fell'],
      ]),
    );
    for (const pair of drawn)
      expect([
        ['Holm', 'Ness'],
        ['Dale', 'Fell'],
      ]).toContainEqual(pair);
    expect(words.answer).toMatch(
      /^Two of 10 pairs of places lean the same way in fibre further than chance explains: (?:Ness with Holm|Holm with Ness|Fell with Dale|Dale with Fell) and /,
    );
    expect(faultsOfAnswer(words)).toEqual([]);
  });

  it('stand in the table with likeness, share and how closely the place is known', () => {
    const of = new Map(linesOf(tables.places).map((line) => [line.place, line]));
    expect(of.get('Dale')).toMatchObject({ across: 105, up: 65, within: 5, n: 10, share: 0.2 });
    expect(of.get('Nowhere')?.across).toEqual({ why: 'not recorded' });
    // By hand: shares of lime bast 0.9 and 0.2 differ by 0.7 twice, so that 200 less 140 is left.
    expect(of.get('Ness')?.likeness).toBeCloseTo(60, 9);
  });

  it('are laid out on axes whose shares are of what any axis can show, never more than all', () => {
    // By hand: opposite places are 1 apart, neighbours 1/2, so that the eigenvalues are 1/2, 1/2 and -1/4 (Gower 1966).
    const halves = {
      a: ['limeBast', 'willowBast'],
      b: ['wool', 'silk'],
      c: ['limeBast', 'wool'],
      d: ['willowBast', 'silk'],
    };
    const corners = Object.entries(halves).flatMap(([site, fibres]) =>
      Array.from({ length: 10 }, (_, i) => ({ site, fibre: fibres[i % 2] })),
    );
    const { found: square } = ask(map, inputFrom(corners), { of: 'fibre', to: 'a', deals: 99 });
    expect(square.axesShares).toHaveLength(2);
    for (const share of square.axesShares) expect(share).toBeCloseTo(0.5, 9);
  });

  it('are none among samples of one source, and cannot be told of too few', () => {
    const alike = ask(map, inputFrom(['a', 'b', 'c', 'd'].flatMap((site, i) => place(site, i, i, 5))), {
      ...OPTIONS,
      to: 'a',
    });
    expect(alike.words.answer).toBe(
      'No two of four places lean the same way in fibre further than chance explains.',
    );
    const few = ask(map, inputFrom(rows.filter((_, i) => i % 10 < 3 || i % 10 === 9)), OPTIONS);
    expect(few.words.answer).toMatch(/^Cannot be told which places lean the same way in fibre/);
    expect(faultsOfAnswer(few.words)).toEqual([]);
  });

  it('names what is not there', () => {
    expect(() => answer({ to: 'Atlantis' })).toThrow('there is no place "Atlantis"');
    expect(() => answer({ share: 'silk' })).toThrow('there is no kind "silk"');
  });
});

describe('the maps', () => {
  const { figures } = answer({ to: 'Ness' });

  it('are drawn from the coordinates alone, east across and north up, as long on both sides, with a scale', () => {
    expect(Object.keys(figures)).toEqual(['likeness', 'share', 'groups', 'network']);
    for (const name of ['likeness', 'share', 'groups']) {
      const { layout, data, caption } = figures[name];
      expect(layout.xaxis).toMatchObject({ title: { text: 'east (km)' } });
      expect(layout.yaxis).toMatchObject({ title: { text: 'north (km)' }, scaleanchor: 'x', scaleratio: 1 });
      expect((layout.annotations as { text: string }[])[0].text).toMatch(/^\d+ km$/);
      expect(data.every(({ type }) => type === 'scatter')).toBe(true);
      expect(JSON.stringify(figures[name])).not.toMatch(/https?:|scattergeo|mapbox|geo"/);
      expect(caption).toContain('Map of 4 places');
      expect(caption).toContain('1 place without coordinates is left out.');
      expect(caption).toContain('no base map');
    }
  });

  it('draw a coarsened place as the cell that it lies in', () => {
    const cell = figures.share.data.find(({ mode }) => mode === 'lines') as unknown as {
      x: (number | null)[];
      y: (number | null)[];
    };
    expect(cell.x).toEqual([100, 110, 110, 100, 100, null]);
    expect(cell.y).toEqual([60, 60, 70, 70, 60, null]);
    expect(figures.share.caption).toContain('Dotted squares: the cells in which 1 coarsened place lies.');
  });

  it('mark the place asked, and colour the others darker for more alike', () => {
    const marked = figures.likeness.data.find(
      ({ marker }) => (marker as { symbol?: string })?.symbol === 'star',
    );
    expect(marked).toMatchObject({ x: [10], y: [20] });
    const coloured = figures.likeness.data.find(
      ({ marker }) => (marker as { colorbar?: object })?.colorbar !== undefined,
    ) as unknown as { marker: { cmin: number; cmax: number; colorscale: [number, string][] } };
    expect(coloured.marker).toMatchObject({ cmin: 0, cmax: 200 });
    expect(coloured.marker.colorscale.at(-1)).toEqual([1, '#2F1D22']);
    expect(figures.likeness.caption).toContain('darker for more alike');
  });

  it('give groups their symbols, and what has none a hollow one', () => {
    expect(figures.groups.data.filter(({ mode }) => mode === 'markers+text').map(({ name }) => name)).toEqual(
      ['woven (2)', 'twined (1)', 'not recorded, or several (1)'],
    );
  });

  it('turn the network with the likeness: those alike lie near', () => {
    const at = new Map(
      figures.network.data
        .filter(({ mode }) => mode === 'markers+text')
        .flatMap((trace) => {
          const { x, y, hovertext } = trace as unknown as { x: number[]; y: number[]; hovertext: string[] };
          return hovertext.map((text, i) => [text.split(':')[0], [x[i], y[i]] as const] as const);
        }),
    );
    const apart = (a: string, b: string) =>
      Math.hypot(...[0, 1].map((side) => (at.get(a)?.[side] ?? 0) - (at.get(b)?.[side] ?? 0)));
    expect(apart('Ness', 'Holm')).toBeLessThan(apart('Ness', 'Fell'));
  });

  it('take a coast from the file that the study names, and refuse what is none', () => {
    const bytes = (text: string) => new Map([['coast.json', new TextEncoder().encode(text)]]);
    const geojson = {
      type: 'Feature',
      properties: {},
      geometry: {
        type: 'Polygon',
        coordinates: [
          [
            [0, 0],
            [200, 0],
            [200, 90],
            [0, 0],
          ],
        ],
      },
    };
    const { figures: drawn } = answer({ coast: 'coast.json' }, { files: bytes(JSON.stringify(geojson)) });
    expect(drawn.share.data[0]).toMatchObject({ mode: 'lines', x: [0, 200, 200, 0], y: [0, 0, 90, 0] });
    expect(drawn.share.caption).toContain('coast and borders as the study brings them');
    expect(() => answer({ coast: 'coast.json' }, { files: bytes('{"type":"Topology"}') })).toThrow(
      'the coast is no GeoJSON',
    );
    expect(() => answer({ coast: 'coast.json' }, { files: bytes('{') })).toThrow(
      'the coast is not valid JSON',
    );
  });

  it('are left out, with the reason, where nothing has coordinates; the network stays', () => {
    const { figures: bare, words } = answer({ places: ['density1', 'density2'] });
    expect(Object.keys(bare)).toEqual(['network']);
    expect(words.because.join(' ')).toContain('No map: no source records density1 and density2 as numbers.');
  });
});
