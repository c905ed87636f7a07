import type { ResultColumn, ResultTable, TableCell } from '../contract.ts';
import { YEARS_IN_FILES, yearColumn } from '../years.ts';
import type { MixedCount, RecordedCell, SpanGroup, TimeLine } from './found.ts';

const distinct = (values: readonly string[]) => [...new Set(values)];

/** Attributes down, groups across: what nobody recorded at a place is no finding there. */
export function recordedTable(cells: readonly RecordedCell[], by: string): ResultTable {
  const groups = distinct(cells.map(({ group }) => group));
  const sizeOf = (group: string) => cells.find((cell) => cell.group === group)?.of ?? 0;
  return {
    title: 'What is recorded where',
    columns: [
      { id: 'attribute', label: 'attribute' },
      ...groups.map((group, place) => ({ id: `group${place + 1}`, label: `${group} (${sizeOf(group)})` })),
    ],
    rows: distinct(cells.map(({ label }) => label)).map((label): TableCell[] => [
      label,
      ...groups.map((group) => cells.find((cell) => cell.label === label && cell.group === group)?.n ?? 0),
    ]),
    note: `Records with a value, by ${by.toLowerCase()}; in brackets all records of it. An attribute without a value there was not recorded, or there was nothing of it: the two look alike.`,
  };
}

export function mixturesTable(lines: readonly MixedCount[], heads: readonly ResultColumn[]): ResultTable {
  return {
    title: 'Kinds, mixtures by their parts',
    columns: [
      { id: 'attribute', label: 'attribute' },
      ...heads,
      { id: 'term', label: 'kind' },
      { id: 'alone', label: 'alone' },
      { id: 'inMixtures', label: 'in mixtures' },
      { id: 'n', label: 'in all' },
    ],
    rows: lines.map(({ label, group, term, alone, inMixtures }): TableCell[] => [
      label,
      ...group,
      term,
      alone,
      inMixtures,
      alone + inMixtures,
    ]),
    note: 'A mixture counts once for each of its kinds, so that the lines add up to more than the records; among the kinds it is one of its own.',
  };
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

/** What falls into each bin of time. */
export function timeTable(lines: readonly TimeLine[], heads: readonly ResultColumn[]): ResultTable {
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
    rows: lines.map((line): TableCell[] => [
      line.label,
      ...line.group,
      line.term,
      line.from,
      line.to,
      line.weight,
      line.mean,
      line.dated,
      line.undated,
    ]),
    note:
      'Each record counts 1 in all, shared out evenly over its span of years (aoristic weights; Ratcliffe 2000, Crema 2012); what lies outside the bins is not shown. ' +
      `Bins hold their first year and not their last. A peak may be no more than an edge of a period. ${YEARS_IN_FILES}`,
  };
}
