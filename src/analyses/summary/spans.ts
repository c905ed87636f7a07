import { midpoint } from '../../fragments/accessors.ts';
import { isMissing } from '../../fragments/missing.ts';
import type { NumericColumn } from '../../fragments/table.ts';
import { quantileSorted, sortedValues } from '../../numerics/describing/quantile.ts';
import { DATE_UNIT } from '../phrasing.ts';
import type { SpanGroup } from './found.ts';
import type { Part } from './parts.ts';

/** Attributes of this unit are drawn as spans of time. */
export const isYears = ({ attribute }: NumericColumn) => attribute.unit === DATE_UNIT;

/** When each group dates to, earliest middle first; groups without a closed date last. */
export function spansOf(column: NumericColumn, parts: readonly Part[]): readonly SpanGroup[] {
  const groups = parts.map(({ labels, rows }): SpanGroup => {
    const dated = rows.filter(
      (row) =>
        !isMissing(column, row) && Number.isFinite(column.low[row]) && Number.isFinite(column.high[row]),
    );
    const middles = sortedValues(dated.map((row) => midpoint(column, row)));
    return {
      attribute: column.attribute.id,
      label: column.attribute.label,
      group: labels,
      n: dated.length,
      missing: rows.length - dated.length,
      span:
        dated.length === 0
          ? null
          : {
              from: dated.reduce((least, row) => Math.min(least, column.low[row]), Infinity),
              to: dated.reduce((most, row) => Math.max(most, column.high[row]), -Infinity),
              middle: quantileSorted(middles, 0.5),
            },
    };
  });
  const middleOf = ({ span }: SpanGroup) => span?.middle ?? Number.POSITIVE_INFINITY;
  return groups.sort((a, b) => {
    const [first, second] = [middleOf(a), middleOf(b)];
    return first === second ? (a.span?.from ?? 0) - (b.span?.from ?? 0) : first - second;
  });
}
