import type { Register } from '../../attributes/definition.ts';
import type { FragmentTable } from '../table.ts';

/**
 * "derived from Density of system 2 (2 per 5 cm)": the attributes that a value was computed from, with what
 * stands in their cells; null for a value that was recorded.
 */
export function derivedWords(
  table: FragmentTable,
  id: string,
  row: number,
  register: Register,
): string | null {
  const from = derivedFrom(table, id, row);
  if (from === null) return null;
  const named = from.map((one) => {
    const label = register.attributes.get(one)?.label ?? one;
    const raw = table.columns.get(one)?.raw[row]?.trim() ?? '';
    return raw === '' ? label : `${label} (${raw})`;
  });
  return `derived from ${named.join(' and ')}`;
}

/** Ids of the attributes that a value was computed from; null for one that was recorded. */
export function derivedFrom(table: FragmentTable, id: string, row: number): readonly string[] | null {
  const column = table.columns.get(id);
  return column === undefined || column.kind === 'text' ? null : (column.derivedFrom?.get(row) ?? null);
}
