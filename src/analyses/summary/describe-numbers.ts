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
import type { ResultColumn, TableCell } from '../contract.ts';

/** Below this many values a standard deviation is not given: it would say no more than the values do. */
const FEWEST_FOR_SPREAD = 3;

/** Columns that describe numbers, in the order of `describeNumbers`. */
export function numberColumns(): ResultColumn[] {
  return [
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
}

/**
 * Centre and spread of the rows given, all of which must hold a reading. Mean, standard deviation,
 * coefficient of variation and skewness use midpoints, and are not given where a reading is
 * open-ended, since any value could stand there. Median and quartiles (type 7) take an open-ended
 * reading at its known end and stand beside the bounds that the intervals allow.
 */
export function describeNumbers(column: NumericColumn, rows: readonly number[]): TableCell[] {
  const points = Float64Array.from(rows, (row) => pointOf(column, row));
  const low = Float64Array.from(rows, (row) => column.low[row]);
  const high = Float64Array.from(rows, (row) => column.high[row]);
  const open = rows.filter((row) => isOpenEnded(column, row)).length;
  const approximate = rows.filter((row) => column.state[row] === APPROXIMATE).length;
  const closed = (statistic: () => number | Unavailable): TableCell =>
    open === 0
      ? statistic()
      : { why: `${open} of ${rows.length} readings ${open === 1 ? 'is' : 'are'} open-ended` };
  const spread = (statistic: () => number | Unavailable): TableCell =>
    rows.length < FEWEST_FOR_SPREAD
      ? { why: `not given for fewer than ${FEWEST_FOR_SPREAD} values` }
      : closed(statistic);
  const median = quantile(points, 0.5);
  const bounds = [0.5, 0.25, 0.75].flatMap((share): TableCell[] => {
    const found = quantileBounds(low, high, share);
    return 'why' in found ? [found, found] : [found.low, found.high];
  });
  return [
    approximate,
    open,
    closed(() => mean(points)),
    spread(() => standardDeviation(points)),
    median,
    quantile(points, 0.25),
    quantile(points, 0.75),
    typeof median === 'number'
      ? quantile(
          points.map((point) => Math.abs(point - median)),
          0.5,
        )
      : median,
    ...ends(low, high),
    column.attribute.scale === 'ratio'
      ? spread(() => coefficientOfVariation(points))
      : { why: 'a coefficient of variation needs a ratio scale' },
    spread(() => skewness(points)),
    ...bounds,
  ];
}

const APPROXIMATE = CELL_STATES.indexOf('approximate');

function ends(low: Float64Array, high: Float64Array): TableCell[] {
  if (low.length === 0) return Array.from({ length: 3 }, () => ({ why: 'no value' }));
  const least = low.reduce((a, b) => Math.min(a, b));
  const greatest = high.reduce((a, b) => Math.max(a, b));
  const open = { why: 'a reading is open-ended' };
  return [
    Number.isFinite(least) ? least : open,
    Number.isFinite(greatest) ? greatest : open,
    Number.isFinite(greatest - least) ? greatest - least : open,
  ];
}
