import { labelled, namesOrNumbers, type PlacedLabel, type SaidPoints } from '../label-places.ts';
import { printCount } from '../phrasing.ts';
import { GROUND } from '../shared/figure/colours.ts';
import { escapeText } from '../shared/figure/style.ts';
import type { MapFound, MapPlace } from './found.ts';
import { type Frame, type Ground, INSIDE, MAP_HEIGHT } from './ground.ts';

/** What maps and network draw alike: places with their names, and the lines between them. */

export interface PlacePoint {
  readonly place: MapPlace;
  readonly x: number;
  readonly y: number;
}

export function onGround({ places }: Ground): PlacePoint[] {
  return places.map((place) => ({ place, x: place.at[0], y: place.at[1] }));
}

/** Of a frame that plotly would leave free at its ends, as `placeLabels` reckons. */
const FREE = 1.12;
/** CSS pixels across what is kept clear of each. */
const STROKE = 3;
/** CSS pixels between two points of a line that names keep clear of. */
const STEP = 9;

/** Names beside their places, or numbers where most have no room, clear of each other, of the places and of the lines drawn. */
export function namesIn(
  frame: Frame,
  points: readonly PlacePoint[],
  ends: readonly (readonly [PlacePoint, PlacePoint])[],
  {
    nameOf = ({ label }) => label,
    sizeAt = () => undefined,
  }: {
    readonly nameOf?: (place: MapPlace) => string;
    readonly sizeAt?: (place: MapPlace) => number | undefined;
  } = {},
): SaidPoints {
  const level = ({ x, y }: { readonly x: number; readonly y: number }, name = '') => ({
    x: x / frame.stretch,
    y,
    name,
  });
  const pixel = (frame.y[1] - frame.y[0]) / INSIDE.height;
  const along = ends.flatMap(([a, b]) => {
    const [from, to] = [level(a), level(b)];
    const [wide, tall] = [to.x - from.x, to.y - from.y];
    const steps = Math.ceil(Math.sqrt(wide * wide + tall * tall) / pixel / STEP);
    return Array.from({ length: Math.max(0, steps - 1) }, (_, at) => ({
      x: from.x + (wide * (at + 1)) / steps,
      y: from.y + (tall * (at + 1)) / steps,
      name: '',
    }));
  });
  const middle = { x: (frame.x[0] + frame.x[1]) / 2, y: (frame.y[0] + frame.y[1]) / 2 };
  const corners = ([0, 1] as const).map((end) =>
    level({
      x: middle.x + (frame.x[end] - middle.x) / FREE,
      y: middle.y + (frame.y[end] - middle.y) / FREE,
    }),
  );
  const names = points.map(({ place }) => nameOf(place));
  const named = points.map((point, at) => {
    const size = sizeAt(point.place);
    return {
      ...level(point, names[at].padEnd(Math.ceil(WIDER * names[at].length))),
      ...(size === undefined ? {} : { size }),
    };
  });
  const strokes = along.map((point) => ({ ...point, size: STROKE }));
  const { labels, said } = namesOrNumbers([...named, ...strokes, ...corners], {
    height: MAP_HEIGHT,
    equal: true,
  });
  return {
    labels: labels.slice(0, points.length).map((label) => ({ ...label, text: label.text.trimEnd() })),
    said,
  };
}

/** Faces that stand in for ours are wider. */
const WIDER = 1.15;

/** The pairs that a line joins, of those that have a place. */
export function drawnEnds(
  { lines, places }: MapFound,
  points: readonly PlacePoint[],
): readonly (readonly [PlacePoint, PlacePoint])[] {
  const of = new Map(points.map((point) => [point.place, point] as const));
  return lines.flatMap(({ first, second, drawn }) => {
    const [a, b] = [of.get(places[first]), of.get(places[second])];
    return drawn && a !== undefined && b !== undefined ? [[a, b] as const] : [];
  });
}

/** Lines of one thickness: to draw a sure one thicker would say more than is known. */
export function lineTraces(
  ends: readonly (readonly [PlacePoint, PlacePoint])[],
): Readonly<Record<string, unknown>>[] {
  if (ends.length === 0) return [];
  return [
    {
      type: 'scatter',
      mode: 'lines',
      name: 'lean the same way',
      x: ends.flatMap(([a, b]) => [a.x, b.x, null]),
      y: ends.flatMap(([a, b]) => [a.y, b.y, null]),
      line: { color: GROUND.ink, width: 1.4 },
      hoverinfo: 'skip',
      showlegend: false,
    },
  ];
}

/** Area by the number of records, so that a place with four times as many is twice as wide; smaller where many crowd. */
export function sizesIn({ places }: MapFound): (place: MapPlace) => number {
  const most = places.reduce((a, { records }) => Math.max(a, records), 1);
  const spread = places.length > MANY ? CROWDED : SPREAD;
  return ({ records }) => 7 + spread * Math.sqrt(records / most);
}

/** More places than this have smaller symbols. */
const MANY = 15;
const SPREAD = 11;
const CROWDED = 5;

export function named(
  points: readonly PlacePoint[],
  labels: readonly PlacedLabel[],
  said: (place: MapPlace) => string,
) {
  return {
    type: 'scatter',
    mode: 'markers+text',
    x: points.map(({ x }) => x),
    y: points.map(({ y }) => y),
    textfont: { size: 10 },
    ...labelled(
      labels,
      points.map(({ place, x, y }) => ({ x, y, name: place.label })),
    ),
    hovertext: points.map(({ place }) => escapeText(`${place.label}: ${said(place)}`)),
  };
}

/** Coarsened places as the squares that they lie in. */
export function cells({ places }: Ground): Readonly<Record<string, unknown>>[] {
  const coarse = places.filter(({ within }) => within > 0);
  if (coarse.length === 0) return [];
  const corners = coarse.flatMap(({ at: [x, y], within }) => [
    [x - within, y - within],
    [x + within, y - within],
    [x + within, y + within],
    [x - within, y + within],
    [x - within, y - within],
    [null, null],
  ]);
  return [
    {
      type: 'scatter',
      mode: 'lines',
      x: corners.map(([x]) => x),
      y: corners.map(([, y]) => y),
      line: { color: GROUND.neutral, width: 0.8, dash: 'dot' },
      hoverinfo: 'skip',
      showlegend: false,
    },
  ];
}

export function lineSaid({ lines }: MapFound): string {
  const drawn = lines.filter((line) => line.drawn).length;
  return drawn === 0
    ? ' No two lean the same way further than chance explains.'
    : ` Lines: ${printCount(drawn, 'pair')} that lean the same way further than chance explains.`;
}

/** The groups of some points, in the order of their symbols, those without one last. */
export function groupsIn(points: readonly PlacePoint[]): readonly (string | null)[] {
  const markOf = (group: string | null) =>
    points.find(({ place }) => place.group === group)?.place.mark ?? Number.MAX_SAFE_INTEGER;
  return [...new Set(points.map(({ place }) => place.group))].sort((a, b) => markOf(a) - markOf(b));
}
