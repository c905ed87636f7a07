import {
  exactly,
  minus,
  over,
  overlap,
  type PrintHabit,
  plus,
  type Range,
  root,
  times,
} from '../../../../numerics/printed/range.ts';
import { spreadBounds } from '../../../../numerics/printed/spread-bounds.ts';
import type { FigureCheck } from '../../found.ts';
import { checkByRange, named, printRangeText, rangeOfFigure, wholeOf } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { Quantity } from '../../reading/terms.ts';
import type { Evidence, Sample } from '../evidence.ts';

/** What the figures of one sample allow each other: order, range, spread, error, variation. */
export function checkBounds({ samples }: Evidence): FigureCheck[] {
  return samples.flatMap((sample) => [
    ...order(sample),
    ...range(sample),
    ...quartileRange(sample),
    ...spread(sample),
    ...error(sample),
    ...variation(sample),
    ...apart(sample),
  ]);
}

const ORDER: readonly Quantity[] = ['min', 'q1', 'median', 'q3', 'max'];

/** min <= q1 <= median <= q3 <= max, and the mean between the ends. */
function order(sample: Sample): FigureCheck[] {
  const present = ORDER.map((quantity) => sample.one(quantity)).filter((figure) => figure !== undefined);
  const mean = sample.one('mean');
  const [least, most] = [sample.one('min'), sample.one('max')];
  const pairs = [
    ...present.slice(1).map((upper, i) => [present[i], upper, upper === most ? present[i] : upper] as const),
    ...(mean !== undefined && least !== undefined ? [[least, mean, mean] as const] : []),
    ...(mean !== undefined && most !== undefined ? [[mean, most, mean] as const] : []),
  ];
  return pairs.map(([lower, upper, judged]) => {
    const holds = rangeOfFigure(lower, 'any').low <= rangeOfFigure(upper, 'any').high;
    const other = judged === upper ? lower : upper;
    return {
      figure: judged.id,
      name: 'order',
      from: 'print',
      outcome: holds ? 'passes' : 'cannot be',
      working: holds
        ? `${named(lower)} is not above ${named(upper)}.`
        : `${named(lower)} is above ${named(upper)}, though the ${lower.quantity} of a sample cannot exceed its ${upper.quantity}.`,
      ...(holds
        ? {}
        : { resolve: `Look up the ${lower.quantity} and the ${upper.quantity} of this sample.` }),
      with: [other.id],
    };
  });
}

function range(sample: Sample): FigureCheck[] {
  const [least, most, figure] = [sample.one('min'), sample.one('max'), sample.one('range')];
  if (least === undefined || most === undefined || figure === undefined) return [];
  return [
    checkByRange(figure, (habit) => minus(rangeOfFigure(most, habit), rangeOfFigure(least, habit)), {
      name: 'range from its ends',
      working: (found) => `${named(most)} less ${named(least)} is ${found}.`,
      resolve: 'Look up the smallest and the largest reading.',
      with: [least, most],
    }),
  ];
}

function quartileRange(sample: Sample): FigureCheck[] {
  const [lower, upper, figure] = [sample.one('q1'), sample.one('q3'), sample.one('iqr')];
  if (lower === undefined || upper === undefined || figure === undefined) return [];
  return [
    checkByRange(figure, (habit) => minus(rangeOfFigure(upper, habit), rangeOfFigure(lower, habit)), {
      name: 'range of the quartiles',
      working: (found) => `${named(upper)} less ${named(lower)} is ${found}.`,
      resolve: 'Look up both quartiles.',
      with: [lower, upper],
    }),
  ];
}

