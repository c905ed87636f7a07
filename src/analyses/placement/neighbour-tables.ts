import type { ResultTable, TableCell } from '../contract.ts';
import type { PlacementFound } from './found.ts';

export function neighboursTable({ neighbours, comparedOn, unit, broad }: PlacementFound): ResultTable {
  const blocks = neighbours[0]?.blocks.map(({ block }) => block) ?? [];
  return {
    title: 'Nearest comparanda',
    columns: [
      { id: 'rank', label: 'rank' },
      { id: 'id', label: unit },
      { id: 'assemblage', label: 'assemblage' },
      { id: 'distance', label: 'distance' },
      ...(broad === null
        ? []
        : [
            { id: 'least', label: 'at least' },
            { id: 'greatest', label: 'at most' },
          ]),
      ...blocks.map((block) => ({ id: block, label: `part from ${block}` })),
      { id: 'shared', label: 'compared on' },
      { id: 'of', label: 'of' },
      { id: 'notCompared', label: 'not compared' },
      { id: 'recordedUse', label: 'recorded use' },
      { id: 'useBasis', label: 'use known by' },
      { id: 'source', label: 'source' },
      { id: 'sourceRow', label: 'row' },
    ],
    rows: neighbours.map((one, place) => [
      place + 1,
      one.id,
      one.assemblage,
      one.distance,
      ...(broad === null ? [] : [one.least, one.greatest]),
      ...one.blocks.map(({ contribution }): TableCell => contribution ?? { why: 'not compared' }),
      one.shared,
      one.of,
      one.notCompared.join(', '),
      one.use,
      one.useBasis,
      one.source,
      one.sourceRow,
    ]),
    note: `Compared on ${comparedOn.join(', ')}. The parts add up to the distance. Compared on: so many of the attributes that the find has; what a record lacks adds nothing to its distance.${
      broad === null
        ? ''
        : ` At least and at most: as near and as far as broad terms allow (${broad.terms.join(', ')}).`
    }`,
  };
}

export function usesTable({ neighbours }: PlacementFound): ResultTable {
  const seen = new Map<string, { use: string; basis: string; count: number; nearest: number }>();
  for (const { use, useBasis, distance } of neighbours) {
    if (use === '') continue;
    const key = JSON.stringify([use, useBasis]);
    const entry = seen.get(key) ?? { use, basis: useBasis, count: 0, nearest: distance };
    seen.set(key, { ...entry, count: entry.count + 1 });
  }
  return {
    title: 'Recorded uses of the nearest comparanda',
    columns: [
      { id: 'use', label: 'recorded use' },
      { id: 'useBasis', label: 'known by' },
      { id: 'n', label: 'among the nearest' },
      { id: 'distance', label: 'nearest of them' },
    ],
    rows: [...seen.values()].map(({ use, basis, count, nearest }) => [
      use,
      basis === '' ? 'not recorded how it was known' : basis,
      count,
      nearest,
    ]),
    note: 'Likeness of fabric does not carry a use over: each step from structure to use needs evidence of its own.',
  };
}
