import type { Figure } from '../contract.ts';
import { axis, escapeText, figureLayout, GROUND, kindMarker } from '../figure-style.ts';
import { limitBars } from '../limit-bars.ts';
import { logTicks } from '../log-axis.ts';
import { markStyle } from '../marks.ts';
import { inSentence, printLevel } from '../phrasing.ts';
import type { ThreadcountFound } from './found.ts';

/** The ratio of the two by group: every find, the median and its limits; null where their units differ. */
export function ratioFigure({
  groups,
  points,
  x,
  y,
  byLabel,
  ratio,
  options,
  unit,
}: ThreadcountFound): Figure | null {
  if (ratio === null) return null;
  const lines = groups.flatMap((group, place) => {
    const values = points
      .filter((point) => point.group === place && point.x.point > 0 && point.y.point > 0)
      .map((point) => ({ id: point.id, value: point.x.point / point.y.point }));
    return values.length === 0
      ? []
      : [{ group, values, name: escapeText(`${group.label} (${values.length})`) }];
  });
  if (lines.length === 0) return null;
  const medians = lines.flatMap(({ group, name }) => {
    const own = group.ratio;
    if (own === null || typeof own.median !== 'number' || 'why' in own.limits) return [];
    return [{ name, value: own.median, low: own.limits.low, high: own.limits.high }];
  });
  const all = lines.flatMap(({ values }) => values.map(({ value }) => value));
  return {
    data: [
      ...lines.map(({ group, values, name }) => ({
        type: 'scatter',
        mode: 'markers',
        x: values.map(({ value }) => value),
        y: values.map(() => name),
        text: values.map(({ id }) => escapeText(id)),
        customdata: values.map(({ id }) => id),
        hovertemplate: '%{text}: %{x:.3g}<extra></extra>',
        marker: { ...kindMarker(markStyle(group.mark), 6), opacity: 0.6 },
        showlegend: false,
      })),
      {
        type: 'scatter',
        mode: 'markers',
        x: medians.map(({ value }) => value),
        y: medians.map(({ name }) => name),
        error_x: { ...limitBars(medians, GROUND.ink), thickness: 2, width: 6 },
        hovertemplate: 'median %{x:.3g}<extra></extra>',
        marker: { symbol: 'line-ns', size: 14, line: { color: GROUND.ink, width: 2.5 } },
        showlegend: false,
      },
    ],
    layout: figureLayout({
      x: axis(`${x.label} / ${inSentence(y.label)}, logarithmic`, logTicks(all)),
      y: axis('', {
        type: 'category',
        autorange: 'reversed',
        categoryorder: 'array',
        categoryarray: lines.map(({ name }) => name),
      }),
      height: 80 + 26 * Math.max(3, lines.length),
      more: {
        margin: { l: 56, r: 16, t: 16, b: 48, pad: 2 },
        showlegend: false,
        shapes: [
          {
            type: 'line',
            x0: 1,
            x1: 1,
            yref: 'paper',
            y0: 0,
            y1: 1,
            line: { color: GROUND.ink, width: 1, dash: 'dot' },
          },
        ],
      },
    }),
    caption:
      `${x.label} divided by ${inSentence(y.label)} by ${inSentence(byLabel)}, on a logarithmic axis: every ${unit} at the middle of its readings; upright: the median with ${printLevel(options.confidence)} limits, none where too few allow them. ` +
      `Dotted: both equal (n = ${all.length}; in brackets ${unit}s).`,
  };
}
