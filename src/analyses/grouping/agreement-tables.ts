import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import type { ResultTable, TableCell } from '../contract.ts';
import { type Agreement, groupName } from './found.ts';

export function agreementTable(agreement: Agreement): ResultTable {
  const { vMeasure } = agreement;
  const measures: TableCell[] = isUnavailable(vMeasure)
    ? [vMeasure, vMeasure, vMeasure]
    : [vMeasure.homogeneity, vMeasure.completeness, vMeasure.vMeasure];
  return {
    title: `Agreement with ${agreement.label}`,
    columns: [
      { id: 'adjustedRand', label: 'adjusted Rand index' },
      { id: 'adjustedMutualInformation', label: 'adjusted mutual information' },
      { id: 'homogeneity', label: 'homogeneity' },
      { id: 'completeness', label: 'completeness' },
      { id: 'vMeasure', label: 'V-measure' },
      { id: 'n', label: 'n' },
      { id: 'missing', label: 'missing' },
    ],
    rows: [
      [
        agreement.adjustedRand,
        agreement.adjustedMutualInformation,
        ...measures,
        agreement.n,
        agreement.missing,
      ],
    ],
    note: 'The first two are 0 on average for random groups and 1 for equal ones; the V-measure is not corrected for chance.',
  };
}

export function matchedTable(agreement: Agreement, k: number): ResultTable {
  return {
    title: `Groups against ${agreement.label}`,
    columns: [
      { id: 'kind', label: agreement.label },
      ...Array.from({ length: k }, (_, group) => ({
        id: `group${group + 1}`,
        label: `group ${groupName(group)}`,
      })),
      { id: 'matched', label: 'paired with group' },
    ],
    rows: agreement.kinds.map((kind, place) => [
      kind,
      ...agreement.counts[place],
      groupName(agreement.match[place]),
    ]),
    note: 'Kinds and groups are paired one to one, the largest common count first.',
  };
}
