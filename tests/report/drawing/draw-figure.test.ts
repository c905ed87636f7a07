import { describe, expect, it } from 'vitest';
import { GROUND } from '../../../src/analyses/shared/figure/colours.ts';
import { drawFigure, layFigure, undrawable } from '../../../src/report/drawing/draw-figure.ts';
import { widthOf } from '../../../src/report/drawing/lettering.ts';
import type { Mark, PathMark, TextMark } from '../../../src/report/drawing/marks.ts';
import { pixelOf } from '../../../src/report/drawing/scale.ts';
import { svgOf } from '../../../src/report/drawing/svg.ts';

const draw = (data: readonly object[], layout: object = {}) =>
  drawFigure({ data: data as never, layout: { width: 643, height: 400, ...layout }, caption: 'A caption.' });

const flat = (marks: readonly Mark[]): readonly Mark[] =>
  marks.flatMap((mark) => ('clip' in mark ? flat(mark.marks) : [mark]));
const texts = (marks: readonly Mark[]) => flat(marks).filter((mark): mark is TextMark => 'text' in mark);
const filled = (marks: readonly Mark[], fill: string) =>
  flat(marks).filter((mark): mark is PathMark => 'path' in mark && mark.fill === fill);
const xs = (path: string) => [...path.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x]) => Number(x));
const wide = (path: string) => Math.max(...xs(path)) - Math.min(...xs(path));

describe('bars', () => {
  const bar = (name: string, length: number, color: string) => ({
    type: 'bar',
    orientation: 'h',
    name,
    y: ['Holm'],
    x: [length],
    marker: { color },
  });

  it('that are stacked follow each other and are as long as their numbers', () => {
    const { marks } = draw([bar('a', 30, '#112233'), bar('b', 10, '#445566')], {
      barmode: 'stack',
      showlegend: false,
    });
    const [[a], [b]] = [filled(marks, '#112233'), filled(marks, '#445566')];
    expect(wide(a.path) / wide(b.path)).toBeCloseTo(3, 1);
    expect(Math.min(...xs(b.path))).toBeCloseTo(Math.max(...xs(a.path)), 1);
  });

  it('of traces that never meet take the whole place, and share it where they do', () => {
    const thick = (data: readonly object[]) => {
      const { bars } = layFigure({ data: data as never, layout: {}, caption: '' });
      return [...bars.values()].map(([one]) => one?.thick);
    };
    const other = { ...bar('b', 10, '#445566'), y: ['Pell'] };
    expect(thick([bar('a', 30, '#112233'), other])).toEqual([0.8, 0.8]);
    expect(thick([bar('a', 30, '#112233'), bar('b', 10, '#445566')])).toEqual([0.4, 0.4]);
  });

  it('leave out a number that would be too small to read, and keep one that fits', () => {
    const small = { ...bar('a', 1, '#112233'), text: ['123456'], textposition: 'inside' };
    const large = { ...bar('b', 99, '#445566'), text: ['654321'], textposition: 'inside' };
    const said = texts(draw([small, large], { barmode: 'stack' }).marks).map(({ text }) => text);
    expect(said).toContain('654321');
    expect(said).not.toContain('123456');
  });
});

