import type { Figure } from '../contract.ts';
import { inSentence, printCount } from '../phrasing.ts';
import { GROUND } from '../shared/figure/colours.ts';
import { findMarker, kindMarker, MOST_KINDS } from '../shared/figure/kinds.ts';
import { type Marks, markStyle } from '../shared/figure/marks.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import type { MapPosition, PlacementFound } from './found.ts';

/** The find among its comparanda on two axes, each comparandum in the symbol of its label, the nearest ringed. */
export function mapFigure(found: PlacementFound): Figure {
  if ('why' in found.position) throw new RangeError('mapFigure: there is no map');
  const { places, shares, find, cloud } = found.position;
  const near = new Set(found.neighbours.map(({ id }) => id));
  const points = (name: string, chosen: typeof places, style: Readonly<Record<string, unknown>>) => ({
    type: 'scatter',
    mode: 'markers',
    name,
    x: chosen.map(({ x }) => x),
    y: chosen.map(({ y }) => y),
    text: chosen.map(({ id }) => escapeText(id)),
    hovertemplate: '%{text}<extra></extra>',
    marker: style,
  });
  const [by = '', marks = new Map()] = [...found.marks][0] ?? [];
  const nearest = places.filter(({ id }) => near.has(id));
  return {
    data: [
      ...groupsOf(places, marks).map(({ name, place, members }) =>
        points(escapeText(name), members, { ...kindMarker(markStyle(place), 7), opacity: 0.6 }),
      ),
      points('nearest comparanda', nearest, {
        symbol: 'circle-open',
        size: 14,
        color: GROUND.ink,
        line: { width: 1.5 },
      }),
      ...(cloud.length === 0
        ? []
        : [
            {
              type: 'scatter',
              mode: 'markers',
              name: 'the find within its ranges',
              x: cloud.map(([x]) => x),
              y: cloud.map(([, y]) => y),
              hoverinfo: 'skip',
              marker: { symbol: 'x-thin', size: 6, line: { color: GROUND.ink, width: 1 } },
            },
          ]),
      {
        type: 'scatter',
        mode: 'markers',
        name: 'the find',
        x: [find[0]],
        y: [find[1]],
        hovertemplate: 'the find<extra></extra>',
        marker: findMarker(),
      },
    ],
    layout: figureLayout({
      x: axis(`axis 1 (${(shares[0] * 100).toFixed(1)} %)`),
      y: axis(`axis 2 (${(shares[1] * 100).toFixed(1)} %)`, { scaleanchor: 'x' }),
      height: 460,
    }),
    caption:
      `Principal coordinates of ${printCount(places.length, found.unit)} with the find added after Gower 1968 (star)` +
      `${cloud.length > 0 ? `; crosses: ${cloud.length} draws of values within its ranges` : ''}. ` +
      `Ringed: its ${found.neighbours.length} nearest comparanda${by === '' ? '' : `; symbols by ${inSentence(by)}`}. Compared on ${found.comparedOn.join(', ')}.`,
  };
}

interface Group {
  readonly name: string;
  readonly place: number | null;
  readonly members: MapPosition['places'];
}

/** Comparanda by their label, in the order of symbols; those without a symbol of their own together. */
function groupsOf(places: MapPosition['places'], marks: Marks): readonly Group[] {
  const known = (label: string) => {
    const place = marks.get(label);
    return place === undefined || place >= MOST_KINDS ? null : place;
  };
  const groups = [...new Set(places.map(({ label }) => label))]
    .map((label) => ({ name: label, place: known(label) }))
    .filter(({ place }) => place !== null)
    .sort((a, b) => Number(a.place) - Number(b.place))
    .map((group) => ({ ...group, members: places.filter(({ label }) => label === group.name) }));
  const others = places.filter(({ label }) => known(label) === null);
  if (others.length === 0) return groups;
  const name = groups.length === 0 ? 'comparanda' : 'other comparanda';
  return [{ name, place: null, members: others }, ...groups];
}
