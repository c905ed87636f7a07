import type { Limits } from '../../numerics/foundation/limits.ts';
import type { ResultColumn, ResultTable, TableCell, Unavailable } from '../contract.ts';
import { DATE_UNIT, printLevel } from '../phrasing.ts';
import { levelNote } from '../shared/level/said.ts';
import { pooledTable } from '../shared/pooled/faces.ts';
import { pooledSharesTable } from '../shared/pooled/shares.ts';
import { YEARS_IN_FILES } from '../years.ts';
import type { GroupCounts, NumberStatistic, SummaryFound, TermGroup } from './found.ts';
import { mixturesTable, recordedTable, spansTable, timeTable } from './further-tables.ts';

/** Numbers, their limits, kinds, time: those that have a line. */
export function summaryTables(found: SummaryFound): Readonly<Record<string, ResultTable>> {
  const { numbers, terms, mixed, atLevel, time, spans, recorded, by } = found;
  return {
    ...(numbers.length === 0 ? {} : { numbers: numbersTable(found) }),
    ...(numbers.every(({ limits }) => limits === null) ? {} : { limits: limitsTable(found) }),
    ...(terms.length === 0 ? {} : { kinds: kindsTable(found, terms, 'Kinds', '') }),
    ...(atLevel.length === 0
      ? {}
      : { kindsAtLevel: kindsTable(found, atLevel, 'Kinds, to compare the groups by', levelNotes(found)) }),
    ...(mixed.length === 0 ? {} : { mixtures: mixturesTable(mixed, by) }),
    ...pooledTable(found.pooledMeans, by.map(({ label }) => label).join(' and ')),
    ...pooledSharesTable(found.pooledKinds, by.map(({ label }) => label).join(' and ')),
    ...(time === null ? {} : { time: timeTable(time, by) }),
    ...(spans.length === 0 ? {} : { spans: spansTable(spans, by) }),
    ...(recorded.length === 0
      ? {}
      : { recorded: recordedTable(recorded, by.map(({ label }) => label).join(' and ')) }),
  };
}

const COUNTS: readonly (ResultColumn & { readonly id: keyof GroupCounts })[] = [
  { id: 'n', label: 'n' },
  { id: 'fragments', label: 'fragments' },
  { id: 'items', label: 'items' },
  { id: 'missing', label: 'missing' },
  { id: 'notObserved', label: 'not observed' },
  { id: 'notApplicable', label: 'not applicable' },
  { id: 'absent', label: 'absent' },
];

const STATISTICS: readonly (ResultColumn & { readonly id: NumberStatistic })[] = [
  { id: 'approximate', label: 'approximate readings' },
  { id: 'openEnded', label: 'open-ended readings' },
  { id: 'mean', label: 'mean' },
  { id: 'sd', label: 'standard deviation' },
  { id: 'median', label: 'median' },
  { id: 'q1', label: 'lower quartile' },
  { id: 'q3', label: 'upper quartile' },
  { id: 'mad', label: 'median absolute deviation, unscaled' },
  { id: 'min', label: 'smallest' },
  { id: 'max', label: 'largest' },
  { id: 'range', label: 'range' },
  { id: 'cv', label: 'coefficient of variation' },
  { id: 'skewness', label: 'skewness G1' },
  { id: 'medianLow', label: 'median at least' },
  { id: 'medianHigh', label: 'median at most' },
  { id: 'q1Low', label: 'lower quartile at least' },
  { id: 'q1High', label: 'lower quartile at most' },
  { id: 'q3Low', label: 'upper quartile at least' },
  { id: 'q3High', label: 'upper quartile at most' },
];

const countCells = (counts: GroupCounts): TableCell[] => COUNTS.map(({ id }) => counts[id]);

const ends = (limits: Limits | Unavailable): TableCell[] =>
  'why' in limits ? [limits, limits] : [limits.low, limits.high];

function numbersTable({ numbers, by }: SummaryFound): ResultTable {
  return {
    title: 'Numbers',
    columns: [
      { id: 'attribute', label: 'attribute' },
      { id: 'unit', label: 'unit' },
      ...by,
      ...COUNTS,
      ...STATISTICS,
    ],
    rows: numbers.map((one): TableCell[] => [
      one.label,
      one.unit,
      ...one.group,
      ...countCells(one.counts),
      ...STATISTICS.map(({ id }) => one.statistics[id]),
    ]),
    briefly: [
      'attribute',
      'unit',
      ...by.map(({ id }) => id),
      ...['n', 'missing', 'median', 'q1', 'q3', 'mean', 'sd', 'min', 'max'],
    ],
    note:
      'Quartiles are type 7 (Hyndman & Fan 1996). "At least" and "at most" are the bounds that interval, ' +
      'approximate and open-ended readings allow; a point value takes the middle of an interval.' +
      (numbers.some(({ unit }) => unit === DATE_UNIT) ? ` ${YEARS_IN_FILES}` : ''),
  };
}

