import { GROUND, KIND_COLOURS } from '../../../analyses/figure-style.ts';
import { type Axis, axisOf, type Extent, eachNumber, extentOf } from '../axes.ts';
import { fillOf, paint, strokeOf } from '../colours.ts';
import { boxOf, type Frame, scaleOf } from '../frame.ts';
import { LINE_HEIGHT, lettering, widest } from '../lettering.ts';
import { linePath, type Mark, type TextMark } from '../marks.ts';
import { each, list, numberOr, type Plain, part, textOr } from '../plain.ts';
import { pixelOf } from '../scale.ts';
import { limitMark, markerMark } from './markers.ts';

export function scatterExtents(trace: Plain, axes: ReadonlyMap<string, Axis>): readonly Extent[] {
  const mode = modeOf(trace);
  const size = (at: number) => (mode.markers ? eachNumber(part(trace, 'marker').size, at, 6) / 2 : 0);
  return (['x', 'y'] as const).flatMap((letter) => {
    const axis = axes.get(axisOf(trace, letter));
    if (axis === undefined) return [];
    const values = list(trace[letter]);
    const bars = part(trace, `error_${letter}`);
    const ends = values.flatMap((value, at) => {
      const [low, high] = limitsAt(bars, at);
      return typeof value === 'number' ? [value - low, value + high] : [value, value];
    });
    const foot = letter === 'y' && trace.fill === 'tozeroy' ? [0] : [];
    const lines = letter === 'x' && mode.lines && !mode.markers && trace.fill !== 'toself';
    const limited = Object.keys(bars).length > 0;
    const reach = limited ? [...ends, ...foot] : [...values, ...foot];
    return [
      {
        ...extentOf(axis, reach, (at) => size(limited ? Math.floor(at / 2) : at), !lines),
        footed: foot.length > 0,
      },
    ];
  });
}

interface Mode {
  readonly markers: boolean;
  readonly lines: boolean;
  readonly text: boolean;
}

function modeOf(trace: Plain): Mode {
  const said = textOr(trace.mode, list(trace.x).length < 20 ? 'lines+markers' : 'lines');
  return { markers: said.includes('markers'), lines: said.includes('lines'), text: said.includes('text') };
}

function limitsAt(bars: Plain, at: number): readonly [number, number] {
  if (bars.visible === false) return [0, 0];
  const high = eachNumber(bars.array, at, bars.type === 'constant' ? numberOr(bars.value, 0) : 0);
  return [bars.symmetric === false ? eachNumber(bars.arrayminus, at, 0) : high, high];
}

export function drawScatter(trace: Plain, frame: Frame): readonly Mark[] {
  const [x, y] = [scaleOf(frame, axisOf(trace, 'x')), scaleOf(frame, axisOf(trace, 'y'))];
  const [xs, ys] = [list(trace.x), list(trace.y)];
  const points = xs.map((value, at) => [pixelOf(x, value), pixelOf(y, ys[at])] as const);
  const mode = modeOf(trace);
  const box = boxOf(frame, axisOf(trace, 'x'), axisOf(trace, 'y'));
  const opacity = numberOr(trace.opacity, 1);
  const runs = runsOf(points, trace.connectgaps === true);
  const lined = runs.map((run) => shaped(run, textOr(part(trace, 'line').shape, 'linear')));
  const filled = fillPaths(trace, lined, y.ends[0], (value) => pixelOf(y, value));
  const lines: Mark[] = [
    ...(filled === '' ? [] : [{ path: filled, ...fillOf(trace.fillcolor, opacity) }]),
    ...(mode.lines
      ? [{ path: lined.map(linePath).join(''), ...strokeOf(part(trace, 'line'), lineColour(trace), 2) }]
      : []),
  ];
  const limits = points.flatMap((at, place) =>
    (['x', 'y'] as const).flatMap((letter) => {
      const bars = part(trace, `error_${letter}`);
      const [low, high] = limitsAt(bars, place);
      if (low === 0 && high === 0) return [];
      const value = Number(letter === 'x' ? xs[place] : ys[place]);
      const ends = [value - low, value + high].map((end) =>
        letter === 'x' ? ([pixelOf(x, end), at[1]] as const) : ([at[0], pixelOf(y, end)] as const),
      );
      return ends.flat().every(Number.isFinite) ? limitMark(bars, ends, letter === 'y') : [];
    }),
  );
  const marker = part(trace, 'marker');
  const seen = points.map((at) => at.every(Number.isFinite) && within(at, box));
  const marks = mode.markers
    ? points.flatMap(([px, py], place) => (seen[place] ? markerMark(marker, place, px, py) : []))
    : [];
  const texts = mode.text
    ? points.flatMap((at, place) => (seen[place] ? nameAt(trace, place, at, mode.markers, frame) : []))
    : [];
  return [{ clip: box, marks: [...lines, ...limits] }, ...marks, ...texts];
}