describe('points', () => {
  const points = {
    type: 'scatter',
    mode: 'markers',
    x: [1, 10, 100],
    y: [1, 2, null],
    marker: { color: '#112233' },
  };

  it('stand further right and higher the larger they are; a gap is not drawn', () => {
    const circles = flat(draw([points]).marks).flatMap((mark) => ('circle' in mark ? [mark.circle] : []));
    expect(circles).toHaveLength(2);
    expect(circles[1][0]).toBeGreaterThan(circles[0][0]);
    expect(circles[1][1]).toBeLessThan(circles[0][1]);
  });

  it('on a logarithmic axis are as far apart as their ratios', () => {
    const at = flat(draw([{ ...points, y: [1, 2, 3] }], { xaxis: { type: 'log' } }).marks).flatMap((mark) =>
      'circle' in mark ? [mark.circle[0]] : [],
    );
    expect(at[1] - at[0]).toBeCloseTo(at[2] - at[1], 1);
  });

  it('carry bars to their limits, longer on the side that is further', () => {
    const error_x = { type: 'data', symmetric: false, array: [9], arrayminus: [1], color: '#778899' };
    const { marks } = draw([{ ...points, x: [10], y: [1], error_x }]);
    const [circle] = flat(marks).flatMap((mark) => ('circle' in mark ? [mark.circle[0]] : []));
    const limits = flat(marks).find((mark): mark is PathMark => 'path' in mark && mark.stroke === '#778899');
    const ends = xs(limits?.path ?? '');
    expect((Math.max(...ends) - circle) / (circle - Math.min(...ends))).toBeCloseTo(9, 0);
  });
});

describe('a matrix', () => {
  const matrix = (size: number) => ({
    type: 'heatmap',
    x: Array.from({ length: size }, (_, at) => at),
    y: Array.from({ length: size }, (_, at) => at),
    z: Array.from({ length: size }, (_, row) =>
      Array.from({ length: size }, (_, at) => (row === at ? null : row)),
    ),
    colorscale: [
      [0, GROUND.sheet],
      [1, '#000000'],
    ],
    zmin: 0,
    zmax: size,
  });

  it('of few cells draws each, on white where nothing is; a gap is not drawn', () => {
    const svg = svgOf(draw([matrix(3)]), { id: 'm', label: 'm' });
    expect(svg).not.toContain(GROUND.sheet);
    expect(filled(draw([matrix(3)]).marks, '#FFFFFF')).toHaveLength(1 + 2);
  });

  it('of many is one picture, the first line of the figure at the foot', () => {
    const image = flat(draw([matrix(60)]).marks).find((mark) => 'dots' in mark && mark.dots.length === 60);
    expect(image && 'dots' in image ? image.dots[0][0] : null).toEqual(
      [4, 4, 4].map((one) => expect.closeTo(one, 0)),
    );
    expect(image && 'dots' in image ? image.dots[59][0] : undefined).toBeNull();
  });
});

describe('an axis', () => {
  it('keeps the order that the figure names, and one that is reversed begins at the top', () => {
    const data = [{ type: 'scatter', mode: 'markers', x: [1, 2], y: ['b', 'a'] }];
    const at = (layout: object) => {
      const said = texts(draw(data, { yaxis: { type: 'category', ...layout } }).marks);
      return (name: string) => said.find(({ text }) => text === name)?.y ?? Number.NaN;
    };
    const ordered = at({ categoryarray: ['a', 'b'], categoryorder: 'array' });
    expect(ordered('b')).toBeLessThan(ordered('a'));
    const reversed = at({ categoryarray: ['a', 'b'], categoryorder: 'array', autorange: 'reversed' });
    expect(reversed('b')).toBeGreaterThan(reversed('a'));
  });

  it('of forty places with long names lets none of them cover another or leave the figure', () => {
    const names = Array.from(
      { length: 40 },
      (_, at) => `An assemblage with a very long name indeed, number ${at}`,
    );
    const data = [{ type: 'scatter', mode: 'markers', x: names.map((_, at) => at), y: names }];
    for (const width of [321, 643]) {
      const drawing = draw(data, {
        width,
        height: 600,
        yaxis: { type: 'category', tickfont: { size: 10 }, automargin: true },
      });
      const labels = texts(drawing.marks).filter(({ anchor }) => anchor === 'end');
      expect(labels).toHaveLength(40);
      const rows = labels.map(({ y }) => y).sort((a, b) => a - b);
      for (const [at, y] of rows.slice(1).entries()) expect(y - rows[at]).toBeGreaterThanOrEqual(10);
    }
  });
});

