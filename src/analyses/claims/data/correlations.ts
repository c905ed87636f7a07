import { mean, standardDeviation } from '../../../numerics/describing/moments.ts';
import { studentTwoSided } from '../../../numerics/foundation/distributions.ts';
import { isUnavailable } from '../../../numerics/foundation/unavailable.ts';
import { kendallWays, spearmanWays } from '../../../numerics/printed/rank-correlation-p.ts';
import { signedRankWays } from '../../../numerics/printed/signed-rank-p.ts';
import { kendall } from '../../../numerics/tests/kendall.ts';
import { spearman } from '../../../numerics/tests/trend.ts';
import type { Unavailable } from '../../contract.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import { lacking } from './lacking.ts';
import type { Results, TestResult } from './two-groups.ts';
import { rowsOf, type View, valuesOf } from './values.ts';

/** Two numbers, record by record: correlations, and tests of pairs. */
export function ofPairs(method: string, figure: PrintedFigure, view: View): Results {
  const pairs = numberPairs(figure, view);
  if ('why' in pairs) return pairs;
  const n = pairs.length;
  if (n < 3) return { why: `a correlation needs 3 pairs, not ${n}` };
  const [x, y] = [pairs.map(([a]) => a), pairs.map(([, b]) => b)];
  const list = listOf(method, x, y);
  return list.length === 0
    ? { why: 'one of the two does not vary' }
    : { list, basis: `${n} ${view.unit}s with both` };
}

/** Both numbers of each selected record that has both. */
export function numberPairs(
  figure: PrintedFigure,
  view: View,
): readonly (readonly [number, number])[] | Unavailable {
  const [first, second] = figure.attributes;
  if (first === undefined || second === undefined) return lacking(figure, 'pair');
  return rowsOf(view, figure.select).flatMap((row) => {
    const [a, b] = [first, second].map((attribute) => valuesOf(view, attribute, [row]));
    return 'why' in a || 'why' in b || a.missing + b.missing > 0 ? [] : [[a.points[0], b.points[0]] as const];
  });
}

function listOf(method: string, x: readonly number[], y: readonly number[]): readonly TestResult[] {
  if (method === 't' || method === 'signed-rank') return paired(method, x, y);
  const product = pearsonResults(x, y);
  const ranks = spearmanResults(x, y);
  const order = kendallResults(x, y);
  // The test that is named comes first; "r" alone is printed of all three.
  if (method === 'rho') return ranks;
  return method === 'tau' ? order : [...product, ...ranks, ...order];
}

function pearsonResults(x: readonly number[], y: readonly number[]): TestResult[] {
  const r = pearson(x, y);
  const n = x.length;
  if (r === null) return [];
  const t = r * Math.sqrt((n - 2) / (1 - r * r));
  return [
    { said: 'Pearson', statistic: r, df: [n - 2], p: Math.abs(r) >= 1 ? 0 : studentTwoSided(t, n - 2) },
  ];
}

function spearmanResults(x: readonly number[], y: readonly number[]): TestResult[] {
  const found = spearman(x, y);
  if (isUnavailable(found)) return [];
  const { statistic } = found;
  return [
    { said: 'by ranks (Spearman)', statistic, df: [x.length - 2], p: found.p },
    ...spearmanWays(statistic, x.length).map(({ method, p }) => ({
      said: `by ranks (Spearman), ${method}`,
      statistic: null,
      df: [],
      p,
    })),
  ];
}

function kendallResults(x: readonly number[], y: readonly number[]): TestResult[] {
  const found = kendall(x, y);
  if (isUnavailable(found)) return [];
  return [
    { said: 'Kendall', statistic: found.statistic, df: [], p: found.p },
    ...kendallWays(found.statistic, x.length).map(({ method, p }) => ({
      said: `Kendall, ${method}`,
      statistic: null,
      df: [],
      p,
    })),
  ];
}

function paired(method: 't' | 'signed-rank', x: readonly number[], y: readonly number[]): TestResult[] {
  const gaps = x.map((value, i) => value - y[i]);
  const n = gaps.length;
  if (method === 't') {
    const [average, sd] = [mean(gaps), standardDeviation(gaps)];
    if (isUnavailable(average) || isUnavailable(sd) || sd === 0) return [];
    const t = (average * Math.sqrt(n)) / sd;
    // A correlation is tested by a t of its own.
    const r = pearson(x, y);
    const tOfR = r === null || Math.abs(r) >= 1 ? null : r * Math.sqrt((n - 2) / (1 - r * r));
    return [
      { said: 'in pairs', statistic: t, df: [n - 1], p: studentTwoSided(t, n - 1) },
      ...(tOfR === null
        ? []
        : [{ said: 'of their correlation', statistic: tOfR, df: [n - 2], p: studentTwoSided(tOfR, n - 2) }]),
    ];
  }
  const filled = gaps.filter((gap) => gap !== 0);
  const sizes = filled.map(Math.abs);
  const rank = (size: number) =>
    sizes.filter((one) => one < size).length + (sizes.filter((one) => one === size).length + 1) / 2;
  const v = filled.reduce((sum, gap) => sum + (gap > 0 ? rank(Math.abs(gap)) : 0), 0);
  const other = (filled.length * (filled.length + 1)) / 2 - v;
  const alike = [...new Set(sizes)].map((size) => sizes.filter((one) => one === size).length);
  const ties = alike.reduce((sum, t) => sum + (t * t * t - t), 0);
  const ways = [
    ...signedRankWays(v, filled.length),
    ...(ties === 0
      ? []
      : signedRankWays(v, filled.length, ties)
          .filter(({ method: said }) => said !== 'exact')
          .map(({ method: said, p }) => ({ method: `${said}, corrected for ties`, p }))),
  ];
  return ways.flatMap(({ method: said, p }) => [
    { said: `signed ranks, ${said}`, statistic: v, df: [], p },
    { said: `signed ranks of the other sign, ${said}`, statistic: other, df: [], p },
  ]);
}

/** Product-moment correlation (Pearson 1896). */
export function pearson(x: readonly number[], y: readonly number[]): number | null {
  const [meanX, meanY] = [mean(x), mean(y)];
  if (isUnavailable(meanX) || isUnavailable(meanY)) return null;
  let [product, left, right] = [0, 0, 0];
  x.forEach((value, i) => {
    product += (value - meanX) * (y[i] - meanY);
    left += (value - meanX) * (value - meanX);
    right += (y[i] - meanY) * (y[i] - meanY);
  });
  return left === 0 || right === 0 ? null : Math.max(-1, Math.min(1, product / Math.sqrt(left * right)));
}
