import { mean, standardDeviation } from '../../../numerics/describing/moments.ts';
import { normalTwoSided, studentTwoSided } from '../../../numerics/foundation/distributions.ts';
import { isUnavailable } from '../../../numerics/foundation/unavailable.ts';
import { mannWhitneyFromU } from '../../../numerics/printed/u-test.ts';
import { mannWhitney } from '../../../numerics/tests/mann-whitney.ts';
import type { Unavailable } from '../../contract.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import { lacking } from './lacking.ts';
import { known, rowsOf, type View, valuesOf } from './values.ts';

/** One way to compute a test. */
export interface TestResult {
  readonly said: string;
  readonly statistic: number | null;
  readonly df: readonly number[];
  readonly p: number;
}

export type Results = { readonly list: readonly TestResult[]; readonly basis: string } | Unavailable;

export function twoGroups(
  figure: PrintedFigure,
  view: View,
): { x: Float64Array; y: Float64Array } | Unavailable {
  const [attribute] = figure.attributes;
  if (attribute === undefined || figure.versus.length === 0) return lacking(figure, 'groups');
  const [a, b] = [figure.select, figure.versus].map((part) => valuesOf(view, attribute, rowsOf(view, part)));
  if ('why' in a) return a;
  return 'why' in b ? b : { x: a.points, y: b.points };
}

/** Student's and Welch's t, or Mann-Whitney's U, of two groups. */
export function ofTwoGroups(method: 't' | 'U', figure: PrintedFigure, view: View): Results {
  const groups = twoGroups(figure, view);
  if ('why' in groups) return groups;
  const { x, y } = groups;
  const basis = `${x.length} and ${y.length} ${view.unit}s`;
  if (method === 't') {
    const list = studentAndWelch(x, y);
    return 'why' in list ? list : { list, basis };
  }
  const found = mannWhitney(x, y);
  if (isUnavailable(found)) return found;
  const other = x.length * y.length - found.statistic;
  const distance = Math.abs(found.statistic - (x.length * y.length) / 2);
  const tied = found.ties ? ', corrected for ties' : '';
  const approximate = [
    { method: `normal approximation${tied}`, p: normalTwoSided(distance / found.sd) },
    {
      method: `normal approximation with continuity correction${tied}`,
      p: normalTwoSided(Math.max(0, distance - 0.5) / found.sd),
    },
  ];
  // As programs print it that pass over ties.
  const without = mannWhitneyFromU(found.statistic, x.length, y.length);
  const least = [(x.length * (x.length + 1)) / 2, (y.length * (y.length + 1)) / 2];
  const sums = figure.method === 'W' ? [found.statistic + least[0], other + least[1]] : [];
  return {
    list: [
      { said: `U of the first group, ${found.method}`, statistic: found.statistic, df: [], p: found.p },
      { said: 'U of the second group', statistic: other, df: [], p: found.p },
      ...approximate.map(({ method: said, p }) => ({ said, statistic: null, df: [], p })),
      ...without.map(({ method: said, p }) => ({
        said: `${said}, ties passed over`,
        statistic: null,
        df: [],
        p,
      })),
      ...sums.map((statistic) => ({ said: 'sum of ranks', statistic, df: [], p: found.p })),
    ],
    basis,
  };
}

function studentAndWelch(x: Float64Array, y: Float64Array): readonly TestResult[] | Unavailable {
  const [meanX, meanY, sdX, sdY] = [mean(x), mean(y), standardDeviation(x), standardDeviation(y)];
  if (isUnavailable(meanX) || isUnavailable(meanY) || isUnavailable(sdX) || isUnavailable(sdY))
    return { why: 'a group has fewer than two readings' };
  const [n1, n2] = [x.length, y.length];
  const [v1, v2] = [(sdX * sdX) / n1, (sdY * sdY) / n2];
  const pooled = ((n1 - 1) * sdX * sdX + (n2 - 1) * sdY * sdY) / (n1 + n2 - 2);
  if (pooled === 0) return { why: 'neither group varies' };
  const student = (meanX - meanY) / Math.sqrt(pooled * (1 / n1 + 1 / n2));
  const welch = (meanX - meanY) / Math.sqrt(v1 + v2);
  const welchDf = ((v1 + v2) * (v1 + v2)) / ((v1 * v1) / (n1 - 1) + (v2 * v2) / (n2 - 1));
  return [
    {
      said: 'pooled variances',
      statistic: student,
      df: [n1 + n2 - 2],
      p: studentTwoSided(student, n1 + n2 - 2),
    },
    { said: 'Welch', statistic: welch, df: [welchDf], p: studentTwoSided(welch, welchDf) },
  ];
}

/**
 * z of two groups: of their shares where "counted" says what is counted, else of their ranks and, for large
 * samples, of their means. A positive z favours the first group.
 */
export function standardNormal(figure: PrintedFigure, view: View): Results {
  return figure.counted.length > 0 ? twoShares(figure, view) : zOfNumbers(figure, view);
}

/** Difference of two shares over its error, with one common share or with each its own (Fleiss 1981, ch. 2). */
function twoShares(figure: PrintedFigure, view: View): Results {
  if (figure.versus.length === 0) return { why: 'the other group is not given under "versus"' };
  const [a, b] = [figure.select, figure.versus].map((part) => ({
    n: rowsOf(view, [...part, ...known(figure.counted)]).length,
    count: rowsOf(view, [...part, ...figure.counted]).length,
  }));
  if (a.n === 0 || b.n === 0) return { why: 'a group has no record' };
  const [p, q] = [a.count / a.n, b.count / b.n];
  const all = (a.count + b.count) / (a.n + b.n);
  const ways = [
    ['common share', all * (1 - all) * (1 / a.n + 1 / b.n)],
    ['each its own share', (p * (1 - p)) / a.n + (q * (1 - q)) / b.n],
  ] as const;
  const list = ways.flatMap(([said, variance]) =>
    variance > 0 ? [zResult(`two shares, ${said}`, (p - q) / Math.sqrt(variance))] : [],
  );
  return list.length === 0
    ? { why: 'the shares do not vary' }
    : { list, basis: `${a.count} of ${a.n} and ${b.count} of ${b.n} ${view.unit}s` };
}

function zOfNumbers(figure: PrintedFigure, view: View): Results {
  const groups = twoGroups(figure, view);
  if ('why' in groups) return groups;
  const { x, y } = groups;
  const found = mannWhitney(x, y);
  if (isUnavailable(found)) return found;
  const apart = found.statistic - (x.length * y.length) / 2;
  const corrected = Math.sign(apart) * Math.max(0, Math.abs(apart) - 0.5);
  const untied = Math.sqrt((x.length * y.length * (x.length + y.length + 1)) / 12);
  const means = studentAndWelch(x, y);
  return {
    list: [
      zResult('of U', apart / found.sd),
      zResult('of U with continuity correction', corrected / found.sd),
      zResult('of U, ties passed over', apart / untied),
      ...('why' in means
        ? []
        : means.flatMap(({ said, statistic }) =>
            said === 'Welch' && statistic !== null ? [zResult('of the means, large samples', statistic)] : [],
          )),
    ],
    basis: `${x.length} and ${y.length} ${view.unit}s`,
  };
}

function zResult(said: string, statistic: number): TestResult {
  return { said, statistic, df: [], p: normalTwoSided(Math.abs(statistic)) };
}
