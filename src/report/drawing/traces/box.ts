import { GROUND } from '../../../analyses/shared/figure/colours.ts';
import { quantile } from '../../../numerics/describing/quantile.ts';
import { addTo, greatest, least } from '../../../numerics/foundation/lists.ts';
import { type Axis, axisOf, type Extent, eachNumber } from '../axes.ts';
import { fillOf, strokeOf } from '../colours.ts';
import { type Frame, scaleOf } from '../frame.ts';
import { linePath, type Mark } from '../marks.ts';
import { list, numberOr, type Plain, part, textOr } from '../plain.ts';
import { pixel, placeOn, type Scale } from '../scale.ts';
import { markerPath } from './markers.ts';

/** One box and the readings that it is made of, in the own numbers of its axes. */
interface Boxed {
  readonly place: number;
  readonly points: readonly number[];
  readonly five: readonly number[] | null;
}

const lying = (trace: Plain) => trace.orientation === 'h';
const HALF = 0.35;

function boxesOf(
  trace: Plain,
  stand: Pick<Axis, 'kind' | 'categories'>,
  reach: Pick<Axis, 'kind' | 'categories'>,
) {
  const [along, across] = lying(trace) ? (['y', 'x'] as const) : (['x', 'y'] as const);
  const samples = list(trace[across]);
  const nested = samples.some(Array.isArray);
  const places = list(trace[along]);
  if (nested || trace.median !== undefined)
    return places.map((value, at): Boxed => {
      const points = own(reach, list(samples[at]));
      const given = ['lowerfence', 'q1', 'median', 'q3', 'upperfence'].map((name) =>
        placeOn(reach, eachNumber(trace[name], at, Number.NaN)),
      );
      return { place: placeOn(stand, value), points, five: given.every(Number.isFinite) ? given : null };
    });
  const grouped = new Map<number, unknown[]>();
  samples.forEach((sample, at) => {
    const place = places.length === 0 ? placeOn(stand, trace.name) : placeOn(stand, places[at]);
    addTo(grouped, place, sample);
  });
  return [...grouped].map(([place, values]): Boxed => {
    const points = own(reach, values);
    return { place, points, five: fiveOf(points) };
  });
}

function own(axis: Pick<Axis, 'kind' | 'categories'>, values: readonly unknown[]): number[] {
  return values.map((value) => placeOn(axis, value)).filter(Number.isFinite);
}

/** Quartiles of type 7, and the readings within 1.5 of their distance. */
function fiveOf(points: readonly number[]): readonly number[] | null {
  if (points.length < 2) return null;
  const sorted = [...points].sort((a, b) => a - b);
  const [q1, median, q3] = [0.25, 0.5, 0.75].map((share) => quantile(sorted, share));
  if ([q1, median, q3].some((one) => typeof one !== 'number')) return null;
  const [low, mid, high] = [q1, median, q3] as [number, number, number];
  const reach = 1.5 * (high - low);
  const within = sorted.filter((one) => one >= low - reach && one <= high + reach);
  return [within[0], low, mid, high, within.at(-1) ?? high];
}

export function boxExtents(trace: Plain, axes: ReadonlyMap<string, Axis>): readonly Extent[] {
  const [along, across] = lying(trace) ? (['y', 'x'] as const) : (['x', 'y'] as const);
  const [stand, reach] = [axes.get(axisOf(trace, along)), axes.get(axisOf(trace, across))];
  if (stand === undefined || reach === undefined) return [];
  const boxes = boxesOf(trace, stand, reach);
  const values = boxes.flatMap(({ points, five }) => [...points, ...(five ?? [])]);
  const size = numberOr(part(trace, 'marker').size, 6) / 2;
  return [
    {
      axis: stand.id,
      low: least(boxes.map(({ place }) => place - 0.5)),
      high: greatest(boxes.map(({ place }) => place + 0.5)),
      beyond: 0,
      airy: false,
    },
    ...(values.length === 0
      ? []
      : [{ axis: reach.id, low: least(values), high: greatest(values), beyond: size, airy: true }]),
  ];
}

export function drawBoxes(trace: Plain, frame: Frame): readonly Mark[] {
  const flat = lying(trace);
  const stand = scaleOf(frame, axisOf(trace, flat ? 'y' : 'x'));
  const reach = scaleOf(frame, axisOf(trace, flat ? 'x' : 'y'));
  const at = (along: number, across: number) =>
    flat
      ? ([pixel(reach, across), pixel(stand, along)] as const)
      : ([pixel(stand, along), pixel(reach, across)] as const);
  return boxesOf(trace, stand, reach).flatMap(({ place, points, five }) => [
    ...(five === null ? [] : drawBox(trace, place, five, at)),
    ...(showsPoints(trace) ? drawPoints(trace, place, points, at, reach) : []),
  ]);
}

function showsPoints(trace: Plain): boolean {
  return trace.boxpoints === 'all';
}

type At = (along: number, across: number) => readonly [number, number];

function drawBox(
  trace: Plain,
  place: number,
  [low, q1, median, q3, high]: readonly number[],
  at: At,
): readonly Mark[] {
  const stroke = strokeOf(part(trace, 'line'), GROUND.ink, 2);
  const cross = (value: number, half: number) => linePath([at(place - half, value), at(place + half, value)]);
  const path = [
    `${linePath([at(place - HALF, q1), at(place + HALF, q1), at(place + HALF, q3), at(place - HALF, q3)])}Z`,
    cross(median, HALF),
    linePath([at(place, low), at(place, q1)]),
    linePath([at(place, q3), at(place, high)]),
    cross(low, HALF / 2),
    cross(high, HALF / 2),
  ].join('');
  if (Object.keys(stroke).length === 0) return [];
  return [
    { path, ...fillOf(trace.fillcolor ?? 'none') },
    { path, ...stroke },
  ];
}

/** Points that would cover each other are moved aside by turns, evenly and without chance. */
function drawPoints(
  trace: Plain,
  place: number,
  points: readonly number[],
  at: At,
  reach: Scale,
): readonly Mark[] {
  const marker = part(trace, 'marker');
  const size = numberOr(marker.size, 6);
  const aside = numberOr(trace.jitter, 0.3) * HALF;
  const centre = place + numberOr(trace.pointpos, 0) * HALF;
  const near = new Map<number, number>();
  const paths = points.map((value) => {
    const bin = Math.round(pixel(reach, value) / size);
    const before = near.get(bin) ?? 0;
    near.set(bin, before + 1);
    const [x, y] = at(centre + aside * (((before * STEP + 0.5) % 1) * 2 - 1), value);
    return markerPath(textOr(marker.symbol, 'circle'), x, y, size);
  });
  return [
    {
      path: paths.join(''),
      ...fillOf(marker.color ?? GROUND.ink, numberOr(marker.opacity, 1)),
      ...withoutOpacity(strokeOf(part(marker, 'line'), GROUND.ink, 0)),
    },
  ];
}

/** The golden section spreads any number of turns evenly. */
const STEP = 0.618034;

function withoutOpacity<T extends { readonly opacity?: number }>({ opacity: _, ...rest }: T) {
  return rest;
}
