import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import type { ResultTable, TableCell } from '../contract.ts';
import { printList, printNumber } from '../phrasing.ts';
import type { GroupedRecord } from './compute.ts';
import type { Trust } from './trust.ts';
import type { Variants } from './variants.ts';

const name = (group: number) => (group < 0 ? 'none' : String(group + 1));

/** Every other way to group that was tried, and how far it agrees. */
export function variantsTable({ variants }: Variants): ResultTable {
  return {
    title: 'Other ways to group the same records',
    columns: [
      { id: 'method', label: 'method' },
      { id: 'weights', label: 'weights' },
      { id: 'k', label: 'groups' },
      { id: 'silhouette', label: 'mean silhouette width' },
      { id: 'adjustedRand', label: 'adjusted Rand index with the groups chosen' },
    ],
    rows: variants.map(({ method, weights, k, meanSilhouette, adjustedRand }) => [
      method,
      weights,
      k,
      meanSilhouette ?? { why: 'fewer than two groups' },
      adjustedRand,
    ]),
    note: 'Silhouette widths under other weights are of another dissimilarity and not to be compared with each other.',
  };
}

/** How often the members of each group fall together, and with those of the others. */
export function togetherTable({ groups, variants }: Variants): ResultTable {
  return {
    title: 'Together whatever the method',
    columns: [
      { id: 'group', label: 'group' },
      ...groups.map((_, group) => ({ id: `group${group + 1}`, label: `with group ${group + 1}` })),
    ],
    rows: groups.map((line, group): TableCell[] => [
      name(group),
      ...line.map((share) => share ?? { why: 'a group of one has no pairs' }),
    ]),
    note: `Mean share of ${variants.length} other groupings (table of other ways) in which a pair of records falls into one group.`,
  };
}

/** The same for every record: with its own group, and with the one that it joins next. */
export function togetherRecordsTable({ records }: Variants, grouped: readonly GroupedRecord[]): ResultTable {
  return {
    title: 'Records that change sides',
    columns: [
      { id: 'id', label: 'fragment' },
      { id: 'group', label: 'group' },
      { id: 'own', label: 'share with its own group' },
      { id: 'next', label: 'next group' },
      { id: 'other', label: 'share with that one' },
    ],
    rows: records
      .map((record, place) => ({ record, grouped: grouped[place] }))
      .sort((a, b) => (a.record.own ?? 2) - (b.record.own ?? 2) || a.grouped.row - b.grouped.row)
      .map(({ record, grouped: { id, group } }): TableCell[] => [
        id,
        name(group),
        record.own ?? { why: group < 0 ? 'in no group' : 'alone in its group' },
        name(record.next),
        record.other ?? { why: 'there is no other group' },
      ]),
    note: 'Mean share of the other groupings in which the record falls together with the members of a group; least certain first.',
  };
}

/** A pair of one group should fall together at least this often for the group to be called firm. */
const FIRM = 0.8;

export function variantWords(variants: Trust['variants']): string {
  if (isUnavailable(variants)) return '';
  const { groups, variants: ways } = variants;
  const firm = groups.flatMap((line, group) => ((line[group] ?? 0) >= FIRM ? [name(group)] : []));
  const soft = groups.flatMap((line, group) => {
    const share = line[group];
    return share !== null && share < FIRM ? [`${name(group)} (${printNumber(share * 100, 2)} %)`] : [];
  });
  const say = (list: readonly string[]) => `${list.length === 1 ? 'group' : 'groups'} ${printList(list)}`;
  const parts = [
    ...(firm.length === 0 ? [] : [`pairs of ${say(firm)} fall together in at least ${FIRM * 100} %`]),
    ...(soft.length === 0 ? [] : [`those of ${say(soft)} less often`]),
  ];
  return parts.length === 0
    ? ''
    : `Over ${ways.length} other ways to group (methods, weights, numbers of groups) ${printList(parts)}`;
}
