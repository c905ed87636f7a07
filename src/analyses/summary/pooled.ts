import { pointOf } from '../../fragments/accessors.ts';
import { isMissing } from '../../fragments/missing.ts';
import type { NumericColumn } from '../../fragments/table.ts';
import type { AnalysisInput } from '../contract.ts';
import { pooledMeans } from '../shared/pooled/means.ts';
import { pooledKinds } from '../shared/pooled/shares.ts';
import type { SummaryFound, TermGroup } from './found.ts';
import type { Part } from './parts.ts';
import { isYears } from './spans.ts';

/** Pooled means of numbers and shares of kinds; kinds at the level that all groups record. */
export function pooledSummary(
  { records }: AnalysisInput,
  numeric: readonly NumericColumn[],
  parts: readonly Part[],
  { terms, atLevel }: Pick<SummaryFound, 'terms' | 'atLevel'>,
): Pick<SummaryFound, 'pooledMeans' | 'pooledKinds'> {
  const means = numeric
    .filter((column) => !isYears(column))
    .map((column) => {
      const groups = parts.map(({ labels, rows }) => {
        const filled = rows.filter((row) => !isMissing(column, row) && Number.isFinite(pointOf(column, row)));
        return {
          label: labels.join(', '),
          values: filled.map((row) => pointOf(column, row)),
          items: filled.map((row) => records.item[row]),
        };
      });
      const { id, label, unit = '', transform } = column.attribute;
      const geometric =
        transform === 'log' && groups.every(({ values }) => values.every((value) => value > 0));
      return { id, label, unit, pooled: pooledMeans(groups, geometric) };
    });
  const counted = terms.map((group) => at(group, atLevel) ?? group).filter(({ whole }) => !whole);
  const attributes = [...new Set(counted.map(({ attribute }) => attribute))];
  const kinds = attributes.flatMap((attribute) => {
    const own = counted.filter((group) => group.attribute === attribute);
    const found = pooledKinds(
      { id: attribute, label: own[0].label },
      own.map(({ group, counted: of }) => ({
        label: group.join(', '),
        counts: new Map(of.map(({ term, count }) => [term, count])),
      })),
    );
    return found === null ? [] : [found];
  });
  return { pooledMeans: means.filter(({ pooled }) => !('why' in pooled)), pooledKinds: kinds };
}

/** The same group counted at the level that all record, where that differs. */
function at({ attribute, group }: TermGroup, atLevel: readonly TermGroup[]): TermGroup | undefined {
  return atLevel.find((one) => one.attribute === attribute && one.group.join() === group.join());
}
