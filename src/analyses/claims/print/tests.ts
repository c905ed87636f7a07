import { exactly, minus, overlap, type PrintHabit, type Range } from '../../../numerics/printed/range.ts';
import { pRange, type TabledTest } from '../../../numerics/printed/test-p.ts';
import { mannWhitneyFromU } from '../../../numerics/printed/u-test.ts';
import type { Check } from '../found.ts';
import {
  type Fit,
  fitOf,
  named,
  numberPrinted,
  printRangeText,
  rangeOf,
  rangeOfFigure,
  shown,
  TRUNCATED,
  wholeOf,
} from '../judging/check.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import type { Quantity } from '../reading/terms.ts';
import { type Evidence, only } from './evidence.ts';

const TABLED: ReadonlySet<string> = new Set<TabledTest>(['t', 'F', 'chi-squared', 'z', 'r']);

/** Test statistics, degrees of freedom and p of one set against each other. */
export function checkTests({ sets }: Evidence): Check[] {
  return [...sets.values()].flatMap((set) => {
    const test = testOf(set);
    return test === undefined ? [] : [...impossible(test), ...degreesFromN(test), ...pFromStatistic(test)];
  });
}

/** What a set says of one test. */
interface PrintedTest {
  readonly method: string;
  readonly statistic: PrintedFigure;
  readonly df: PrintedFigure | undefined;
  readonly p: PrintedFigure | undefined;
  readonly sizes: readonly PrintedFigure[];
}

function testOf(set: readonly PrintedFigure[]): PrintedTest | undefined {
  const of = (quantity: Quantity) => only(set.filter((figure) => figure.quantity === quantity));
  const correlation = of('correlation');
  const statistic = of('statistic') ?? correlation;
  if (statistic === undefined) return undefined;
  const [df, p] = [of('df'), of('p')];
  const method = statistic.method ?? p?.method ?? df?.method ?? (statistic === correlation ? 'r' : null);
  if (method === null) return undefined;
  return {
    method,
    statistic,
    df,
    p,
    sizes: set.filter((figure) => figure.quantity === 'n' && figure.counted.length === 0),
  };
}

function impossible({ method, statistic, sizes }: PrintedTest): Check[] {
  const { low, high } = rangeOfFigure(statistic, 'any');
  const base = {
    figure: statistic.id,
    name: 'possible statistic',
    from: 'print',
    outcome: 'cannot be',
  } as const;
  if ((method === 'F' || method === 'chi-squared' || method === 'U') && high < 0)
    return [
      {
        ...base,
        working: `${method === 'U' ? 'U counts pairs' : `${method} is a ratio of squares`} and cannot be negative.`,
        resolve: 'Look up the sign.',
        with: [],
      },
    ];
  if (method === 'r' && (low > 1 || high < -1))
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
  return [];
}

/** n - 2 for a correlation; n1 + n2 - 2 for t, less with Welch's correction; n - k for F. */
function degreesFromN({ method, df, sizes }: PrintedTest): Check[] {
  if (df === undefined || sizes.length === 0) return [];
  const counts = sizes.map(wholeOf);
  if (counts.some((count) => count === null)) return [];
  const wholes = counts as number[];
  const n = wholes.reduce((sum, count) => sum + count, 0);
  const last = df.values[df.values.length - 1];
  const found = rangeOf(last, 'any');
  const allowed = allowedDegrees(method, wholes, n);
  if (allowed === undefined || (method === 'F' && df.values.length !== 2)) return [];
  const groups = method === 'F' ? wholes.length - 1 : null;
  const between = groups === null || overlap(exactly(groups), rangeOf(df.values[0], 'any'));
  const fits = between && allowed.some(({ range }) => overlap(range, found));
  const said = [
    ...(groups === null ? [] : [`${wholes.length} groups − 1 = ${groups}`]),
    allowed.map((one) => one.said).join('; or '),
  ].join(', and ');
  return [
    {
      figure: df.id,
      name: 'degrees of freedom from n',
      from: 'print',
      outcome: fits ? 'agrees' : 'differs',
      working: `With ${sizes.map(named).join(', ')}: ${said}. Printed: ${df.printed}.`,
      ...(fits ? {} : { resolve: 'State how many records entered the test; some may have been set aside.' }),
      with: sizes.map(({ id }) => id),
    },
  ];
}

function allowedDegrees(
  method: string,
  counts: readonly number[],
  n: number,
): readonly { readonly range: Range; readonly said: string }[] | undefined {
  if (method === 'r' && counts.length === 1) return [{ range: exactly(n - 2), said: `n − 2 = ${n - 2}` }];
  if (method === 'F' && counts.length > 1)
    return [
      { range: exactly(n - counts.length), said: `n − ${counts.length} groups = ${n - counts.length}` },
      {
        range: { low: Math.min(...counts) - 1, high: n - counts.length },
        said: `down to ${Math.min(...counts) - 1} with Welch's correction`,
      },
    ];
  if (method !== 't') return undefined;
  if (counts.length === 1) return [{ range: exactly(n - 1), said: `n − 1 = ${n - 1}` }];
  if (counts.length !== 2) return undefined;
  const least = Math.min(...counts) - 1;
  return [
    { range: exactly(n - 2), said: `n − 2 = ${n - 2}` },
    { range: { low: least, high: n - 2 }, said: `down to ${least} with Welch's correction or in pairs` },
  ];
}

