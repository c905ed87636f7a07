import type { PrintHabit, Range } from '../../../../numerics/printed/range.ts';
import type { FigureCheck } from '../../found.ts';
import { rangeOfFigure, wholeOf } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { PrintedTable } from '../../reading/printed-table.ts';
import type { Quantity } from '../../reading/terms.ts';
import { finest } from '../evidence.ts';
import { meanOfMeans, pooled, weighed } from './all-groups.ts';

/**
 * The line of all groups in a table of means: its n is the sum, its mean the weighted mean, its deviation that of
 * the groups within and between, its ends those of the groups. Some print the plain mean of the group means.
 */
export function checkTableMeans(table: PrintedTable): FigureCheck[] {
  if (table.kind !== 'samples') return [];
  const totals = table.rows.flatMap(({ line }, r) => (line === 'total' ? [r] : []));
  const parts = table.rows.flatMap(({ line }, r) => (line === 'part' ? [r] : []));
  const [all] = totals;
  if (totals.length !== 1 || parts.length < 2) return [];
  const blocks = blocksOf(table);
  return blocks.flatMap((columns) => {
    const of = (row: number, quantity: Quantity) =>
      finest(
        columns
          .flatMap((column) => table.cells[row][column])
          .filter((figure) => figure.quantity === quantity && !figure.vague),
      );
    return block(
      (quantity) => of(all, quantity),
      parts.map((row) => (quantity: Quantity) => of(row, quantity)),
    );
  });
}

/** Columns of one sample: those under one head; a quantity said again starts the next. */
function blocksOf({ columns }: PrintedTable): number[][] {
  const blocks: number[][] = [];
  let seen = new Set<string>();
  let group = '';
  columns.forEach((column, at) => {
    if (blocks.length === 0 || column.group !== group || seen.has(column.role)) {
      blocks.push([]);
      seen = new Set();
      group = column.group;
    }
    blocks[blocks.length - 1].push(at);
    seen.add(column.role);
  });
  return blocks;
}

type Of = (quantity: Quantity) => PrintedFigure | undefined;

function block(all: Of, parts: readonly Of[]): FigureCheck[] {
  const checks: FigureCheck[] = [];
  const list = (quantity: Quantity) => {
    const found = parts.map((of) => of(quantity));
    return found.some((figure) => figure === undefined) ? null : (found as readonly PrintedFigure[]);
  };
  const ns = list('n');
  const sizes = ns?.map(wholeOf) ?? null;
  const whole = sizes?.every((n) => n !== null) ? (sizes as readonly number[]) : null;
  const n = all('n');
  const nAll = wholeOf(n);
  if (whole !== null && ns !== null && n !== undefined && nAll !== null) {
    const sum = whole.reduce((one, other) => one + other, 0);
    checks.push({
      figure: n.id,
      name: 'total of its parts',
      from: 'print',
      outcome: sum === nAll ? 'agrees' : 'differs',
      working: `${whole.join(' + ')} is ${sum}.`,
      ...(sum === nAll ? {} : { resolve: 'Say which records the line of all takes in.' }),
      with: ns.map(({ id }) => id),
    });
    if (sum !== nAll) return checks;
  }
  const means = list('mean');
  const mean = all('mean');
  if (mean !== undefined && means !== null) checks.push(...meanOfMeans(mean, means, whole));
  const sds = list('sd');
  const sd = all('sd');
  if (sd !== undefined && sds !== null && means !== null && whole !== null)
    checks.push(...pooled(sd, sds, means, whole, mean));
  for (const [quantity, end] of [
    ['min', 'low'],
    ['max', 'high'],
  ] as const) {
    const [figure, ends] = [all(quantity), list(quantity)];
    if (figure === undefined || ends === null) continue;
    const pick = quantity === 'min' ? Math.min : Math.max;
    const compute = (habit: PrintHabit): Range => {
      const ranges = ends.map((one) => rangeOfFigure(one, habit));
      return { low: pick(...ranges.map(({ low }) => low)), high: pick(...ranges.map(({ high }) => high)) };
    };
    checks.push(
      weighed(
        figure,
        [{ said: `the ${end === 'low' ? 'smallest' : 'largest'} of the groups`, compute }],
        ends,
      ),
    );
  }
  return checks;
}
