import type { Figure } from '../../analyses/contract.ts';
import { type Axis, type Extent, rangeOf, readAxes } from './axes.ts';
import { axisMarks, depthOf, gridMarks } from './axis-marks.ts';
import { colourBarOf, drawColourBar } from './colour-bar.ts';
import { WHITE } from './colours.ts';
import type { Frame } from './frame.ts';
import { type Labels, layLabels } from './labels.ts';
import { type Legend, layLegend } from './legend.ts';
import { type Box, boxPath, type Drawing, type Mark } from './marks.ts';
import { numberOr, type Plain, part, textOr } from './plain.ts';
import type { Scale } from './scale.ts';
import { annotationMarks, shapeMarks } from './shapes.ts';
import { barExtents, drawBars, type LaidBars, layBars } from './traces/bar.ts';
import { boxExtents, drawBoxes } from './traces/box.ts';
import { drawContours } from './traces/contour.ts';
import { drawHeat, heatExtents } from './traces/heatmap.ts';
import { drawScatter, scatterExtents } from './traces/scatter.ts';

export interface DrawRequest {
  /** CSS pixels; as the figure says where left out. */
  readonly width?: number;
  readonly height?: number;
}

/** Kinds of trace that can be drawn without a browser. */
const DRAWN = new Set(['bar', 'box', 'contour', 'heatmap', 'scatter', 'scattergl']);

const LINES_ALONE = new Set(['none', 'lines']);

/** What of a figure cannot be drawn here: kinds of trace by name; empty where all can. */
export function undrawable({ data }: Figure): readonly string[] {
  const kinds = data.map((trace) => {
    const type = textOr(trace.type, 'scatter');
    const filled = type === 'contour' && !LINES_ALONE.has(textOr(part(trace, 'contours').coloring, 'fill'));
    return filled ? 'contour, filled' : type;
  });
  return [...new Set(kinds)].filter((kind) => !DRAWN.has(kind));
}

/**
 * Draws a figure of plain JSON without a browser: axes, legend, colour bar, bars, boxes, points, lines and matrices as
 * plotly would lay them out, on white, the same marks on every machine. It knows what the figures of the house
 * use (`undrawable` tells what it does not) and measures letters by the widths of the typeface.
 */
export function drawFigure(figure: Figure, request: DrawRequest = {}): Drawing {
  const { frame, labels, bars, legend } = layFigure(figure, request);
  const { traces, width, height } = frame;
  const all = <T>(of: (axis: Axis, mine: Labels) => readonly T[]) =>
    [...frame.axes.values()].flatMap((axis) => of(axis, labels.get(axis.id) as Labels));
  const bar = colourBarOf(traces, frame.plot.height);
  const marks: readonly Mark[] = [
    { path: boxPath({ x: 0, y: 0, width, height }), fill: WHITE },
    ...all((axis, mine) => gridMarks(axis, frame, mine)),
    ...shapeMarks(frame, 'below'),
    ...inOrder(traces).flatMap((trace) => drawTrace(trace, frame, bars)),
    ...all((axis, mine) => axisMarks(axis, frame, mine)),
    ...shapeMarks(frame, 'above'),
    ...annotationMarks(frame),
    ...(bar === null ? [] : drawColourBar(bar, frame.plot)),
    ...legend.marks,
  ];
  return { width, height, marks };
}

export interface LaidFigure {
  readonly frame: Frame;
  readonly labels: ReadonlyMap<string, Labels>;
  readonly bars: LaidBars;
  readonly legend: Legend;
}

/** Lays a figure out: ranges and pixels of its axes, labels, bars, legend; nothing is drawn yet. */
export function layFigure({ data, layout }: Figure, request: DrawRequest = {}): LaidFigure {
  const width = request.width ?? numberOr(layout.width, 643);
  const height = request.height ?? numberOr(layout.height, 400);
  const traces = data.filter(({ visible }) => visible !== false && visible !== 'legendonly');
  const axes = readAxes(traces, layout);
  const bars = layBars(traces, axes, layout);
  const extents = traces.flatMap((trace) => extentsOf(trace, axes, bars));
  const legend = layLegend(data, layout, width);
  return { ...settle({ traces, layout, axes, extents, width, height, top: legend.height }), bars, legend };
}

/** Matrices lie below bars, bars below boxes, boxes below points. */
function inOrder(traces: readonly Plain[]): readonly Plain[] {
  const layer = ({ type }: Plain) => LAYERS.indexOf(textOr(type, 'scatter'));
  return [...traces].sort((a, b) => layer(a) - layer(b) || numberOr(a.zorder, 0) - numberOr(b.zorder, 0));
}

const LAYERS = ['heatmap', 'contour', 'bar', 'box', 'scattergl', 'scatter'];

function extentsOf(trace: Plain, axes: ReadonlyMap<string, Axis>, bars: LaidBars): readonly Extent[] {
  if (trace.type === 'bar') return barExtents(trace, bars);
  if (trace.type === 'box') return boxExtents(trace, axes);
  if (trace.type === 'heatmap' || trace.type === 'contour') return heatExtents(trace, axes);
  return scatterExtents(trace, axes);
}

function drawTrace(trace: Plain, frame: Frame, bars: LaidBars): readonly Mark[] {
  if (trace.type === 'bar') return drawBars(trace, frame, bars);
  if (trace.type === 'box') return drawBoxes(trace, frame);
  if (trace.type === 'heatmap') return drawHeat(trace, frame);
  if (trace.type === 'contour') return drawContours(trace, frame);
  return drawScatter(trace, frame);
}

