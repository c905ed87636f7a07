import type { FactorPoints } from '../../numerics/ordination/duality.ts';
import type { ResultColumn, ResultTable, TableCell } from '../contract.ts';
import { printNumber, printP } from '../phrasing.ts';
import { yearColumn } from '../years.ts';
import type { SimilarityFound } from './found.ts';

const col = (id: string, label: string): ResultColumn => ({ id, label });

/** Axes shown point by point. */
const SHOWN = 2;

/** Inertia of the axes, every assemblage and kind on them, and the order against the dates. */
export function axesTables({
  axes,
  table,
  assemblagesLabel,
  kindsLabel,
  whereWhen,
}: SimilarityFound): Record<string, ResultTable> {
  if ('why' in axes) {
    return {
      axes: {
        title: 'Axes',
        columns: [col('axis', 'axis'), col('inertia', 'inertia')],
        rows: [['none', { why: axes.why }]],
      },
    };
  }
  const { found } = axes;
  let sum = 0;
  const shown = Math.min(SHOWN, found.axes);
  const pointHeads = Array.from({ length: shown }, (_, axis) => [
    col(`axis${axis + 1}`, `axis ${axis + 1}`),
    col(`contribution${axis + 1}`, `part of axis ${axis + 1}`),
    col(`cos2${axis + 1}`, `squared cosine ${axis + 1}`),
  ]).flat();
  const pointCells = (points: FactorPoints, place: number): TableCell[] =>
    Array.from({ length: shown }, (_, axis) => {
      const at = place * found.axes + axis;
      return [points.coordinates[at], points.contributions[at], points.cos2[at]];
    }).flat();
  const active = table.rows.flatMap((_, row) => (axes.placed[row] ? [] : [row]));
  const rowCells = (row: number): TableCell[] => {
    const kept = found.keptRows.indexOf(active.indexOf(row));
    if (!axes.placed[row] && kept >= 0) return pointCells(found.rows, kept);
    const at = axes.rows[row];
    const why = { why: at === null ? 'not on the axes' : 'placed afterwards' };
    return Array.from({ length: shown }, (_, axis): TableCell[] => [
      at === null ? why : at[axis],
      why,
      why,
    ]).flat();
  };
  return {
    axes: {
      title: 'Axes of the correspondence analysis',
      columns: [
        col('axis', 'axis'),
        col('inertia', 'inertia'),
        col('share', 'share of inertia'),
        col('cumulative', 'cumulative'),
      ],
      rows: Array.from(found.eigenvalues, (inertia, axis): TableCell[] => {
        sum += inertia;
        return [axis + 1, inertia, inertia / found.totalInertia, sum / found.totalInertia];
      }),
      note: 'Greenacre 1984; principal coordinates for assemblages and kinds alike.',
    },
    assemblagesOnAxes: {
      title: `${assemblagesLabel} on the axes`,
      columns: [col('assemblage', assemblagesLabel), col('role', 'role'), ...pointHeads],
      rows: table.rows.map((label, row) => [
        label,
        axes.placed[row] ? 'placed afterwards' : 'active',
        ...rowCells(row),
      ]),
    },
    kindsOnAxes: {
      title: `${kindsLabel} on the axes`,
      columns: [col('kind', kindsLabel), col('n', 'n'), ...pointHeads],
      rows: table.columns.flatMap((label, column): TableCell[][] => {
        const kept = found.keptColumns.indexOf(column);
        const n = active.reduce((total, row) => total + table.counts[row][column], 0);
        return kept < 0 ? [] : [[label, n, ...pointCells(found.columns, kept)]];
      }),
    },
    order: {
      title: 'Order along the first axis',
      columns: [
        col('place', 'place'),
        col('assemblage', assemblagesLabel),
        yearColumn('from', 'from'),
        yearColumn('to', 'to'),
      ],
      rows: axes.order.map((row, place): TableCell[] => {
        const span = whereWhen.spans[row];
        const undated = { why: 'not dated' };
        return [place + 1, table.rows[row], ...(span === null ? [undated, undated] : [span.from, span.to])];
      }),
      note:
        'why' in axes.againstDates
          ? `Not set against dates: ${axes.againstDates.why}. The axis has no direction of its own.`
          : `Against the dates: Spearman rho ${printNumber(axes.againstDates.rho, 2)} (${printNumber(axes.againstDates.low, 2)} to ${printNumber(axes.againstDates.high, 2)} within the spans), ${printP(axes.againstDates.p)} (${axes.againstDates.method}), n = ${axes.againstDates.n}: ${axes.againstDates.told}. The axis has no direction of its own; it is turned so that it runs with the dates. Order along an axis is an order in time only where nothing else orders the kinds.`,
    },
  };
}
