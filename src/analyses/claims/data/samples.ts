import { mean, standardDeviation } from '../../../numerics/describing/moments.ts';
import { quantile } from '../../../numerics/describing/quantile.ts';
import { greatest, least as leastOf } from '../../../numerics/foundation/lists.ts';
import { isUnavailable } from '../../../numerics/foundation/unavailable.ts';
import type { Unavailable } from '../../contract.ts';
import type { Way } from '../conventions/way.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import type { Quantity } from '../reading/terms.ts';
import { lacking } from './lacking.ts';
import { basisOf, type Departure, type Recomputed } from './recomputed.ts';
import { twoSamples } from './two-samples.ts';
import { rowsOf, type Values, type View, valuesOf } from './values.ts';

/** A statistic of the readings of one sample. */
export function ofReadings(
  figure: PrintedFigure,
  view: View,
  departure: Departure,
): Recomputed | Unavailable {
  const [attribute] = figure.attributes;
  if (attribute === undefined) return lacking(figure, 'measure');
  const rows = rowsOf(view, figure.select);
  const values = valuesOf(view, attribute, rows);
  if ('why' in values) return values;
  const n = values.points.length;
  if (n === 0) return { why: 'no selected record has a reading' };
  const open = values.openEnded;
  if (open > 0 && NEEDS_CLOSED.has(figure.quantity))
    return { why: `${open} of ${n} readings ${open === 1 ? 'is' : 'are'} open-ended` };
  const found = figure.vague
    ? [
        ...describe('sd', values, departure, 'standard deviation'),
        ...describe('se', values, departure, 'standard error'),
      ]
    : describe(figure.quantity, values, departure);
  return found.length === 0
    ? { why: `${n} readings are too few for it` }
    : { ways: found, basis: basisOf(view, n, values.missing) };
}

const NEEDS_CLOSED: ReadonlySet<Quantity> = new Set(['mean', 'sd', 'se', 'cv', 'range', 'total']);

/** One statistic of a sample, by the ordinary functions. */
export function describe(
  quantity: Quantity,
  { points, low, high }: Pick<Values, 'points' | 'low' | 'high'>,
  { divisor, quantileType = 7 }: Departure = {},
  name: string = quantity,
): Way[] {
  const n = points.length;
  const average = mean(points);
  const deviation = standardDeviation(points);
  const sd =
    typeof deviation === 'number' && divisor === 'n' ? deviation * Math.sqrt((n - 1) / n) : deviation;
  const one = (value: number | Unavailable, said = name): Way[] =>
    isUnavailable(value) || !Number.isFinite(value) ? [] : [{ said, value }];
  const [least, most] = [leastOf(low), greatest(high)];
  const [leastPoint, mostPoint] = [leastOf(points), greatest(points)];
  switch (quantity) {
    case 'mean':
      return one(average);
    case 'total':
      return isUnavailable(average) ? [] : one(average * n);
    case 'median':
      return one(quantile(points, 0.5, quantileType));
    case 'q1':
      return one(quantile(points, 0.25, quantileType));
    case 'q3':
      return one(quantile(points, 0.75, quantileType));
    case 'iqr': {
      const [lower, upper] = [quantile(points, 0.25, quantileType), quantile(points, 0.75, quantileType)];
      return isUnavailable(lower) || isUnavailable(upper) ? [] : one(upper - lower);
    }
    case 'sd':
      return one(sd);
    case 'se':
      return isUnavailable(sd) ? [] : one(sd / Math.sqrt(n));
    case 'cv':
      return isUnavailable(sd) || isUnavailable(average) ? [] : one(sd / average);
    case 'min':
      return [...one(leastPoint), ...(least === leastPoint ? [] : one(least, 'lower end of a range'))];
    case 'max':
      return [...one(mostPoint), ...(most === mostPoint ? [] : one(most, 'upper end of a range'))];
    case 'range':
      return [
        ...one(mostPoint - leastPoint),
        ...(least === leastPoint && most === mostPoint ? [] : one(most - least, 'ends of ranges')),
      ];
    default:
      return [];
  }
}

/** Difference or ratio of two means. */
export function ofTwoMeans(figure: PrintedFigure, view: View): Recomputed | Unavailable {
  const samples = twoSamples(figure, view);
  if ('why' in samples) return samples;
  const [a, b] = [mean(samples.a), mean(samples.b)];
  if (isUnavailable(a)) return a;
  if (isUnavailable(b)) return b;
  const value = figure.quantity === 'ratio' ? a / b : a - b;
  return {
    ways: Number.isFinite(value) ? [{ said: 'of the means', value }] : [],
    basis: `${samples.a.length} and ${basisOf(view, samples.b.length)}`,
  };
}
