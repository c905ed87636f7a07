import { InputError } from '../../errors.ts';
import { pointOf, termAt } from '../../fragments/accessors.ts';
import { termLabel } from '../../fragments/groups.ts';
import { isMissing } from '../../fragments/missing.ts';
import type { NumericColumn, TermColumn } from '../../fragments/table.ts';
import { overlapShares } from '../../numerics/assemblages/time-overlap.ts';
import type { AnalysisInput } from '../contract.ts';
import type { TimeLine } from './found.ts';
import { MOST_BINS, type SummaryOptions } from './options.ts';
import type { Part } from './parts.ts';

/**
 * How much falls into each bin of time when every record is shared out evenly over its span of years: of
 * each kind the weight, of numbers weight and weighted mean.
 *
 * @throws InputError when no source records dates, or the bins are none or too many.
 */
export function timeLines(
  input: AnalysisInput,
  columns: readonly (NumericColumn | TermColumn)[],
  parts: readonly Part[],
  bins: NonNullable<SummaryOptions['timeBins']>,
): readonly TimeLine[] {
  const dates = input.records.columns.get('date');
  if (dates?.kind !== 'numeric') {
    throw new InputError(
      'no source records dates, so nothing can be shared out over time',
      { path: 'timeBins' },
      'map columns to "date", or leave out "timeBins"',
    );
  }
  const count = Math.ceil((bins.to - bins.from) / bins.width);
  if (count < 1 || count > MOST_BINS) {
    throw new InputError(
      `bins of ${bins.width} years from ${bins.from} to ${bins.to} are ${Math.max(0, count)}`,
      { path: 'timeBins' },
      `ask for 1 to ${MOST_BINS} bins`,
    );
  }
  const edges = Array.from({ length: count + 1 }, (_, bin) => bins.from + bin * bins.width);
  const dated = (row: number) => Number.isFinite(dates.low[row]) && Number.isFinite(dates.high[row]);
  const sharesOf = (row: number) => overlapShares(dates.low[row], dates.high[row], edges);
  const lines = (column: NumericColumn | TermColumn, { labels, rows }: Part): TimeLine[] => {
    const filled = rows.filter((row) =>
      column.kind === 'numeric' ? !isMissing(column, row) : termAt(column, row) !== null,
    );
    const usable = filled.filter(dated);
    const kinds =
      column.kind === 'numeric'
        ? [null]
        : [...new Set(usable.map((row) => termAt(column, row)))].sort(byLevel(column));
    return kinds.flatMap((kind) => {
      const own = usable.filter((row) => column.kind === 'numeric' || termAt(column, row) === kind);
      const shares = own.map(sharesOf);
      return edges.slice(0, -1).map((from, bin): TimeLine => {
        const weight = shares.reduce((sum, share) => sum + share[bin], 0);
        return {
          label: column.attribute.label,
          group: labels,
          term: kind === null ? '' : termLabel(column.attribute, kind, input.register),
          from,
          to: edges[bin + 1],
          weight,
          mean:
            column.kind !== 'numeric'
              ? null
              : weight > 0
                ? own.reduce((sum, row, place) => sum + shares[place][bin] * pointOf(column, row), 0) / weight
                : { why: 'nothing falls here' },
          dated: own.length,
          undated: filled.length - usable.length,
        };
      });
    });
  };
  return columns.flatMap((column) => parts.flatMap((part) => lines(column, part)));
}

function byLevel(column: TermColumn) {
  const place = (kind: string | null) => (kind === null ? -1 : column.levels.indexOf(kind));
  return (a: string | null, b: string | null) => place(a) - place(b);
}
