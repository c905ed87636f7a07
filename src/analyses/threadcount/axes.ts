import { GROUND } from '../shared/figure/colours.ts';
import { logTicks, placeOnLog } from '../shared/figure/log-axis.ts';
import { axis } from '../shared/figure/style.ts';
import type { End, Measurement, RecordPoint } from './found.ts';

/** Axes of the two measurements, and the ranges drawn along them. */

type Pair = Pick<RecordPoint, 'x' | 'y'>;

/** Room beyond the outermost points: a ratio on a logarithmic axis, a share of the reach on a plain one. */
const BEYOND = { ratio: 1.35, share: 0.06 };

export function axisTitle({ label, unit }: Measurement, logarithmic: boolean): string {
  return `${unit === '' ? label : `${label} (${unit})`}${logarithmic ? ', logarithmic' : ''}`;
}

/** Ends of what is drawn, by the values that points stand at: one slip in a range must not press all others together. */
export function drawnReach(
  points: readonly Pair[],
  side: 'x' | 'y',
  logarithmic: boolean,
): readonly [number, number] {
  let low = Infinity;
  let high = -Infinity;
  for (const point of points) {
    low = Math.min(low, point[side].point);
    high = Math.max(high, point[side].point);
  }
  return logarithmic
    ? [low / BEYOND.ratio, high * BEYOND.ratio]
    : [Math.min(0, low), high + BEYOND.share * (high - Math.min(0, low))];
}

export function measuredAxis(
  measured: Measurement,
  points: readonly Pair[],
  side: 'x' | 'y',
  logarithmic: boolean,
): Readonly<Record<string, unknown>> {
  const title = axisTitle(measured, logarithmic);
  const [low, high] = drawnReach(points, side, logarithmic);
  if (!logarithmic) return axis(title, { range: [low, high] });
  return axis(title, { ...logTicks([low, high]), range: [placeOnLog(low), placeOnLog(high)] });
}

/** Ranges that run on beyond what is drawn. */
export function beyondReach(points: readonly Pair[], logarithmic: boolean): number {
  const [x, y] = (['x', 'y'] as const).map((side) => drawnReach(points, side, logarithmic));
  const outside = ({ low, high, openEnded }: End, [from, to]: readonly [number, number]) =>
    !openEnded && (low < from || high > to);
  return points.filter((point) => outside(point.x, x) || outside(point.y, y)).length;
}

/** A plotly error bar over the ranges of one side; exact readings and open ends have none. */
export function rangeBars(points: readonly Pair[], side: 'x' | 'y') {
  const reach = (from: number, to: number) => (Number.isFinite(to - from) ? Math.max(0, to - from) : 0);
  return {
    type: 'data',
    symmetric: false,
    array: points.map((point) => reach(point[side].point, point[side].high)),
    arrayminus: points.map((point) => reach(point[side].low, point[side].point)),
    color: GROUND.inkSoft,
    thickness: 0.8,
    width: 0,
  };
}
