import { axis, FIGURE_FONT, figureLayout, GROUND, PRINT_WIDTH } from '../figure-style.ts';
import { printNumber } from '../phrasing.ts';
import type { MapFound, MapPlace } from './found.ts';

/** What lies beneath the places of every map: graticule, scale bar, coast; no tiles, and nothing from elsewhere. */

type Drawn = MapPlace & { readonly at: readonly [number, number] };
type Coordinates = Exclude<MapFound['coordinates'], { readonly why: string }>;

/** What a figure shows of the plane: ends across and up, and how many units across are as long as one up. */
export interface Frame {
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
  return { x: [x - across, x + across], y: [y - tall / 2, y + tall / 2], stretch };
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
  const { coordinates, x, y } = ground;
  const { geographic, unit } = coordinates;
  const title = (label: string) => (geographic || unit === '' ? label : `${label} (${unit})`);
  const side = (label: string, range: readonly [number, number], letters: readonly [string, string]) => {
    const ticks = graticule(range);
    return axis(title(label), {
      range,
      tickmode: 'array',
      tickvals: ticks,
      ticktext: ticks.map((tick) => (geographic ? degrees(tick, letters) : printNumber(tick, 6))),
      gridcolor: GROUND.line,
      griddash: 'dot',
      constrain: 'domain',
    });
  };
  return figureLayout({
    x: side(coordinates.x, x, ['E', 'W']),
    y: { ...side(coordinates.y, y, ['N', 'S']), scaleanchor: 'x', scaleratio: coordinates.stretch },
    height: MAP_HEIGHT,
    ...(legend === undefined ? {} : { legend }),
    more: scaleBar(ground),
  });
}

function degrees(value: number, [positive, negative]: readonly [string, string]): string {
  const size = printNumber(Math.abs(value), 6);
  return value === 0 ? '0°' : `${size}° ${value > 0 ? positive : negative}`;
}

/** About so many lines on either side. */
const MOST_LINES = 6;

function graticule([low, high]: readonly [number, number]): number[] {
  const step = roundBelow((high - low) / MOST_LINES, 1);
  const first = Math.ceil(low / step);
  return Array.from({ length: Math.floor(high / step) - first + 1 }, (_, place) =>
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

/** A bar of a round length in kilometres, a fifth of the map at most, with its length written after it, where it takes no height from the places. */
function scaleBar({ coordinates: { kilometres }, x, y }: Ground): Readonly<Record<string, unknown>> {
  if (kilometres === null) return {};
  const wide = x[1] - x[0];
  const tall = y[1] - y[0];
  const length = roundBelow((wide * kilometres) / 5, 0);
  const from = x[0] + wide * 0.03;
  const at = y[0] + tall * 0.03;
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
        x: to,
        y: at,
        xanchor: 'left',
        yanchor: 'middle',
        xshift: 4,
        showarrow: false,
        font: { size: 10, color: FIGURE_FONT.color },
      },
    ],
  };
}
