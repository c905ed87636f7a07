import { describe, expect, it } from 'vitest';
import type { Figure } from '../../../src/analyses/contract.ts';
import { kindBar, kindMarker, kindStyle } from '../../../src/analyses/shared/figure/kinds.ts';
import { panelAxes, panelsInColumn, panelsLayout } from '../../../src/analyses/shared/figure/panels.ts';
import { axis, figureLayout } from '../../../src/analyses/shared/figure/style.ts';
import { drawFigure, layFigure } from '../../../src/report/drawing/draw-figure.ts';
import { legendBeyond } from '../../../src/report/drawing/legend.ts';
import { printedHeight } from '../../../src/report/drawing/printed-figure.ts';
import { inMeasure, measuresOf } from '../../../src/report/files/measures.ts';
import { roomsIn, SLACK, touch } from './rooms.ts';

/** Forty kinds whose names are long and differ only at their end; made up for this test. */
const KINDS = Array.from({ length: 40 }, (_, at) => `weft-wrapped twining of the upland manner ${at + 1}`);

const cloud: Figure = {
  data: KINDS.map((name, at) => ({
    type: 'scatter',
    mode: 'markers',
    name,
    x: [at % 7],
    y: [at % 11],
    marker: kindMarker(kindStyle(at), 8),
  })),
  layout: figureLayout({ x: axis('x'), y: axis('y'), height: 400 }),
  caption: 'Forty kinds',
};

const bars: Figure = {
  data: KINDS.map((name, at) => ({
    type: 'bar',
    orientation: 'h',
    name,
    x: [1, 1.5],
    y: ['one', 'other'],
    marker: kindBar(kindStyle(at)),
  })),
  layout: figureLayout({
    x: axis('x'),
    y: axis('y', { type: 'category' }),
    height: 210,
    more: { barmode: 'stack' },
  }),
  caption: 'Forty kinds',
};

const panels: Figure = {
  data: KINDS.slice(0, 12).map((name, at) => ({
    type: 'scatter',
    mode: 'markers',
    ...panelAxes(at),
    name,
    showlegend: false,
    x: [1],
    y: [1],
    marker: kindMarker(kindStyle(at), 8),
  })),
  layout: panelsLayout({
    headings: KINDS.slice(0, 12).map((name) => `${name} (120)`),
    x: () => axis('', { range: [-0.5, 2.5] }),
    y: () => axis('', { range: [-0.5, 2.5] }),
    xTitle: 'year',
    yTitle: 'finds',
    across: 4,
    height: 100,
  }),
  caption: 'Twelve panels',
};

const drawn = (figure: Figure, measure: 84 | 174) => {
  const set = inMeasure(figure, measure);
  return { set, size: { width: (measure * 96) / 25.4, height: printedHeight(set, measure === 84) } };
};

describe('forty kinds of long names', () => {
  it.each([
    ['points', cloud, 84],
    ['points', cloud, 174],
    ['bars', bars, 84],
    ['bars', bars, 174],
  ] as const)('%s keep a legend of forty and a plot that can be read, %#', (_, figure, measure) => {
    const { set, size } = drawn(figure, measure);
    const rooms = roomsIn(drawFigure(set, size));
    for (const name of KINDS) expect(rooms.some(({ text }) => text === name)).toBe(true);
    const pairs = rooms.flatMap((a, at) => rooms.slice(at + 1).flatMap((b) => (touch(a, b) ? [a.text] : [])));
    expect(pairs).toEqual([]);
    expect(layFigure(set, size).frame.plot.height).toBeGreaterThan(50);
  });

  it('give the screen as much more height as its legend takes', () => {
    const beyond = (width: number) => legendBeyond(cloud.data, cloud.layout, width);
    expect(legendBeyond(cloud.data.slice(0, 3), cloud.layout, 900)).toBe(0);
    expect(beyond(1400)).toBeGreaterThan(0);
    expect(beyond(500)).toBeGreaterThan(beyond(1400));
  });
});

describe('small multiples', () => {
  it('are offered in one column, two in a row', () => {
    expect(measuresOf(panels)).toEqual([84, 174]);
    const layout = panelsInColumn(panels.layout) as Record<string, { domain: [number, number] }>;
    expect(layout.width).toBe(321);
    expect(layout.xaxis3?.domain).toEqual(layout.xaxis?.domain);
    expect(layout.xaxis2?.domain[0]).toBeGreaterThan(layout.xaxis?.domain[1] ?? 1);
  });

  it.each([84, 174] as const)(
    'have headings that differ, none over another or cut at the edge, %d mm',
    (measure) => {
      const { set, size } = drawn(panels, measure);
      const rooms = roomsIn(drawFigure(set, size));
      const headings = rooms.map(({ text }) => text).filter((text) => text.endsWith('(120)'));
      expect(headings).toHaveLength(12);
      expect(new Set(headings).size).toBe(12);
      const pairs = rooms.flatMap((a, at) =>
        rooms.slice(at + 1).flatMap((b) => (touch(a, b) ? [`${a.text} × ${b.text}`] : [])),
      );
      expect(pairs).toEqual([]);
      expect(rooms.filter(({ left, right }) => left < -SLACK || right > size.width + SLACK)).toEqual([]);
    },
  );

  it('too tall for a page in one column are not offered there', () => {
    const tall = {
      ...panels,
      layout: panelsLayout({
        headings: KINDS.slice(0, 12),
        x: () => axis(''),
        y: () => axis(''),
        xTitle: '',
        yTitle: '',
        across: 2,
        height: 100,
        own: true,
      }),
    };
    expect(measuresOf(tall)).toEqual([174]);
  });
});

describe('rows of an axis', () => {
  it('whose names have no room stay apart', () => {
    const rows: Figure = {
      data: [{ type: 'bar', orientation: 'h', x: KINDS.map(() => 1), y: KINDS }],
      layout: figureLayout({ x: axis('x'), y: axis('y', { type: 'category' }), height: 600 }),
      caption: '',
    };
    const texts = roomsIn(drawFigure(rows, { width: 321, height: 640 })).map(({ text }) => text);
    const names = texts.filter((text) => text.startsWith('weft'));
    expect(names).toHaveLength(40);
    expect(names.some((text) => text.includes('…'))).toBe(true);
    expect(new Set(names).size).toBe(40);
  });
});
