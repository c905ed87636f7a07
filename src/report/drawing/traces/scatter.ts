import { KIND_COLOURS } from '../../../analyses/shared/figure/colours.ts';
import { type Axis, axisOf, type Extent, eachNumber, extentOf } from '../axes.ts';
import { fillOf, strokeOf } from '../colours.ts';
import { boxOf, type Frame, scaleOf } from '../frame.ts';
import { linePath, type Mark } from '../marks.ts';
import { list, numberOr, type Plain, part, textOr } from '../plain.ts';
import { pixelOf } from '../scale.ts';
import { limitMark, markerMark } from './markers.ts';
import { nameAt } from './point-names.ts';

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
