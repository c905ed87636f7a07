import type { FragmentTable, NumericColumn } from '../../fragments/table.ts';
import type { MovedCut } from './split-found.ts';

const SHARES = [-0.2, -0.1, -0.05, 0, 0.05, 0.1, 0.2] as const;

/** Moves every cut of an attribute by up to a fifth of itself, both ways, and counts who changes sides. */
export function moveCuts(
  table: FragmentTable,
  rows: ArrayLike<number>,
  cuts: ReadonlyMap<string, readonly number[]>,
): MovedCut[] {
  return [...cuts].flatMap(([id, limits]) => {
    const column = table.columns.get(id);
    if (column?.kind !== 'numeric') return [];
    return limits.flatMap((cut) => SHARES.map((by) => moved(column, rows, id, cut, by)));
  });
}

function moved(
  column: NumericColumn,
  rows: ArrayLike<number>,
  attribute: string,
  cut: number,
  by: number,
): MovedCut {
  const to = cut * (1 + by);
  const side = (row: number, at: number) => (column.low[row] >= at ? 1 : column.high[row] < at ? -1 : 0);
  let changed = 0;
  let undecided = 0;
  let n = 0;
  for (let place = 0; place < rows.length; place++) {
    const row = rows[place];
    if (Number.isNaN(column.low[row])) continue;
    n++;
    const before = side(row, cut);
    const after = side(row, to);
    if (after === 0) undecided++;
    else if (before !== 0 && before !== after) changed++;
  }
  return { attribute, cut, by, to, changed, undecided, n };
}