function spread(sample: Sample): FigureCheck[] {
  const sd = sample.one('sd');
  const n = wholeOf(sample.n);
  if (sd === undefined) return [];
  if (sd.values[0].relation === '=' && sd.values[0].number.digits < 0n)
    return [
      {
        figure: sd.id,
        name: 'sign',
        from: 'print',
        outcome: 'cannot be',
        working: 'A standard deviation is a square root and cannot be negative.',
        resolve: 'Look up the sign.',
        with: [],
      },
    ];
  const known = [sample.one('min'), sample.one('max'), sample.one('mean')];
  const [min, max, mean] = known;
  if (n === null || n < 2 || min === undefined || max === undefined || sample.n === undefined) return [];
  const at = (figure: PrintedFigure) => rangeOfFigure(figure, 'any');
  const found = spreadBounds({
    n,
    min: at(min),
    max: at(max),
    ...(mean === undefined ? {} : { mean: at(mean) }),
  });
  if (found === undefined) return [];
  const fits = overlap(found, at(sd));
  const rests = [sample.n, min, max, ...(mean === undefined ? [] : [mean])];
  return [
    {
      figure: sd.id,
      name: 'bounds of the standard deviation',
      from: 'print',
      outcome: fits ? 'passes' : 'cannot be',
      working:
        `With ${rests.map(named).join(', ')} a standard deviation lies between ${printRangeText(found, sd, 'and')}` +
        `${fits ? '' : `, so not at ${sd.printed}`} (Popoviciu 1935${mean === undefined ? '' : '; Bhatia & Davis 2000'}).`,
      ...(fits
        ? {}
        : { resolve: 'Look up the two ends, and whether the spread belongs to the same readings.' }),
      with: rests.map(({ id }) => id),
    },
  ];
}

/** se = sd / sqrt(n); where the deviation was taken over n, also sd / sqrt(n - 1). */
function error(sample: Sample): FigureCheck[] {
  const [sd, se] = [sample.one('sd'), sample.one('se')];
  const n = wholeOf(sample.n);
  if (sd === undefined || se === undefined || n === null || n < 2 || sample.n === undefined) return [];
  const compute = (habit: PrintHabit): Range => {
    const over1 = over(rangeOfFigure(sd, habit), root(exactly(n)));
    return { low: over1.low, high: over(rangeOfFigure(sd, habit), root(exactly(n - 1))).high };
  };
  return [
    checkByRange(se, compute, {
      name: 'standard error from the deviation',
      working: (found) =>
        `${named(sd)} over the square root of ${named(sample.n as PrintedFigure)} is ${found}.`,
      resolve: 'State n, and which of the two is the deviation and which the error.',
      with: [sd, sample.n],
    }),
  ];
}

function variation(sample: Sample): FigureCheck[] {
  const [mean, sd, cv] = [sample.one('mean'), sample.one('sd'), sample.one('cv')];
  if (mean === undefined || sd === undefined || cv === undefined) return [];
  return [
    checkByRange(cv, (habit) => over(rangeOfFigure(sd, habit), rangeOfFigure(mean, habit)), {
      name: 'coefficient of variation from mean and deviation',
      working: (found) => `${named(sd)} over ${named(mean)} is ${found}.`,
      resolve: 'Print mean and deviation of the same readings to one digit more.',
      with: [mean, sd],
    }),
  ];
}

/** Mean and median are never further apart than one standard deviation (Hotelling & Solomons 1932). */
function apart(sample: Sample): FigureCheck[] {
  const [mean, median, sd] = [sample.one('mean'), sample.one('median'), sample.one('sd')];
  if (mean === undefined || median === undefined || sd === undefined) return [];
  const at = (figure: PrintedFigure) => rangeOfFigure(figure, 'any');
  const reach = times({ low: -1, high: 1 }, at(sd));
  const allowed = plus(at(mean), { low: Math.min(reach.low, 0), high: Math.max(reach.high, 0) });
  if (overlap(allowed, at(median))) return [];
  return [
    {
      figure: median.id,
      name: 'median and mean',
      from: 'print',
      outcome: 'cannot be',
      working: `${named(median)} lies further from ${named(mean)} than ${named(sd)}, which no sample does.`,
      resolve: 'State whether the three describe the same readings.',
      with: [mean.id, sd.id],
    },
  ];
}
