import { mean } from '../../../numerics/describing/moments.ts';
import { studentTwoSided } from '../../../numerics/foundation/distributions.ts';
import { createRandom } from '../../../numerics/foundation/random.ts';
import { isUnavailable } from '../../../numerics/foundation/unavailable.ts';
import { oneWayAnova, welchAnova } from '../../../numerics/tests/analysis-of-variance.ts';
import { association, withoutEmptyLines } from '../../../numerics/tests/contingency.ts';
import { fisherExact } from '../../../numerics/tests/fisher-exact.ts';
import { spearman } from '../../../numerics/tests/trend.ts';
import type { Unavailable } from '../../contract.ts';
import type { Way } from '../conventions/way.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import type { Recomputed } from './recomputed.ts';
import { ofTwoGroups, type Results, standardNormal } from './two-groups.ts';
import { rowsOf, termsOf, type View, valuesOf } from './values.ts';

/**
 * Statistic, degrees of freedom or p of the test that a figure names, recomputed from the records.
 *
 * @param place which of the two degrees of freedom of F; the last printed one if left out.
 */
export function testWays(
  figure: PrintedFigure,
  view: View,
  place = figure.values.length - 1,
): Recomputed | Unavailable {
  const method = figure.method ?? (figure.quantity === 'correlation' ? 'r' : null);
  if (method === null) return { why: 'the test is not named' };
  const results = resultsOf(method, figure, view);
  if ('why' in results) return results;
  const half = figure.sided === 'one' && figure.quantity === 'p' ? 0.5 : 1;
  const ways = results.list.flatMap((result): Way[] => {
    if (figure.quantity === 'p') return [{ said: result.said, value: result.p * half }];
    if (figure.quantity === 'df') {
      const value = result.df[place];
      return value === undefined ? [] : [{ said: result.said, value }];
    }
    return result.statistic === null ? [] : [{ said: result.said, value: result.statistic }];
  });
  return ways.length === 0
    ? { why: `the ${method} test has no such figure` }
    : { ways, basis: results.basis };
}

function resultsOf(method: string, figure: PrintedFigure, view: View): Results {
  switch (method) {
    case 't':
    case 'U':
      return ofTwoGroups(method, figure, view);
    case 'z':
      return standardNormal(figure, view);
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
