import type { FragmentTable } from '../fragments/table.ts';
import { type NumberForm, type PlainColumn, plainColumns } from './columns.ts';
import { type Danfo, type DataFrame, loadDanfo } from './danfo.ts';

/**
 * The fragment table as a data frame to look at, filter, join and plot in a notebook.
 *
 * Identifiers stay text ("001"), gaps are NaN in columns of numbers and null in columns of text. Types
 * are given, never guessed from the first rows. See danfo.ts for what must not be computed through a frame.
 *
 * @param numbers `midpoint` (default): one number a reading; `ends`: low and high.
 */
export async function toFrame(table: FragmentTable, numbers: NumberForm = 'midpoint'): Promise<DataFrame> {
  return frameOf(await loadDanfo(), plainColumns(table, numbers), NaN);
}

/** @param gap what stands for a missing number: NaN in a frame, null where an empty cell is wanted. */
export function frameOf(danfo: Danfo, columns: readonly PlainColumn[], gap: number | null): DataFrame {
  const rows = columns[0]?.values.length ?? 0;
  const values = Array.from({ length: rows }, (_, row) =>
    columns.map(({ type, values: cells }) => cells[row] ?? (type === 'number' ? gap : null)),
  );
  return new danfo.DataFrame(values, {
    columns: columns.map(({ name }) => name),
    dtypes: columns.map(({ type }) => (type === 'number' ? 'float32' : 'string')),
  });
}
