import { exactShareLimits, jeffreysShareLimits } from '../../../numerics/assemblages/shares.ts';
import { mean, standardDeviation } from '../../../numerics/describing/moments.ts';
import { quantile } from '../../../numerics/describing/quantile.ts';
import { wilsonLimits } from '../../../numerics/describing/wilson.ts';
import { normalQuantileUpper, studentQuantileUpper } from '../../../numerics/foundation/distributions.ts';
import { isUnavailable } from '../../../numerics/foundation/unavailable.ts';
import type { Unavailable } from '../../contract.ts';
import { diversityWays, similarityWays } from '../conventions/composition.ts';
import type { Way } from '../conventions/way.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import type { Quantity } from '../reading/terms.ts';
import { effectWays } from './effects.ts';
import type { Departure, Recomputed } from './recomputed.ts';
import { testWays } from './tests.ts';
import {
  emptySelection,
  filledRows,
  known,
  rowsOf,
  termsOf,
  type Values,
  type View,
  valuesOf,
} from './values.ts';

/** A figure recomputed from the records. @throws InputError for selections that the data cannot answer. */
export function recompute(
  figure: PrintedFigure,
  view: View,
  departure: Departure = {},
): Recomputed | (Unavailable & { readonly mend?: string }) {
  const labels = [
    [figure.selectText, figure.select],
    [figure.versusText, figure.versus],
  ] as const;
  const label = labels.find(([text, conditions]) => text !== '' && conditions.length === 0);
  if (label !== undefined)
    return { why: `"${label[0]}" is the label of a printed table, not a condition on the data` };
  const empty = emptySelection(view, figure.select) ?? emptySelection(view, figure.versus);
  // None of a known kind is a count like any other.
  const counting = figure.quantity === 'n' || figure.quantity === 'count';
  if (empty !== null && (empty.unknown || !counting)) return { why: empty.why, mend: empty.mend };
  switch (figure.quantity) {
    case 'n':
    case 'count':
      return countOf(figure, view);
    case 'total':
      return figure.attributes.length === 0 ? countOf(figure, view) : ofReadings(figure, view, departure);
    case 'share':
      return shareOf(figure, view);
    case 'reading':
    case 'interval':
      return { why: 'a single reading is one cell of the data; look it up there' };
    case 'difference':
    case 'ratio':
      return ofTwoMeans(figure, view);
    case 'low':
    case 'high':
      if (figure.versus.length > 0) return differenceLimits(figure, view);
      return figure.counted.length > 0 ? shareLimits(figure, view) : meanLimits(figure, view);
    case 'effect':
      return effectWays(figure, view);
    case 'sum-of-squares':
    case 'mean-square':
      return { why: 'a line of an analysis of variance is checked from its own table' };
    case 'correlation':
    case 'statistic':
    case 'df':
    case 'p':
      return testWays(figure, view, departure.place);
    case 'similarity':
    case 'diversity':
      return ofKinds(figure, view);
    default:
      return ofReadings(figure, view, departure);
  }
}

function basisOf(view: View, rows: number, missing = 0, what = 'a reading'): string {
  const noun = rows === 1 ? view.unit : `${view.unit}s`;
  return `${rows} ${noun}${missing > 0 ? `, ${missing} without ${what}` : ''}`;
}

function countOf(figure: PrintedFigure, view: View): Recomputed | Unavailable {
  const { quantity, set, select, counted: kinds, attributes } = figure;
  if (quantity === 'n' && set !== '' && select.length + kinds.length + attributes.length === 0)
    return { why: 'neither an attribute nor a selection says which records are meant' };
  const rows = rowsOf(view, figure.select);
  const [attribute] = figure.attributes;
  const counted =
    figure.counted.length > 0
      ? rowsOf(view, [...figure.select, ...figure.counted])
      : attribute === undefined
        ? rows
        : filledRows(view, attribute, rows);
  const value = view.zeros ? rows.length : counted.length;
  return { ways: [{ said: 'counted', value }], basis: basisOf(view, rows.length) };
}

