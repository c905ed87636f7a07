import { margins } from '../../numerics/tests/contingency.ts';
import type { Figure } from '../contract.ts';
import { printCount, printNumber } from '../phrasing.ts';
import { DIVERGING, GROUND } from '../shared/figure/colours.ts';
import { BAR_TEXT } from '../shared/figure/kinds.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import { levelNote } from '../shared/level/said.ts';
import type { Cell, CrosstabFound } from './found.ts';
import { countedOf } from './tables.ts';

/** Paper left between two strips, in percent of the whole. */
const GAP = 1.2;
/** Room that the tiles have on the sheet, in pixels, and what a line of text takes: to know which words fit. */
const PLOT_WIDTH = 380;
const AROUND = 90;
const LETTER = 6.5;
const LINE = 14;

/**
 * A mosaic: a strip a row of the table, as thick as the row's share of all; along it a tile a kind, as long as
 * the kind's share of the row. So the area of a tile is its share of all. Shade is the adjusted residual, and
 * a tile that carries the association also has a plus or minus, for print in grey and for whoever sees no hue.
 * The table "cells" has every size and residual (Hartigan & Kleiner 1981; residual shading: Friendly 1994,
 * Journal of the American Statistical Association 89:190).
 */
export function mosaicFigure(found: CrosstabFound): Figure {
  const { table, association, cells, unit, standsBeyond } = found;
  const sums = margins(table.counts);
  const thick = sums.rows.map((count) => (100 * count) / sums.n);
  const middles = thick.map(
    (own, row) => thick.slice(0, row).reduce((sum, one) => sum + one + GAP, 0) + own / 2,
  );
  const end = (middles.at(-1) ?? 0) + (thick.at(-1) ?? 0) / 2;
  const most = widest(association.residuals);
  const height = 200 + 34 * table.rows.length;
  const rowPixels = (row: number) => (thick[row] / end) * (height - AROUND);
  return {
    data: table.columns.map((label, column) => ({
      type: 'bar',
      orientation: 'h',
      name: escapeText(label),
      y: middles,
      width: thick,
      x: table.counts.map((line, row) => (100 * line[column]) / sums.rows[row]),
      text: table.counts.map((line, row) =>
        rowPixels(row) < LINE
          ? ''
          : fitting(
              (PLOT_WIDTH * line[column]) / sums.rows[row],
              label,
              `${line[column]}${MARKS[cells[row][column].stands]}`,
            ),
      ),
      ...BAR_TEXT,
      constraintext: 'none',
      cliponaxis: true,
      marker: {
        color: association.residuals.map((line) => line[column]),
        colorscale: DIVERGING,
        cmin: -most,
        cmax: most,
        line: { color: GROUND.ink, width: 0.75 },
        ...(column === 0
          ? { showscale: true, colorbar: { title: { text: 'residual' }, thickness: 12 } }
          : {}),
      },
      customdata: table.counts.map((line, row) =>
        escapeText(
          `${table.rows[row]}, ${label}: ${line[column]}, residual ${printNumber(association.residuals[row][column], 2)}`,
        ),
      ),
      hovertemplate: '%{customdata}<extra></extra>',
    })),
    layout: figureLayout({
      x: axis(`share of ${found.mixtures === null ? '' : 'the mentions of '}each ${found.rowsLabel} (%)`, {
        range: [0, 100],
        showgrid: false,
      }),
      y: axis(found.rowsLabel, {
        tickvals: middles,
        ticktext: table.rows.map((label, row) => escapeText(`${label} (${sums.rows[row]})`)),
        range: [end, 0],
        showgrid: false,
      }),
      height,
      more: { barmode: 'stack', bargap: 0, showlegend: false },
    }),
    caption:
      `${found.columnsLabel} by ${found.rowsLabel}, ${countedOf(found)} with both recorded: each tile is as large as its share of ` +
      `all, strips as thick as their share, with counts; from the left ${table.columns.join(', ')}. ${loudWords(found)} Shade is the adjusted residual; + and − mark residuals beyond ` +
      `±${printNumber(standsBeyond)}. Every size and residual stands in the table of cells.${levelNote(found.level, unit)}`,
  };
}

/** Name and count where the tile is long enough, the count alone, or nothing: the pointer says it all. */
function fitting(pixels: number, label: string, count: string): string {
  const whole = `${label} ${count}`;
  const said = [whole, count].find((text) => text.length * LETTER <= pixels);
  return escapeText(said ?? '');
}

const MARKS: Readonly<Record<Cell['stands'], string>> = { more: ' +', fewer: ' −', 'as expected': '' };

/** Half of the range of shades: residuals of 4 are as dark as it gets, unless there are larger ones. */
export function widest(residuals: readonly (readonly number[])[]): number {
  return residuals.flat().reduce((most, residual) => Math.max(most, Math.abs(residual)), 4);
}

/** In words what the shades say: the cells that hold more or fewer than expected. */
function loudWords({ table, cells, standsBeyond }: CrosstabFound): string {
  const loud = cells
    .flatMap((line, row) =>
      line.map((cell, column) => ({ ...cell, name: `${table.columns[column]} at ${table.rows[row]}` })),
    )
    .filter(({ stands }) => stands !== 'as expected')
    .sort((a, b) => Math.abs(b.residual) - Math.abs(a.residual));
  if (loud.length === 0) return `No tile departs by more than ${printNumber(standsBeyond)}.`;
  const said = loud.slice(0, 3).map(({ name, stands }) => `${name} (${stands} than expected)`);
  const rest = loud.length - said.length;
  return `Departing most: ${said.join(', ')}${rest > 0 ? `, and ${printCount(rest, 'further tile')}` : ''}.`;
}
