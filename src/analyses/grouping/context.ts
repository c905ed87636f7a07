import type { Register } from '../../attributes/definition.ts';
import { groupRows } from '../../fragments/groups.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { association } from '../../numerics/tests/contingency.ts';
import type { ContextTally } from './found.ts';

const CONTEXT = ['site', 'region', 'phase', 'period'];

/**
 * Where and when do the groups belong? Each group against site, region, phase and period, as far as they
 * are recorded with two values or more and did not take part in the grouping.
 */
export function contextTallies(
  table: FragmentTable,
  rows: ArrayLike<number>,
  membership: ArrayLike<number>,
  groups: number,
  compared: readonly string[],
  register: Register,
): ContextTally[] {
  const placeOf = new Map(Array.from(rows, (row, place) => [row, place]));
  return CONTEXT.flatMap((id) => {
    const column = table.columns.get(id);
    if (column === undefined || column.kind === 'numeric' || compared.includes(id)) return [];
    const values = groupRows(table, [id], register).groups;
    const counts = Array.from({ length: groups }, () => values.map(() => 0));
    let seen = 0;
    for (const [value, { rows: members }] of values.entries()) {
      for (const row of members) {
        const group = membership[placeOf.get(row) ?? -1] ?? -1;
        if (group < 0) continue;
        counts[group][value]++;
        seen++;
      }
    }
    const used = values.map((_, value) => counts.some((line) => line[value] > 0));
    const kept = counts.map((line) => line.filter((_, value) => used[value]));
    const found = association(kept);
    if ('why' in found) return [];
    const grouped = Array.from(membership).filter((group) => group >= 0).length;
    return [
      {
        attribute: id,
        label: column.attribute.label,
        values: values.filter((_, value) => used[value]).map(({ labels }) => labels[0]),
        counts: kept,
        expected: found.expected,
        residuals: found.residuals,
        cramersV: found.cramersV,
        missing: grouped - seen,
      },
    ];
  });
}
