import { margins } from '../../numerics/tests/contingency.ts';
import type { Figure } from '../contract.ts';
import { printNumber } from '../phrasing.ts';
import { DIVERGING, GROUND } from '../shared/figure/colours.ts';
import { BAR_TEXT, kindBar, MOST_KINDS } from '../shared/figure/kinds.ts';
import { styleOf } from '../shared/figure/marks.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import { levelNote } from '../shared/level/said.ts';
import { pooledSharesFigure } from '../shared/pooled/shares.ts';
import type { CrosstabFound } from './found.ts';
import { mosaicFigure, widest } from './mosaic-figure.ts';
import { countedOf } from './tables.ts';

/** Stacked shares by row, the same as a mosaic with the sizes of the rows, the residuals of every cell, and shares raw and pooled. */
export function crosstabFigures(found: CrosstabFound): Readonly<Record<string, Figure>> {
  return {
    shares: sharesFigure(found),
    mosaic: mosaicFigure(found),
    residuals: residualsFigure(found),
    ...(found.pooled === null ? {} : { pooled: pooledSharesFigure(found.pooled, found.rowsLabel) }),
  };
}

function sharesFigure(found: CrosstabFound): Figure {
  const { table, unit } = found;
  const sums = margins(table.counts);
  const names = table.rows.map((label, row) => escapeText(`${label} (${sums.rows[row]})`));
  return {
    data: table.columns.map((label, column) => ({
      type: 'bar',
      orientation: 'h',
      name: escapeText(label),
      y: names,
      x: table.counts.map((line, row) => (100 * line[column]) / sums.rows[row]),
      text: table.counts.map((line) => (line[column] === 0 ? '' : String(line[column]))),
      ...BAR_TEXT,
      marker: { ...kindBar(styleOf(found.marks, label)), line: { color: GROUND.ink, width: 0.5 } },
      hovertemplate: `${escapeText(label)}: %{text} (%{x:.0f} %)<extra>%{y}</extra>`,
    })),
    layout: figureLayout({
      x: axis(found.mixtures === null ? `share of ${unit}s (%)` : 'share of mentions (%)', {
        range: [0, 100],
      }),
      y: axis(found.rowsLabel, { autorange: 'reversed', type: 'category' }),
      legend: found.columnsLabel,
      height: 160 + 30 * table.rows.length,
      more: { barmode: 'stack', bargap: 0.35 },
    }),
    caption:
      `${found.columnsLabel} by ${found.rowsLabel}: shares of ${countedOf(found)} with both recorded; numbers in the bars and in ` +
      `brackets are counts${table.columns.some((label) => (found.marks.get(label) ?? MOST_KINDS) >= MOST_KINDS) ? `; kinds beyond the ${MOST_KINDS} commonest of the study share one neutral grey` : ''}.${levelNote(found.level, unit)}`,
  };
}

function residualsFigure(found: CrosstabFound): Figure {
  const { table, association, standsBeyond } = found;
  const most = widest(association.residuals);
  return {
    data: [
      {
        type: 'heatmap',
        x: table.columns.map(escapeText),
        y: table.rows.map(escapeText),
        z: association.residuals,
        text: association.residuals.map((line, row) =>
          line.map(
            (residual, column) =>
              `${residual > 0 ? '+' : ''}${printNumber(residual, 2)}<br>(${table.counts[row][column]})`,
          ),
        ),
        texttemplate: '%{text}',
        textfont: { size: 10 },
        zmin: -most,
        zmax: most,
        colorscale: DIVERGING,
        xgap: 2,
        ygap: 2,
        colorbar: { title: { text: 'residual' }, thickness: 12 },
        hovertemplate: '%{y}, %{x}: %{text}<extra></extra>',
      },
    ],
    layout: figureLayout({
      x: axis(found.columnsLabel, { type: 'category', showgrid: false, tickangle: -35 }),
      y: axis(found.rowsLabel, { type: 'category', autorange: 'reversed', showgrid: false }),
      height: 180 + 38 * table.rows.length,
    }),
    caption:
      `${found.columnsLabel} by ${found.rowsLabel}: adjusted residuals, with counts in brackets (${countedOf(found)}). ` +
      `Plus: more than if the two had nothing to do with each other; beyond ±${printNumber(standsBeyond)} a cell stands out.`,
  };
}
