import type { ResultTable, TableCell, Unavailable } from '../contract.ts';
import { levelNote } from '../shared/level/said.ts';
import { dealtBy } from './dealt.ts';
import type { Together } from './together-found.ts';

/** The tests of all attributes together, and how widely each group spreads; nothing where one was asked. */
export function togetherTable({
  together,
}: {
  readonly together: Together | Unavailable | null;
}): Record<string, ResultTable> {
  if (together === null) return {};
  const columns = [
    { id: 'test', label: 'test' },
    { id: 'statistic', label: 'statistic' },
    { id: 'df', label: 'df' },
    { id: 'dfWithin', label: 'df within' },
    { id: 'p', label: 'p' },
    { id: 'rSquared', label: 'R squared' },
    { id: 'method', label: 'p from' },
    { id: 'items', label: 'items' },
  ];
  if ('why' in together) {
    return {
      together: { title: TITLE, columns, rows: [['all', together, null, null, together, null, '', null]] },
    };
  }
  const { place, dispersion, similarity, items, groups } = together;
  const df = [groups.length - 1, items - groups.length];
  const rows: TableCell[][] = [
    'why' in place
      ? refused('place: permutational analysis of variance, pseudo-F', place, items)
      : [
          'place: permutational analysis of variance, pseudo-F',
          place.statistic,
          ...df,
          place.p,
          place.rSquared,
          dealtBy(place),
          items,
        ],
    'why' in dispersion
      ? refused('spread: distances to the centroids, F', dispersion, items)
      : [
          'spread: distances to the centroids, F',
          dispersion.statistic,
          ...df,
          dispersion.p,
          null,
          dealtBy(dispersion),
          items,
        ],
    'why' in similarity
      ? refused('place: analysis of similarities, R', similarity, items)
      : [
          'place: analysis of similarities, R',
          similarity.statistic,
          null,
          null,
          similarity.p,
          null,
          dealtBy(similarity),
          items,
        ],
  ];
  return {
    together: {
      title: TITLE,
      columns,
      rows,
      note: `On the block dissimilarity of ${together.attributes.join(', ')}; items are dealt whole. A difference of spread can look like one of place.${drawnNote(together)}${levelNote(together.level, 'item')}`,
    },
    spreads: {
      title: 'Spread of the groups in all attributes',
      columns: [
        { id: 'group', label: 'group' },
        { id: 'items', label: 'items' },
        { id: 'distance', label: 'mean distance to the centroid' },
      ],
      rows: groups.map(({ label, items: count }, group) => [
        label,
        count,
        'why' in dispersion ? dispersion : dispersion.meanDistance[group],
      ]),
    },
  };
}

/** Where not all items could be compared with each other. */
function drawnNote({ drawnFrom, items, setAside }: Together): string {
  return drawnFrom === null
    ? ''
    : ` On ${items + setAside} items, drawn by chance from ${drawnFrom} of all groups.`;
}

const TITLE = 'All attributes together';

function refused(test: string, why: Unavailable, items: number): TableCell[] {
  return [test, why, null, null, why, null, '', items];
}
