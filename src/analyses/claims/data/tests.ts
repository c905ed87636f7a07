import { oneWayAnova, welchAnova } from '../../../numerics/analysis-of-variance.ts';
import { association, withoutEmptyLines } from '../../../numerics/contingency.ts';
import { normalTwoSided, studentTwoSided } from '../../../numerics/distributions.ts';
import { fisherExact } from '../../../numerics/fisher-exact.ts';
import { mannWhitney } from '../../../numerics/mann-whitney.ts';
import { mean, standardDeviation } from '../../../numerics/moments.ts';
import { createRandom } from '../../../numerics/random.ts';
import { spearman } from '../../../numerics/trend.ts';
import { isUnavailable } from '../../../numerics/unavailable.ts';
import type { Unavailable } from '../../contract.ts';
import type { PrintedFigure } from '../claim.ts';
import type { Way } from '../self/table-tests.ts';
import type { Recomputed } from './quantities.ts';
import { rowsOf, termsOf, type View, valuesOf } from './values.ts';

interface TestResult {
  readonly said: string;
  readonly statistic: number | null;
  readonly df: readonly number[];
  readonly p: number;
}

/** Statistic, degrees of freedom or p of the test that a figure names, recomputed from the records. */
export function testWays(figure: PrintedFigure, view: View): Recomputed | Unavailable {
  const method = figure.method ?? (figure.quantity === 'correlation' ? 'r' : null);
  if (method === null) return { why: 'the test is not named' };
  const results = resultsOf(method, figure, view);
  if ('why' in results) return results;
  const half = figure.sided === 'one' && figure.quantity === 'p' ? 0.5 : 1;
  const ways = results.list.flatMap((result): Way[] => {
    if (figure.quantity === 'p') return [{ said: result.said, value: result.p * half }];
    if (figure.quantity === 'df') {
      // Of the two of F the first is a matter of the groups; the second is what is checked.
      const value = result.df[figure.values.length - 1];
      return value === undefined ? [] : [{ said: result.said, value }];
    }
    return result.statistic === null ? [] : [{ said: result.said, value: result.statistic }];
  });
  return ways.length === 0
    ? { why: `the ${method} test has no such figure` }
    : { ways, basis: results.basis };
}

type Results = { readonly list: readonly TestResult[]; readonly basis: string } | Unavailable;

function resultsOf(method: string, figure: PrintedFigure, view: View): Results {
  switch (method) {
    case 't':
    case 'U':
      return ofTwoGroups(method, figure, view);
    case 'F':
      return ofGroups(figure, view);
    case 'chi-squared':
    case 'fisher':
      return ofTable(method, figure, view);
    case 'r':
      return ofPairs(figure, view);
    default:
      return { why: `"${method}" is not recomputed from data` };
  }
}

