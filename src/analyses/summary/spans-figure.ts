import type { Figure } from '../contract.ts';
import { printCount, printYear } from '../phrasing.ts';
import { GROUND } from '../shared/figure/colours.ts';
import { kindStyle } from '../shared/figure/kinds.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import { yearAxis } from '../years.ts';
import type { SpanGroup } from './found.ts';

/** A bar a group from its first to its last year, earliest above. */
export function spansFigure(groups: readonly SpanGroup[], unit: 'fragment' | 'item', by: string): Figure {
  const dated = groups.flatMap((group) => (group.span === null ? [] : [{ ...group, span: group.span }]));
  const name = ({ group, n }: SpanGroup) =>
    escapeText(`${group.length === 0 ? `all ${unit}s` : group.join(', ')} (${n})`);
  const missing = groups.reduce((sum, group) => sum + group.missing, 0);
  return {
    data: [
      {
        type: 'bar',
        orientation: 'h',
        showlegend: false,
        y: dated.map(name),
        base: dated.map(({ span }) => span.from),
        x: dated.map(({ span }) => span.to - span.from),
        marker: { color: kindStyle(3).colour, line: { color: GROUND.ink, width: 1 } },
        text: dated.map(({ span }) => `${printYear(span.from)} to ${printYear(span.to)}`),
        textposition: 'none',
        hovertemplate: '%{text}<extra>%{y}</extra>',
      },
      {
        type: 'scatter',
        mode: 'markers',
        showlegend: false,
        y: dated.map(name),
        x: dated.map(({ span }) => span.middle),
        marker: { symbol: 'line-ns', size: 16, line: { color: GROUND.ink, width: 2 } },
        text: dated.map(({ span }) => printYear(span.middle)),
        hovertemplate: 'middle %{text}<extra>%{y}</extra>',
      },
    ],
    layout: figureLayout({
      x: yearAxis(
        'date',
        dated.flatMap(({ span }) => [span.from, span.to]),
      ),
      y: axis(by, { autorange: 'reversed', type: 'category' }),
      height: 120 + 32 * Math.max(dated.length, 2),
      more: { bargap: 0.5 },
    }),
    caption:
      `When each dates to: bars from the first to the last year of the ${unit}s of each (hull of their dates), upright line: median of their middles; ` +
      `earliest above; in brackets ${unit}s dated. ${printCount(missing, unit)} without a closed date left out.`,
  };
}
