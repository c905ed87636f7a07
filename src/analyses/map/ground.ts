import { printNumber } from '../phrasing.ts';
import { GROUND } from '../shared/figure/colours.ts';
import { axis, FIGURE_FONT, figureLayout, PRINT_WIDTH } from '../shared/figure/style.ts';
import type { MapFound, MapPlace } from './found.ts';

/** What lies beneath the places of every map: graticule, scale bar, coast; no tiles, and nothing from elsewhere. */

type Drawn = MapPlace & { readonly at: readonly [number, number] };
type Coordinates = Exclude<MapFound['coordinates'], { readonly why: string }>;

/** What a figure shows of the plane: ends across and up, and how many units across are as long as one up. */
export interface Frame {
  /** What must be seen whatever the shape of the figure, which shows more on the side where it has room. */
  readonly least: { readonly x: readonly [number, number]; readonly y: readonly [number, number] };
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  readonly stretch: number;
}

export interface Ground extends Frame {
  readonly places: readonly Drawn[];
  readonly coordinates: Coordinates;
}

export const MAP_HEIGHT = 520;
/** What the inside of the figure measures at print width, legend and ticks taken off. */
export const INSIDE = { width: PRINT_WIDTH.double - 84, height: MAP_HEIGHT - 104 };
/** Room beyond the outermost places, for their names. */
const AROUND = 0.14;

/** The reach of the map; null where nothing has coordinates. */
export function groundOf({ places, coordinates }: MapFound): Ground | null {
  if ('why' in coordinates) return null;
  const drawn = places.filter((place): place is Drawn => place.at !== null);
  const { stretch } = coordinates;
  const frame = frameOf(
    drawn.map(({ at: [x, y], within }) => ({ x, y, within })),
    stretch,
  );
  return { places: drawn, coordinates, ...frame };
}

/** A frame round the points that fills the figure, one unit being as long on both sides but for the stretch. */
export function frameOf(
  points: readonly { readonly x: number; readonly y: number; readonly within: number }[],
  stretch: number,
): Frame {
  const reach = (side: 'x' | 'y') => {
    const ends = points.flatMap((point) => [point[side] - point.within, point[side] + point.within]);
    return [ends.reduce((a, b) => Math.min(a, b)), ends.reduce((a, b) => Math.max(a, b))] as const;
  };
  const [left, right] = reach('x');
  const [bottom, top] = reach('y');
  const wide =
    Math.max((right - left) / stretch, ((top - bottom) * INSIDE.width) / INSIDE.height, LEAST) *
    (1 + 2 * AROUND);
  const tall = (wide * INSIDE.height) / INSIDE.width;
  const across = (wide * stretch) / 2;
  const [x, y] = [(left + right) / 2, (bottom + top) / 2];
  const around = Math.max((right - left) / stretch, top - bottom, LEAST) * AROUND;
  const least = {
    x: [left - around * stretch, right + around * stretch] as const,
    y: [bottom - around, top + around] as const,
  };
  return { least, x: [x - across, x + across], y: [y - tall / 2, y + tall / 2], stretch };
}

/** Of a single place. */
const LEAST = 1e-3;

export function coastTraces({ outlines }: MapFound): Readonly<Record<string, unknown>>[] {
  return outlines.map(({ x, y }) => ({
    type: 'scatter',
    mode: 'lines',
    x,
    y,
    line: { color: GROUND.neutral, width: 1 },
    hoverinfo: 'skip',
    showlegend: false,
  }));
}

