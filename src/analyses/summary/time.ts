import { InputError } from '../../errors.ts';
import { pointOf, termAt } from '../../fragments/accessors.ts';
import { termLabel } from '../../fragments/groups.ts';
import { isMissing } from '../../fragments/missing.ts';
import type { NumericColumn, TermColumn } from '../../fragments/table.ts';
import { overlapShares } from '../../numerics/assemblages/time-overlap.ts';
import type { AnalysisInput, ResultColumn, ResultTable, TableCell } from '../contract.ts';
import { YEARS_IN_FILES, yearColumn } from '../years.ts';
import type { Part } from './compute.ts';
import { MOST_BINS, type SummaryOptions } from './options.ts';

/**
 * How much falls into each bin of time when every record is shared out evenly over its span of years: of
 * each kind the weight, of numbers weight and weighted mean.
 *
 * @throws InputError when no source records dates, or the bins are none or too many.
 */
export function timeTable(
  input: AnalysisInput,
  columns: readonly (NumericColumn | TermColumn)[],
  parts: readonly Part[],
  heads: readonly ResultColumn[],
  bins: NonNullable<SummaryOptions['timeBins']>,
): ResultTable {
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
  const lines = (column: NumericColumn | TermColumn, { labels, rows }: Part): TableCell[][] => {
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
      return edges.slice(0, -1).map((from, bin): TableCell[] => {
        const weight = shares.reduce((sum, share) => sum + share[bin], 0);
        return [
          column.attribute.label,
          ...labels,
          kind === null ? '' : termLabel(column.attribute, kind, input.register),
          from,
          edges[bin + 1],
          weight,
          column.kind !== 'numeric'
            ? null
            : weight > 0
              ? own.reduce((sum, row, place) => sum + shares[place][bin] * pointOf(column, row), 0) / weight
              : { why: 'nothing falls here' },
          own.length,
          filled.length - usable.length,
        ];
      });
    });
  };
  return {
    title: 'Over time',
    columns: [
      { id: 'attribute', label: 'attribute' },
      ...heads,
      { id: 'term', label: 'kind' },
      yearColumn('from', 'from'),
      yearColumn('to', 'to'),
      { id: 'weight', label: 'weight' },
      { id: 'mean', label: 'weighted mean' },
      { id: 'n', label: 'n dated' },
      { id: 'undated', label: 'undated' },
    ],
    rows: columns.flatMap((column) => parts.flatMap((part) => lines(column, part))),
    note:
      'Each record counts 1 in all, shared out evenly over its span of years (aoristic weights; Ratcliffe 2000, Crema 2012); what lies outside the bins is not shown. ' +
      `Bins hold their first year and not their last. A peak may be no more than an edge of a period. ${YEARS_IN_FILES}`,
  };
}

function byLevel(column: TermColumn) {
  const place = (kind: string | null) => (kind === null ? -1 : column.levels.indexOf(kind));
  return (a: string | null, b: string | null) => place(a) - place(b);
}
