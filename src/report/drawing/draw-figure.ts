import type { Figure } from '../../analyses/contract.ts';
import { type Axis, type Extent, readAxes } from './axes.ts';
import { axisMarks, gridMarks } from './axis-marks.ts';
import { colourBarOf, drawColourBar } from './colour-bar.ts';
import { WHITE } from './colours.ts';
import type { Frame } from './frame.ts';
import type { Labels } from './labels.ts';
import { type Legend, layLegend } from './legend.ts';
import { boxPath, type Drawing, type Mark } from './marks.ts';
import { settleNames } from './names.ts';
import { numberOr, type Plain, part, textOr } from './plain.ts';
import { settle } from './settle.ts';
import { annotationMarks, shapeMarks, shortLines } from './shapes.ts';
import { barExtents, drawBars } from './traces/bar.ts';
import { boxExtents, drawBoxes } from './traces/box.ts';
import { drawContours } from './traces/contour.ts';
import { drawHeat, heatExtents } from './traces/heatmap.ts';
import { type LaidBars, layBars } from './traces/lay-bars.ts';
import { drawScatter, scatterExtents } from './traces/scatter.ts';

export interface DrawRequest {
  /** CSS pixels; as the figure says where left out. */
  readonly width?: number;
  readonly height?: number;
}

/** Kinds of trace that can be drawn without a browser. */
const DRAWN = new Set(['bar', 'box', 'contour', 'heatmap', 'scatter']);

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
  const settled = settleNames(marks, shortLines(frame));
  return { width, height, marks: settled.marks, namesLeftOut: settled.leftOut, namePlaces: settled.places };
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

const LAYERS = ['heatmap', 'contour', 'bar', 'box', 'scatter'];

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
