import type { Figure } from '../contract.ts';
import { inSentence, printYear } from '../phrasing.ts';
import { GROUND } from '../shared/figure/colours.ts';
import { kindMarker } from '../shared/figure/kinds.ts';
import { markStyle } from '../shared/figure/marks.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import { yearAxis } from '../years.ts';
import type { ChronologyFound, FindsSpan } from './found.ts';

/** Rows that are read on one page; the table holds all. */
const MOST_ROWS = 40;

/** When the finds of each place or kind were made: thin over all spans, thick over the middle half, the symbol at the median. */
export function spansFigure(found: ChronologyFound, of: 'places' | 'kinds'): Figure {
  const { unit, all } = found;
  const every = found.spans[of];
  const spans = [...every]
    .sort((a, b) => b.n - a.n)
    .slice(0, MOST_ROWS)
    .sort((a, b) => every.indexOf(a) - every.indexOf(b));
  const name = ({ label, n }: FindsSpan) => escapeText(`${label} (${n})`);
  const said = ({ label, n, from, to, q1, median, q3 }: FindsSpan) =>
    escapeText(
      `${label}, n = ${n}: ${printYear(from)} to ${printYear(to)}, half made by ${printYear(median)}, the middle half ${printYear(q1)} to ${printYear(q3)}`,
    );
  const lines = (ends: (span: FindsSpan) => readonly [number, number], width: number, color: string) => ({
    type: 'scatter',
    mode: 'lines',
    x: spans.flatMap((span) => [...ends(span), null]),
    y: spans.flatMap((span) => [name(span), name(span), name(span)]),
    line: { color, width },
    hoverinfo: 'skip',
    showlegend: false,
  });
  const label = of === 'places' ? found.placesLabel : found.kindsLabel;
  const rest = every.length - spans.length;
  return {
    data: [
      lines(({ from, to }) => [from, to], 1.2, GROUND.ink),
      lines(({ q1, q3 }) => [q1, q3], 7, GROUND.line),
      ...spans.map((span) => ({
        type: 'scatter',
        mode: 'markers',
        x: [span.median],
        y: [name(span)],
        text: [said(span)],
        hovertemplate: '%{text}<extra></extra>',
        marker: kindMarker(markStyle(span.mark), 10),
        showlegend: false,
      })),
    ],
    layout: figureLayout({
      x: yearAxis(
        'year',
        spans.flatMap(({ from, to }) => [from, to]),
      ),
      y: axis(label, {
        type: 'category',
        categoryorder: 'array',
        categoryarray: spans.map(name),
        autorange: 'reversed',
      }),
      height: 100 + 24 * Math.max(spans.length, 3),
      more: { margin: { l: 56, r: 32, t: 16, b: 48, pad: 2 } },
    }),
    caption:
      `When the ${unit}s of each ${inSentence(label)} were made, the earliest above; in brackets ${unit}s, ${all.n} dated in all. Thin line: from the first to the last year that their dates allow; ` +
      `thick: the middle half, and symbol: half made by then, each ${unit} shared out evenly over its span.${rest > 0 ? ` The ${MOST_ROWS} largest of ${every.length}.` : ''}`,
  };
}
