import type { ResultTable } from '../contract.ts';
import { coefficientName } from '../likeness-rank.ts';
import { printLevel } from '../phrasing.ts';
import { levelNote } from '../shared/level/said.ts';
import type { MapFound } from './found.ts';

export function mapTables(found: MapFound): Readonly<Record<string, ResultTable>> {
  return { places: placesTable(found), lines: linesTable(found) };
}

function placesTable(found: MapFound): ResultTable {
  const { places, coordinates, unit, share, to, groupLabel, options, placesLabel } = found;
  const where = 'why' in coordinates ? null : coordinates;
  const name = coefficientName(options.coefficient);
  return {
    title: 'The places',
    columns: [
      { id: 'place', label: placesLabel },
      ...(groupLabel === null ? [] : [{ id: 'group', label: groupLabel }]),
      { id: 'n', label: `${unit}s counted` },
      { id: 'items', label: 'items' },
      { id: 'share', label: `share of ${share}` },
      { id: 'likeness', label: `${name} to ${to}` },
      ...(where === null
        ? []
        : [
            { id: 'across', label: where.x, unit: where.unit },
            { id: 'up', label: where.y, unit: where.unit },
            { id: 'within', label: 'known to within', unit: where.unit },
          ]),
    ],
    rows: places.map((place) => [
      place.label,
      ...(groupLabel === null ? [] : [place.group ?? { why: 'not recorded, or several' }]),
      place.records,
      place.items,
      place.share,
      place.likeness ?? { why: 'the place itself' },
      ...(where === null
        ? []
        : place.at === null
          ? [{ why: 'not recorded' }, { why: 'not recorded' }, { why: 'not recorded' }]
          : [place.at[0], place.at[1], place.within]),
    ]),
    note: `${where === null ? '' : 'Coordinates are the middles of what is recorded; "known to within" is half the cell of a coarsened place, 0 of an exact one.'}${levelNote(found.level, unit)}`,
  };
}

function linesTable({ lines, deals, places, options }: MapFound): ResultTable {
  return {
    title: 'Pairs of places that lean the same way',
    columns: [
      { id: 'first', label: 'place' },
      { id: 'second', label: 'and' },
      { id: 'likeness', label: coefficientName(options.coefficient) },
      { id: 'statistic', label: 'shared leaning' },
      { id: 'p', label: 'p' },
      { id: 'pAdjusted', label: 'p adjusted (Benjamini-Hochberg)' },
      { id: 'drawn', label: 'line drawn' },
    ],
    rows: lines.map(({ first, second, likeness, leaning, p, pAdjusted, drawn }) => [
      places[first].label,
      places[second].label,
      likeness,
      leaning,
      p,
      pAdjusted,
      drawn ? 'yes' : 'no',
    ]),
    briefly: ['first', 'second', 'likeness', 'statistic', 'p', 'drawn'],
    note: `Shared leaning: sum over kinds of the two departures from the common shares, divided by these; positive where both have more of the same kinds. p by dealing the items of the others anew (${deals} times each), the larger of both ways; of the lines drawn at most ${printLevel(1 - options.confidence)} are expected to be of chance.`,
  };
}
