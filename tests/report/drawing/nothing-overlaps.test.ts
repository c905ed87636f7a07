import { describe, expect, it } from 'vitest';
import { chronology } from '../../../src/analyses/chronology/index.ts';
import type { Figure } from '../../../src/analyses/contract.ts';
import { contrast } from '../../../src/analyses/contrast/index.ts';
import { map } from '../../../src/analyses/map/index.ts';
import { standing } from '../../../src/analyses/standing/index.ts';
import { threadcount } from '../../../src/analyses/threadcount/index.ts';
import { layFigure } from '../../../src/report/drawing/draw-figure.ts';
import { namesAt } from '../../../src/report/drawing/names-at.ts';
import { printedHeight } from '../../../src/report/drawing/printed-figure.ts';
import { pixelOf } from '../../../src/report/drawing/scale.ts';
import { figureDrawing } from '../../../src/report/files/figure-file.ts';
import { measuresOf } from '../../../src/report/files/measures.ts';
import { ask, inputFrom } from '../../analyses/ask.ts';
import { roomsIn, SLACK, textsOf, touch } from './rooms.ts';

/** Forty places with long names, some of them at one spot; made up for this test. */
const NAMES = ['Vellombreth', 'Ashkettle', 'Wendringholm', 'Drossel'];
const KINDS = ['openTwining', 'closeTwining', 'woven'];
const rows = Array.from({ length: 320 }, (_, i) => {
  const place = i % 40;
  return {
    item: `i${i}`,
    site: `Upper ${NAMES[place % 4]} Terraces, trench ${place + 1}`,
    structure: KINDS[(i * 7 + place) % 3],
    fibre: ['limeBast', 'nettle'][Math.floor(i / 40) % 2],
    density1: 4 + ((i * 13) % 17),
    density2: 3 + ((i * 11) % 13),
    preservation: ['waterlogged, conserved by freeze-drying', 'charred'][i % 2],
    period: ['Early phase of the settlement', 'Middle phase of the settlement', 'Late'][place % 3],
    date: [-400 + 20 * place, -200 + 20 * place] as const,
    east: (place * 37) % 90,
    north: (place * 53) % 70,
  };
});
const input = inputFrom(rows, 'item');
const few = { resamples: 199, relabellings: 99 };
const figures: Readonly<Record<string, Readonly<Record<string, Figure>>>> = {
  chronology: ask(chronology, input, { of: 'structure', phases: 'period', draws: 5, relabellings: 99 })
    .figures,
  standing: ask(standing, input, { site: rows[0].site, of: 'fibre', ...few }).figures,
  map: ask(map, input, { of: 'structure', places: ['east', 'north'], deals: 99, group: 'period' }).figures,
  threadcount: ask(threadcount, input, { by: 'site', draws: 0 }).figures,
  contrast: ask(contrast, input, { of: ['density1'], by: 'period', ...few }).figures,
};
const cases = Object.entries(figures).flatMap(([kind, list]) =>
  Object.entries(list).flatMap(([name, figure]) =>
    measuresOf(figure).map((measure) => ({ kind, name, measure, figure })),
  ),
);

describe('with forty places of long names', () => {
  it.each(cases)('no text of $kind, $name, covers another or is cut, $measure mm', ({ figure, measure }) => {
    const drawing = figureDrawing(figure, measure);
    if (drawing === null) throw new Error('not drawn');
    const rooms = roomsIn(drawing);
    const pairs = rooms.flatMap((a, at) =>
      rooms.slice(at + 1).flatMap((b) => (touch(a, b) ? [`${a.text} × ${b.text}`] : [])),
    );
    expect(pairs).toEqual([]);
    const cut = rooms.filter(
      ({ left, right, top, bottom }) =>
        left < -SLACK || top < -SLACK || right > drawing.width + SLACK || bottom > drawing.height + SLACK,
    );
    expect(cut.map(({ text }) => text)).toEqual([]);
  });

  it('rows keep all their names across both columns', () => {
    const drawing = figureDrawing(figures.chronology.spans, 174);
    const names = roomsIn(drawing ?? { width: 0, height: 0, marks: [] }).filter(({ text }) =>
      text.startsWith('Upper'),
    );
    expect(names).toHaveLength(40);
  });

  it.each([84, 174] as const)(
    'each place of a map has its number, explained in the caption, %d mm',
    (measure) => {
      for (const name of ['likeness', 'share', 'groups']) {
        const { marks } = figureDrawing(figures.map[name], measure) ?? { marks: [] };
        const numbers = textsOf(marks).filter(({ ofData, text }) => ofData && /^\d+$/.test(text));
        expect(numbers.map(({ text }) => Number(text)).sort((a, b) => a - b)).toEqual(
          Array.from({ length: 40 }, (_, at) => at + 1),
        );
        const said = textsOf(marks)
          .map(({ text }) => text)
          .join(' ');
        for (const { site } of rows.slice(0, 40)) expect(said).toMatch(new RegExp(`\\d+ ${site}[;.]`));
        expect(said).not.toContain('…');
      }
    },
  );

  it('no name lies over the mark of a named point', () => {
    const covered = cases.flatMap(({ kind, name, measure, figure }) => {
      const marked = figure.data.some(({ mode }) => String(mode).includes('markers+text'));
      if (!marked) return [];
      const drawing = figureDrawing(figure, measure);
      const { traces, scales } = layFigure(figure, {
        width: drawing?.width ?? 0,
        height: printedHeight(figure, measure === 84),
      }).frame;
      const [x, y] = [scales.get('x'), scales.get('y')];
      if (drawing === null || x === undefined || y === undefined) throw new Error('not drawn');
      const points = traces
        .filter(({ mode }) => String(mode).includes('markers+text'))
        .flatMap((trace) =>
          (trace.x as number[]).map((value, at) => ({
            x: pixelOf(x, value),
            y: pixelOf(y, (trace.y as number[])[at]),
          })),
        );
      expect(points.length).toBeGreaterThan(2);
      const names = roomsIn({
        ...drawing,
        marks: textsOf(drawing.marks).filter(({ ofData }) => ofData === true),
      });
      return names.flatMap(({ text, left, right, top, bottom }) =>
        points.some((point) => point.x > left && point.x < right && point.y > top && point.y < bottom)
          ? [`${kind} ${name} ${measure}: ${text}`]
          : [],
      );
    });
    expect(covered).toEqual([]);
  });

  it.each([500, 640, 1000])('names are set for a screen of %d px, none over another', (width) => {
    for (const figure of [figures.map.likeness, figures.map.groups, figures.map.network]) {
      const { data, leftOut } = namesAt(figure, { width, height: 520 });
      const shown = (some: Figure['data']) =>
        some.flatMap(({ text }) => (Array.isArray(text) ? text.filter((one) => one !== '') : [])).length;
      expect(shown(data)).toBe(shown(figure.data) - leftOut);
      // Set once more they stay where they are: each has its room at the place that it was given.
      const again = namesAt({ ...figure, data }, { width, height: 520 });
      expect(again.leftOut).toBe(0);
      expect(again.data.map(({ textposition }) => textposition)).toEqual(
        data.map(({ textposition }) => textposition),
      );
    }
  });
});
