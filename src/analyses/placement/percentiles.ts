import { isMissing } from '../../fragments/missing.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { type KnownEnds, knownEnds, percentileAmong } from '../../numerics/describing/percentile.ts';
import type { Percentile } from './found.ts';
import type { LabelAttribute } from './labels.ts';

/** The known readings of each attribute and group, put in order when first asked for and kept. */
export type KeptEnds = Map<string, KnownEnds>;

/** Each number of the find among all records and among those of each label, in the attribute's own unit. */
export function percentilesOf(
  records: FragmentTable,
  find: FragmentTable,
  attributes: readonly LabelAttribute[],
  allRows: readonly number[],
  kept: KeptEnds,
): readonly Percentile[] {
  const groups = [
    { by: '', group: '', rows: allRows },
    ...attributes.flatMap(({ label, labels }) =>
      labels.map((one) => ({ by: label, group: one.label, rows: one.rows })),
    ),
  ];
  return [...find.columns].flatMap(([id, own]) => {
    const column = records.columns.get(id);
    if (own.kind !== 'numeric' || column?.kind !== 'numeric' || isMissing(own, 0)) return [];
    const endsOf = (by: string, group: string, rows: readonly number[]) => {
      const key = JSON.stringify([id, by, group]);
      const before = kept.get(key);
      if (before !== undefined) return before;
      const made = knownEnds(
        rows.map((row) => column.low[row]),
        rows.map((row) => column.high[row]),
      );
      kept.set(key, made);
      return made;
    };
    return groups.map(({ by, group, rows }) => ({
      id,
      label: own.attribute.label,
      unit: own.attribute.unit ?? '',
      by,
      group,
      bounds: percentileAmong(own.low[0], own.high[0], endsOf(by, group, rows)),
    }));
  });
}
