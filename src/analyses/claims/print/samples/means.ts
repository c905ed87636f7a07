import { normalQuantileUpper, studentQuantileUpper } from '../../../../numerics/foundation/distributions.ts';
import {
  exactly,
  minus,
  over,
  overlap,
  type PrintHabit,
  plus,
  type Range,
  root,
  size,
  square,
  times,
} from '../../../../numerics/printed/range.ts';
import type { FigureCheck } from '../../found.ts';
import { checkByRange, named, printRangeText, rangeOfFigure, wholeOf } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { Quantity } from '../../reading/terms.ts';
import { collect, type Evidence, only, type Sample } from '../evidence.ts';

/** Differences, ratios, t and confidence intervals against the means, deviations and numbers of their set. */
export function checkMeans(evidence: Evidence): FigureCheck[] {
  const samplesOf = collect(evidence.samples, ({ figures }) => figures[0].set);
  return [
    ...[...evidence.sets].flatMap(([name, set]) => {
      const samples = samplesOf.get(name) ?? [];
      return [...comparisons(set, samples), ...tFromMeans(set, samples)];
    }),
    ...evidence.samples.flatMap(interval),
  ];
}

function withMean(
  samples: readonly Sample[],
): readonly { readonly mean: PrintedFigure; readonly sample: Sample }[] {
  return samples.flatMap((sample) => {
    const mean = sample.one('mean');
    return mean === undefined ? [] : [{ mean, sample }];
  });
}

function comparisons(set: readonly PrintedFigure[], samples: readonly Sample[]): FigureCheck[] {
  const means = withMean(samples).map(({ mean }) => mean);
  if (means.length !== 2) return [];
  const of = (quantity: Quantity) => only(set.filter((figure) => figure.quantity === quantity));
  const [difference, ratio] = [of('difference'), of('ratio')];
  const checks: FigureCheck[] = [];
  // Which mean comes first the set says only through "select"; either order is taken.
  const said = (figure: PrintedFigure, how: string, compute: (a: Range, b: Range) => Range) => {
    const [first, second] = ordered(figure, means);
    const at = (a: PrintedFigure, b: PrintedFigure) => (habit: PrintHabit) =>
      compute(rangeOfFigure(a, habit), rangeOfFigure(b, habit));
    const straight = overlap(at(first, second)('any'), rangeOfFigure(figure, 'any'));
    const turned = overlap(at(second, first)('any'), rangeOfFigure(figure, 'any'));
    const named2 = figure.selectText !== '' && figure.versusText !== '';
    const [a, b] = !straight && turned && !named2 ? [second, first] : [first, second];
    return checkByRange(figure, at(a, b), {
      name: `${figure.quantity} of the means`,
      working: (found) => `${named(a)} ${how} ${named(b)} is ${found}.`,
      resolve: 'Say which mean comes first, and whether the figure is of means or of medians.',
      with: means,
      ...(turned && named2 ? { misfit: 'differs' as const, explained: 'the two groups swapped' } : {}),
    });
  };
  if (difference !== undefined) checks.push(said(difference, 'less', minus));
  if (ratio !== undefined) checks.push(said(ratio, 'over', over));
  return checks;
}

function ordered(
  figure: PrintedFigure,
  [a, b]: readonly PrintedFigure[],
): readonly [PrintedFigure, PrintedFigure] {
  return b.selectText === figure.selectText && a.selectText !== figure.selectText ? [b, a] : [a, b];
}

/** Student's and Welch's t of two printed samples. Pairs would give another t, so a misfit only differs. */
function tFromMeans(set: readonly PrintedFigure[], samples: readonly Sample[]): FigureCheck[] {
  const statistic = only(set.filter(({ quantity, method }) => quantity === 'statistic' && method === 't'));
  const groups = withMean(samples).flatMap(({ mean, sample }) => {
    const [sd, n] = [sample.one('sd'), wholeOf(sample.n)];
    return sd === undefined || n === null || n < 2 || sample.n === undefined
      ? []
      : [{ mean, sd, n, size: sample.n }];
  });
  if (statistic === undefined || groups.length !== 2 || withMean(samples).length !== 2) return [];
  const [a, b] = groups;
  const variance = (group: (typeof groups)[number], habit: PrintHabit) =>
    square(rangeOfFigure(group.sd, habit));
  const difference = (habit: PrintHabit) =>
    size(minus(rangeOfFigure(a.mean, habit), rangeOfFigure(b.mean, habit)));
  const welch = (habit: PrintHabit) =>
    over(
      difference(habit),
      root(plus(over(variance(a, habit), exactly(a.n)), over(variance(b, habit), exactly(b.n)))),
    );
  const student = (habit: PrintHabit) => {
    const pooled = over(
      plus(times(variance(a, habit), exactly(a.n - 1)), times(variance(b, habit), exactly(b.n - 1))),
      exactly(a.n + b.n - 2),
    );
    return over(difference(habit), root(times(pooled, exactly(1 / a.n + 1 / b.n))));
  };
  const printed = size(rangeOfFigure(statistic, 'any'));
  const [fitsStudent, fitsWelch] = [student, welch].map((way) => overlap(way('any'), printed));
  const rests = groups.flatMap((group) => [group.mean, group.sd, group.size]);
  return [
    {
      figure: statistic.id,
      name: 't of the printed samples',
      from: 'print',
      outcome: fitsStudent || fitsWelch ? 'agrees' : 'differs',
      working:
        `${rests.map(named).join(', ')} give t of ${printRangeText(student('any'), statistic)} with pooled variances, ` +
        `${printRangeText(welch('any'), statistic)} by Welch; printed: ${statistic.printed}.`,
      ...(fitsStudent || fitsWelch
        ? {}
        : { resolve: 'State the kind of t test (pooled, Welch, paired) and the records that entered it.' }),
      with: rests.map(({ id }) => id),
    },
  ];
}

const LEVELS = [0.95, 0.9, 0.99, 0.68] as const;

/**
 * Ends of an interval for a mean: mean -+ t se at one of the usual levels, or with the normal quantile.
 * Other intervals exist (ranks, resampling), so a misfit only differs.
 */
function interval(sample: Sample): FigureCheck[] {
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
  if (n === null || n < 2 || sample.n === undefined || (sd === undefined && ownError === undefined))
    return [];
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
