import type { FragmentTable } from './table.ts';

/**
 * How many fragments and original objects stand behind some records of an analysis, whose rows are
 * fragments themselves or one row an item.
 */
export function countBehind(
  fragments: FragmentTable,
  records: FragmentTable,
  unit: 'fragment' | 'item',
  rows: ArrayLike<number>,
): { fragments: number; items: number } {
  const items = new Set(Array.from(rows, (row) => records.item[row]));
  if (unit === 'fragment') return { fragments: rows.length, items: items.size };
  const count = fragments.item.reduce((total, item) => total + (items.has(item) ? 1 : 0), 0);
  return { fragments: count, items: items.size };
}
