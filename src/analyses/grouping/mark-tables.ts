import type { ResultTable } from '../contract.ts';
import { type GroupingFound, groupName } from './found.ts';

export function marksTable({ groups }: GroupingFound): ResultTable {
  return {
    title: 'Marks of the groups',
    columns: [
      { id: 'group', label: 'group' },
      { id: 'attribute', label: 'attribute' },
      { id: 'term', label: 'kind' },
      { id: 'unit', label: 'unit' },
      { id: 'effect', label: 'effect size' },
      { id: 'inside', label: 'median or share in the group' },
      { id: 'outside', label: 'in the others' },
      { id: 'n', label: 'n in the group' },
      { id: 'nOthers', label: 'n in the others' },
    ],
    rows: groups.flatMap((group, place) =>
      group.marks.map((mark) => [
        groupName(place),
        mark.label,
        mark.term,
        mark.unit,
        mark.effect,
        mark.inside,
        mark.outside,
        mark.insideN,
        mark.outsideN,
      ]),
    ),
    note:
      "Effect size: Cliff's delta for numbers (medians beside it), phi of the most telling kind otherwise (shares " +
      'beside it); from -1 to 1, positive where the group has more. Descriptions, not tests: the groups were made ' +
      'from these attributes.',
  };
}

export function contextTable({ context }: GroupingFound): ResultTable {
  return {
    title: 'Sites and periods of the groups',
    columns: [
      { id: 'attribute', label: 'attribute' },
      { id: 'value', label: 'value' },
      { id: 'group', label: 'group' },
      { id: 'n', label: 'n' },
      { id: 'expected', label: 'expected' },
      { id: 'residual', label: 'standardised residual' },
    ],
    rows: context.flatMap((tally) =>
      tally.counts.flatMap((line, group) =>
        line.map((count, value) => [
          tally.label,
          tally.values[value],
          groupName(group),
          count,
          tally.expected[group][value],
          tally.residuals[group][value],
        ]),
      ),
    ),
    note:
      'Adjusted standardised residuals (Haberman 1973): beyond 2 or below -2 is more than chance often gives in ' +
      'one cell; of many cells some will be.',
  };
}
