import type { Figure } from '../contract.ts';
import { inSentence, printLevel } from '../phrasing.ts';
import { GROUND } from '../shared/figure/colours.ts';
import { kindMarker } from '../shared/figure/kinds.ts';
import { limitBars } from '../shared/figure/limit-bars.ts';
import { logTicks } from '../shared/figure/log-axis.ts';
import { markStyle } from '../shared/figure/marks.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import type { ThreadcountFound } from './found.ts';
import { heaped, heapIds, heapName, heapsSaid } from './heaps.ts';

/** What its inside measures: finds of one group lie on one line. */
const INSIDE = { width: 500, height: 1 };
const MOST_SYMBOLS = 2000;

const exactly = (point: number) => ({ low: point, high: point, point, openEnded: false });

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
  const ratios = points
    .filter((point) => point.x.point > 0 && point.y.point > 0)
    .map((point) => ({ ...point, x: exactly(point.x.point / point.y.point), y: exactly(1) }));
  const heaps = heaped({ points: ratios, find: null, logarithmic: true }, INSIDE, MOST_SYMBOLS);
  const lines = groups.flatMap((group, place) => {
    const own = heaps.heaps.filter(([point]) => point.group === place);
    const n = own.reduce((sum, heap) => sum + heap.length, 0);
    return n === 0 ? [] : [{ group, own, name: escapeText(`${group.label} (${n})`) }];
  });
  if (lines.length === 0) return null;
  const medians = lines.flatMap(({ group, name }) => {
    const own = group.ratio;
    if (own === null || typeof own.median !== 'number' || 'why' in own.limits) return [];
    return [{ name, value: own.median, low: own.limits.low, high: own.limits.high }];
  });
  const all = ratios.map(({ x: { point } }) => point);
  return {
    data: [
      ...lines.map(({ group, own, name }) => ({
        type: 'scatter',
        mode: 'markers',
        x: own.map(([point]) => point.x.point),
        y: own.map(() => name),
        text: own.map(heapName),
        customdata: own.map(heapIds),
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
      `Dotted: both equal (n = ${all.length}; in brackets ${unit}s).${heapsSaid(heaps, all.length, false)}`,
  };
}
