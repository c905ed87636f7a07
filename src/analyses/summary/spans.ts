import { midpoint } from '../../fragments/accessors.ts';
import { isMissing } from '../../fragments/missing.ts';
import type { NumericColumn } from '../../fragments/table.ts';
import { quantileSorted, sortedValues } from '../../numerics/describing/quantile.ts';
import type { Figure, ResultColumn, ResultTable, TableCell } from '../contract.ts';
import { axis, escapeText, figureLayout, GROUND, kindStyle } from '../figure-style.ts';
import { DATE_UNIT, printCount, printYear } from '../phrasing.ts';
import { YEARS_IN_FILES, yearAxis, yearColumn } from '../years.ts';
import type { Part } from './compute.ts';

/** The years that a group of records spans: hull of their dates, and the median of their middles. */
export interface SpanGroup {
  readonly attribute: string;
  readonly label: string;
  readonly group: readonly string[];
  readonly n: number;
  readonly missing: number;
  readonly span: { readonly from: number; readonly to: number; readonly middle: number } | null;
}

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
              from: Math.min(...dated.map((row) => column.low[row])),
              to: Math.max(...dated.map((row) => column.high[row])),
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

export function spansTable(groups: readonly SpanGroup[], heads: readonly ResultColumn[]): ResultTable {
  const undated = { why: 'not dated' };
  return {
    title: 'Spans of time',
    columns: [
      ...heads,
      yearColumn('from', 'from'),
      yearColumn('to', 'to'),
      yearColumn('middle', 'median of the middles'),
      { id: 'n', label: 'n dated' },
      { id: 'missing', label: 'undated' },
    ],
    rows: groups.map(({ group, span, n, missing }): TableCell[] => [
      ...group,
      ...(span === null ? [undated, undated, undated] : [span.from, span.to, span.middle]),
      n,
      missing,
    ]),
    note: `The hull of the dates of the records, earliest middle first. ${YEARS_IN_FILES}`,
  };
}

/** A bar a group from its first to its last year, earliest above. */
export function spansFigure(groups: readonly SpanGroup[], unit: 'fragment' | 'item', by: string): Figure {
  const dated = groups.flatMap((group) => (group.span === null ? [] : [{ ...group, span: group.span }]));
  const name = ({ group, n }: SpanGroup) =>
    escapeText(`${group.length === 0 ? `all ${unit}s` : group.join(', ')} (${n})`);
  const missing = groups.reduce((sum, group) => sum + group.missing, 0);
  return {
    data: [
      {
        type: 'bar',
        orientation: 'h',
        showlegend: false,
        y: dated.map(name),
        base: dated.map(({ span }) => span.from),
        x: dated.map(({ span }) => span.to - span.from),
        marker: { color: kindStyle(3).colour, line: { color: GROUND.ink, width: 1 } },
        text: dated.map(({ span }) => `${printYear(span.from)} to ${printYear(span.to)}`),
        textposition: 'none',
        hovertemplate: '%{text}<extra>%{y}</extra>',
      },
      {
        type: 'scatter',
        mode: 'markers',
        showlegend: false,
        y: dated.map(name),
        x: dated.map(({ span }) => span.middle),
        marker: { symbol: 'line-ns', size: 16, line: { color: GROUND.ink, width: 2 } },
        text: dated.map(({ span }) => printYear(span.middle)),
        hovertemplate: 'middle %{text}<extra>%{y}</extra>',
      },
    ],
    layout: figureLayout({
      x: yearAxis(
        'date',
        dated.flatMap(({ span }) => [span.from, span.to]),
      ),
      y: axis(by, { autorange: 'reversed', type: 'category' }),
      height: 120 + 32 * Math.max(dated.length, 2),
      more: { bargap: 0.5 },
    }),
    caption:
      `When each dates to: bars from the first to the last year of the ${unit}s of each (hull of their dates), upright line: median of their middles; ` +
      `earliest above; in brackets ${unit}s dated. ${printCount(missing, unit)} without a closed date left out.`,
  };
}
