import {
  exactly,
  minus,
  over,
  overlap,
  type PrintHabit,
  plus,
  type Range,
  root,
  scaled,
  size,
  square,
  times,
} from '../../../../numerics/printed/range.ts';
import type { FigureCheck } from '../../found.ts';
import { checkByRange, named, printRangeText, rangeOfFigure, wholeOf } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { Quantity } from '../../reading/terms.ts';
import { collect, type Evidence, only, type Sample } from '../evidence.ts';
import { intervalOfMean } from './interval-of-mean.ts';

/** Differences, ratios, t and confidence intervals against the means, deviations and numbers of their set. */
export function checkMeans(evidence: Evidence): FigureCheck[] {
  const samplesOf = collect(evidence.samples, ({ figures }) => figures[0].set);
  return [
    ...[...evidence.sets].flatMap(([name, set]) => {
      const samples = samplesOf.get(name) ?? [];
      return [...comparisons(set, samples), ...tFromMeans(set, samples)];
    }),
    ...evidence.samples.flatMap(intervalOfMean),
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
  checks.push(...aboutDifference(set, means));
  if (difference !== undefined) checks.push(said(difference, 'less', minus));
  if (ratio !== undefined) checks.push(said(ratio, 'over', over));
  return checks;
}

/** Two means in one text with an interval of their difference, which lies about it; other intervals need not. */
function aboutDifference(set: readonly PrintedFigure[], [a, b]: readonly PrintedFigure[]): FigureCheck[] {
  const [low, high] = (['low', 'high'] as const).map((end) =>
    only(set.filter(({ quantity, method, line }) => quantity === end && method === null && line === a.line)),
  );
  if (low === undefined || high === undefined || a.line !== b.line) return [];
  const middle = scaled(plus(rangeOfFigure(low, 'any'), rangeOfFigure(high, 'any')), 0.5);
  const difference = minus(rangeOfFigure(a, 'any'), rangeOfFigure(b, 'any'));
  const about = overlap(size(middle), size(difference));
  return [
    {
      figure: low.id,
      name: 'interval of a difference of means',
      from: 'print',
      outcome: about ? 'agrees' : 'differs',
      working: `${named(a)} less ${named(b)} is ${printRangeText(difference, a)}; the interval's middle is ${printRangeText(middle, a)}.`,
      ...(about ? {} : { resolve: 'Look up both means and both ends of the interval.' }),
      with: [high.id, a.id, b.id],
    },
  ];
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
