import { InputError } from '../../errors.ts';
import { isOpenEnded, pointOf, termAt } from '../../fragments/accessors.ts';
import { countBehind } from '../../fragments/behind.ts';
import { groupRows, termLabel } from '../../fragments/groups.ts';
import { isMissing } from '../../fragments/missing.ts';
import { requireColumn } from '../../fragments/require-column.ts';
import type { Column, FragmentTable, NumericColumn, TermColumn } from '../../fragments/table.ts';
import { exactShareLimits, jeffreysShareLimits } from '../../numerics/assemblages/shares.ts';
import { quantileSorted, sortedValues } from '../../numerics/describing/quantile.ts';
import { wilsonLimits } from '../../numerics/describing/wilson.ts';
import type { FindingsWithTables } from '../before-answers.ts';
import type { AnalysisInput, ResultColumn, ResultTable, TableCell } from '../contract.ts';
import { YEARS_IN_FILES } from '../years.ts';
import { COUNT_COLUMNS, countCells } from './count.ts';
import { describeNumbers, numberColumns } from './describe-numbers.ts';
import { limitsTable } from './limits.ts';
import type { SummaryOptions } from './options.ts';
import { FEWEST_FOR_MATRIX, type RecordedCell, recordedTable } from './recorded.ts';
import { isYears, type SpanGroup, spansOf, spansTable } from './spans.ts';
import { timeTable } from './time.ts';

/** One group of records, with its values of one numeric attribute; what the figures draw. */
export interface NumberGroup {
  readonly attribute: string;
  readonly label: string;
  readonly unit: string;
  /** Whether ratios matter, so that a logarithmic axis fits. */
  readonly logarithmic: boolean;
  /** Labels of the group, one a grouping attribute; empty for all records together. */
  readonly group: readonly string[];
  readonly points: readonly { readonly id: string; readonly value: number; readonly openEnded: boolean }[];
  /** Lower quartile, median, upper quartile (type 7) of the points; null where there are none. */
  readonly quartiles: readonly [q1: number, median: number, q3: number] | null;
  readonly missing: number;
}

/** One group of records, with its counts of one attribute of kinds. */
export interface TermGroup {
  readonly attribute: string;
  readonly label: string;
  readonly group: readonly string[];
  readonly counts: readonly { readonly term: string; readonly count: number }[];
  readonly n: number;
  readonly missing: number;
}

export interface SummaryFound extends FindingsWithTables {
  readonly unit: 'fragment' | 'item';
  /** Labels of the grouping attributes. */
  readonly by: readonly string[];
  readonly numbers: readonly NumberGroup[];
  readonly terms: readonly TermGroup[];
  /** When the groups date to, for attributes in years. */
  readonly spans: readonly SpanGroup[];
  /** Attribute by group, where several of each are described. */
  readonly recorded: readonly RecordedCell[];
}

export interface Part {
  readonly labels: readonly string[];
  readonly rows: readonly number[];
}

/** Stands for the line that takes all groups together. */
export const ALL = 'all';

/**
 * What is there, and how much of it? Numbers by centre, spread and the bounds that interval readings
 * allow; kinds by counts and shares with score limits; each by none, one or two groupings, gaps
 * counted by their reason. Records without a value of a grouping attribute are set aside and counted.
 *
 * @throws InputError for an attribute that no source records, that is free text, or that cannot group.
 */
export function computeSummary(input: AnalysisInput, options: SummaryOptions): SummaryFound {
  const { records, register } = input;
  const grouping = groupRows(records, options.by, register);
  const parts: Part[] = grouping.groups.map(({ labels, rows }) => ({ labels, rows }));
  const used = parts.flatMap((part) => part.rows).sort((a, b) => a - b);
  if (parts.length > 1) parts.push({ labels: options.by.map(() => ALL), rows: used });
  const columns = options.of.map((id) => describable(requireColumn(records, id, register), id));
  const numeric = columns.filter((column) => column.kind === 'numeric');
  const kinds = columns.filter((column) => column.kind === 'term');
  const heads = options.by.map((id) => ({ id, label: register.attributes.get(id)?.label ?? id }));
  const single = parts.filter(({ labels }) => labels.length === 0 || labels.some((label) => label !== ALL));
  const years = numeric.filter(isYears);
  const spans = years.flatMap((column) => spansOf(column, single));
  const recorded =
    columns.length < FEWEST_FOR_MATRIX || options.by.length === 0
      ? []
      : columns.flatMap((column) =>
          single.map(({ labels, rows }) => ({
            attribute: column.attribute.id,
            label: column.attribute.label,
            group: labels.join(', '),
            n: rows.filter((row) => !isMissing(column, row)).length,
            of: rows.length,
          })),
        );
  const behind = (rows: readonly number[]) => countBehind(input.fragments, records, input.unit, rows);
  return {
    unit: input.unit,
    by: heads.map((head) => head.label),
    n: {
      ...behind(used),
      setAside: grouping.ungrouped.map(({ attribute, rows }) => ({
        reason: `${register.attributes.get(attribute)?.label ?? attribute} not recorded`,
        fragments: behind(rows).fragments,
      })),
    },
    spans,
    recorded,
    tables: {
      ...(numeric.length === 0 ? {} : { numbers: numbersTable(input, numeric, parts, heads) }),
      ...(numeric.length === 0 || options.resamples === 0
        ? {}
        : { limits: limitsTable(input, numeric, parts, heads, options) }),
      ...(kinds.length === 0 ? {} : { kinds: kindsTable(input, kinds, parts, heads, options) }),
      ...(options.timeBins === undefined
        ? {}
        : { time: timeTable(input, columns, parts, heads, options.timeBins) }),
      ...(spans.length === 0 ? {} : { spans: spansTable(spans, heads) }),
      ...(recorded.length === 0
        ? {}
        : { recorded: recordedTable(recorded, heads.map(({ label }) => label).join(' and ')) }),
    },
    numbers: numeric.flatMap((column) => parts.map((part) => numberGroup(records, column, part))),
    terms: kinds.flatMap((column) => parts.map((part) => termGroup(input, column, part))),
  };
}

