import { chiSquaredUpper } from '../../../numerics/foundation/distributions.ts';
import { createRandom } from '../../../numerics/foundation/random.ts';
import { midranks } from '../../../numerics/foundation/ranks.ts';
import { isUnavailable } from '../../../numerics/foundation/unavailable.ts';
import { fisherTails } from '../../../numerics/printed/fisher-tails.ts';
import { oneWayAnova, welchAnova } from '../../../numerics/tests/analysis-of-variance.ts';
import { association, withoutEmptyLines } from '../../../numerics/tests/contingency.ts';
import { fisherExact } from '../../../numerics/tests/fisher-exact.ts';
import { type KruskalWallis, kruskalWallis } from '../../../numerics/tests/kruskal-wallis.ts';
import type { Unavailable } from '../../contract.ts';
import type { Way } from '../conventions/way.ts';
import { yates } from '../conventions/yates.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import { ofPairs } from './correlations.ts';
import type { Recomputed } from './recomputed.ts';
import { ofTwoGroups, type Results, standardNormal, type TestResult, twoGroups } from './two-groups.ts';
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
    if (figure.quantity === 'p')
      return half === 1
        ? [{ said: result.said, value: result.p }]
        : [
            { said: result.said, value: result.p * half },
            { said: `${result.said}, against the side that was asked about`, value: 1 - result.p * half },
          ];
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
      return figure.attributes.length === 2 && figure.versus.length === 0
        ? ofPairs(method, figure, view)
        : ofTwoGroups(method, figure, view);
    case 'U':
    case 'W':
      return ofTwoGroups('U', figure, view);
    case 'z':
      return standardNormal(figure, view);
    case 'F':
      return ofGroups(figure, view);
    case 'H':
      return ofGroups(figure, view, 'H');
    case 'chi-squared':
    case 'G':
    case 'fisher':
      return ofTable(method, figure, view);
    case 'r':
    case 'rho':
    case 'tau':
    case 'signed-rank':
      return ofPairs(method, figure, view);
    default:
      return { why: `"${method}" is not recomputed from data` };
  }
}

/** A number by the kinds of a second attribute, or by the two selections. */
export function groupsOf(
  figure: PrintedFigure,
  view: View,
): { readonly list: readonly Float64Array[]; readonly basis: string } | Unavailable {
  const [number, kinds] = figure.attributes;
  if (number !== undefined && kinds === undefined && figure.versus.length > 0) {
    const groups = twoGroups(figure, view);
    if ('why' in groups) return groups;
    return { list: [groups.x, groups.y], basis: `${groups.x.length} and ${groups.y.length} ${view.unit}s` };
  }
  if (number === undefined || kinds === undefined)
    return { why: 'F needs two attributes: the number and, after ";", the groups' };
  const rows = rowsOf(view, figure.select);
  const terms = termsOf(view, kinds, rows);
  if ('why' in terms) return terms;
  const names = [...new Set(terms)].filter((term) => term !== null);
  const list: Float64Array[] = [];
  for (const name of names) {
    const values = valuesOf(
      view,
      number,
      rows.filter((_, i) => terms[i] === name),
    );
    if ('why' in values) return values;
    if (values.points.length > 0) list.push(values.points);
  }
  return { list, basis: `${list.map(({ length }) => length).join(', ')} ${view.unit}s` };
}

function ofGroups(figure: PrintedFigure, view: View, method: 'F' | 'H' = 'F'): Results {
  const found1 = groupsOf(figure, view);
  if ('why' in found1) return found1;
  const { list: groups, basis } = found1;
  if (method === 'H') {
    const ranks = kruskalWallis(groups);
    if (isUnavailable(ranks)) return ranks;
    return {
      list: [
        { said: 'corrected for ties', statistic: ranks.statistic, df: [ranks.df], p: ranks.p },
        ...uncorrected(groups, ranks),
      ],
      basis,
    };
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
    basis,
  };
}

/** H as some print it, without the correction for ties. */
function uncorrected(groups: readonly Float64Array[], { statistic, df, n }: KruskalWallis): TestResult[] {
  const { tieSum } = midranks(groups.flatMap((group) => Array.from(group)));
  const plain = statistic * (1 - tieSum / (n * n * n - n));
  return tieSum === 0
    ? []
    : [{ said: 'not corrected for ties', statistic: plain, df: [df], p: chiSquaredUpper(plain, df) }];
}

/** Kinds by kinds, or kinds by the two selections. */
function ofTable(method: 'chi-squared' | 'G' | 'fisher', figure: PrintedFigure, view: View): Results {
  const counts = crossed(figure, view);
  if ('why' in counts) return counts;
  const { table } = withoutEmptyLines(counts.table);
  if (method === 'fisher') {
    const found = fisherExact(table, createRandom(1));
    if (isUnavailable(found)) return found;
    if (found.method !== 'exact') return { why: 'the table is too large for an exact test' };
    const tails = table.length === 2 && table[0].length === 2 ? fisherTails(table) : [];
    return {
      list: [
        { said: 'exact', statistic: null, df: [], p: found.p },
        ...tails.map(({ said, value }) => ({ said, statistic: null, df: [], p: value })),
      ],
      basis: counts.basis,
    };
  }
  const found = association(table);
  if (isUnavailable(found)) return found;
  const corrected = table.length === 2 && table[0].length === 2 ? yates(table) : null;
  return {
    list: [
      { said: 'Pearson', statistic: found.chiSquared, df: [found.df], p: found.p },
      { said: 'likelihood ratio', statistic: found.g, df: [found.df], p: found.gP },
      ...(corrected === null
        ? []
        : [{ said: "Yates's correction", statistic: corrected.statistic, df: [1], p: corrected.p }]),
    ],
    basis: counts.basis,
  };
}

export function crossed(
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
