import { normalQuantileUpper, studentQuantileUpper } from '../../../../numerics/foundation/distributions.ts';
import {
  exactly,
  over,
  overlap,
  type PrintHabit,
  plus,
  type Range,
  root,
  scaled,
  times,
} from '../../../../numerics/printed/range.ts';
import type { FigureCheck } from '../../found.ts';
import { named, printRangeText, rangeOfFigure, wholeOf } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { Sample } from '../evidence.ts';

/** A mean in the middle of an interval that is printed with it, without its error. Limits of other kinds lie otherwise. */
function aboutMean(mean: PrintedFigure, low: PrintedFigure, high: PrintedFigure): FigureCheck[] {
  if (mean.line !== low.line || low.method !== null) return [];
  const [from, to] = [rangeOfFigure(low, 'any'), rangeOfFigure(high, 'any')];
  const middle = scaled(plus(from, to), 0.5);
  const value = rangeOfFigure(mean, 'any');
  const about = overlap(middle, value);
  const inside = overlap(value, { low: from.low, high: to.high });
  return [
    {
      figure: low.id,
      name: 'mean within its interval',
      from: 'print',
      outcome: about ? 'agrees' : inside ? 'passes' : 'differs',
      working: `The interval's middle is ${printRangeText(middle, mean)}; ${named(mean)}.${about || !inside ? '' : ' Limits of logarithms or by resampling may lie so.'}`,
      ...(inside ? {} : { resolve: 'State what the interval is of.' }),
      with: [high.id, mean.id],
    },
  ];
}

const LEVELS = [0.95, 0.9, 0.99, 0.68] as const;

/**
 * Ends of an interval for a mean: mean -+ t se at one of the usual levels, or with the normal quantile.
 * Other intervals exist (ranks, resampling), so a misfit only differs.
 */
export function intervalOfMean(sample: Sample): FigureCheck[] {
  const [mean, low, high] = [sample.one('mean'), sample.one('low'), sample.one('high')];
  if (low === undefined || high === undefined) return [];
  if (rangeOfFigure(low, 'any').low > rangeOfFigure(high, 'any').high)
    return [
      {
        figure: low.id,
        name: 'order of the ends',
        from: 'print',
        outcome: 'cannot be',
        working: `The lower end ${low.printed} is above the upper end ${high.printed}.`,
        resolve: 'Look up the two ends.',
        with: [high.id],
      },
    ];
  if (mean === undefined) return [];
  const n = wholeOf(sample.n);
  const [sd, ownError] = [sample.one('sd'), sample.one('se')];
  if (sd === undefined && ownError === undefined) return aboutMean(mean, low, high);
  if (n === null || n < 2 || sample.n === undefined) return [];
  const error = (habit: PrintHabit): Range =>
    ownError !== undefined
      ? rangeOfFigure(ownError, habit)
      : over(rangeOfFigure(sd as PrintedFigure, habit), root(exactly(n)));
  const size1 = sample.n;
  const ways = LEVELS.flatMap((level) => [
    { said: `${Math.round(100 * level)} % by Student's t`, by: studentQuantileUpper((1 - level) / 2, n - 1) },
    {
      said: `${Math.round(100 * level)} % by the normal distribution`,
      by: normalQuantileUpper((1 - level) / 2),
    },
  ]);
  const endOf = (side: -1 | 1, by: number) => (habit: PrintHabit) =>
    plus(rangeOfFigure(mean, habit), times(error(habit), exactly(side * by)));
  const fits = ways.filter(
    ({ by }) =>
      overlap(endOf(-1, by)('any'), rangeOfFigure(low, 'any')) &&
      overlap(endOf(1, by)('any'), rangeOfFigure(high, 'any')),
  );
  const way = fits[0] ?? ways[0];
  const ofEnd = (side: -1 | 1, figure: PrintedFigure) =>
    ways.find(({ by }) => overlap(endOf(side, by)('any'), rangeOfFigure(figure, 'any')))?.said;
  const [lower, upper] = [ofEnd(-1, low), ofEnd(1, high)];
  const two =
    fits.length === 0 && lower !== undefined && upper !== undefined
      ? { explained: `ends of two levels: the lower at ${lower}, the upper at ${upper}` }
      : {};
  const rests = [mean, ...(ownError !== undefined ? [ownError] : [sd as PrintedFigure]), size1];
  return (
    [
      [low, -1],
      [high, 1],
    ] as const
  ).map(([figure, side]) => ({
    figure: figure.id,
    name: 'interval of the mean',
    from: 'print' as const,
    outcome: fits.length > 0 ? ('agrees' as const) : ('differs' as const),
    working: `${rests.map(named).join(', ')}: the ${side < 0 ? 'lower' : 'upper'} end at ${way.said} is ${printRangeText(endOf(side, way.by)('any'), figure)}; printed: ${figure.values[0].text}.`,
    ...two,
    ...(fits.length > 0 ? {} : { resolve: 'State the confidence and how the interval was made.' }),
    with: rests.map(({ id }) => id),
  }));
}
