import { normalTwoSided } from '../../../../numerics/foundation/distributions.ts';
import { exactly, overlap, type Range } from '../../../../numerics/printed/range.ts';
import { kendallWays, spearmanWays } from '../../../../numerics/printed/rank-correlation-p.ts';
import { signedRankWays } from '../../../../numerics/printed/signed-rank-p.ts';
import { mannWhitneyFromU, type PWay } from '../../../../numerics/printed/u-test.ts';
import { CONVENTIONS, triedText } from '../../conventions/register.ts';
import type { FigureCheck } from '../../found.ts';
import { named, numberPrinted, rangeOf, rangeOfFigure, shown, wholeOf } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import { finer } from '../finer.ts';
import type { PrintedTest } from './test-groups.ts';

/**
 * p of a rank test against its statistic and the numbers of records, in every usual way. Ties, which print does
 * not show, make the exact ways approximate and the spread smaller: what they can explain is no contradiction.
 */
export function rankTestChecks(test: PrintedTest): FigureCheck[] {
  return test.p.flatMap((p) => (p.stars ? [] : [rankTestCheck(test, p)]));
}

/** How far ties may lower the spread of a rank statistic: by a third of its variance at the most heavily tied. */
const MOST_TIED = 0.35;

/** The same of tau-b, whose own size ties raise too. */
const MOST_TIED_TAU = 0.6;

function rankTestCheck(test: PrintedTest, p: PrintedFigure): FigureCheck {
  const { statistic, sizes, method } = test;
  const base = { figure: p.id, name: `p of ${SAID[method] ?? method}`, from: 'print' } as const;
  const ns = sizesFor(test);
  if (ns === null)
    return {
      ...base,
      outcome: 'open',
      working: `p of ${SAID[method] ?? method} needs the numbers of records.`,
      resolve:
        method === 'U' || method === 'W' ? 'Give both numbers of records.' : 'Give the number of records.',
      with: [statistic.id],
    };
  const half = p.sided === 'one' ? 0.5 : 1;
  const values = ends(rangeOf(statistic.values[0], 'any'), statistic);
  const ways = values.flatMap((value) => waysOf(method, value, ns));
  const printed = rangeOfFigure(p, 'any');
  const fits = (way: PWay, by: number) => overlap(exactly(Math.min(1, way.p * by)), printed);
  const fitting = ways.find((way) => fits(way, half));
  const rests = [statistic, ...(ns.length > sizes.length && test.df !== undefined ? [test.df] : sizes)];
  const shownWays = waysOf(method, numberPrinted(statistic), ns);
  const list = shownWays.map((way) => `${shown(way.p * half, finer(p))} (${way.method})`).join(', ');
  const working = `${rests.map(named).join(', ')} without ties gives a p of ${list}; printed: ${p.printed}`;
  const rest = { with: rests.map(({ id }) => id) };
  const coarse = p.values[0].relation === '=' ? {} : { coarse: true as const };
  if (fitting !== undefined)
    return { ...base, outcome: 'agrees', working: `${working}, the ${fitting.method}.`, ...coarse, ...rest };
  const least = Math.min(...ways.map((way) => way.p * half));
  const most = Math.max(...ways.map((way) => way.p * half));
  // Between the ways, and below the least as far as ties reach, something ordinary gives the print.
  const reach = {
    low: tiedP(least, half, 1 / Math.sqrt(1 - MOST_TIED)),
    // Ties enlarge tau-b itself, so its p is larger than it seems.
    high:
      method === 'tau' ? tiedP(most, half, Math.sqrt(1 - MOST_TIED_TAU)) * 1.05 : Math.min(1, most * 1.02),
  };
  if (overlap(reach, printed))
    return {
      ...base,
      outcome: 'passes',
      working: `${working}. With ties p can lie between ${shown(reach.low, finer(p))} and ${shown(reach.high, finer(p))}.`,
      ...rest,
    };
  if (method === 'signed-rank' && overlap(withZeros(numberPrinted(statistic), ns[0], half), printed))
    return {
      ...base,
      outcome: 'passes',
      working: `${working}. With ${CONVENTIONS.zeros.under}, it can be so.`,
      ...rest,
    };
  const halved = half === 1 && ways.some((way) => fits(way, 0.5));
  return {
    ...base,
    outcome: 'differs',
    working: `${working}. ${triedText(['ties', ...(method === 'W' ? (['rankSums'] as const) : method === 'signed-rank' ? (['zeros'] as const) : [])])}`,
    ...(halved ? { explained: 'a one-sided p' } : {}),
    resolve: 'State whether readings were tied, and whether p is exact or by the normal approximation.',
    ...rest,
  };
}