/** Of the selected records that have a value of what is counted. */
function shareOf(figure: PrintedFigure, view: View): Recomputed | Unavailable {
  if (figure.counted.length === 0)
    return { why: 'a share needs "counted": which of the selected records it counts' };
  const all = rowsOf(view, figure.select);
  const base = view.zeros ? all : rowsOf(view, [...figure.select, ...known(figure.counted)]);
  const counted = rowsOf(view, [...figure.select, ...figure.counted]);
  if (base.length === 0) return { why: 'no record is left to take a share of' };
  return {
    ways: [{ said: `${counted.length}/${base.length}`, value: counted.length / base.length }],
    basis: basisOf(view, base.length, all.length - base.length, 'a record of it'),
  };
}

function ofReadings(figure: PrintedFigure, view: View, departure: Departure): Recomputed | Unavailable {
  const [attribute] = figure.attributes;
  if (attribute === undefined) return { why: 'the attribute is not named' };
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
  const [least, most] = [Math.min(...low), Math.max(...high)];
  const [leastPoint, mostPoint] = [Math.min(...points), Math.max(...points)];
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

function twoSamples(figure: PrintedFigure, view: View): { a: Float64Array; b: Float64Array } | Unavailable {
  const [attribute] = figure.attributes;
  if (attribute === undefined) return { why: 'the attribute is not named' };
  if (figure.versus.length === 0) return { why: 'the other group is not given under "versus"' };
  const [a, b] = [figure.select, figure.versus].map((part) => valuesOf(view, attribute, rowsOf(view, part)));
  if ('why' in a) return a;
  if ('why' in b) return b;
  if (a.points.length === 0 || b.points.length === 0) return { why: 'a group has no reading' };
  return { a: a.points, b: b.points };
}

function ofTwoMeans(figure: PrintedFigure, view: View): Recomputed | Unavailable {
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

const LEVELS = [0.95, 0.9, 0.99] as const;

/** The printed level alone where there is one. */
function levelsOf({ level }: PrintedFigure): readonly number[] {
  return level === null ? LEVELS : [level];
}

/** An interval for a difference: of two means, pooled or after Welch, or of two shares. */
function differenceLimits(figure: PrintedFigure, view: View): Recomputed | Unavailable {
  const side = figure.quantity === 'low' ? -1 : 1;
  if (figure.counted.length > 0) {
    const [a, b] = [figure.select, figure.versus].map((part) => {
      const n = rowsOf(view, [...part, ...known(figure.counted)]).length;
      return { n, share: rowsOf(view, [...part, ...figure.counted]).length / n };
    });
    if (a.n === 0 || b.n === 0) return { why: 'a group has no record' };
    const error = Math.sqrt((a.share * (1 - a.share)) / a.n + (b.share * (1 - b.share)) / b.n);
    const ways = levelsOf(figure).map((level) => ({
      said: `difference of two shares, ${Math.round(100 * level)} %`,
      value: a.share - b.share + side * normalQuantileUpper((1 - level) / 2) * error,
    }));
    return { ways, basis: `${a.n} and ${basisOf(view, b.n)}` };
  }
  const samples = twoSamples(figure, view);
  if ('why' in samples) return samples;
  const { a, b } = samples;
  const [meanA, meanB, sdA, sdB] = [mean(a), mean(b), standardDeviation(a), standardDeviation(b)];
  if (isUnavailable(meanA) || isUnavailable(meanB) || isUnavailable(sdA) || isUnavailable(sdB))
    return { why: 'a group has fewer than two readings' };
  const [v1, v2] = [(sdA * sdA) / a.length, (sdB * sdB) / b.length];
  const df = a.length + b.length - 2;
  const pooled = ((a.length - 1) * sdA * sdA + (b.length - 1) * sdB * sdB) / df;
  const welchDf = ((v1 + v2) * (v1 + v2)) / ((v1 * v1) / (a.length - 1) + (v2 * v2) / (b.length - 1));
  if (v1 + v2 === 0) return { why: 'neither group varies' };
  const ways = levelsOf(figure).flatMap((level) => {
    const tail = (1 - level) / 2;
    const forms = [
      ['Welch', studentQuantileUpper(tail, welchDf), Math.sqrt(v1 + v2)],
      ['pooled variances', studentQuantileUpper(tail, df), Math.sqrt(pooled * (1 / a.length + 1 / b.length))],
      ['normal distribution', normalQuantileUpper(tail), Math.sqrt(v1 + v2)],
    ] as const;
    return forms.flatMap(([said, by, error]) => [
      { said: `${said}, ${Math.round(100 * level)} %`, value: meanA - meanB + side * by * error },
      {
        said: `${said}, ${Math.round(100 * level)} %, the other way round`,
        value: meanB - meanA + side * by * error,
      },
    ]);
  });
  return { ways, basis: `${a.length} and ${basisOf(view, b.length)}` };
}

function shareLimits(figure: PrintedFigure, view: View): Recomputed {
  const base = rowsOf(view, [...figure.select, ...known(figure.counted)]).length;
  const count = rowsOf(view, [...figure.select, ...figure.counted]).length;
  const end = figure.quantity === 'low' ? ('low' as const) : ('high' as const);
  const ways = levelsOf(figure).flatMap((level) => {
    const z = normalQuantileUpper((1 - level) / 2);
    const share = count / base;
    const half = z * Math.sqrt((share * (1 - share)) / base);
    const limits = [
      ['score limits', wilsonLimits(count, base, level)],
      ['exact limits', exactShareLimits(count, base, level)],
      ['Jeffreys limits', jeffreysShareLimits(count, base, level)],
      ['normal approximation', base > 0 ? { low: share - half, high: share + half } : { why: 'no record' }],
    ] as const;
    return limits.flatMap(([said, found]) =>
      'why' in found ? [] : [{ said: `${said}, ${Math.round(100 * level)} %`, value: found[end] }],
    );
  });
  return { ways, basis: `${count} of ${basisOf(view, base)}` };
}

function meanLimits(figure: PrintedFigure, view: View): Recomputed | Unavailable {
  const [attribute] = figure.attributes;
  if (attribute === undefined) return { why: 'the attribute is not named' };
  const values = valuesOf(view, attribute, rowsOf(view, figure.select));
  if ('why' in values) return values;
  const [average, sd] = [mean(values.points), standardDeviation(values.points)];
  if (isUnavailable(average)) return average;
  if (isUnavailable(sd)) return sd;
  const n = values.points.length;
  const side = figure.quantity === 'low' ? -1 : 1;
  const ways = levelsOf(figure).flatMap((level) =>
    [
      ["Student's t", studentQuantileUpper((1 - level) / 2, n - 1)] as const,
      ['normal distribution', normalQuantileUpper((1 - level) / 2)] as const,
    ].map(([said, by]) => ({
      said: `${said}, ${Math.round(100 * level)} %`,
      value: average + (side * by * sd) / Math.sqrt(n),
    })),
  );
  return { ways, basis: basisOf(view, n, values.missing) };
}

function ofKinds(figure: PrintedFigure, view: View): Recomputed | Unavailable {
  const [attribute] = figure.attributes;
  if (attribute === undefined) return { why: 'the attribute is not named' };
  const sides = figure.quantity === 'similarity' ? [figure.select, figure.versus] : [figure.select];
  if (sides.some((part) => part.length === 0)) return { why: 'an assemblage is not selected' };
  const lists = sides.map((part) => termsOf(view, attribute, rowsOf(view, part)));
  const refused = lists.find((list) => 'why' in list);
  if (refused !== undefined) return refused as Unavailable;
  const terms = lists as readonly (readonly (string | null)[])[];
  const kinds = [...new Set(terms.flat())].filter((term) => term !== null);
  const [a, b] = terms.map((list) => kinds.map((kind) => list.filter((term) => term === kind).length));
  const ways = b === undefined ? diversityWays(figure.method, a) : similarityWays(figure.method, a, b);
  const n = (list: readonly number[]) => list.reduce((sum, count) => sum + count, 0);
  return { ways, basis: b === undefined ? basisOf(view, n(a)) : `${n(a)} and ${basisOf(view, n(b))}` };
}