function pFromStatistic(test: PrintedTest): Check[] {
  const { method, statistic, df, p, sizes } = test;
  if (p === undefined) return [];
  if (method === 'U') return pFromU(test, p);
  if (!TABLED.has(method)) return [];
  const tabled = method as TabledTest;
  const degrees = degreesOf(tabled, df, sizes);
  const base = { figure: p.id, name: 'p of its statistic', from: 'print' } as const;
  const rests = [statistic, ...(df === undefined ? (tabled === 'r' ? sizes : []) : [df])];
  if (degrees === undefined)
    return [
      {
        ...base,
        outcome: 'open',
        working: `The degrees of freedom of the ${method} test are not printed.`,
        resolve: 'Give the degrees of freedom.',
        with: [statistic.id],
      },
    ];
  const twoSided = (habit: PrintHabit) =>
    pRange(
      tabled,
      rangeOfFigure(statistic, habit),
      degrees.map((one) => (habit === 'any' ? one.any : one.rounded)),
    );
  const signed = tabled === 't' || tabled === 'z' || tabled === 'r';
  const halved = (habit: PrintHabit) => scaled(twoSided(habit), 0.5);
  const one = p.sided === 'one' && signed;
  const asSaid = one ? halved : twoSided;
  // Against the side that was asked about, a one-sided p is the rest.
  const against = (habit: PrintHabit) => minus(exactly(1), halved(habit));
  const sidesFit = (isOne: boolean) =>
    better(fitOf(p, isOne ? halved : twoSided), isOne ? fitOf(p, against) : 'no');
  const sides = signed ? `${one ? 'one' : 'two'}-sided ` : '';
  const fit = sidesFit(one);
  const found = printRangeText(asSaid(fit === 'agrees' ? 'rounded' : 'any'), finer(p));
  const working = `${rests.map(named).join(', ')} gives a ${sides}p of ${found}`;
  if (fit !== 'no')
    return [
      {
        ...base,
        outcome: fit,
        ...(fit === 'agrees' ? {} : { rounded: TRUNCATED }),
        working: `${working}.`,
        with: rests.map(({ id }) => id),
      },
    ];
  const resolve = 'State the test, its sides, and whether p is adjusted or comes from permutations.';
  const turned = signed && sidesFit(!one) !== 'no';
  return [
    {
      ...base,
      outcome: turned ? 'differs' : 'cannot be',
      working: `${working}; printed: ${p.printed}.`,
      ...(turned ? { explained: one ? 'a two-sided p' : 'a one-sided p' } : {}),
      resolve,
      with: rests.map(({ id }) => id),
    },
  ];
}

function degreesOf(
  test: TabledTest,
  df: PrintedFigure | undefined,
  sizes: readonly PrintedFigure[],
): readonly { readonly rounded: Range; readonly any: Range }[] | undefined {
  if (test === 'z') return [];
  const whole = test === 'F' ? 2 : 1;
  if (df !== undefined && df.values.length === whole) {
    return df.values.map((value) =>
      // Whole degrees of freedom are counts, not roundings.
      value.number.decimals === 0
        ? {
            rounded: exactly(numberPrinted({ ...df, values: [value] })),
            any: exactly(numberPrinted({ ...df, values: [value] })),
          }
        : { rounded: rangeOf(value, 'rounded'), any: rangeOf(value, 'any') },
    );
  }
  const n = wholeOf(only(sizes));
  return test === 'r' && n !== null ? [{ rounded: exactly(n - 2), any: exactly(n - 2) }] : undefined;
}

function better(a: Fit, b: Fit): Fit {
  return a === 'agrees' || b === 'no' ? a : b;
}

function scaled({ low, high }: Range, by: number): Range {
  return { low: low * by, high: high * by };
}

/** p values are worth two digits more than most figures. */
function finer(p: PrintedFigure): PrintedFigure {
  const [value] = p.values;
  return {
    ...p,
    values: [{ ...value, number: { ...value.number, decimals: Math.max(2, value.number.decimals) } }],
  };
}

/** Without ties U and the two numbers fix p; ties would change it, so a misfit is no contradiction. */
function pFromU({ statistic, sizes }: PrintedTest, p: PrintedFigure): Check[] {
  const base = { figure: p.id, name: 'p of U', from: 'print' } as const;
  const [n1, n2] = sizes.map(wholeOf);
  if (sizes.length !== 2 || n1 === null || n2 === null || n1 < 1 || n2 < 1)
    return [
      {
        ...base,
        outcome: 'open',
        working: 'p of U needs the numbers of records of both groups.',
        resolve: 'Give both numbers of records.',
        with: [statistic.id],
      },
    ];
  if (numberPrinted(statistic) > n1 * n2) return [];
  const ways = mannWhitneyFromU(numberPrinted(statistic), n1, n2);
  const half = p.sided === 'one' ? 0.5 : 1;
  const rests = [statistic, ...sizes];
  const fitting = ways.filter((way) => overlap(exactly(way.p * half), rangeOfFigure(p, 'any')));
  const list = ways.map((way) => `${way.method} ${shown(way.p * half, finer(p))}`).join(', ');
  const halved = ways.some((way) => overlap(exactly(way.p / 2), rangeOfFigure(p, 'any')));
  return [
    {
      ...base,
      outcome: fitting.length > 0 ? 'agrees' : 'differs',
      working: `${rests.map(named).join(', ')} without ties gives: ${list}. Printed: ${p.printed}${fitting.length > 0 ? `, the ${fitting[0].method}` : ''}.`,
      ...(fitting.length > 0
        ? {}
        : {
            ...(halved && half === 1 ? { explained: 'a one-sided p' } : {}),
            resolve:
              'State whether readings were tied, and whether p is exact or by the normal approximation.',
          }),
      with: rests.map(({ id }) => id),
    },
  ];
}
