import { exactly, minus, overlap, type PrintHabit, type Range } from '../../../numerics/printed/range.ts';
import { pRange, type TabledTest } from '../../../numerics/printed/test-p.ts';
import type { Check } from '../found.ts';
import {
  type Fit,
  fitOf,
  named,
  numberPrinted,
  printRangeText,
  rangeOf,
  rangeOfFigure,
  TRUNCATED,
  wholeOf,
} from '../judging/check.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import type { Evidence } from './evidence.ts';
import { finer } from './finer.ts';
import { rankTestChecks } from './rank-tests.ts';
import { degreesFromN } from './test-degrees.ts';
import { type PrintedTest, testsOf } from './test-groups.ts';

const TABLED: Readonly<Record<string, TabledTest>> = {
  t: 't',
  F: 'F',
  'chi-squared': 'chi-squared',
  G: 'chi-squared',
  H: 'chi-squared',
  z: 'z',
  r: 'r',
};
const RANKED: ReadonlySet<string> = new Set(['U', 'W', 'signed-rank', 'rho', 'tau']);

/** Test statistics, degrees of freedom and p of one text, row or set against each other. */
export function checkTests({ sets }: Evidence): Check[] {
  return [...sets.values()].flatMap((set) =>
    testsOf(set).flatMap((test) => [
      ...impossible(test),
      ...degreesFromN(test),
      ...(RANKED.has(test.method) ? rankTestChecks(test) : test.p.flatMap((p) => pFromStatistic(test, p))),
    ]),
  );
}

function impossible({ method, statistic, sizes }: PrintedTest): Check[] {
  const { low, high } = rangeOfFigure(statistic, 'any');
  const base = {
    figure: statistic.id,
    name: 'possible statistic',
    from: 'print',
    outcome: 'cannot be',
  } as const;
  if (NOT_NEGATIVE.has(method) && high < 0)
    return [
      {
        ...base,
        working: `${method === 'U' ? 'U counts pairs' : `${method === 'chi-squared' ? 'Chi-squared' : method} is built of squares or ranks`} and cannot be negative.`,
        resolve: 'Look up the sign.',
        with: [],
      },
    ];
  if ((method === 'r' || method === 'rho' || method === 'tau') && (low > 1 || high < -1))
    return [
      {
        ...base,
        working: 'A correlation lies between −1 and 1.',
        resolve: 'Look up the decimal point.',
        with: [],
      },
    ];
  const [n1, n2] = sizes.map(wholeOf);
  if (method === 'U' && sizes.length === 2 && n1 !== null && n2 !== null && low > n1 * n2)
    return [
      {
        ...base,
        working: `U counts pairs, of which ${n1} × ${n2} = ${n1 * n2} exist; ${statistic.printed} is more.`,
        resolve: 'State U and both numbers of records, or say if another rank statistic is printed.',
        with: sizes.map(({ id }) => id),
      },
    ];
  if (method === 'signed-rank' && sizes.length === 1 && n1 !== null && low > (n1 * (n1 + 1)) / 2)
    return [
      {
        ...base,
        working: `The ranks of ${n1} pairs add up to ${(n1 * (n1 + 1)) / 2}; ${statistic.printed} is more.`,
        resolve: 'State the number of pairs that entered.',
        with: sizes.map(({ id }) => id),
      },
    ];
  return [];
}

const NOT_NEGATIVE: ReadonlySet<string> = new Set(['F', 'chi-squared', 'G', 'H', 'U', 'W', 'signed-rank']);

/** One reading of the degrees of freedom: as printed, or as what they may have been before rounding. */
interface Degrees {
  readonly said: string;
  readonly ranges: readonly { readonly rounded: Range; readonly any: Range }[];
}

