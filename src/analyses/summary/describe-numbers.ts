import { CELL_STATES } from '../../cells/reading.ts';
import { isOpenEnded, pointOf } from '../../fragments/accessors.ts';
import type { NumericColumn } from '../../fragments/table.ts';
import {
  coefficientOfVariation,
  mean,
  skewness,
  standardDeviation,
} from '../../numerics/describing/moments.ts';
import { quantile } from '../../numerics/describing/quantile.ts';
import { quantileBounds } from '../../numerics/describing/quantile-bounds.ts';
import type { Unavailable } from '../../numerics/foundation/unavailable.ts';
import type { NumberStatistic } from './found.ts';

/** Below this many values a standard deviation is not given: it would say no more than the values do. */
const FEWEST_FOR_SPREAD = 3;

/**
 * Centre and spread of the rows given, all of which must hold a reading. Mean, standard deviation,
 * coefficient of variation and skewness use midpoints, and are not given where a reading is
 * open-ended, since any value could stand there. Median and quartiles (type 7) take an open-ended
 * reading at its known end and stand beside the bounds that the intervals allow.
 */
export function describeNumbers(
  column: NumericColumn,
  rows: readonly number[],
): Readonly<Record<NumberStatistic, number | Unavailable>> {
  const points = Float64Array.from(rows, (row) => pointOf(column, row));
  const low = Float64Array.from(rows, (row) => column.low[row]);
  const high = Float64Array.from(rows, (row) => column.high[row]);
  const open = rows.filter((row) => isOpenEnded(column, row)).length;
  const approximate = rows.filter((row) => column.state[row] === APPROXIMATE).length;
  const closed = (statistic: () => number | Unavailable): number | Unavailable =>
    open === 0
      ? statistic()
      : { why: `${open} of ${rows.length} readings ${open === 1 ? 'is' : 'are'} open-ended` };
  const spread = (statistic: () => number | Unavailable): number | Unavailable =>
    rows.length < FEWEST_FOR_SPREAD
      ? { why: `not given for fewer than ${FEWEST_FOR_SPREAD} values` }
      : closed(statistic);
  const median = quantile(points, 0.5);
  const bounds = (share: number) => {
    const found = quantileBounds(low, high, share);
    return 'why' in found ? { low: found, high: found } : found;
  };
  const [middle, lower, upper] = [0.5, 0.25, 0.75].map(bounds);
  return {
    approximate,
    openEnded: open,
    mean: closed(() => mean(points)),
    sd: spread(() => standardDeviation(points)),
    median,
    q1: quantile(points, 0.25),
    q3: quantile(points, 0.75),
    mad:
      typeof median === 'number'
        ? quantile(
            points.map((point) => Math.abs(point - median)),
            0.5,
          )
        : median,
    ...ends(low, high),
    cv:
      column.attribute.scale === 'ratio'
        ? spread(() => coefficientOfVariation(points))
        : { why: 'a coefficient of variation needs a ratio scale' },
    skewness: spread(() => skewness(points)),
    medianLow: middle.low,
    medianHigh: middle.high,
    q1Low: lower.low,
    q1High: lower.high,
    q3Low: upper.low,
    q3High: upper.high,
  };
}

const APPROXIMATE = CELL_STATES.indexOf('approximate');

function ends(
  low: Float64Array,
  high: Float64Array,
): Readonly<Record<'min' | 'max' | 'range', number | Unavailable>> {
  if (low.length === 0) {
    const why = { why: 'no value' };
    return { min: why, max: why, range: why };
  }
  const least = low.reduce((a, b) => Math.min(a, b));
  const greatest = high.reduce((a, b) => Math.max(a, b));
  const open = { why: 'a reading is open-ended' };
  return {
    min: Number.isFinite(least) ? least : open,
    max: Number.isFinite(greatest) ? greatest : open,
    range: Number.isFinite(greatest - least) ? greatest - least : open,
  };
}
