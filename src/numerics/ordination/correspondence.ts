import type { Unavailable } from '../foundation/unavailable.ts';
import { type DualityDiagram, dualityDiagram, supplementaryColumn, supplementaryRow } from './duality.ts';
import type { PassivePoint } from './passive-point.ts';

/** Correspondence analysis of a table of counts. */
export interface Correspondence extends DualityDiagram {
  /** Rows and columns with a total above 0, which alone take part; `rows` and `columns` follow them. */
  readonly keptRows: readonly number[];
  readonly keptColumns: readonly number[];
  readonly total: number;
  /** Pearson's chi-square of the table: total times the total inertia. */
  readonly chiSquare: number;
}

/**
 * Correspondence analysis (Greenacre 1984, Theory and Applications of Correspondence Analysis, ch. 4):
 * which rows and columns of a table of counts have like profiles. Coordinates are principal ones for
 * rows and columns alike; distances among rows, or among columns, are chi-square distances.
 *
 * @param counts rows * columns, row by row, none negative.
 */
export function correspondence(
  counts: ArrayLike<number>,
  rows: number,
  columns: number,
): Correspondence | Unavailable {
  const rowTotals = new Float64Array(rows);
  const columnTotals = new Float64Array(columns);
  let total = 0;
  for (let i = 0; i < rows; i++) {
    for (let j = 0; j < columns; j++) {
      const count = counts[i * columns + j];
      if (!(count >= 0)) throw new RangeError(`correspondence: ${count} is no count`);
      rowTotals[i] += count;
      columnTotals[j] += count;
      total += count;
    }
  }
  const keptRows = indicesAbove(rowTotals);
  const keptColumns = indicesAbove(columnTotals);
  if (keptRows.length < 2 || keptColumns.length < 2) {
    return { why: 'the table needs two rows and two columns that are not empty' };
  }
  const rowWeights = Float64Array.from(keptRows, (i) => rowTotals[i] / total);
  const columnWeights = Float64Array.from(keptColumns, (j) => columnTotals[j] / total);
  const table = new Float64Array(keptRows.length * keptColumns.length);
  keptRows.forEach((i, a) => {
    keptColumns.forEach((j, b) => {
      const share = counts[i * columns + j] / total;
      table[a * keptColumns.length + b] = share / (rowWeights[a] * columnWeights[b]) - 1;
    });
  });
  const diagram = dualityDiagram(table, rowWeights, columnWeights);
  if ('why' in diagram) return diagram;
  return { ...diagram, keptRows, keptColumns, total, chiSquare: diagram.totalInertia * total };
}

function indicesAbove(totals: Float64Array): number[] {
  return Array.from(totals, (_, index) => index).filter((index) => totals[index] > 0);
}

/**
 * Places of a row that took no part, by its counts in all columns of the table; counts in columns
 * that are empty in the table say nothing here. Unavailable for an empty row.
 */
export function projectRow(found: Correspondence, counts: ArrayLike<number>): PassivePoint | Unavailable {
  const kept = found.keptColumns.map((j) => counts[j]);
  const sum = kept.reduce((total, count) => total + count, 0);
  if (!(sum > 0)) return { why: 'it has no count in any column of the analysis' };
  return supplementaryRow(
    found,
    kept.map((count, j) => count / sum / found.columns.weights[j] - 1),
  );
}

/** Places of a column that took no part, by its counts in all rows of the table. */
export function projectColumn(found: Correspondence, counts: ArrayLike<number>): PassivePoint | Unavailable {
  const kept = found.keptRows.map((i) => counts[i]);
  const sum = kept.reduce((total, count) => total + count, 0);
  if (!(sum > 0)) return { why: 'it has no count in any row of the analysis' };
  return supplementaryColumn(
    found,
    kept.map((count, i) => count / sum / found.rows.weights[i] - 1),
  );
}