export function mapLayout(ground: Ground, legend?: string): Readonly<Record<string, unknown>> {
  const { coordinates, least } = ground;
  const { geographic, unit } = coordinates;
  const title = (label: string) => (geographic || unit === '' ? label : `${label} (${unit})`);
  const step = stepOf(ground);
  const side = (label: string, range: readonly [number, number], letters: readonly [string, string]) => {
    const most = geographic ? (letters[0] === 'N' ? 90 : 180) : Number.POSITIVE_INFINITY;
    const ticks = graticule(range, step).filter((tick) => Math.abs(tick) <= most);
    return axis(title(label), {
      range,
      tickmode: 'array',
      tickvals: ticks,
      ticktext: ticks.map((tick) => (geographic ? degrees(tick, letters) : printNumber(tick, 6))),
      gridcolor: GROUND.line,
      griddash: 'dot',
    });
  };
  return figureLayout({
    x: side(coordinates.x, least.x, ['E', 'W']),
    y: { ...side(coordinates.y, least.y, ['N', 'S']), scaleanchor: 'x', scaleratio: coordinates.stretch },
    height: MAP_HEIGHT,
    ...(legend === undefined ? {} : { legend }),
    more: scaleBar(ground),
  });
}

function degrees(value: number, [positive, negative]: readonly [string, string]): string {
  const size = printNumber(Math.abs(value), 6);
  return value === 0 ? '0°' : `${size}° ${value > 0 ? positive : negative}`;
}

/** About so many lines along the longer side. */
const MOST_LINES = 6;
/** Lines are drawn beyond the places too, as far as a figure several times wider or taller shows. */
const BEYOND = 2;

/** One distance between lines on both sides, so that their cells are as wide as they are tall. */
function stepOf({ least: { x, y } }: Ground): number {
  return roundBelow(Math.max(x[1] - x[0], y[1] - y[0]) / MOST_LINES, 1);
}

function graticule([low, high]: readonly [number, number], step: number): number[] {
  const more = (high - low) * BEYOND;
  const first = Math.ceil((low - more) / step);
  return Array.from({ length: Math.floor((high + more) / step) - first + 1 }, (_, place) =>
    Number(((first + place) * step).toPrecision(12)),
  );
}

/** 1, 2 or 5 times a power of ten: the largest below `size` (way 0) or the least above it (way 1). */
function roundBelow(size: number, way: 0 | 1): number {
  let power = 1;
  while (power > size) power /= 10;
  while (power * 10 <= size) power *= 10;
  const steps = [1, 2, 5, 10].map((digit) => digit * power);
  return way === 0
    ? (steps.filter((step) => step <= size).at(-1) ?? power)
    : (steps.find((step) => step >= size) ?? 10 * power);
}

/**
 * A bar of a round length in kilometres, a fifth of the map at most, with its length written beside it, at the foot of the
 * map on the side where the places leave it more room.
 */
function scaleBar({
  places,
  coordinates: { kilometres },
  least: { x, y },
  stretch,
}: Ground): Readonly<Record<string, unknown>> {
  if (kilometres === null) return {};
  const wide = x[1] - x[0];
  const tall = y[1] - y[0];
  const length = roundBelow((wide * kilometres) / 5, 0);
  const at = y[0] + tall * 0.03;
  const room = (corner: number) =>
    places.reduce((nearest, { at: [px, py] }) => {
      const [dx, dy] = [(px - corner) / stretch, py - y[0]];
      return Math.min(nearest, dx * dx + dy * dy);
    }, Number.POSITIVE_INFINITY);
  const atRight = room(x[1]) > room(x[0]);
  const from = atRight ? x[1] - wide * 0.03 - length / kilometres : x[0] + wide * 0.03;
  const to = from + length / kilometres;
  const line = { color: GROUND.ink, width: 1.4 };
  const upright = (place: number) => ({
    type: 'line',
    x0: place,
    x1: place,
    y0: at,
    y1: at + tall * 0.012,
    line,
  });
  return {
    shapes: [{ type: 'line', x0: from, x1: to, y0: at, y1: at, line }, upright(from), upright(to)],
    annotations: [
      {
        text: `${printNumber(length < 1 ? length * 1000 : length)} ${length < 1 ? 'm' : 'km'}`,
        x: atRight ? from : to,
        y: at,
        xanchor: atRight ? 'right' : 'left',
        yanchor: 'middle',
        xshift: atRight ? -4 : 4,
        showarrow: false,
        font: { size: 10, color: FIGURE_FONT.color },
      },
    ],
  };
}
