import type { Figure } from '../contract.ts';
import { axis, escapeText, figureLayout, GROUND, kindMarker, kindStyle } from '../figure-style.ts';
import { printNumber } from '../phrasing.ts';
import type { SimilarityFound } from './compute.ts';

/** Assemblages and kinds on the first two axes; null where there is no second axis. */
export function biplotFigure(found: SimilarityFound): Figure | null {
  const { axes, table } = found;
  if ('why' in axes || axes.found.axes < 2) return null;
  const sizes = table.counts.map((line) => line.reduce((sum, count) => sum + count, 0));
  const points = (rows: readonly number[], name: string, marker: Readonly<Record<string, unknown>>) => {
    const known = rows.flatMap((row) => {
      const at = axes.rows[row];
      return at === null ? [] : [{ row, at }];
    });
    return {
      type: 'scatter',
      mode: 'markers+text',
      name,
      x: known.map(({ at }) => at[0]),
      y: known.map(({ at }) => at[1]),
      text: known.map(({ row }) => escapeText(`${table.rows[row]} (${sizes[row]})`)),
      textposition: 'top center',
      textfont: { size: 10 },
      marker,
    };
  };
  const active = table.rows.flatMap((_, row) => (axes.placed[row] ? [] : [row]));
  const placed = table.rows.flatMap((_, row) => (axes.placed[row] ? [row] : []));
  const kinds = axes.columns.flatMap((at, column) => (at === null ? [] : [{ at, column }]));
  const share = (place: number) =>
    `${printNumber((100 * axes.found.eigenvalues[place]) / axes.found.totalInertia)} %`;
  const kindsTrace = {
    type: 'scatter',
    mode: 'markers+text',
    name: escapeText(found.kindsLabel),
    x: kinds.map(({ at }) => at[0]),
    y: kinds.map(({ at }) => at[1]),
    text: kinds.map(({ column }) => escapeText(table.columns[column])),
    textposition: 'bottom center',
    textfont: { size: 10, color: GROUND.inkSoft },
    marker: {
      ...kindMarker(kindStyle(4), 7),
      symbol: 'x-thin',
      line: { color: kindStyle(4).colour, width: 2 },
    },
  };
  const late =
    placed.length === 0
      ? []
      : [points(placed, 'placed afterwards', { ...kindMarker(kindStyle(3), 10), symbol: 'diamond' })];
  return {
    data: [
      points(active, escapeText(found.assemblagesLabel), kindMarker(kindStyle(0), 9)),
      ...late,
      kindsTrace,
    ],
    layout: figureLayout({
      x: axis(`axis 1 (${share(0)})`),
      y: axis(`axis 2 (${share(1)})`, { scaleanchor: 'x' }),
      height: 520,
    }),
    caption:
      `Correspondence map of ${table.rows.length} assemblages and ${kinds.length} kinds of ${found.kindsLabel} (${table.entries.length} ${found.unit}s; in brackets those of each), principal coordinates: ` +
      'distances among assemblages, and among kinds, are chi-square distances; between the two only directions compare.',
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
        text: dated.map(({ row }) => escapeText(table.rows[row])),
        textposition: 'top center',
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
        marker: kindMarker(kindStyle(0), 9),
        showlegend: false,
      },
    ],
    layout: figureLayout({
      x: axis('year (astronomical; 0 is 1 BC)'),
      y: axis('place on the first axis'),
      height: 420,
    }),
    caption: `Place on the first axis of ${found.kindsLabel} against date: ${dated.length} of ${table.rows.length} assemblages are dated; bars are their spans.${said}`,
  };
}
