import { isOpenEnded, pointOf } from '../../fragments/accessors.ts';
import { isMissing } from '../../fragments/missing.ts';
import type { NumericColumn } from '../../fragments/table.ts';
import { mean } from '../../numerics/describing/moments.ts';
import { quantileSorted } from '../../numerics/describing/quantile.ts';
import { intervalDistribution, intervalQuantile } from '../../numerics/describing/turnbull.ts';
import { bootstrapInterval, expandedLevel } from '../../numerics/resampling/bootstrap.ts';
import { blockedSample, blockMembers, gatherBlocks } from '../../numerics/tests/blocked-sample.ts';
import type { AnalysisInput, ResultColumn, ResultTable, TableCell } from '../contract.ts';
import type { Part } from './compute.ts';
import type { SummaryOptions } from './options.ts';

/**
 * Between which values mean and median plausibly lie, items drawn again with all their fragments; and the
 * median that readings known only as ranges allow, by the estimator of Turnbull 1976.
 */
export function limitsTable(
  input: AnalysisInput,
  columns: readonly NumericColumn[],
  parts: readonly Part[],
  heads: readonly ResultColumn[],
  options: SummaryOptions,
): ResultTable {
  return {
    title: 'Limits of mean and median',
    columns: [
      { id: 'attribute', label: 'attribute' },
      { id: 'unit', label: 'unit' },
      ...heads,
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
    rows: columns.flatMap((column) =>
      parts.map(({ labels, rows }) => {
        const filled = rows.filter((row) => !isMissing(column, row));
        return [
          column.attribute.label,
          column.attribute.unit ?? '',
          ...labels,
          ...lineOf(input, column, filled, labels, options),
        ];
      }),
    ),
    briefly: [
      'attribute',
      ...heads.map(({ id }) => id),
      'n',
      'items',
      'mean',
      'meanLow',
      'meanHigh',
      'median',
      'medianLow',
      'medianHigh',
    ],
    note:
      `Limits at ${Number((options.confidence * 100).toPrecision(6))} % by drawing items again (BCa, Efron 1987, widened for few items after Hesterberg 2015; ${options.resamples} draws). ` +
      'Median of ranges: where the estimate of Turnbull 1976 puts the middle of the distribution, readings taken as anything within their ends.',
  };
}

function lineOf(
  input: AnalysisInput,
  column: NumericColumn,
  filled: readonly number[],
  labels: readonly string[],
  options: SummaryOptions,
): TableCell[] {
  const values = filled.map((row) => pointOf(column, row));
  const sample = blockedSample(
    values,
    filled.map((row) => input.records.item[row]),
  );
  const members = blockMembers(sample);
  const open = filled.filter((row) => isOpenEnded(column, row)).length;
  const limits = (name: string, statistic: (drawn: Float64Array) => number): TableCell[] => {
    if (values.length === 0) return Array.from({ length: 3 }, () => ({ why: 'no value' }));
    const interval = bootstrapInterval(
      [sample.count],
      ([choice]) => statistic(gatherBlocks(members, choice)),
      {
        random: input.random.stream(JSON.stringify([column.attribute.id, name, ...labels])),
        resamples: options.resamples,
        level: expandedLevel(options.confidence, sample.count),
      },
    );
    const ends = 'why' in interval ? [interval, interval] : [interval.low, interval.high];
    return [statistic(sample.values), ...ends];
  };
  const openEnded = { why: `${open} of ${values.length} readings ${open === 1 ? 'is' : 'are'} open-ended` };
  return [
    values.length,
    sample.count,
    ...(open > 0 ? [openEnded, openEnded, openEnded] : limits('mean', (drawn) => mean(drawn) as number)),
    ...limits('median', (drawn) => quantileSorted(drawn.slice().sort(), 0.5)),
    ...censoredMedian(column, filled),
  ];
}

function censoredMedian(column: NumericColumn, filled: readonly number[]): TableCell[] {
  if (filled.every((row) => column.low[row] === column.high[row])) {
    const exact = { why: filled.length === 0 ? 'no value' : 'no reading is a range' };
    return [exact, exact];
  }
  const found = intervalDistribution(
    filled.map((row) => column.low[row]),
    filled.map((row) => column.high[row]),
  );
  if ('why' in found) return [found, found];
  const { low, high } = intervalQuantile(found, 0.5);
  return [low, high].map((end) => (Number.isFinite(end) ? end : { why: 'open-ended' }));
}
