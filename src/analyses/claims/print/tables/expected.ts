import { exactly, overlap, total } from '../../../../numerics/printed/range.ts';
import type { FigureCheck } from '../../found.ts';
import { checkByRange, rangeOfFigure, wholeOf } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { PrintedTable } from '../../reading/printed-table.ts';

/** What a printed table derives from its counts: expected counts, and shares that run on from line to line. */
export function checkDerived(table: PrintedTable): FigureCheck[] {
  return [...expectedCounts(table), ...runningShares(table)];
}

/** Row sum times column sum over the sum of all (Pearson 1900). */
function expectedCounts({ figures, cells, rows, columns }: PrintedTable): FigureCheck[] {
  const printed = figures.filter(({ quantity, cell }) => quantity === 'expected' && cell !== null);
  if (printed.length === 0) return [];
  const countRows = rows.flatMap(({ line }, r) => (line === 'part' ? [r] : []));
  const countColumns = columns.flatMap(({ line, role }, c) =>
    line === 'part' && role === 'count' ? [c] : [],
  );
  const at = (r: number, c: number) => cells[r][c].find(({ quantity }) => quantity === 'count');
  const sum = (list: readonly (PrintedFigure | undefined)[]) => {
    const values = list.map((figure) => (figure === undefined ? 0 : wholeOf(figure)));
    return values.some((value) => value === null)
      ? null
      : values.reduce<number>((all, one) => all + (one ?? 0), 0);
  };
  const all = sum(countRows.flatMap((r) => countColumns.map((c) => at(r, c))));
  if (all === null || all === 0) return [];
  return printed.flatMap((figure): FigureCheck[] => {
    const place = figure.cell;
    if (place === null || columns[place.column].line !== 'part') return [];
    const row = rows[place.row].line === 'part' ? place.row : place.row - 1;
    if (!countRows.includes(row)) return [];
    const [across, down] = [
      sum(countColumns.map((c) => at(row, c))),
      sum(countRows.map((r) => at(r, place.column))),
    ];
    if (across === null || down === null) return [];
    return [
      checkByRange(figure, () => exactly((across * down) / all), {
        name: 'expected count',
        working: (found) => `${across} × ${down} / ${all} is ${found}.`,
        resolve: 'Look up the sums of the row and the column.',
        with: [],
        misfit: 'differs',
      }),
    ];
  });
}

/** A column of shares that run on: each line is the one before and its own share, or its counts so far over all. */
function runningShares({ cells, rows, columns }: PrintedTable): FigureCheck[] {
  return columns.flatMap(({ role }, column) => {
    if (role !== 'cumulative') return [];
    const lines = rows.flatMap(({ line }, r) => (line === 'part' && cells[r][column].length > 0 ? [r] : []));
    const count = columns.findIndex((other) => other.role === 'count' || other.role === 'n');
    const counts = count < 0 ? [] : lines.map((r) => wholeOf(cells[r][count][0]));
    const whole = counts.every((one) => one !== null) ? (counts as readonly number[]) : [];
    const all = whole.reduce((sum, one) => sum + one, 0);
    const shares = columns.flatMap((other, c) => (other.role === 'share' ? [c] : []));
    const ways = [
      ...(all === 0
        ? []
        : [
            lines.map(
              (_, i) => () => exactly(whole.slice(0, i + 1).reduce((sum, one) => sum + one, 0) / all),
            ),
          ]),
      ...shares.map((share) =>
        lines.map((_, i) => () => {
          const parts = lines.slice(0, i + 1).flatMap((r) => cells[r][share][0] ?? []);
          return total(parts.map((part) => rangeOfFigure(part, 'any')));
        }),
      ),
    ];
    const fits = ways.map(
      (way) =>
        way.filter((range, i) => overlap(range(), rangeOfFigure(cells[lines[i]][column][0], 'any'))).length,
    );
    const best = fits.indexOf(Math.max(...fits));
    if (best < 0 || fits[best] * 3 < lines.length * 2) return [];
    return lines.map((r, i) =>
      checkByRange(cells[r][column][0], ways[best][i], {
        name: 'running share',
        working: (found) => `The shares up to this line come to ${found}.`,
        resolve: 'Look up the shares up to this line.',
        with: [],
        misfit: 'differs',
      }),
    );
  });
}
