import { isOpenEnded, pointOf } from '../../fragments/accessors.ts';
import type { NumericColumn } from '../../fragments/table.ts';
import { mean } from '../../numerics/describing/moments.ts';
import { quantileSorted } from '../../numerics/describing/quantile.ts';
import { intervalDistribution, intervalQuantile } from '../../numerics/describing/turnbull.ts';
import type { Limits } from '../../numerics/foundation/limits.ts';
import { bootstrapInterval, expandedLevel } from '../../numerics/resampling/bootstrap.ts';
import { countedInterval, countedMean, kindsToCount } from '../../numerics/resampling/counted-bootstrap.ts';
import { drawnMedian } from '../../numerics/resampling/resampled-ranks.ts';
import {
  blockedSample,
  blockMembers,
  gatherBlocks,
  sharesBlocks,
} from '../../numerics/tests/blocked-sample.ts';
import { meanLimits } from '../../numerics/tests/mean-limits.ts';
import { fewestForMedian, medianLimits } from '../../numerics/tests/median-limits.ts';
import type { AnalysisInput, Unavailable } from '../contract.ts';
import type { CentreLimits } from './found.ts';
import type { SummaryOptions } from './options.ts';

/** With fewer items drawing again says too little of a mean, and Student's t is used. */
const FEWEST_FOR_DRAWS = 10;

/** Of the values as drawn, and of how often each kind of item comes. */
interface Statistic {
  readonly plain: (drawn: Float64Array) => number;
  readonly ofCounts: (kinds: readonly Float64Array[]) => (times: ArrayLike<number>) => number;
}

function countedBy(
  statistic: (times: ArrayLike<number>) => number,
  counts: Float64Array,
  say: () => void,
  settings: Parameters<typeof countedInterval>[2],
): ReturnType<typeof countedInterval> {
  const said = ([times]: readonly Float64Array[]) => {
    say();
    return statistic(times);
  };
  return countedInterval([counts], said, settings);
}

/**
 * Between which values mean and median plausibly lie. Where each item has one value, the median's limits are those
 * of its order statistics, the mean's those of Student's t for fewer than 10 items; otherwise items are drawn
 * again with all their fragments, very many of them by how often each kind comes. And the median that readings known only as ranges allow, by the estimator of Turnbull 1976.
 */
export function centreLimits(
  input: AnalysisInput,
  column: NumericColumn,
  filled: readonly number[],
  labels: readonly string[],
  options: SummaryOptions,
): CentreLimits {
  const values = filled.map((row) => pointOf(column, row));
  const sample = blockedSample(
    values,
    filled.map((row) => input.records.item[row]),
  );
  const members = blockMembers(sample);
  const open = filled.filter((row) => isOpenEnded(column, row)).length;
  const many = kindsToCount(members);
  const limits = (name: string, { plain, ofCounts }: Statistic): Limits | Unavailable => {
    if (values.length === 0) return { why: 'no value' };
    const say = () => input.onProgress?.(0, 'drawing the finds again');
    const settings = {
      random: input.random.stream(JSON.stringify([column.attribute.id, name, ...labels])),
      resamples: options.resamples,
      level: expandedLevel(options.confidence, sample.count),
    };
    const interval =
      many === null
        ? bootstrapInterval(
            [sample.count],
            ([choice]) => {
              say();
              return plain(gatherBlocks(members, choice));
            },
            settings,
          )
        : countedBy(ofCounts(many.kinds), many.counts, say, settings);
    return 'why' in interval ? interval : around(plain(sample.values), interval);
  };
  const openEnded = { why: `${open} of ${values.length} readings ${open === 1 ? 'is' : 'are'} open-ended` };
  const median: Statistic = {
    plain: (drawn) => quantileSorted(drawn.slice().sort(), 0.5),
    ofCounts: (kinds) => drawnMedian(kinds, 'times'),
  };
  const average: Statistic = {
    plain: (drawn) => mean(drawn) as number,
    ofCounts: countedMean,
  };
  const shared = sharesBlocks(sample);
  const few = sample.count < FEWEST_FOR_DRAWS;
  return {
    n: values.length,
    items: sample.count,
    mean: open > 0 ? openEnded : mean(sample.values),
    meanLimits:
      open > 0
        ? openEnded
        : few && !shared
          ? meanLimits(values, options.confidence)
          : limits('mean', average),
    median: values.length === 0 ? { why: 'no value' } : median.plain(sample.values),
    medianLimits: !shared
      ? medianLimits(values, options.confidence)
      : sample.count < fewestForMedian(options.confidence)
        ? { why: `fewer than ${fewestForMedian(options.confidence)} items allow no limits of a median` }
        : limits('median', median),
    censored: censoredMedian(input, column, filled),
  };
}

function censoredMedian(
  input: AnalysisInput,
  column: NumericColumn,
  filled: readonly number[],
): CentreLimits['censored'] {
  if (filled.every((row) => column.low[row] === column.high[row])) {
    const exact = { why: filled.length === 0 ? 'no value' : 'no reading is a range' };
    return { low: exact, high: exact };
  }
  const found = intervalDistribution(
    filled.map((row) => column.low[row]),
    filled.map((row) => column.high[row]),
    () => input.onProgress?.(0, 'finding the median that ranges allow'),
  );
  if ('why' in found) return { low: found, high: found };
  const { low, high } = intervalQuantile(found, 0.5);
  const closed = (end: number) => (Number.isFinite(end) ? end : { why: 'open-ended' });
  return { low: closed(low), high: closed(high) };
}

/** Limits that hold the value itself and have a width, or none. */
function around(value: number, { low, high }: Limits): Limits | Unavailable {
  const held = { low: Math.min(low, value), high: Math.max(high, value) };
  return held.low < held.high ? held : { why: 'the readings are too coarse to give limits a width' };
}
