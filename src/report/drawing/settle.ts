import { type Axis, type Extent, rangeOf } from './axes.ts';
import { depthOf } from './axis-marks.ts';
import { colourBarOf } from './colour-bar.ts';
import type { Frame } from './frame.ts';
import { type Labels, layLabels } from './labels.ts';
import type { Box } from './marks.ts';
import { list, numberOr, type Plain, part, textOr } from './plain.ts';
import type { Scale } from './scale.ts';

/** What a figure is laid out from. */
export interface Settling {
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
export function settle(of: Settling): {
  readonly frame: Frame;
  readonly labels: ReadonlyMap<string, Labels>;
} {
  const margin = part(of.layout, 'margin');
  const least = {
    l: numberOr(margin.l, 80),
    r: numberOr(margin.r, 80),
    t: numberOr(margin.t, 100),
    b: numberOr(margin.b, 80),
  };
  // What is written beside the plot by hand counts on the margins as they are set.
  const fixed = list(of.layout.annotations).some((note) => (note as Plain).xref === 'paper');
  let plot = inside(of, { ...least, t: Math.max(least.t, of.top) });
  let scales = scalesIn(of, plot);
  let labels = labelsOf(of, scales);
  for (let round = 0; round < 3; round++) {
    const bar = colourBarOf(of.traces, plot.height);
    const need = needs(of, labels, scales);
    plot = inside(of, {
      l: Math.max(fixed ? least.l : Math.min(least.l, NARROW_LEFT), need.left),
      r:
        Math.max(least.r, need.right) +
        (bar === null || bar.width === 0 ? 0 : Math.max(0, bar.width - least.r + 4)),
      t: Math.max(of.top + 6, least.t, need.top + of.top) + (bar?.above ?? 0),
      b: Math.max(fixed ? least.b : Math.min(least.b, NARROW_BELOW), need.bottom),
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