const SAID: Readonly<Record<string, string>> = {
  U: 'U',
  W: 'the rank sum',
  'signed-rank': 'the signed ranks',
  rho: "Spearman's rank correlation",
  tau: "Kendall's rank correlation",
};

/** p of signed ranks of which some pairs, at most half, had no difference and were left out. */
function withZeros(v: number, n: number, half: number): Range {
  const fewest = Math.max(2, Math.ceil(n / 2));
  const ps = Array.from({ length: n - fewest + 1 }, (_, i) => fewest + i)
    .filter((left) => v <= (left * (left + 1)) / 2)
    .flatMap((left) => signedRankWays(v, left).map(({ p }) => p * half));
  return ps.length === 0 ? { low: 1, high: 0 } : { low: Math.min(...ps), high: Math.max(...ps) };
}

/** p of the same statistic with its z made larger or smaller by a factor. */
function tiedP(p: number, half: number, factor: number): number {
  const two = Math.min(1, p / half);
  if (two >= 1) return factor > 1 ? p * 0.9 : p;
  return half * normalTwoSided(zOf(two) * factor) * (factor > 1 ? 0.98 : 1);
}

/** z of a two-sided p, by halving. */
function zOf(p: number): number {
  let [low, high] = [0, 40];
  for (let turn = 0; turn < 80; turn++) {
    const middle = (low + high) / 2;
    if (normalTwoSided(middle) > p) low = middle;
    else high = middle;
  }
  return low;
}

function ends({ low, high }: Range, { values: [{ number }] }: PrintedFigure): readonly number[] {
  return number.decimals === 0 ? [(low + high) / 2].map(Math.round) : [low, (low + high) / 2, high];
}

/** The numbers of records that the test needs: two groups, or pairs; a correlation's df is n less two. */
function sizesFor({ method, sizes, df }: PrintedTest): readonly number[] | null {
  const ns = sizes.map(wholeOf);
  if (ns.some((n) => n === null || n < 1)) return null;
  const whole = ns as number[];
  if (method === 'U' || method === 'W') return whole.length === 2 ? whole : null;
  if (whole.length === 1) return whole;
  const degrees = df === undefined ? null : wholeOf(df);
  return degrees !== null && (method === 'rho' || method === 'tau') ? [degrees + 2, degrees] : null;
}

function waysOf(method: string, value: number, ns: readonly number[]): readonly PWay[] {
  const [a, b] = ns;
  switch (method) {
    case 'U':
      return value > a * b ? [] : mannWhitneyFromU(value, a, b);
    case 'W':
      // A rank sum of either group, or already less its least: all three are printed as W.
      return [0, (a * (a + 1)) / 2, (b * (b + 1)) / 2]
        .map((least) => value - least)
        .filter((u) => u >= 0 && u <= a * b)
        .flatMap((u) => mannWhitneyFromU(u, a, b));
    case 'signed-rank':
      return value > (a * (a + 1)) / 2 ? [] : signedRankWays(value, a);
    case 'rho':
      // In brackets some print n, some n - 2.
      return ns.filter((n) => n >= 3).flatMap((n) => spearmanWays(value, n));
    case 'tau':
      return ns.filter((n) => n >= 2).flatMap((n) => kendallWays(value, n));
    default:
      return [];
  }
}
