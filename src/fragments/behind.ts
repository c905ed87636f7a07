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

/** The same for one pair of tables, ready to be asked often. */
export function countsBehind(
  fragments: FragmentTable,
  records: FragmentTable,
  unit: 'fragment' | 'item',
): (rows: ArrayLike<number>) => { fragments: number; items: number } {
  const numbers = new Map<string, number>();
  const itemOf = Int32Array.from(records.item, (item) => {
    const number = numbers.get(item) ?? numbers.size;
    numbers.set(item, number);
    return number;
  });
  const fragmentsOf = new Int32Array(numbers.size);
  if (unit === 'item') {
    for (const item of fragments.item) {
      const number = numbers.get(item);
      if (number !== undefined) fragmentsOf[number]++;
    }
  }
  const seen = new Uint8Array(numbers.size);
  return (rows) => {
    seen.fill(0);
    let items = 0;
    let behind = 0;
    for (let i = 0; i < rows.length; i++) {
      const number = itemOf[rows[i]];
      if (seen[number] === 1) continue;
      seen[number] = 1;
      items++;
      behind += fragmentsOf[number];
    }
    return { fragments: unit === 'fragment' ? rows.length : behind, items };
  };
}