function limitsTable({ numbers, by, options }: SummaryFound): ResultTable {
  return {
    title: 'Limits of mean and median',
    columns: [
      { id: 'attribute', label: 'attribute' },
      { id: 'unit', label: 'unit' },
      ...by,
      { id: 'n', label: 'n' },
      { id: 'items', label: 'items' },
      { id: 'mean', label: 'mean' },
      { id: 'meanLow', label: 'mean, low limit' },
      { id: 'meanHigh', label: 'mean, high limit' },
      { id: 'median', label: 'median' },
      { id: 'medianLow', label: 'median, low limit' },
      { id: 'medianHigh', label: 'median, high limit' },
      { id: 'censoredLow', label: 'median of ranges, from' },
      { id: 'censoredHigh', label: 'median of ranges, to' },
    ],
    rows: numbers.flatMap(({ label, unit, group, limits }): TableCell[][] =>
      limits === null
        ? []
        : [
            [
              label,
              unit,
              ...group,
              limits.n,
              limits.items,
              limits.mean,
              ...ends(limits.meanLimits),
              limits.median,
              ...ends(limits.medianLimits),
              limits.censored.low,
              limits.censored.high,
            ],
          ],
    ),
    briefly: [
      'attribute',
      ...by.map(({ id }) => id),
      ...['n', 'items', 'mean', 'meanLow', 'meanHigh', 'median', 'medianLow', 'medianHigh'],
    ],
    note:
      `Limits at ${printLevel(options.confidence)}. Of the median: order statistics (Hettmansperger & Sheather 1986); of the mean: Student’s t below 10 items; else, and for items of several fragments, ` +
      `by drawing items again (BCa, Efron 1987, widened for few items after Hesterberg 2015; ${options.resamples} draws). ` +
      'Median of ranges: where the estimate of Turnbull 1976 puts the middle of the distribution, readings taken as anything within their ends.',
  };
}

const SHARE_LIMITS = {
  wilson: 'score limits (Wilson 1927)',
  exact: 'exact binomial limits (Clopper & Pearson 1934)',
  jeffreys: 'Jeffreys limits (Brown, Cai & DasGupta 2001)',
} as const;

/** At which level each attribute was counted, where that is other than as recorded. */
function levelNotes({ levels, terms, unit }: SummaryFound): string {
  return [...levels]
    .map(([id, level]) => {
      const label = terms.find(({ attribute }) => attribute === id)?.label ?? id;
      return level.differs ? ` ${label}:${levelNote(level, unit)}` : '';
    })
    .join('');
}

function kindsTable(
  { by, options }: SummaryFound,
  terms: readonly TermGroup[],
  title: string,
  more: string,
): ResultTable {
  return {
    title,
    columns: [
      { id: 'attribute', label: 'attribute' },
      ...by,
      { id: 'term', label: 'kind' },
      { id: 'count', label: 'count' },
      { id: 'share', label: 'share' },
      { id: 'low', label: 'share at least' },
      { id: 'high', label: 'share at most' },
      { id: 'couldBe', label: 'more broadly named, could be' },
      { id: 'least', label: 'least share' },
      { id: 'greatest', label: 'greatest share' },
      ...COUNTS,
    ],
    rows: terms.flatMap(({ label, group, counted, counts }) =>
      counted.map(({ term, count, share, limits, couldBe, bounds }): TableCell[] => [
        label,
        ...group,
        term,
        count,
        share,
        ...ends(limits),
        couldBe,
        bounds.low,
        bounds.high,
        ...countCells(counts),
      ]),
    ),
    briefly: [
      'attribute',
      ...by.map(({ id }) => id),
      'term',
      'count',
      'n',
      'share',
      'low',
      'high',
      'missing',
    ],
    note: `Shares are of the records counted; their limits are ${SHARE_LIMITS[options.limits]} at ${printLevel(options.confidence)}. Least and greatest: if none, or all, of what is named more broadly were of the kind.${more}`,
  };
}
