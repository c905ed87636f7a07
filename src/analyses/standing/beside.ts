import { isOpenEnded, pointOf, termAt } from '../../fragments/accessors.ts';
import { type RowGroup, termLabel } from '../../fragments/groups.ts';
import { atLevel } from '../../fragments/level/common-level.ts';
import { isMissing } from '../../fragments/missing.ts';
import type { FragmentTable, NumericColumn, TermColumn } from '../../fragments/table.ts';
import { quantileSorted, sortedValues } from '../../numerics/describing/quantile.ts';
import { greatest, least } from '../../numerics/foundation/lists.ts';
import type { AnalysisInput } from '../contract.ts';
import type { Beside, BesideKind, BesideNumber, Quartiles } from './found.ts';
import type { StandingOptions } from './options.ts';

/** Items of another assemblage below which its share or median is no part of the range. */
const FEWEST = 5;

/**
 * The site beside all other assemblages together, attribute by attribute: shares of kinds at the level that all
 * record, quartiles of numbers, and between what the other assemblages lie one by one. It describes and tests nothing.
 *
 * @param site place of the site among `groups`. Attributes that nobody recorded are passed over.
 */
export function besideOthers(
  items: FragmentTable,
  groups: readonly RowGroup[],
  site: number,
  options: StandingOptions,
  input: AnalysisInput,
): Beside[] {
  const asked = [...new Set([options.of, ...options.beside])].filter((id) => id !== options.among);
  return asked.flatMap((id): Beside[] => {
    const level = atLevel(items, id, options.among, input.register, {
      level: typeof options.level === 'string' || id === options.of ? options.level : 'common',
    });
    const column = level.table.columns.get(id);
    if (column === undefined || column.kind === 'text') return [];
    const found =
      column.kind === 'term'
        ? kindsBeside(column, groups, site, input.register)
        : numbersBeside(column, groups, site);
    return found.siteN === 0 && found.othersN === 0 ? [] : [found];
  });
}

function kindsBeside(
  column: TermColumn,
  groups: readonly RowGroup[],
  site: number,
  register: AnalysisInput['register'],
): BesideKind {
  const { attribute } = column;
  const counted = groups.map(({ rows }) => {
    const counts = new Map<string, number>();
    for (const row of rows) {
      const term = termAt(column, row);
      if (term !== null) counts.set(term, (counts.get(term) ?? 0) + 1);
    }
    return { counts, n: [...counts.values()].reduce((sum, count) => sum + count, 0) };
  });
  const others = counted.filter((_, group) => group !== site);
  const othersN = others.reduce((sum, { n }) => sum + n, 0);
  const own = counted[site];
  const kinds = [...new Set(counted.flatMap(({ counts }) => [...counts.keys()]))].map((term) => {
    const label = termLabel(attribute, term, register);
    const elsewhere = others.reduce((sum, { counts }) => sum + (counts.get(term) ?? 0), 0);
    const single = others.flatMap(({ counts, n }) => (n < FEWEST ? [] : [(counts.get(term) ?? 0) / n]));
    return {
      label,
      siteCount: own.counts.get(term) ?? 0,
      site: own.n === 0 ? null : (own.counts.get(term) ?? 0) / own.n,
      othersCount: elsewhere,
      others: othersN === 0 ? null : elsewhere / othersN,
      range: single.length === 0 ? null : ([least(single), greatest(single)] as const),
    };
  });
  kinds.sort((a, b) => b.siteCount + b.othersCount - a.siteCount - a.othersCount);
  return { kind: 'kinds', label: attribute.label, siteN: own.n, othersN, kinds };
}

function numbersBeside(column: NumericColumn, groups: readonly RowGroup[], site: number): BesideNumber {
  const { attribute } = column;
  const values = groups.map(({ rows }) =>
    rows.filter((row) => !isMissing(column, row)).map((row) => pointOf(column, row)),
  );
  const others = values.flatMap((list, group) => (group === site ? [] : list));
  const medians = values.flatMap((list, group) =>
    group === site || list.length < FEWEST ? [] : [quartilesOf(list)?.median ?? Number.NaN],
  );
  const all = [...values[site], ...others];
  return {
    kind: 'numbers',
    label: attribute.label,
    unit: attribute.unit ?? '',
    logarithmic: attribute.transform === 'log' && all.every((value) => value > 0),
    siteN: values[site].length,
    othersN: others.length,
    openEnded: groups.reduce(
      (sum, { rows }) =>
        sum + rows.filter((row) => !isMissing(column, row) && isOpenEnded(column, row)).length,
      0,
    ),
    site: quartilesOf(values[site]),
    others: quartilesOf(others),
    range: medians.length === 0 ? null : [least(medians), greatest(medians)],
  };
}

function quartilesOf(values: readonly number[]): Quartiles | null {
  if (values.length === 0) return null;
  const sorted = sortedValues(values);
  const [q1, median, q3] = [0.25, 0.5, 0.75].map((share) => quantileSorted(sorted, share));
  return { q1, median, q3 };
}