function describable(column: Column, id: string): NumericColumn | TermColumn {
  if (column.kind !== 'text') return column;
  throw new InputError(
    `"${column.attribute.label}" (${id}) is free text, which has no summary`,
    {},
    'name attributes that are numbers, grades or kinds',
  );
}

function numbersTable(
  input: AnalysisInput,
  columns: readonly NumericColumn[],
  parts: readonly Part[],
  heads: readonly ResultColumn[],
): ResultTable {
  return {
    title: 'Numbers',
    columns: [
      { id: 'attribute', label: 'attribute' },
      { id: 'unit', label: 'unit' },
      ...heads,
      ...COUNT_COLUMNS,
      ...numberColumns(),
    ],
    rows: columns.flatMap((column) =>
      parts.map(({ labels, rows }) => [
        column.attribute.label,
        column.attribute.unit ?? '',
        ...labels,
        ...countCells(input, column, rows),
        ...describeNumbers(
          column,
          rows.filter((row) => !isMissing(column, row)),
        ),
      ]),
    ),
    briefly: [
      'attribute',
      'unit',
      ...heads.map(({ id }) => id),
      ...['n', 'missing', 'median', 'q1', 'q3', 'mean', 'sd', 'min', 'max'],
    ],
    note:
      'Quartiles are type 7 (Hyndman & Fan 1996). "At least" and "at most" are the bounds that interval, ' +
      'approximate and open-ended readings allow; a point value takes the middle of an interval.' +
      (columns.some(isYears) ? ` ${YEARS_IN_FILES}` : ''),
  };
}

function kindsTable(
  input: AnalysisInput,
  columns: readonly TermColumn[],
  parts: readonly Part[],
  heads: readonly ResultColumn[],
  options: SummaryOptions,
): ResultTable {
  return {
    title: 'Kinds',
    columns: [
      { id: 'attribute', label: 'attribute' },
      ...heads,
      { id: 'term', label: 'kind' },
      { id: 'count', label: 'count' },
      { id: 'share', label: 'share' },
      { id: 'low', label: 'share at least' },
      { id: 'high', label: 'share at most' },
      ...COUNT_COLUMNS,
    ],
    rows: columns.flatMap((column) => parts.flatMap((part) => kindLines(input, column, part, options))),
    briefly: [
      'attribute',
      ...heads.map(({ id }) => id),
      'term',
      'count',
      'n',
      'share',
      'low',
      'high',
      'missing',
    ],
    note:
      `Shares are of the records with a value (n); their limits are ${SHARE_LIMITS[options.limits].said} at ` +
      `${Number((options.confidence * 100).toPrecision(6))} %.`,
  };
}

const SHARE_LIMITS = {
  wilson: { limits: wilsonLimits, said: 'score limits (Wilson 1927)' },
  exact: { limits: exactShareLimits, said: 'exact binomial limits (Clopper & Pearson 1934)' },
  jeffreys: { limits: jeffreysShareLimits, said: 'Jeffreys limits (Brown, Cai & DasGupta 2001)' },
} as const;

function kindLines(
  input: AnalysisInput,
  column: TermColumn,
  part: Part,
  options: SummaryOptions,
): TableCell[][] {
  const { counts, n } = termGroup(input, column, part);
  const shared = countCells(input, column, part.rows);
  return counts.map(({ term, count }) => {
    const limits = SHARE_LIMITS[options.limits].limits(count, n, options.confidence);
    const ends = 'why' in limits ? [limits, limits] : [limits.low, limits.high];
    return [column.attribute.label, ...part.labels, term, count, count / n, ...ends, ...shared];
  });
}

function numberGroup(records: FragmentTable, column: NumericColumn, part: Part): NumberGroup {
  const filled = part.rows.filter((row) => !isMissing(column, row));
  return {
    attribute: column.attribute.id,
    label: column.attribute.label,
    unit: column.attribute.unit ?? '',
    logarithmic: column.attribute.transform === 'log',
    group: part.labels,
    points: filled.map((row) => ({
      id: records.id[row],
      value: pointOf(column, row),
      openEnded: isOpenEnded(column, row),
    })),
    quartiles: filled.length === 0 ? null : quartilesOf(filled.map((row) => pointOf(column, row))),
    missing: part.rows.length - filled.length,
  };
}

function quartilesOf(points: readonly number[]): [q1: number, median: number, q3: number] {
  const sorted = sortedValues(points);
  return [quantileSorted(sorted, 0.25), quantileSorted(sorted, 0.5), quantileSorted(sorted, 0.75)];
}

function termGroup(input: AnalysisInput, column: TermColumn, part: Part): TermGroup {
  const tally = new Map<string, number>();
  for (const row of part.rows) {
    const term = termAt(column, row);
    if (term !== null) tally.set(term, (tally.get(term) ?? 0) + 1);
  }
  const n = [...tally.values()].reduce((total, count) => total + count, 0);
  const order = new Map([...column.levels, 'absent'].map((level, place) => [level, place]));
  return {
    attribute: column.attribute.id,
    label: column.attribute.label,
    group: part.labels,
    counts: [...tally]
      .sort(([a], [b]) => (order.get(a) ?? 0) - (order.get(b) ?? 0))
      .map(([term, count]) => ({ term: termLabel(column.attribute, term, input.register), count })),
    n,
    missing: part.rows.length - n,
  };
}