describe('on a logarithmic axis', () => {
  it('an annotation gives the power of ten and a shape the number, as the reference of plotly.js has it', () => {
    const { marks } = draw([{ type: 'scatter', mode: 'markers', x: [1, 1000], y: [1, 2] }], {
      xaxis: { type: 'log' },
      annotations: [{ text: 'here', x: 2, y: 1.5, showarrow: false, xanchor: 'center' }],
      shapes: [{ type: 'line', x0: 100, x1: 100, y0: 0, y1: 1, yref: 'paper', line: { color: '#778899' } }],
    });
    const note = texts(marks).find(({ text }) => text === 'here');
    const line = flat(marks).find((mark): mark is PathMark => 'path' in mark && mark.stroke === '#778899');
    expect(note && line ? note.x + widthOf('here', note.size) / 2 : null).toBeCloseTo(
      xs(line?.path ?? '')[0],
      0,
    );
  });
});

describe('a name beside a point', () => {
  const named = (shapes: readonly object[]) =>
    texts(
      draw(
        [
          {
            type: 'scatter',
            mode: 'markers+text',
            x: [5],
            y: [5],
            text: ['Holm'],
            textposition: 'bottom center',
          },
        ],
        {
          xaxis: { range: [0, 10] },
          yaxis: { range: [0, 10] },
          shapes,
        },
      ).marks,
    ).find(({ text }) => text === 'Holm');
  const line = (x0: number, x1: number) => ({ type: 'line', x0, x1, y0: 4.7, y1: 4.7 });

  it('keeps off a line that stands for itself, as a scale bar does, and crosses one that runs through', () => {
    const [free, besideBar, crossing] = [named([]), named([line(4, 6)]), named([line(0, 10)])];
    expect(besideBar?.y).toBeLessThan((free?.y ?? 0) - 10);
    expect(crossing?.y).toBe(free?.y);
  });
});

describe('lines of equal height', () => {
  it('pass half way between a height and none, and close around a peak', () => {
    const z = [
      [0, 0, 0],
      [0, 1, 0],
      [0, 0, 0],
    ];
    const trace = {
      type: 'contour',
      x: [0, 1, 2],
      y: [0, 1, 2],
      z,
      contours: { start: 0.5, end: 0.5, size: 1, coloring: 'none' },
      line: { color: '#778899', width: 1 },
      showscale: false,
    };
    const { marks } = draw([trace]);
    const line = flat(marks).find((mark): mark is PathMark => 'path' in mark && mark.stroke === '#778899');
    const { frame } = layFigure({ data: [trace], layout: { width: 643, height: 400 }, caption: '' });
    const x = frame.scales.get('x');
    const at = (value: number) => (x === undefined ? Number.NaN : pixelOf(x, value));
    expect(Math.min(...xs(line?.path ?? ''))).toBeCloseTo(at(0.5), 1);
    expect(Math.max(...xs(line?.path ?? ''))).toBeCloseTo(at(1.5), 1);
  });
});

describe('what cannot be drawn without a browser', () => {
  it('is named', () => {
    const figure = (type: string, more: object = {}) => ({
      data: [{ type, ...more }],
      layout: {},
      caption: '',
    });
    expect(undrawable(figure('scatter'))).toEqual([]);
    expect(undrawable(figure('surface'))).toEqual(['surface']);
    expect(undrawable(figure('contour'))).toEqual(['contour, filled']);
    expect(undrawable(figure('contour', { contours: { coloring: 'none' } }))).toEqual([]);
  });
});

describe('a drawing', () => {
  it('is the same bytes each time', () => {
    const data = [{ type: 'box', y: ['a'], x: [[1, 2, 2, 2, 3, 9]], orientation: 'h', boxpoints: 'all' }];
    const once = svgOf(draw(data), { id: 'a', label: 'a' });
    expect(svgOf(draw(data), { id: 'a', label: 'a' })).toBe(once);
  });
});
