import { exp, ln } from '../../../../numerics/foundation/elementary.ts';
import { exactly, type PrintHabit } from '../../../../numerics/printed/range.ts';
import { pRange } from '../../../../numerics/printed/test-p.ts';
import type { FigureCheck } from '../../found.ts';
import { fitOf, named, printRangeText, rangeOfFigure, wholeOf } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import { finer } from '../finer.ts';
import type { Coefficient } from './coefficient.ts';

/** As many degrees of freedom as make no difference from the normal distribution. */
const MANY = 1e9;

interface Line {
  readonly statistic: PrintedFigure;
  readonly p: PrintedFigure;
}

/**
 * The p of each coefficient by its t where its line prints no degrees of freedom: those of the residual where they
 * are printed beside, or else any that all lines share. A p that none allows differs; it may be adjusted or one-sided.
 */
export function pOfCoefficients(
  coefficients: readonly Coefficient[],
  set: readonly PrintedFigure[],
): FigureCheck[] {
  const lines = coefficients.flatMap(({ statistic, p, df }): Line[] =>
    statistic === undefined || p === undefined || df !== undefined || p.stars || !isStudents(statistic)
      ? []
      : [{ statistic, p }],
  );
  if (lines.length === 0) return [];
  const printed = residualDegrees(set);
  if (printed !== null)
    return lines.map((line) => {
      const own = fitsWith(line, printed) ? { low: printed, high: printed } : null;
      return check(line, own, own, printed);
    });
  const fits = lines.map(degreesThatFit);
  const shared = fits.reduce((all, one) => meeting(all, one ?? { low: 1, high: MANY }), {
    low: 1,
    high: MANY,
  } as Degrees | null);
  return lines.map((line, i) => check(line, fits[i], fits[i] === null ? null : shared, null));
}

/** Ends of the degrees of freedom that a p allows. */
interface Degrees {
  readonly low: number;
  readonly high: number;
}

const meeting = (a: Degrees | null, b: Degrees | null): Degrees | null => {
  if (a === null || b === null) return null;
  const [low, high] = [Math.max(a.low, b.low), Math.min(a.high, b.high)];
  return low <= high ? { low, high } : null;
};

/** The p of one t falls as its degrees of freedom grow, so those that fit lie between two ends, found by halving. */
function degreesThatFit(line: Line): Degrees | null {
  const printed = rangeOfFigure(line.p, 'any');
  const of = (df: number) => pWith(line, df)('any');
  if (of(1).high < printed.low || of(MANY).low > printed.high) return null;
  const low = firstWith((df) => of(df).low <= printed.high);
  const high = of(MANY).high >= printed.low ? MANY : firstWith((df) => of(df).high < printed.low);
  return low <= high ? { low, high } : null;
}

/** The least degrees of freedom, from 1, of which this holds; it holds of all larger ones. */
function firstWith(holds: (df: number) => boolean): number {
  if (holds(1)) return 1;
  let [low, high] = [0, ln(MANY)];
  for (let turn = 0; turn < 60; turn++) {
    const middle = (low + high) / 2;
    if (holds(exp(middle))) high = middle;
    else low = middle;
  }
  return exp(high);
}

const isStudents = ({ method }: PrintedFigure): boolean => method === 't' || method === null;

/** Of the overall F, or of the residual itself. */
function residualDegrees(set: readonly PrintedFigure[]): number | null {
  for (const { quantity, values, method } of set) {
    if (quantity !== 'df' || method !== 'F' || values.length !== 2) continue;
    const [, second] = values;
    if (second.relation === '=' && second.number.decimals === 0) return Number(second.number.digits);
  }
  const own = set.filter(({ quantity, method }) => quantity === 'df' && method === 't');
  return own.length === 1 ? wholeOf(own[0]) : null;
}

const pWith =
  ({ statistic }: Line, df: number) =>
  (habit: PrintHabit) =>
    pRange('t', rangeOfFigure(statistic, habit), [exactly(df)]);

const fitsWith = (line: Line, df: number): boolean => fitOf(line.p, pWith(line, df)) !== 'no';

function check(
  line: Line,
  fits: Degrees | null,
  shared: Degrees | null,
  printed: number | null,
): FigureCheck {
  const { statistic, p } = line;
  const base = { figure: p.id, name: 'p of its coefficient', from: 'print', with: [statistic.id] } as const;
  if (shared !== null) {
    const { low, high } = shared;
    const least = Math.ceil(low - 1e-6);
    const which =
      printed !== null
        ? String(printed)
        : high >= MANY
          ? `${least} or more`
          : `${least} to ${Math.max(least, Math.floor(high))}`;
    return {
      ...base,
      outcome: 'agrees',
      ...(p.values[0].relation === '=' ? {} : { coarse: true as const }),
      working: `${named(statistic)} with ${which} degrees of freedom gives a p of ${printRangeText(pWith(line, high >= MANY ? MANY : low)('any'), finer(p))}; printed: ${p.values[0].text}.`,
    };
  }
  if (fits !== null)
    return {
      ...base,
      outcome: 'passes',
      working: `${named(statistic)} gives such a p with ${Math.ceil(fits.low)} degrees of freedom, but no number of them fits all lines.`,
    };
  const normal = printed ?? MANY;
  const raw = pWith(line, normal)('any');
  const half = fitOf(p, (habit) => {
    const { low, high } = pWith(line, normal)(habit);
    return { low: low / 2, high: high / 2 };
  });
  return {
    ...base,
    outcome: 'differs',
    working: `${named(statistic)} with ${printed === null ? 'any' : printed} degrees of freedom gives a p of ${printRangeText(raw, finer(p))}${printed === null ? ' or more' : ''}; printed: ${p.values[0].text}.`,
    ...(half === 'no' ? {} : { explained: 'a one-sided p' }),
    resolve: 'State the degrees of freedom, the sides of the test, and whether p is adjusted.',
  };
}
