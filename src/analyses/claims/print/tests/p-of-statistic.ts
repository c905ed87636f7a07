import { exactly, minus, type PrintHabit, type Range, scaled } from '../../../../numerics/printed/range.ts';
import { pRange, statisticOfP, type TabledTest } from '../../../../numerics/printed/test-p.ts';
import { CONVENTIONS } from '../../conventions/register.ts';
import type { FigureCheck } from '../../found.ts';
import {
  fitOf,
  named,
  numberPrinted,
  printRangeText,
  rangeOfFigure,
  shown,
  TRUNCATED,
} from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import { finer } from '../finer.ts';
import { type Degrees, degreesOf } from './degrees-readings.ts';
import { misfit, sphericity } from './p-misfit.ts';
import type { PrintedTest } from './test-groups.ts';

const TABLED: Readonly<Record<string, TabledTest>> = {
  t: 't',
  F: 'F',
  'chi-squared': 'chi-squared',
  G: 'chi-squared',
  H: 'chi-squared',
  z: 'z',
  r: 'r',
};

/** One way to come from a statistic to p. */
export interface PReading {
  /** What it agrees under; empty for the plain way. */
  readonly said: string;
  readonly range: (habit: PrintHabit) => Range;
}

/** Tests of a sign have sides. */
function isSigned(tabled: TabledTest): boolean {
  return tabled === 't' || tabled === 'z' || tabled === 'r';
}

/** Every ordinary p of a printed statistic, the plainest first; none where its degrees of freedom are not printed. */
export function pReadings(
  { method, statistic, df, sizes }: PrintedTest,
  sided: '' | 'one' | 'two',
): PReading[] {
  const tabled = TABLED[method];
  if (tabled === undefined) return [];
  const upper = (reading: Degrees) => (habit: PrintHabit) =>
    pRange(
      tabled,
      rangeOfFigure(statistic, habit),
      reading.ranges.map((range) => (habit === 'any' ? range.any : range.rounded)),
    );
  const readings = degreesOf(tabled, df, sizes).map((reading) => ({
    said: reading.said,
    range: upper(reading),
  }));
  if (isSigned(tabled) && sided === 'one')
    // Against the side that was asked about, a one-sided p is the rest.
    return readings.flatMap(({ said, range }) => {
      const half = (habit: PrintHabit) => scaled(range(habit), 0.5);
      return [
        { said, range: half },
        { said, range: (habit) => minus(exactly(1), half(habit)) },
      ];
    });
  if (tabled !== 'F') return readings;
  const [plain] = readings;
  if (plain === undefined) return readings;
  const lower = (habit: PrintHabit) => minus(exactly(1), plain.range(habit));
  return [
    ...readings,
    { said: CONVENTIONS.bothTails.under, range: (habit) => bothTails(plain.range(habit)) },
    ...(numberPrinted(statistic) < 1 ? [{ said: CONVENTIONS.lowerTail.under, range: lower }] : []),
  ];
}

/** Twice the smaller tail. */
function bothTails(upper: Range): Range {
  const twice = [upper.low, upper.high].map((p) => 2 * Math.min(p, 1 - p));
  const holdsMiddle = upper.low <= 0.5 && upper.high >= 0.5;
  return { low: Math.min(...twice), high: holdsMiddle ? 1 : Math.max(...twice) };
}

export function isTabled(method: string): boolean {
  return TABLED[method] !== undefined;
}

/** A printed p against the statistic and degrees of freedom that are printed with it. */
export function pFromStatistic(test: PrintedTest, p: PrintedFigure): FigureCheck[] {
  const { method, statistic, df, sizes } = test;
  const tabled = TABLED[method];
  if (tabled === undefined) return [];
  const readings = pReadings(test, p.sided);
  const base = { figure: p.id, name: 'p of its statistic', from: 'print' } as const;
  const rests = [statistic, ...(df === undefined ? (tabled === 'r' ? sizes : []) : [df])];
  const rest = { with: rests.map(({ id }) => id) };
  if (readings.length === 0)
    return [
      {
        ...base,
        outcome: 'open',
        working: `The degrees of freedom of the ${method} test are not printed.`,
        resolve: 'Give the degrees of freedom.',
        ...rest,
      },
    ];
  const signed = isSigned(tabled);
  const one = p.sided === 'one' && signed;
  const sides = signed ? `${one ? 'one' : 'two'}-sided ` : '';
  const coarse = p.values[0].relation !== '=' || p.stars;
  // Nearly every coarse p fits a lower tail.
  const tried = coarse ? readings.filter(({ said }) => said !== CONVENTIONS.lowerTail.under) : readings;
  const fitting =
    tried.find(({ range }) => fitOf(p, range) !== 'no') ??
    tried.find(({ range }) => bothNoise(p, range('any')));
  const exact = fitting === undefined ? 'no' : fitOf(p, fitting.range);
  const fit = fitting !== undefined && exact === 'no' ? 'agrees' : exact;
  const found = printRangeText(readings[0].range(fit === 'agrees' ? 'rounded' : 'any'), finer(p));
  const working = `${rests.map(named).join(', ')} gives a ${sides}p of ${found}`;
  if (fitting !== undefined && fit !== 'no') {
    return [
      {
        ...base,
        outcome: fit,
        ...(fit === 'agrees' ? {} : { rounded: TRUNCATED }),
        ...(fitting.said === '' ? {} : { under: fitting.said }),
        ...(coarse ? { coarse: true as const } : {}),
        working: `${working}${fitting.said === '' ? '' : `; under ${fitting.said} it agrees`}${coarse ? littleProof(test, p, tabled) : ''}.`,
        ...rest,
      },
    ];
  }
  if (p.stars) return [];
  const turned = pReadings(test, one ? 'two' : 'one').some(({ range }) => fitOf(p, range) !== 'no');
  return [
    {
      ...base,
      ...misfit({
        test,
        p,
        raw: readings[0].range('any'),
        turned: signed && turned,
        one,
        corrected: tabled === 'F' ? sphericity(test, p) : false,
        working,
      }),
      ...rest,
    },
  ];
}

/** A tail that is computed as one less the other keeps nothing below this but noise. */
const NOISE_OF_TAILS = 1e-14;

function bothNoise(p: PrintedFigure, { high }: Range): boolean {
  return p.values[0].relation === '=' && numberPrinted(p) < NOISE_OF_TAILS && high < NOISE_OF_TAILS;
}

/** How little a coarse p says: every statistic beyond the one whose p is its level fits it too. */
function littleProof(
  { method, statistic, df, sizes }: PrintedTest,
  p: PrintedFigure,
  tabled: TabledTest,
): string {
  const [reading] = degreesOf(tabled, df, sizes);
  const [{ relation }] = p.values;
  const level = numberPrinted(p) * (p.sided === 'one' ? 2 : 1);
  if (reading === undefined || relation === '~' || relation === '=' || level <= 0 || level >= 1)
    return '; so coarse a p says little of the statistic';
  const [a, b] = reading.ranges.map(({ rounded }) => (rounded.low + rounded.high) / 2);
  const limit = statisticOfP(tabled, level, a, b);
  return `; it proves little, for every ${method} ${relation === '<' ? 'above' : 'below'} ${shown(limit, statistic)} gives such a p`;
}
