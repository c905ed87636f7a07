import { GROUND } from '../../../analyses/shared/figure/colours.ts';
import { append, greatest, least } from '../../../numerics/foundation/lists.ts';
import { axisOf, type Extent, eachNumber } from '../axes.ts';
import { colourScale, fillOf, hexOf, paint, strokeOf, WHITE } from '../colours.ts';
import { type Frame, scaleOf } from '../frame.ts';
import { hatchPath } from '../hatch.ts';
import { lettering, MIDDLE, widthOf } from '../lettering.ts';
import { type Box, boxPath, type Mark } from '../marks.ts';
import { each, numberOr, type Plain, part, textOr } from '../plain.ts';
import { pixel } from '../scale.ts';
import { isFlat, type LaidBars } from './lay-bars.ts';

export function barExtents(trace: Plain, laid: LaidBars): readonly Extent[] {
  const bars = (laid.get(trace) ?? []).filter((bar) => bar !== null);
  if (bars.length === 0) return [];
  const [along, across] = isFlat(trace) ? (['y', 'x'] as const) : (['x', 'y'] as const);
  return [
    {
      axis: axisOf(trace, along),
      low: least(bars.map(({ room }) => room[0])),
      high: greatest(bars.map(({ room }) => room[1])),
      beyond: 0,
      airy: false,
    },
    {
      axis: axisOf(trace, across),
      low: least(bars.map(({ from, to }) => Math.min(from, to))),
      high: greatest(bars.map(({ from, to }) => Math.max(from, to))),
      beyond: trace.textposition === 'outside' ? 18 : 0,
      footed: true,
      airy: true,
    },
  ];
}

export function drawBars(trace: Plain, frame: Frame, laid: LaidBars): readonly Mark[] {
  const flat = isFlat(trace);
  const stand = scaleOf(frame, axisOf(trace, flat ? 'y' : 'x'));
  const reach = scaleOf(frame, axisOf(trace, flat ? 'x' : 'y'));
  const marker = part(trace, 'marker');
  const line = part(marker, 'line');
  const texts: Mark[] = [];
  const shapes = (laid.get(trace) ?? []).flatMap((bar, at): readonly Mark[] => {
    if (bar === null) return [];
    const [a, b] = [pixel(stand, bar.place - bar.thick / 2), pixel(stand, bar.place + bar.thick / 2)];
    const [c, d] = [pixel(reach, bar.from), pixel(reach, bar.to)];
    const box = flat ? boxBetween(c, a, d, b) : boxBetween(a, c, b, d);
    append(texts, label(trace, at, box, { flat, outward: d >= c ? 1 : -1 }));
    if (box.width < 0.01 || box.height < 0.01) return [];
    const opacity = numberOr(trace.opacity, 1) * eachNumber(marker.opacity, at, 1);
    return [
      { path: boxPath(box), ...fillOf(colourAt(marker, at), opacity) },
      ...hatching(part(marker, 'pattern'), at, box),
      ...outline(line, at, box),
    ];
  });
  return [...shapes, ...texts];
}

function colourAt(marker: Plain, at: number): unknown {
  const value = each(marker.color, at);
  if (typeof value !== 'number') return value ?? GROUND.neutral;
  return hexOf(
    colourScale(
      marker.colorscale,
      numberOr(marker.cmin, 0),
      numberOr(marker.cmax, 1),
      marker.reversescale,
    ).at(value),
  );
}

function outline(line: Plain, at: number, box: Box): readonly Mark[] {
  const own = { ...line, color: each(line.color, at), width: each(line.width, at) };
  const stroke = strokeOf(own, GROUND.ink, 0);
  return Object.keys(stroke).length === 0 ? [] : [{ path: boxPath(box), ...stroke }];
}

export function hatching(pattern: Plain, at: number, box: Box): readonly Mark[] {
  const shape = textOr(each(pattern.shape, at), '');
  const size = numberOr(pattern.size, 8);
  if (shape === '' || box.width < 1 || box.height < 1) return [];
  const { colour } = paint(pattern.fgcolor ?? WHITE);
  const heavy = numberOr(pattern.solidity, 0.3) * size;
  const path = hatchPath(shape, box, size, heavy);
  return shape === '.' ? [{ path, fill: colour }] : [{ path, stroke: colour, width: heavy }];
}

function label(
  trace: Plain,
  at: number,
  box: Box,
  { flat, outward }: { readonly flat: boolean; readonly outward: number },
): readonly Mark[] {
  const position = textOr(each(trace.textposition, at), 'none');
  const raw = textOr(each(trace.text, at), '');
  if (position === 'none' || raw === '') return [];
  const [text] = lettering(raw).lines;
  const inside = position === 'inside' || position === 'auto';
  const font = { ...part(trace, 'textfont'), ...part(trace, inside ? 'insidetextfont' : 'outsidetextfont') };
  const full = numberOr(font.size, 11);
  const fill = paint(each(font.color, at) ?? GROUND.ink).colour;
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  if (inside) {
    const fits = Math.min(1, (box.width - 2) / widthOf(text, full), (box.height + 1) / (full * 1.05));
    // Smaller than this nobody reads it; the table holds the number.
    if (fits * full < LEAST_TYPE) return [];
    const size = fits * full;
    return [
      {
        text,
        ...middle,
        y: middle.y + size * MIDDLE,
        size,
        anchor: 'middle',
        fill,
        halo: WHITE,
        ofData: true,
      },
    ];
  }
  const size = Math.min(full, 11);
  if (flat) {
    const x = outward > 0 ? box.x + box.width + 3 : box.x - 3;
    return [{ text, x, y: middle.y + size * MIDDLE, size, anchor: outward > 0 ? 'start' : 'end', fill }];
  }
  const y = outward > 0 ? box.y - 3 : box.y + box.height + size;
  return [{ text, x: middle.x, y, size, anchor: 'middle', fill }];
}

const LEAST_TYPE = 7.5;

function boxBetween(x0: number, y0: number, x1: number, y1: number): Box {
  return { x: Math.min(x0, x1), y: Math.min(y0, y1), width: Math.abs(x1 - x0), height: Math.abs(y1 - y0) };
}