function lineColour(trace: Plain): string {
  const marker = part(trace, 'marker').color;
  return typeof marker === 'string' ? marker : KIND_COLOURS[0];
}

function within(
  [x, y]: readonly [number, number],
  box: { x: number; y: number; width: number; height: number },
) {
  const slack = 1;
  return (
    x >= box.x - slack &&
    x <= box.x + box.width + slack &&
    y >= box.y - slack &&
    y <= box.y + box.height + slack
  );
}

type Points = readonly (readonly [number, number])[];

function runsOf(points: Points, acrossGaps: boolean): readonly Points[] {
  const runs: (readonly [number, number])[][] = [[]];
  for (const at of points) {
    if (at.every(Number.isFinite)) runs.at(-1)?.push(at);
    else if (!acrossGaps && (runs.at(-1)?.length ?? 0) > 0) runs.push([]);
  }
  return runs.filter((run) => run.length > 0);
}

function shaped(run: Points, shape: string): Points {
  if (shape !== 'hv' && shape !== 'vh') return run;
  return run.flatMap((at, place) => {
    const before = run[place - 1];
    if (before === undefined) return [at];
    return [shape === 'hv' ? ([at[0], before[1]] as const) : ([before[0], at[1]] as const), at];
  });
}

function fillPaths(
  trace: Plain,
  runs: readonly Points[],
  floor: number,
  yOf: (value: number) => number,
): string {
  const how = textOr(trace.fill, 'none');
  if (how === 'toself') return runs.map((run) => `${linePath(run)}Z`).join('');
  if (how !== 'tozeroy') return '';
  const zero = yOf(0);
  const base = Number.isFinite(zero) ? zero : floor;
  return runs
    .map((run) => `${linePath([[run[0][0], base], ...run, [(run.at(-1) ?? run[0])[0], base]])}Z`)
    .join('');
}

/** Of the size of its marker a name keeps this share away from the middle, as plotly sets it. */
const GAP = 0.625;
/** Pixels that a name may rise above the plot; below it would lie over the axis. */
const OUT = 4;
/** A star reaches so many times further than a circle of its size. */
const STAR = 1.4;

/** Places around a mark, in the order in which they are tried. */
const AROUND = [
  ['top', 'center'],
  ['bottom', 'center'],
  ['middle', 'right'],
  ['middle', 'left'],
  ['top', 'right'],
  ['top', 'left'],
  ['bottom', 'right'],
  ['bottom', 'left'],
] as const;

/** The name of a point beside it, moved in where it would leave the drawing. */
function nameAt(
  trace: Plain,
  place: number,
  [x, y]: readonly [number, number],
  marked: boolean,
  frame: Frame,
): readonly Mark[] {
  const { lines, bold } = lettering(textOr(each(trace.text, place), ''));
  if (lines.every((line) => line === '')) return [];
  const font = part(trace, 'textfont');
  const size = eachNumber(font.size, place, numberOr(part(frame.layout, 'font').size, 11));
  const [up, side] = textOr(each(trace.textposition, place), 'middle center').split(' ');
  const marker = part(trace, 'marker');
  const across = eachNumber(marker.size, place, 6);
  const star = textOr(each(marker.symbol, place), '').startsWith('star');
  const half = (across / 2) * (star ? STAR : 1);
  const gap = marked ? Math.max(across * GAP + 1, half + 1) : 0;
  const tall = size * LINE_HEIGHT * lines.length;
  const wide = widest(lines, size);
  const { plot } = frame;
  const placeAt = (vertical: string, level: string) => {
    const top = vertical === 'top' ? y - gap - tall : vertical === 'bottom' ? y + gap : y - tall / 2;
    const left = level === 'right' ? x + gap : level === 'left' ? x - gap - wide : x - wide / 2;
    const inside = Math.min(Math.max(left, 1), frame.width - wide - 1);
    return {
      x: inside,
      y: top + size,
      textposition: `${vertical} ${level}`,
      moved: inside !== left || top < plot.y - OUT || top + tall > plot.y + plot.height,
    };
  };
  const { x: left, y: first } = placeAt(up, side ?? 'center');
  // A name of one line beside a mark may stand anywhere around it, within the plot, and where it need not be moved in over the mark.
  const beside: TextMark['beside'] =
    marked && lines.length === 1
      ? {
          trace,
          point: place,
          mark: { x: x - half, y: y - half, width: 2 * half, height: 2 * half },
          elsewhere: [[up, side ?? 'center'] as const, ...AROUND]
            .map(([a, b]) => placeAt(a, b))
            .filter(({ moved }) => !moved),
        }
      : undefined;
  return lines.map((text, line) => ({
    text,
    x: left,
    y: first + size * LINE_HEIGHT * line,
    size,
    anchor: 'start' as const,
    ...(beside === undefined ? {} : { beside }),
    fill: paint(each(font.color, place) ?? GROUND.ink).colour,
    halo: '#FFFFFF',
    ofData: true as const,
    ...(bold ? { bold } : {}),
  }));
}