interface Settling {
  readonly traces: readonly Plain[];
  readonly layout: Plain;
  readonly axes: ReadonlyMap<string, Axis>;
  readonly extents: readonly Extent[];
  readonly width: number;
  readonly height: number;
  /** What the legend takes. */
  readonly top: number;
}

/** Margins hang on labels, labels on the room that margins leave: three rounds settle it. */
function settle(of: Settling): { readonly frame: Frame; readonly labels: ReadonlyMap<string, Labels> } {
  const margin = part(of.layout, 'margin');
  const least = {
    l: numberOr(margin.l, 80),
    r: numberOr(margin.r, 80),
    t: numberOr(margin.t, 100),
    b: numberOr(margin.b, 80),
  };
  let plot = inside(of, { ...least, t: Math.max(least.t, of.top) });
  let scales = scalesIn(of, plot);
  let labels = labelsOf(of, scales);
  for (let round = 0; round < 3; round++) {
    const bar = colourBarOf(of.traces, plot.height);
    const need = needs(of, labels, scales);
    plot = inside(of, {
      l: Math.max(Math.min(least.l, NARROW_LEFT), need.left),
      r: Math.max(least.r, need.right) + (bar === null ? 0 : Math.max(0, bar.width - least.r + 4)),
      t: Math.max(of.top + 6, least.t, need.top + of.top),
      b: Math.max(Math.min(least.b, NARROW_BELOW), need.bottom),
    });
    scales = scalesIn(of, plot);
    labels = labelsOf(of, scales);
  }
  return { frame: { ...of, scales, plot }, labels };
}

const NARROW_LEFT = 24;
const NARROW_BELOW = 20;

function inside(
  { width, height }: Settling,
  { l, r, t, b }: { readonly l: number; readonly r: number; readonly t: number; readonly b: number },
): Box {
  return { x: l, y: t, width: Math.max(40, width - l - r), height: Math.max(30, height - t - b) };
}

/** Room that the outer axes ask for on each side. */
function needs(
  { axes, width }: Settling,
  labels: ReadonlyMap<string, Labels>,
  scales: ReadonlyMap<string, Scale>,
) {
  const need = { left: 0, right: 0, top: 0, bottom: 0 };
  for (const axis of axes.values()) {
    const mine = labels.get(axis.id) as Labels;
    const deep = depthOf(axis, mine, scales.get(axis.id) as Scale) + 4;
    const [from, to] = axes.get(axis.anchor)?.domain ?? [0, 1];
    if (axis.letter === 'y') {
      if (axis.settings.side === 'right') need.right = Math.max(need.right, to > 0.99 ? deep : 0);
      else if (from < 0.01) need.left = Math.max(need.left, deep);
    } else if (axis.settings.side === 'top') need.top = Math.max(need.top, to > 0.99 ? deep : 0);
    else if (from < 0.01) need.bottom = Math.max(need.bottom, deep);
  }
  return { ...need, left: Math.min(need.left, width * 0.6) };
}

/** Tick labels beside a plot take at most this share of the width. */
const LABELS_AT_MOST = 0.36;

function labelsOf(
  { axes, width }: Settling,
  scales: ReadonlyMap<string, Scale>,
): ReadonlyMap<string, Labels> {
  return new Map(
    [...axes].map(([id, axis]) => [id, layLabels(axis, scales.get(id) as Scale, width * LABELS_AT_MOST)]),
  );
}

function scalesIn({ axes, extents }: Settling, plot: Box): ReadonlyMap<string, Scale> {
  const scales = new Map<string, Scale>();
  for (const [id, axis] of axes) {
    const [from, to] = axis.domain;
    const ends: readonly [number, number] =
      axis.letter === 'x'
        ? [plot.x + from * plot.width, plot.x + to * plot.width]
        : [plot.y + (1 - from) * plot.height, plot.y + (1 - to) * plot.height];
    const family = familyOf(axis, axes);
    const range = rangeOf(
      axis,
      extents.filter((extent) => family.has(extent.axis)),
      Math.abs(ends[1] - ends[0]),
    );
    scales.set(id, { kind: axis.kind, categories: axis.categories, range, ends });
  }
  for (const axis of axes.values()) anchorScale(axis, scales);
  return scales;
}

/** The axes that share a range with this one. */
function familyOf(axis: Axis, axes: ReadonlyMap<string, Axis>): ReadonlySet<string> {
  const head = textOr(axis.settings.matches, axis.id);
  const family = [...axes.values()].filter(({ id, settings }) => id === head || settings.matches === head);
  return new Set([axis.id, ...family.map(({ id }) => id)]);
}

/** Where a unit is to be as long on both axes, the one that is stretched more shows more of its range. */
function anchorScale(axis: Axis, scales: Map<string, Scale>): void {
  const other = scales.get(textOr(axis.settings.scaleanchor, ''));
  const own = scales.get(axis.id);
  if (other === undefined || own === undefined) return;
  const perUnit = ({ range, ends }: Scale) => Math.abs((ends[1] - ends[0]) / (range[1] - range[0]));
  const ratio = numberOr(axis.settings.scaleratio, 1);
  const [mine, theirs] = [perUnit(own) / ratio, perUnit(other)];
  const id = textOr(axis.settings.scaleanchor, '');
  if (mine > theirs) scales.set(axis.id, widened(own, mine / theirs));
  else scales.set(id, widened(other, theirs / mine));
}

function widened(scale: Scale, by: number): Scale {
  const [a, b] = scale.range;
  const [middle, half] = [(a + b) / 2, ((b - a) / 2) * by];
  return { ...scale, range: [middle - half, middle + half] };
}