function ofTwoGroups(method: 't' | 'U', figure: PrintedFigure, view: View): Results {
  const [attribute] = figure.attributes;
  if (attribute === undefined || figure.versus.length === 0)
    return { why: 'the attribute and both groups ("select", "versus") must be given' };
  const [a, b] = [figure.select, figure.versus].map((part) => valuesOf(view, attribute, rowsOf(view, part)));
  if ('why' in a) return a;
  if ('why' in b) return b;
  const [x, y] = [a.points, b.points];
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
  return {
    list: [
      { said: `U of the first group, ${found.method}`, statistic: found.statistic, df: [], p: found.p },
      { said: 'U of the second group', statistic: other, df: [], p: found.p },
      ...approximate.map(({ method: said, p }) => ({ said, statistic: null, df: [], p })),
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

/** A number by the kinds of a second attribute. */
function ofGroups(figure: PrintedFigure, view: View): Results {
  const [number, kinds] = figure.attributes;
  if (number === undefined || kinds === undefined)
    return { why: 'F needs two attributes: the number and, after ";", the groups' };
  const rows = rowsOf(view, figure.select);
  const terms = termsOf(view, kinds, rows);
  if ('why' in terms) return terms;
  const names = [...new Set(terms)].filter((term) => term !== null);
  const groups: Float64Array[] = [];
  for (const name of names) {
    const values = valuesOf(
      view,
      number,
      rows.filter((_, i) => terms[i] === name),
    );
    if ('why' in values) return values;
    if (values.points.length > 0) groups.push(values.points);
  }
  const found = oneWayAnova(groups);
  if (isUnavailable(found)) return found;
  const welch = welchAnova(groups);
  return {
    list: [
      {
        said: 'analysis of variance',
        statistic: found.statistic,
        df: [found.dfBetween, found.dfWithin],
        p: found.p,
      },
      ...(isUnavailable(welch)
        ? []
        : [{ said: 'Welch', statistic: welch.statistic, df: [welch.dfBetween, welch.dfWithin], p: welch.p }]),
    ],
    basis: `${groups.map(({ length }) => length).join(', ')} ${view.unit}s`,
  };
}

/** Kinds by kinds, or kinds by the two selections. */
function ofTable(method: 'chi-squared' | 'fisher', figure: PrintedFigure, view: View): Results {
  const counts = crossed(figure, view);
  if ('why' in counts) return counts;
  const { table } = withoutEmptyLines(counts.table);
  if (method === 'fisher') {
    const found = fisherExact(table, createRandom(1));
    if (isUnavailable(found)) return found;
    if (found.method !== 'exact') return { why: 'the table is too large for an exact test' };
    return { list: [{ said: 'exact', statistic: null, df: [], p: found.p }], basis: counts.basis };
  }
  const found = association(table);
  if (isUnavailable(found)) return found;
  return {
    list: [
      { said: 'Pearson', statistic: found.chiSquared, df: [found.df], p: found.p },
      { said: 'likelihood ratio', statistic: found.g, df: [found.df], p: found.gP },
    ],
    basis: counts.basis,
  };
}

function crossed(
  figure: PrintedFigure,
  view: View,
): { readonly table: number[][]; readonly basis: string } | Unavailable {
  const [first, second] = figure.attributes;
  if (first === undefined) return { why: 'the attribute is not named' };
  const lines: { readonly line: string; readonly kind: string }[] = [];
  if (second === undefined) {
    if (figure.versus.length === 0) return { why: 'a second attribute or the other group is not given' };
    for (const [line, part] of [
      ['select', figure.select],
      ['versus', figure.versus],
    ] as const) {
      const terms = termsOf(view, first, rowsOf(view, part));
      if ('why' in terms) return terms;
      for (const kind of terms) if (kind !== null) lines.push({ line, kind });
    }
  } else {
    const rows = rowsOf(view, figure.select);
    const [a, b] = [termsOf(view, first, rows), termsOf(view, second, rows)];
    if ('why' in a) return a;
    if ('why' in b) return b;
    rows.forEach((_, i) => {
      const [line, kind] = [a[i], b[i]];
      if (line !== null && kind !== null) lines.push({ line, kind });
    });
  }
  const names = [...new Set(lines.map(({ line }) => line))];
  const kinds = [...new Set(lines.map(({ kind }) => kind))];
  return {
    table: names.map((name) =>
      kinds.map((kind) => lines.filter((one) => one.line === name && one.kind === kind).length),
    ),
    basis: `${lines.length} ${view.unit}s`,
  };
}

/** Two numbers, record by record. */
function ofPairs(figure: PrintedFigure, view: View): Results {
  const [first, second] = figure.attributes;
  if (first === undefined || second === undefined)
    return { why: 'a correlation needs two attributes, parted by ";"' };
  const pairs = rowsOf(view, figure.select).flatMap((row) => {
    const [a, b] = [first, second].map((attribute) => valuesOf(view, attribute, [row]));
    return 'why' in a || 'why' in b || a.missing + b.missing > 0 ? [] : [[a.points[0], b.points[0]] as const];
  });
  const n = pairs.length;
  if (n < 3) return { why: `a correlation needs 3 pairs, not ${n}` };
  const [x, y] = [pairs.map(([a]) => a), pairs.map(([, b]) => b)];
  const r = pearson(x, y);
  if (r === null) return { why: 'one of the two does not vary' };
  const t = r * Math.sqrt((n - 2) / (1 - r * r));
  const ranks = spearman(x, y);
  return {
    list: [
      { said: 'Pearson', statistic: r, df: [n - 2], p: Math.abs(r) >= 1 ? 0 : studentTwoSided(t, n - 2) },
      ...(isUnavailable(ranks)
        ? []
        : [{ said: 'by ranks (Spearman)', statistic: ranks.statistic, df: [n - 2], p: ranks.p }]),
    ],
    basis: `${n} ${view.unit}s with both`,
  };
}

/** Product-moment correlation (Pearson 1896). */
function pearson(x: readonly number[], y: readonly number[]): number | null {
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
