import { densityCurve } from '../../numerics/describing/density.ts';
import { sortedValues } from '../../numerics/describing/quantile.ts';
import { exp, ln } from '../../numerics/foundation/elementary.ts';
import type { Figure } from '../contract.ts';
import { DATE_UNIT } from '../phrasing.ts';
import { GROUND } from '../shared/figure/colours.ts';
import { kindMarker } from '../shared/figure/kinds.ts';
import { logTicks } from '../shared/figure/log-axis.ts';
import { styleOf } from '../shared/figure/marks.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import { yearAxis } from '../years.ts';
import type { AttributeContrast, ContrastFound, ContrastGroup } from './found.ts';

/** Boxes from this many values on, smooth outlines from that many; points stand alone below. */
const FEWEST_FOR_BOX = 5;
const FEWEST_FOR_OUTLINE = 10;

/** Every value as a point, boxes where there are enough of them. */
export function boxFigure(found: ContrastFound, { samples }: AttributeContrast): Figure {
  const { groups } = samples;
  return {
    data: groups.map((group) => {
      const [q1, median, q3] = group.quartiles;
      const values = Array.from(group.points.values);
      return {
        type: 'box',
        orientation: 'h',
        name: nameOf(group),
        y: [nameOf(group)],
        x: [values],
        q1: [q1],
        median: [median],
        q3: [q3],
        lowerfence: [values.reduce((a, b) => Math.min(a, b))],
        upperfence: [values.reduce((a, b) => Math.max(a, b))],
        boxpoints: 'all',
        pointpos: 0,
        jitter: 0.5,
        marker: kindMarker(styleOf(found.marks, group.label), 6),
        line: { color: values.length >= FEWEST_FOR_BOX ? GROUND.ink : 'rgba(0,0,0,0)', width: 1 },
        fillcolor: 'rgba(0,0,0,0)',
        hovertemplate: '%{x}<extra>%{y}</extra>',
        showlegend: false,
      };
    }),
    layout: figureLayout({
      x: valueAxis(samples),
      y: axis(found.by, { autorange: 'reversed', type: 'category' }),
      height: 120 + 36 * groups.length,
    }),
    caption:
      `${samples.attribute.label} by ${found.by}: ${countsOf(found, groups)}. Boxes from ${FEWEST_FOR_BOX} values on: median and ` +
      `quartiles (type 7), whiskers to the outermost values. ${readingsSaid(groups)}`,
  };
}

/** Outlines of the spread, twice the density wide at each value, with the points inside. */
export function outlineFigure(found: ContrastFound, { samples }: AttributeContrast): Figure {
  const scale = samples.logarithmic ? ln : (value: number) => value;
  const back = samples.logarithmic ? exp : (value: number) => value;
  const { groups } = samples;
  const data = groups.flatMap((group, place) => {
    const style = styleOf(found.marks, group.label);
    const values = Array.from(group.points.values);
    const points = {
      type: 'scatter',
      mode: 'markers',
      x: values,
      y: values.map((_, i) => place + 0.06 * ((i % 5) - 2)),
      marker: kindMarker(style, 5),
      hovertemplate: `%{x}<extra>${nameOf(group)}</extra>`,
      showlegend: false,
    };
    const curve = values.length < FEWEST_FOR_OUTLINE ? { why: 'too few' } : densityCurve(values.map(scale));
    if ('why' in curve) return [points];
    const most = curve.density.reduce((a, b) => Math.max(a, b));
    const at = Array.from(curve.at, back);
    const half = Array.from(curve.density, (density) => (0.42 * density) / most);
    const outline = {
      type: 'scatter',
      mode: 'lines',
      x: [...at, ...[...at].reverse()],
      y: [...half.map((width) => place - width), ...[...half].reverse().map((width) => place + width)],
      fill: 'toself',
      fillcolor: `${style.colour}33`,
      line: { color: style.colour, width: 1.5, dash: style.dash },
      hoverinfo: 'skip',
      showlegend: false,
    };
    return [outline, points];
  });
  return {
    data,
    layout: figureLayout({
      x: valueAxis(samples),
      y: axis(found.by, {
        range: [groups.length - 0.4, -0.6],
        tickvals: groups.map((_, place) => place),
        ticktext: groups.map(nameOf),
        showgrid: false,
      }),
      height: 120 + 64 * groups.length,
    }),
    caption:
      `${samples.attribute.label} by ${found.by}: ${countsOf(found, groups)}. Outlines from ${FEWEST_FOR_OUTLINE} values on: Gaussian kernels, ` +
      `bandwidth by Silverman's rule${samples.logarithmic ? ', on logarithms' : ''}, all of equal width at their peak. ${readingsSaid(groups)}`,
  };
}

/** The share of a group that lies at or below each value. */
export function cumulativeFigure(found: ContrastFound, { samples }: AttributeContrast): Figure {
  const { groups } = samples;
  return {
    data: groups.map((group) => {
      const sorted = Array.from(sortedValues(group.points.values));
      const style = styleOf(found.marks, group.label);
      return {
        type: 'scatter',
        mode: sorted.length <= 30 ? 'lines+markers' : 'lines',
        name: nameOf(group),
        x: [sorted[0], ...sorted],
        y: [0, ...sorted.map((_, i) => (i + 1) / sorted.length)],
        line: { shape: 'hv', color: style.colour, dash: style.dash, width: 1.5 },
        marker: kindMarker(style, 5),
        hovertemplate: `%{y:.0%} at or below %{x}<extra>${nameOf(group)}</extra>`,
      };
    }),
    layout: figureLayout({
      x: valueAxis(samples),
      y: axis('share at or below', { range: [0, 1.02], tickformat: '.0%' }),
      legend: found.by,
      height: 380,
    }),
    caption: `${samples.attribute.label} by ${found.by}, cumulative: ${countsOf(found, groups)}. ${readingsSaid(groups)}`,
  };
}

function nameOf(group: ContrastGroup): string {
  return escapeText(`${group.label} (${group.points.values.length})`);
}

export function valueAxis({ attribute, graded, logarithmic, groups }: AttributeContrast['samples']) {
  const levels = attribute.levels ?? [];
  const title =
    attribute.unit === undefined || attribute.unit === ''
      ? attribute.label
      : `${attribute.label} (${attribute.unit})`;
  if (graded) return axis(title, { tickvals: levels.map((_, i) => i + 1), ticktext: levels.map(escapeText) });
  const values = groups.flatMap((group) => Array.from(group.points.values));
  if (attribute.unit === DATE_UNIT) return yearAxis(attribute.label, values);
  return axis(title, logarithmic ? logTicks(values) : {});
}

export function countsOf({ unit }: ContrastFound, groups: readonly ContrastGroup[]): string {
  const n = groups.reduce((sum, group) => sum + group.points.values.length, 0);
  const items = groups.reduce((sum, group) => sum + group.points.count, 0);
  const missing = groups.reduce((sum, group) => sum + group.missing, 0);
  const shown =
    unit === 'item'
      ? `one symbol an item, ${n} shown`
      : `one symbol a fragment, ${n} shown, of ${items} items`;
  return `${shown}, ${missing} without a value`;
}

function readingsSaid(groups: readonly ContrastGroup[]): string {
  const open = groups.reduce((sum, group) => sum + group.openEnded, 0);
  return open > 0
    ? `Ranges stand at their middle, ${open} open-ended reading${open === 1 ? '' : 's'} at the known end.`
    : 'Ranges stand at their middle.';
}
