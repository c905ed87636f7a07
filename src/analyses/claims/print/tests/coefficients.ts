import { studentQuantileUpper } from '../../../../numerics/foundation/distributions.ts';
import { exp } from '../../../../numerics/foundation/elementary.ts';
import {
  minus,
  over,
  overlap,
  type PrintHabit,
  plus,
  type Range,
  scaled,
  square,
} from '../../../../numerics/printed/range.ts';
import type { FigureCheck } from '../../found.ts';
import { checkByRange, named, printRangeText, rangeOfFigure } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { Quantity } from '../../reading/terms.ts';
import { collect, type Evidence, only } from '../evidence.ts';
import type { Coefficient } from './coefficient.ts';
import { pOfCoefficients } from './coefficient-p.ts';
import { starsOfCoefficients } from './coefficient-stars.ts';

/**
 * Coefficients of fitted models, and differences of means after one, each against its own line: the estimate over its
 * error is t or z, and their square Wald's chi-squared; the interval lies about the estimate; an odds ratio is the
 * exponential of its coefficient; p goes with t by degrees of freedom that all lines share.
 */
export function checkCoefficients({ sets }: Evidence): FigureCheck[] {
  return [...sets.values()].flatMap((set) => {
    const lines = [...collect(set, ({ line }) => line).values()].flatMap(coefficientOf);
    return [
      ...lines.flatMap((one) => [...ofStatistic(one), ...ofInterval(one), ...ofOddsRatio(one)]),
      ...pOfCoefficients(lines, set),
      ...starsOfCoefficients(lines),
    ];
  });
}

function coefficientOf(line: readonly PrintedFigure[]): Coefficient[] {
  const one = (quantity: Quantity) => only(line.filter((figure) => figure.quantity === quantity));
  const ofModel = one('estimate');
  const estimate = ofModel ?? one('difference');
  if (estimate === undefined) return [];
  const [low, high] = [one('low'), one('high')];
  const ends = low === undefined || high === undefined ? null : ([low, high] as const);
  // A difference of two samples is held to its t by the checks of tests.
  const rest =
    ofModel === undefined
      ? { se: undefined, statistic: undefined, df: undefined, p: undefined, oddsRatio: undefined }
      : {
          se: one('se'),
          statistic: one('statistic'),
          df: one('df'),
          p: one('p'),
          oddsRatio: only(
            line.filter(({ method, quantity }) => quantity === 'effect' && method === 'odds-ratio'),
          ),
        };
  return [{ estimate, ends, ...rest }];
}

function ofStatistic({ estimate, se, statistic }: Coefficient): FigureCheck[] {
  if (se === undefined || statistic === undefined) return [];
  const wald = statistic.method === 'chi-squared';
  if (!wald && statistic.method !== null && statistic.method !== 't' && statistic.method !== 'z') return [];
  const ratio = (habit: PrintHabit) => {
    const found = over(rangeOfFigure(estimate, habit), errorRange(se, habit));
    return wald ? square(found) : found;
  };
  return [
    checkByRange(statistic, ratio, {
      name: 'coefficient over its error',
      working: (found) =>
        `${named(estimate)} over ${named(se)}${wald ? ', squared,' : ''} is ${found}; printed: ${statistic.values[0].text}.`,
      resolve: 'Look up the coefficient and its standard error.',
      with: [estimate, se],
      // A standardised coefficient stands beside the error of the plain one.
      ...(/β|beta|standardi[sz]ed/i.test(`${estimate.id} ${estimate.printed}`)
        ? { misfit: 'differs' as const }
        : {}),
    }),
  ];
}

/** An error is above nought, however small it prints. */
function errorRange(se: PrintedFigure, habit: PrintHabit): Range {
  const { low, high } = rangeOfFigure(se, habit);
  return { low: Math.max(0, low), high };
}

/** Skewed limits (profiles, resampling) lie up to so far from the middle, as a share of half their width. */
const MOST_SKEWED = 0.4;

function ofInterval({ estimate, se, ends }: Coefficient): FigureCheck[] {
  if (ends === null) return [];
  const [low, high] = ends;
  const [from, to] = [rangeOfFigure(low, 'any'), rangeOfFigure(high, 'any')];
  const value = rangeOfFigure(estimate, 'any');
  const base = { figure: estimate.id, name: 'coefficient and its interval', from: 'print' } as const;
  const rest = { with: [low.id, high.id, ...(se === undefined ? [] : [se.id])] };
  if (value.high < from.low || value.low > to.high)
    return [
      {
        ...base,
        outcome: 'cannot be',
        working: `${named(estimate)} does not lie within ${low.values[0].text} to ${high.values[0].text}.`,
        resolve: 'Look up the coefficient and both ends of its interval.',
        ...rest,
      },
    ];
  const middle = scaled(plus(from, to), 0.5);
  const half = scaled(minus(to, from), 0.5);
  const about = overlap(middle, value);
  const quantile = se === undefined ? null : over(half, errorRange(se, 'any'));
  // From the normal distribution to Student's with one degree of freedom.
  const tail = (1 - (low.level ?? 0.95)) / 2;
  const wide =
    quantile === null ||
    overlap(quantile, { low: studentQuantileUpper(tail, 1e6), high: studentQuantileUpper(tail, 2) });
  const working = `The interval's middle is ${printRangeText(middle, estimate)}, and half its width ${printRangeText(half, estimate)}; printed: ${estimate.values[0].text}${se === undefined ? '' : `, error ${se.values[0].text}`}.`;
  if (about && wide) return [{ ...base, outcome: 'agrees', working, ...rest }];
  const off = minus(value, middle);
  const distance = off.low > 0 ? off.low : off.high < 0 ? -off.high : 0;
  const skewed = half.high > 0 && distance <= MOST_SKEWED * half.high;
  const near = quantile === null || overlap(quantile, { low: 1.4, high: 14 });
  return [
    skewed && near
      ? {
          ...base,
          outcome: 'passes',
          working: `${working} Limits by profiles or resampling may lie so.`,
          ...rest,
        }
      : {
          ...base,
          outcome: 'differs',
          working,
          resolve: 'State how the interval was made, and its confidence.',
          ...rest,
        },
  ];
}

function ofOddsRatio({ estimate, oddsRatio, ends }: Coefficient): FigureCheck[] {
  if (oddsRatio === undefined) return [];
  const power = (habit: PrintHabit): Range => {
    const { low, high } = rangeOfFigure(estimate, habit);
    return { low: exp(low), high: exp(high) };
  };
  return [
    checkByRange(oddsRatio, power, {
      name: 'odds ratio of its coefficient',
      working: (found) =>
        `The exponential of ${named(estimate)} is ${found}; printed: ${oddsRatio.values[0].text}.`,
      resolve: 'Look up the coefficient and the odds ratio.',
      with: [estimate, ...(ends ?? [])],
    }),
  ];
}
