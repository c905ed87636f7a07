import { isMissing } from '../../fragments/missing.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { type PercentileBounds, percentileBounds } from '../../numerics/percentile.ts';
import type { Unavailable } from '../contract.ts';
import type { LabelAttribute } from './labels.ts';

/** Where one measurement of the find stands among the records of one label. */
export interface Percentile {
  readonly id: string;
  readonly label: string;
  readonly unit: string;
  /** Attribute and label of the group; both empty for all records together. */
  readonly by: string;
  readonly group: string;
  readonly bounds: PercentileBounds | Unavailable;
}

/** Each number of the find among all records and among those of each label, in the attribute's own unit. */
export function percentilesOf(
  records: FragmentTable,
  find: FragmentTable,
  attributes: readonly LabelAttribute[],
): readonly Percentile[] {
  const all = Array.from({ length: records.rows }, (_, row) => row);
  const groups = [
    { by: '', group: '', rows: all as readonly number[] },
    ...attributes.flatMap(({ label, labels }) =>
      labels.map((one) => ({ by: label, group: one.label, rows: one.rows })),
    ),
  ];
  return [...find.columns].flatMap(([id, own]) => {
    const column = records.columns.get(id);
    if (own.kind !== 'numeric' || column?.kind !== 'numeric' || isMissing(own, 0)) return [];
    return groups.map(({ by, group, rows }) => ({
      id,
      label: own.attribute.label,
      unit: own.attribute.unit ?? '',
      by,
      group,
      bounds: percentileBounds(
        own.low[0],
        own.high[0],
        rows.map((row) => column.low[row]),
        rows.map((row) => column.high[row]),
      ),
    }));
  });
}
