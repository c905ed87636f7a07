import type { FragmentTable } from '../../fragments/table.ts';

/** Most names or labels that a line lists. */
export const MOST_NAMED = 4;

export function rowsWhere({ rows }: FragmentTable, holds: (row: number) => boolean): readonly number[] {
  return Array.from({ length: rows }, (_, row) => row).filter(holds);
}
