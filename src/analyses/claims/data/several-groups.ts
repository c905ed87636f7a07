import { chiSquaredUpper } from '../../../numerics/foundation/distributions.ts';
import { midranks } from '../../../numerics/foundation/ranks.ts';
import { isUnavailable } from '../../../numerics/foundation/unavailable.ts';
import { oneWayAnova, welchAnova } from '../../../numerics/tests/analysis-of-variance.ts';
import { type KruskalWallis, kruskalWallis } from '../../../numerics/tests/kruskal-wallis.ts';
import type { Unavailable } from '../../contract.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import { lacking } from './lacking.ts';
import { type Results, type TestResult, twoGroups } from './two-groups.ts';
import { rowsOf, termsOf, type View, valuesOf } from './values.ts';
import { varianceRatios } from './variance-ratio.ts';

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
  if (number === undefined || kinds === undefined) return lacking(figure, 'kinds');
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

/** F of one-way analysis and of Welch's, or H of Kruskal and Wallis. */
export function ofGroups(figure: PrintedFigure, view: View, method: 'F' | 'H' = 'F'): Results {
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
      ...varianceRatios(groups),
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
