import {
  exactly,
  minus,
  over,
  type PrintHabit,
  plus,
  type Range,
  root,
  size,
  square,
  times,
} from '../../../../numerics/printed/range.ts';
import { numberPrinted, rangeOf, rangeOfFigure, wholeOf } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { PrintedTest } from './test-groups.ts';

export interface EffectWay {
  readonly said: string;
  readonly range: (habit: PrintHabit) => Range;
}

/** d over t after Welch lies between what all the spread in the one group, and all in the other, would give. */
function afterWelch(n1: number, n2: number, value: (habit: PrintHabit) => Range, small: number): EffectWay[] {
  const factors = [n1, n2].map((n) => Math.sqrt((n1 + n2 - 2) / (n * Math.max(1, n - 1))));
  return [
    {
      said: 'of two groups after Welch',
      range: (habit) => ({
        low: value(habit).low * Math.min(...factors) * small,
        high: value(habit).high * Math.max(...factors),
      }),
    },
  ];
}

/** In which ways an effect size comes from the statistic that it stands beside; none where none is known. */
export function effectWaysOf(
  effect: PrintedFigure,
  { method, statistic, df, sizes }: PrintedTest,
): readonly EffectWay[] {
  const value = (habit: PrintHabit) => size(rangeOfFigure(statistic, habit));
  const degrees = df?.values.map((one) => rangeOf(one, 'rounded')) ?? [];
  const mid = ({ low, high }: Range) => exactly((low + high) / 2);
  const ns = sizes.map(wholeOf).filter((n) => n !== null);
  const n = ns.length === 0 ? null : ns.reduce((sum, one) => sum + one, 0);
  if (method === 't' && (effect.method === 'cohen-d' || effect.method === 'hedges-g')) {
    const small =
      effect.method === 'hedges-g' && degrees.length === 1 ? 1 - 3 / (4 * mid(degrees[0]).low - 1) : 1;
    const by = (factor: number, said: string): EffectWay[] => [
      { said, range: (habit) => times(value(habit), exactly(factor * small)) },
      ...(small === 1
        ? []
        : [
            {
              said: `${said}, without the correction for small samples`,
              range: (habit: PrintHabit) => times(value(habit), exactly(factor)),
            },
          ]),
    ];
    const d = degrees.length === 1 ? mid(degrees[0]).low : null;
    return [
      ...(ns.length === 2 ? by(Math.sqrt(1 / ns[0] + 1 / ns[1]), 'of two groups') : []),
      ...(ns.length === 2 && d !== ns[0] + ns[1] - 2 ? afterWelch(ns[0], ns[1], value, small) : []),
      ...(d === null
        ? []
        : [
            ...by(2 / Math.sqrt(d + 2), 'of two groups of one size'),
            ...by(2 / Math.sqrt(d), '2t/√df'),
            ...by(1 / Math.sqrt(d + 1), 'of pairs or one sample'),
          ]),
      // Two groups of other sizes give more than equal ones; of other spreads, after Welch, also less.
      ...(d !== null && ns.length === 0
        ? [
            {
              said: 'of two groups of unlike size or spread',
              range: (habit: PrintHabit) => ({
                low: (value(habit).low * small) / Math.sqrt(d + 1),
                high: value(habit).high * Math.sqrt(1 / 2 + 1 / Math.max(2, d)),
              }),
            },
          ]
        : []),
    ];
  }
  if (method === 'F' && degrees.length === 2) {
    const [a, b] = degrees.map(mid);
    const eta = (habit: PrintHabit) => over1(times(value(habit), a), b);
    if (effect.method === 'eta-squared' || effect.method === 'r-squared')
      return [
        { said: 'F df1/(F df1 + df2)', range: eta },
        ...(effect.method === 'r-squared'
          ? [
              {
                said: 'adjusted',
                range: (habit: PrintHabit) =>
                  minus(exactly(1), times(minus(exactly(1), eta(habit)), exactly((a.low + b.low) / b.low))),
              },
            ]
          : []),
      ];
    if (effect.method === 'omega-squared')
      return [
        {
          said: 'df1 (F − 1)/(df1 (F − 1) + n)',
          range: (habit) =>
            fromNought(over1(times(minus(value(habit), exactly(1)), a), exactly(a.low + b.low + 1))),
        },
      ];
    if (effect.method === 'epsilon-squared')
      return [
        {
          said: 'df1 (F − 1)/(df1 F + df2)',
          range: (habit) =>
            fromNought(over(times(minus(value(habit), exactly(1)), a), plus(times(value(habit), a), b))),
        },
      ];
  }
  if (
    method === 't' &&
    degrees.length === 1 &&
    (effect.method === 'eta-squared' || effect.method === 'r-squared')
  )
    return [{ said: 't²/(t² + df)', range: (habit) => over1(square(value(habit)), mid(degrees[0])) }];
  if ((method === 'chi-squared' || method === 'G') && n !== null && n > 0) {
    const phi = (least: number) => (habit: PrintHabit) => root(over(value(habit), exactly(n * least)));
    if (effect.method === 'phi') return [{ said: '√(χ²/n)', range: phi(1) }];
    if (effect.method === 'cramer-v') {
      const d = df === undefined ? 1 : numberPrinted(df);
      const sides = Array.from({ length: Math.max(1, Math.floor(Math.sqrt(d))) }, (_, i) => i + 1).filter(
        (one) => d % one === 0,
      );
      return sides.map((one) => ({ said: `√(χ²/(n·${one}))`, range: phi(one) }));
    }
  }
  if (method === 'H' && n !== null && degrees.length === 1) {
    const d = mid(degrees[0]).low;
    const epsilon: EffectWay = { said: 'H/(n − 1)', range: (habit) => over(value(habit), exactly(n - 1)) };
    const eta: EffectWay = {
      said: '(H − k + 1)/(n − k)',
      range: (habit) => over(minus(value(habit), exactly(d)), exactly(n - d - 1)),
    };
    if (effect.method === 'epsilon-squared') return [epsilon];
    if (effect.method === 'eta-squared') return [eta, epsilon];
  }
  if (method === 'r' && effect.method === 'r-squared')
    return [{ said: 'r²', range: (habit) => square(value(habit)) }];
  return [];
}

/** Below nought, 0 is printed as often as the number itself. */
const fromNought = ({ low, high }: Range): Range => ({ low, high: Math.max(high, 0) });

/** x / (x + rest), which grows with x. */
function over1(x: Range, rest: Range): Range {
  const at = (one: number, other: number) => (one + other === 0 ? 0 : one / (one + other));
  return { low: at(x.low, rest.high), high: at(x.high, rest.low) };
}
