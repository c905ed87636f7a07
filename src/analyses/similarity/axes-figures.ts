import type { Figure } from '../contract.ts';
import { labelled, type NamedPoint, namesOrNumbers } from '../label-places.ts';
import { printNumber, printYear } from '../phrasing.ts';
import { GROUND } from '../shared/figure/colours.ts';
import { findMarker, kindStyle } from '../shared/figure/kinds.ts';
import { markersOf } from '../shared/figure/marks.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import { yearAxis } from '../years.ts';
import type { SimilarityFound } from './found.ts';

const HEIGHT = 520;
/** Draws shown of each cloud; more make it no clearer. */
const MOST_SHOWN = 300;

/** Assemblages and kinds on the first two axes; null where there is no second axis. */
export function biplotFigure(found: SimilarityFound): Figure | null {
  const { axes, table, newcomers } = found;
  if ('why' in axes || axes.found.axes < 2) return null;
  const sizes = table.counts.map((line) => line.reduce((sum, count) => sum + count, 0));
  const point = (at: readonly [number, number], name: string) => ({ x: at[0], y: at[1], name });
  const late = newcomers.flatMap(({ label, n, at }) => ('why' in at ? [] : [point(at, `${label} (${n})`)]));
  const active = axes.rows.flatMap((at, row) =>
    at === null || axes.placed[row] ? [] : [{ row, point: point(at, `${table.rows[row]} (${sizes[row]})`) }],
  );
  const kinds = axes.columns.flatMap((at, column) => (at === null ? [] : [point(at, table.columns[column])]));
  const { labels, said: names } = namesOrNumbers(
    [...late, ...active.map(({ point: own }) => own), ...kinds],
    {
      height: HEIGHT,
      equal: true,
    },
  );
  const cloud = newcomers.flatMap((one) => one.cloud.slice(0, MOST_SHOWN));
  const share = (place: number) =>
    `${printNumber((100 * axes.found.eigenvalues[place]) / axes.found.totalInertia)} %`;
  const trace = (
    points: readonly NamedPoint[],
    first: number,
    name: string,
    more: Readonly<Record<string, unknown>>,
  ) => ({
    type: 'scatter',
    mode: 'markers+text',
    name,
    x: points.map(({ x }) => x),
    y: points.map(({ y }) => y),
    textfont: { size: 10 },
    ...labelled(labels.slice(first, first + points.length), points),
    ...more,
  });
  const kindMark = { symbol: 'x-thin', size: 7, line: { color: kindStyle(4).colour, width: 2 } };
  return {
    data: [
      ...(cloud.length === 0
        ? []
        : [
            {
              type: 'scatter',
              mode: 'markers',
              name: 'its items drawn again',
              x: cloud.map(([x]) => x),
              y: cloud.map(([, y]) => y),
              hoverinfo: 'skip',
              marker: { symbol: 'circle', size: 4, color: GROUND.neutral, opacity: 0.5 },
            },
          ]),
      trace(kinds, late.length + active.length, escapeText(found.kindsLabel), {
        textfont: { size: 10, color: GROUND.inkSoft },
        marker: kindMark,
      }),
      trace(
        active.map(({ point: own }) => own),
        late.length,
        escapeText(found.assemblagesLabel),
        {
          marker: markersOf(
            found.marks,
            active.map(({ row }) => table.rows[row]),
            9,
          ),
          showlegend: false,
        },
      ),
      ...(late.length === 0 ? [] : [trace(late, 0, 'placed afterwards', { marker: findMarker(17) })]),
    ],
    layout: figureLayout({
      x: axis(`axis 1 (${share(0)})`),
      y: axis(`axis 2 (${share(1)})`, { scaleanchor: 'x' }),
      height: HEIGHT,
    }),
    caption:
      `Correspondence map of ${active.length} assemblages and ${kinds.length} kinds of ${found.kindsLabel} (crosses; ${table.entries.length} ${found.unit}s, in brackets those of each), principal coordinates: ` +
      'distances among assemblages, and among kinds, are chi-square distances; between the two only directions compare.' +
      `${late.length === 0 ? '' : ` Stars: placed afterwards, with their ${found.unit}s drawn again (dots).`}${names}`,
  };
}

/** Assemblages in the order of the first axis against their spans of years. */
export function orderFigure(found: SimilarityFound): Figure | null {
  const { axes, table, whereWhen } = found;
  if ('why' in axes) return null;
  const dated = axes.order.flatMap((row) => {
    const span = whereWhen.spans[row];
    const at = axes.rows[row];
    return span === null || at === null ? [] : [{ row, span, at: at[0] }];
  });
  if (dated.length === 0) return null;
  const named = dated.map(({ row, span, at }) => ({ x: span.middle, y: at, name: table.rows[row] }));
  const { labels, said: names } = namesOrNumbers(named, { height: 420, equal: false });
  const said =
    'why' in axes.againstDates
      ? ''
      : ` Spearman rho ${printNumber(axes.againstDates.rho, 2)}, its sign without meaning.`;
  return {
    data: [
      {
        type: 'scatter',
        mode: 'markers+text',
        x: dated.map(({ span }) => span.middle),
        y: dated.map(({ at }) => at),
        ...labelled(labels, named),
        customdata: dated.map(({ span }) => `${printYear(span.from)} to ${printYear(span.to)}`),
        hovertemplate: '%{hovertext}: %{customdata}<extra></extra>',
        textfont: { size: 10 },
        error_x: {
          type: 'data',
          symmetric: false,
          array: dated.map(({ span }) => span.to - span.middle),
          arrayminus: dated.map(({ span }) => span.middle - span.from),
          color: GROUND.ink,
          thickness: 1,
          width: 4,
        },
        marker: markersOf(
          found.marks,
          named.map(({ name }) => name),
          9,
        ),
        showlegend: false,
      },
    ],
    layout: figureLayout({
      x: yearAxis(
        'date',
        dated.flatMap(({ span }) => [span.from, span.to]),
      ),
      y: axis('place on the first axis'),
      height: 420,
    }),
    caption: `Place on the first axis of ${found.kindsLabel} against date: ${dated.length} of ${table.rows.length} assemblages are dated; bars are their spans.${said}${names}`,
  };
}
