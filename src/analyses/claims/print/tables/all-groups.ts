import {
  exactly,
  over,
  overlap,
  type PrintHabit,
  plus,
  type Range,
  root,
  square,
  times,
  total,
} from '../../../../numerics/printed/range.ts';
import type { FigureCheck } from '../../found.ts';
import { fitOf, printRangeText, rangeOfFigure, TRUNCATED } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';

/** Mean and deviation of all groups together from those of the groups. */

/** Weighted by the numbers of readings, or plain; between the means of the groups in any case. */
export function meanOfMeans(
  mean: PrintedFigure,
  means: readonly PrintedFigure[],
  sizes: readonly number[] | null,
): FigureCheck[] {
  const at = (habit: PrintHabit) => means.map((one) => rangeOfFigure(one, habit));
  const bounds = at('any');
  const inside = {
    low: Math.min(...bounds.map(({ low }) => low)),
    high: Math.max(...bounds.map(({ high }) => high)),
  };
  if (!overlap(inside, rangeOfFigure(mean, 'any')))
    return [
      {
        figure: mean.id,
        name: 'mean of all groups',
        from: 'print',
        outcome: 'cannot be',
        working: `The mean of all lies between the means of the groups, ${printRangeText(inside, mean, 'and')}; printed: ${mean.printed}.`,
        resolve: 'Say which records the line of all takes in.',
        with: means.map(({ id }) => id),
      },
    ];
  if (sizes === null) return [];
  const n = sizes.reduce((one, other) => one + other, 0);
  const weighted = (habit: PrintHabit) =>
    over(total(at(habit).map((one, i) => times(one, exactly(sizes[i])))), exactly(n));
  const plain = (habit: PrintHabit) => over(total(at(habit)), exactly(means.length));
  return [
    weighed(
      mean,
      [
        { said: 'weighted by n', compute: weighted },
        { said: 'the plain mean of the groups', compute: plain },
      ],
      means,
    ),
  ];
}

/** Spread of all: squares within the groups and between their means; or within alone (pooled). */
export function pooled(
  sd: PrintedFigure,
  sds: readonly PrintedFigure[],
  means: readonly PrintedFigure[],
  sizes: readonly number[],
  mean: PrintedFigure | undefined,
): FigureCheck[] {
  const n = sizes.reduce((one, other) => one + other, 0);
  if (n - sizes.length < 1 || sizes.some((size) => size < 1)) return [];
  const within = (habit: PrintHabit, less: number) =>
    total(
      sds.map((one, i) => times(square(rangeOfFigure(one, habit)), exactly(Math.max(0, sizes[i] - less)))),
    );
  const centre = (habit: PrintHabit) => {
    const own = over(
      total(means.map((one, i) => times(rangeOfFigure(one, habit), exactly(sizes[i])))),
      exactly(n),
    );
    return mean === undefined
      ? own
      : {
          low: Math.min(own.low, rangeOfFigure(mean, habit).low),
          high: Math.max(own.high, rangeOfFigure(mean, habit).high),
        };
  };
  const between = (habit: PrintHabit) => {
    const middle = centre(habit);
    return total(
      means.map((one, i) => {
        const range = rangeOfFigure(one, habit);
        return times(
          square({ low: range.low - middle.high, high: range.high - middle.low }),
          exactly(sizes[i]),
        );
      }),
    );
  };
  return [
    weighed(
      sd,
      [
        {
          said: 'within and between the groups',
          compute: (habit) => root(over(plus(within(habit, 1), between(habit)), exactly(n - 1))),
        },
        {
          said: 'over n',
          compute: (habit) => root(over(plus(within(habit, 0), between(habit)), exactly(n))),
        },
        {
          said: 'pooled within the groups',
          compute: (habit) => root(over(within(habit, 1), exactly(n - sizes.length))),
        },
      ],
      [...sds, ...means],
    ),
  ];
}

/** The figure against each way to compute it; the first is the ordinary one. */
export function weighed(
  figure: PrintedFigure,
  ways: readonly { readonly said: string; readonly compute: (habit: PrintHabit) => Range }[],
  rests: readonly PrintedFigure[],
): FigureCheck {
  const found = ways.map((way) => ({ way, fit: fitOf(figure, way.compute) }));
  const best = found.find(({ fit }) => fit === 'agrees') ?? found.find(({ fit }) => fit !== 'no');
  const list = ways
    .map(({ said, compute }) => `${printRangeText(compute('any'), figure)} (${said})`)
    .join(', ');
  return {
    figure: figure.id,
    name: 'line of all groups',
    from: 'print',
    outcome: best === undefined ? 'differs' : best.fit === 'no' ? 'differs' : best.fit,
    ...(best?.fit === 'agrees only if rounded' ? { rounded: TRUNCATED } : {}),
    ...(best !== undefined && best.way !== ways[0] ? { under: best.way.said } : {}),
    working: `From the groups: ${list}; printed: ${figure.printed}.`,
    ...(best === undefined
      ? { resolve: 'Say which records the line of all takes in, and how it was computed.' }
      : {}),
    with: rests.map(({ id }) => id),
  };
}
