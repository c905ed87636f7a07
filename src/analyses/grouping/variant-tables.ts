import type { ResultTable, TableCell } from '../contract.ts';
import { type GroupedRecord, groupName } from './found.ts';
import type { LeftOut, Variants } from './trust-found.ts';

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
export function togetherTable({ groups: all, variants }: Variants, k: number): ResultTable {
  const groups = all.slice(0, k).map((line) => line.slice(0, k));
  return {
    title: 'Together whatever the method',
    columns: [
      { id: 'group', label: 'group' },
      ...groups.map((_, group) => ({ id: `group${group + 1}`, label: `with group ${group + 1}` })),
    ],
    rows: groups.map((line, group): TableCell[] => [
      groupName(group),
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
        groupName(group),
        record.own ?? { why: group < 0 ? 'in no group' : 'alone in its group' },
        groupName(record.next),
        record.other ?? { why: 'there is no other group' },
      ]),
    note: 'Mean share of the other groupings in which the record falls together with the members of a group; least certain first.',
  };
}

export function leaveOutTable(left: readonly LeftOut[], k: number): ResultTable {
  return {
    title: 'Groups without one assemblage',
    columns: [
      { id: 'assemblage', label: 'left out' },
      { id: 'n', label: 'its records' },
      { id: 'adjustedRand', label: 'adjusted Rand index of the rest' },
      ...Array.from({ length: k }, (_, group) => ({ id: `group${group + 1}`, label: `group ${group + 1}` })),
    ],
    rows: left.map(({ assemblage, records, adjustedRand: agreement, groups }): TableCell[] => [
      assemblage,
      records,
      agreement,
      ...groups.slice(0, k).map((value) => value ?? { why: 'the group lies wholly in this assemblage' }),
    ]),
    note:
      'The assemblage is left out and the rest grouped anew into as many groups: greatest Jaccard coefficient of each ' +
      'group (without that assemblage) with a new one; 0.5 or less counts as dissolved (Hennig 2007).',
  };
}
