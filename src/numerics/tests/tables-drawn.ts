import { logFactorial } from '../foundation/log-factorial.ts';
import type { Random } from '../foundation/random.ts';
import { dealtOut, MANY_THINGS } from '../resampling/drawn-counts.ts';
import { logWeight } from './fixed-margins.ts';

/** Draws log weights of random tables with these margins, as if the row labels were shuffled over the column labels. */
export function tableDrawer(
  rows: readonly number[],
  columns: readonly number[],
  random: Random,
): () => number {
  const n = rows.reduce((sum, row) => sum + row, 0);
  if (n > MANY_THINGS) return countDrawer(rows, columns, random);
  const unshuffled = Uint32Array.from(rows.flatMap((count, row) => new Array<number>(count).fill(row)));
  const labels = new Uint32Array(n);
  const table = rows.map(() => new Array<number>(columns.length).fill(0));
  return () => {
    labels.set(unshuffled);
    for (const line of table) line.fill(0);
    let last = n;
    for (let column = 0; column < columns.length; column++)
      for (let i = 0; i < columns[column]; i++) {
        const pick = random.integer(last--);
        table[labels[pick]][column]++;
        labels[pick] = labels[last];
      }
    return logWeight(table);
  };
}

/** The same for very many: each column is dealt out of what the rows have left. */
function countDrawer(rows: readonly number[], columns: readonly number[], random: Random): () => number {
  return () => {
    const left = Float64Array.from(rows);
    let sum = 0;
    for (const column of columns) {
      const drawn = dealtOut(left, column, random);
      let part = 0;
      for (let row = 0; row < left.length; row++) {
        part += logFactorial(drawn[row]);
        left[row] -= drawn[row];
      }
      sum += part;
    }
    return -sum;
  };
}