function pFromStatistic(test: PrintedTest, p: PrintedFigure): Check[] {
  const { method, statistic, df, sizes } = test;
  const tabled = TABLED[method];
  if (tabled === undefined) return [];
  const readings = degreesOf(tabled, df, sizes);
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
  const signed = tabled === 't' || tabled === 'z' || tabled === 'r';
  const one = p.sided === 'one' && signed;
  const sides = signed ? `${one ? 'one' : 'two'}-sided ` : '';
  const twoSided = (reading: Degrees) => (habit: PrintHabit) =>
    pRange(
      tabled,
      rangeOfFigure(statistic, habit),
      reading.ranges.map((range) => (habit === 'any' ? range.any : range.rounded)),
    );
  const halved = (reading: Degrees) => (habit: PrintHabit) => scaled(twoSided(reading)(habit), 0.5);
  // Against the side that was asked about, a one-sided p is the rest.
  const against = (reading: Degrees) => (habit: PrintHabit) => minus(exactly(1), halved(reading)(habit));
  const sidesFit = (reading: Degrees, isOne: boolean): Fit =>
    isOne ? better(fitOf(p, halved(reading)), fitOf(p, against(reading))) : fitOf(p, twoSided(reading));
  const first = readings[0];
  const asSaid = one ? halved(first) : twoSided(first);
  const fitting = bestOf(readings, (reading) => sidesFit(reading, one));
  const fit = fitting === null ? 'no' : sidesFit(fitting, one);
  const found = printRangeText(asSaid(fit === 'agrees' ? 'rounded' : 'any'), finer(p));
  const working = `${rests.map(named).join(', ')} gives a ${sides}p of ${found}`;
  if (fitting !== null && fit !== 'no') {
    const coarse = p.values[0].relation !== '=' || p.stars;
    return [
      {
        ...base,
        outcome: fit,
        ...(fit === 'agrees' ? {} : { rounded: TRUNCATED }),
        ...(fitting.said === '' ? {} : { under: fitting.said }),
        ...(coarse ? { coarse: true as const } : {}),
        working: `${working}${fitting.said === '' ? '' : `; under ${fitting.said} it agrees`}${coarse ? '; so coarse a p says little of the statistic' : ''}.`,
        ...rest,
      },
    ];
  }
  if (p.stars) return [];
  return [
    {
      ...base,
      ...misfit({
        test,
        p,
        raw: asSaid('any'),
        turned: signed && bestOf(readings, (reading) => sidesFit(reading, !one)) !== null,
        one,
        corrected: tabled === 'F' ? sphericity(test, p) : false,
        working,
      }),
      ...rest,
    },
  ];
}

interface Misfit {
  readonly test: PrintedTest;
  readonly p: PrintedFigure;
  readonly raw: Range;
  readonly turned: boolean;
  readonly one: boolean;
  readonly corrected: boolean;
  readonly working: string;
}

/** Below this share of the computed p, neither permutation nor exactness explains a print. */
const PERMUTED_FROM = 0.2;

/** A p that its statistic does not give: what else is ordinary, in the order in which it is said or likely. */
function misfit({ test, p, raw, turned, one, corrected, working }: Misfit) {
  const printed = rangeOfFigure(p, 'any');
  const more = printed.high >= raw.low;
  const resolve = 'State the test, its sides, and whether p is adjusted or comes from permutations.';
  const said = (outcome: 'passes' | 'differs' | 'cannot be', text: string, explained?: string) => ({
    outcome,
    working: `${working}; printed: ${p.printed}. ${text}`,
    ...(explained === undefined ? {} : { explained }),
    ...(outcome === 'passes' ? {} : { resolve }),
  });
  const has = (manner: string) => p.manners.some((one1) => one1 === manner);
  if (has('adjusted'))
    return more
      ? said('passes', 'It is printed as adjusted for several tests, which makes p larger.')
      : said('differs', 'An adjusted p is never smaller than that.');
  if (has('permuted') || has('exact') || has('continuity'))
    return printed.high >= raw.low * PERMUTED_FROM && printed.low <= Math.min(1, raw.high * 5 + 0.05)
      ? said(
          'passes',
          'It is printed as exact, corrected or from permutations, which this does not recompute.',
        )
      : said('differs', 'An exact p or one from permutations is rarely so far off.');
  if (has('sphericity') && corrected) return said('passes', 'A correction for sphericity makes p larger.');
  if (turned)
    return said('differs', 'It fits the other number of sides.', one ? 'a two-sided p' : 'a one-sided p');
  const slip = [0.1, 10, 100, 0.01].filter(
    (by) => overlap(scaled(raw, by), printed) && p.values[0].relation === '=',
  );
  if (slip.length > 0)
    return said('differs', 'The digits fit with the decimal point elsewhere.', 'a decimal point misplaced');
  const times = multiple(raw, printed, test.family);
  if (times !== null)
    return said(
      'passes',
      `Adjusted for ${times} tests after Bonferroni it would print so; it does not say that it is.`,
    );
  if (corrected)
    return said(
      'differs',
      'A correction for sphericity could make p so large.',
      'a correction for sphericity',
    );
  if (more)
    return said(
      'differs',
      'Only an adjustment for several tests, permutations or another test would give more.',
    );
  if (printed.high >= raw.low * PERMUTED_FROM)
    return said('differs', 'Only permutations or an exact test would give so little.');
  return said(
    'cannot be',
    'Tried: rounded and cut off; one and two sides; degrees of freedom as printed and before rounding; adjusted for several tests; from permutations.',
  );
}

