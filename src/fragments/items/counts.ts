import type { CrossedTable } from '../crossed-table.ts';

/**
 * Counts of the kinds that each item brings, for every row of a crossed table; an item found in two rows
 * counts in each with its records there.
 */
export function itemCounts(
  table: Pick<CrossedTable, 'rows' | 'columns' | 'entries'>,
): readonly (readonly Float64Array[])[] {
  return table.rows.map((_, row) => {
    const items = new Map<string, Float64Array>();
    for (const entry of table.entries) {
      if (entry.row !== row) continue;
      const counts = items.get(entry.item) ?? new Float64Array(table.columns.length);
      counts[entry.column]++;
      items.set(entry.item, counts);
    }
    return [...items.values()];
  });
}
