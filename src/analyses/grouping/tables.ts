import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import type { ResultTable, TableCell } from '../contract.ts';
import { agreementTable, matchedTable } from './agreement-tables.ts';
import { choiceTable, referencesTable } from './choice-tables.ts';
import { groupsTitle } from './doubt-words.ts';
import { BORDERLINE, type GroupingFound, groupName } from './found.ts';
import { contextTable, marksTable } from './mark-tables.ts';
import { leaveOutTable, togetherRecordsTable, togetherTable, variantsTable } from './variant-tables.ts';

/** Everything found, as tables: groups, membership, marks, choice of k, sites and periods, agreement. */
export function groupingTables(found: GroupingFound): Readonly<Record<string, ResultTable>> {
  const { variants, leftOut, places } = found.trust;
  return {
    groups: groupsTable(found),
    membership: membershipTable(found),
    marks: marksTable(found),
    choice: choiceTable(found),
    references: referencesTable(found),
    ...(found.graded === null ? {} : { graded: gradedTable(found, found.graded) }),
    ...(isUnavailable(variants)
      ? {}
      : {
          together: togetherTable(variants, found.k),
          sides: togetherRecordsTable(
            variants,
            Array.from(places, (place) => found.records[found.inMatrix[place]]),
          ),
          variants: variantsTable(variants),
        }),
    ...(isUnavailable(leftOut) ? {} : { leftOut: leaveOutTable(leftOut, found.k) }),
    ...(found.context.length === 0 ? {} : { context: contextTable(found) }),
    ...(found.agreement === null
      ? {}
      : { agreement: agreementTable(found.agreement), matched: matchedTable(found.agreement, found.k) }),
  };
}

const SIMPLIFIED =
  'Too many records for all dissimilarities: medoids come from samples, widths are simplified (medoids in place of ' +
  'whole groups; Hruschka, de Castro & Campello 2004).';

function groupsTable(found: GroupingFound): ResultTable {
  const { groups, records, unit, sampled } = found;
  return {
    title: groupsTitle(found),
    columns: [
      { id: 'group', label: 'group' },
      { id: 'name', label: 'called' },
      { id: 'n', label: `${unit}s` },
      { id: 'medoid', label: 'medoid' },
      { id: 'silhouette', label: 'mean silhouette width' },
      { id: 'stability', label: 'stability (mean Jaccard)' },
      { id: 'dissolved', label: 'resamples dissolved' },
      { id: 'resamples', label: 'resamples' },
      { id: 'borderline', label: 'borderline members' },
      { id: 'rule', label: 'shortest rule' },
      { id: 'recall', label: 'share of the group that fulfils it' },
      { id: 'precision', label: 'share of those fulfilling it in the group' },
    ],
    rows: groups.map((group, place) => {
      const { stability } = group;
      const held: TableCell[] = isUnavailable(stability)
        ? [stability, stability, stability]
        : stability.resamples === 0
          ? [{ why: 'no resample held a member' }, 0, 0]
          : [stability.mean, stability.dissolved, stability.resamples];
      return [
        groupName(place),
        group.name,
        group.size,
        records[group.medoid].id,
        group.silhouette,
        ...held,
        group.borderline,
        group.rule.text,
        group.rule.recall,
        group.rule.precision,
      ];
    }),
    note:
      'Numbered by size, called by the kinds that at least half of the recorded members have and the numbers that set them furthest apart. The medoid is the member least unlike the others. Silhouette: Rousseeuw 1987. ' +
      'Stability: mean Jaccard coefficient over resamples of items, dissolved at 0.5 or less (Hennig 2007). ' +
      `Borderline: silhouette width of ${BORDERLINE} or less. The rule describes these records and was tried on no others.` +
      (sampled ? ` ${SIMPLIFIED}` : ''),
  };
}

function membershipTable({ records }: GroupingFound): ResultTable {
  return {
    title: 'Membership',
    columns: [
      { id: 'id', label: 'fragment' },
      { id: 'item', label: 'item' },
      { id: 'source', label: 'source' },
      { id: 'row', label: 'row' },
      { id: 'group', label: 'group' },
      { id: 'silhouette', label: 'silhouette width' },
      { id: 'neighbour', label: 'next group' },
      { id: 'toMedoid', label: 'dissimilarity to medoid' },
      { id: 'borderline', label: 'borderline' },
    ],
    rows: records.map((record) => [
      record.id,
      record.item,
      record.source,
      record.sourceRow,
      groupName(record.group),
      record.group < 0 ? { why: 'in no group' } : record.silhouette,
      groupName(record.neighbour),
      record.group < 0 ? { why: 'in no group' } : record.toMedoid,
      record.borderline,
    ]),
  };
}

/** How much of each record belongs to each group, when it may belong to several. */
function gradedTable({ records, k, options, groups }: GroupingFound, graded: Float64Array): ResultTable {
  return {
    title: 'Graded membership',
    columns: [
      { id: 'id', label: 'fragment' },
      { id: 'group', label: 'group' },
      ...groups.map((_, group) => ({ id: `group${group + 1}`, label: `share in group ${groupName(group)}` })),
    ],
    rows: records.map((record, place) => [
      record.id,
      groupName(record.group),
      ...graded.subarray(place * k, (place + 1) * k),
    ]),
    note:
      'From the dissimilarities to the medoids of the groups, with fuzziness ' +
      `${options.fuzziness} (Krishnapuram, Joshi, Nasraoui & Yi 2001); shares of a record sum to 1.`,
  };
}