/** By how many tests p was multiplied, where as many are printed together. */
function multiple(raw: Range, printed: Range, family: number): number | null {
  for (let by = 2; by <= Math.min(family, 30); by++)
    if (overlap({ low: Math.min(1, raw.low * by), high: Math.min(1, raw.high * by) }, printed)) return by;
  return null;
}

/** Does p lie between that of the printed degrees of freedom and that of the strictest correction (Greenhouse & Geisser 1959)? */
function sphericity({ statistic, df }: PrintedTest, p: PrintedFigure): boolean {
  if (df === undefined || df.values.length !== 2) return false;
  const [between, within] = df.values.map((value) => numberPrinted({ ...df, values: [value] }));
  if (between < 2) return false;
  const printed = rangeOfFigure(statistic, 'any');
  const loosest = pRange('F', printed, [exactly(between), exactly(within)]);
  const strictest = pRange('F', printed, [exactly(1), exactly(within / between)]);
  return overlap({ low: loosest.low, high: strictest.high }, rangeOfFigure(p, 'any'));
}

/** As printed first, rounded or cut off; other readings only where that does not fit. */
function bestOf(readings: readonly Degrees[], fitting: (reading: Degrees) => Fit): Degrees | null {
  return readings.find((reading) => fitting(reading) !== 'no') ?? null;
}

/** Fewer degrees of freedom are those of one sample or of pairs, and whole. */
const FEWEST_WELCH = 4;

/** The degrees of freedom as printed, and as what they may stand for. */
function degreesOf(
  test: TabledTest,
  df: PrintedFigure | undefined,
  sizes: readonly PrintedFigure[],
): readonly Degrees[] {
  if (test === 'z') return [{ said: '', ranges: [] }];
  const whole = test === 'F' ? 2 : 1;
  if (df !== undefined && df.values.length === whole) {
    const at = (value: (typeof df.values)[number]) => numberPrinted({ ...df, values: [value] });
    const asPrinted = df.values.map((value) =>
      // Whole degrees of freedom are counts first.
      value.number.decimals === 0
        ? { rounded: exactly(at(value)), any: exactly(at(value)) }
        : { rounded: rangeOf(value, 'rounded'), any: rangeOf(value, 'any') },
    );
    const readings: Degrees[] = [{ said: '', ranges: asPrinted }];
    const last = df.values[df.values.length - 1];
    const n = sizes
      .map(wholeOf)
      .reduce<number | null>((sum, one) => (sum === null || one === null ? null : sum + one), 0);
    const pooled = sizes.length === 2 && n !== null && n - 2 === at(last);
    if ((test === 't' || test === 'F') && last.number.decimals === 0 && at(last) >= FEWEST_WELCH && !pooled) {
      const cut = { low: Math.max(1, at(last) - 0.5), high: at(last) + 1 };
      readings.push({
        said: "Welch's degrees of freedom, printed as a whole number",
        ranges: [...asPrinted.slice(0, -1), { rounded: cut, any: cut }],
      });
    }
    if (test === 'r' && at(last) > 2)
      readings.push({
        said: 'the number of pairs in brackets instead of the degrees of freedom',
        ranges: [{ rounded: exactly(at(last) - 2), any: exactly(at(last) - 2) }],
      });
    return readings;
  }
  const [n] = sizes.length === 1 ? sizes.map(wholeOf) : [null];
  return test === 'r' && n !== null && n > 2
    ? [{ said: '', ranges: [{ rounded: exactly(n - 2), any: exactly(n - 2) }] }]
    : [];
}

function better(a: Fit, b: Fit): Fit {
  return a === 'agrees' || b === 'no' ? a : b;
}

function scaled({ low, high }: Range, by: number): Range {
  return { low: low * by, high: high * by };
}
