import type { Axis } from './axes.ts';
import type { Box } from './marks.ts';
import type { Plain } from './plain.ts';
import type { Scale } from './scale.ts';

/** A figure that is laid out: every axis with its pixels. */
export interface Frame {
  readonly traces: readonly Plain[];
  readonly layout: Plain;
  readonly axes: ReadonlyMap<string, Axis>;
  readonly scales: ReadonlyMap<string, Scale>;
  /** Of the whole drawing. */
  readonly width: number;
  readonly height: number;
  /** What axes, legend and colour bars leave to the plot. */
  readonly plot: Box;
}

/** The two scales of a trace or a shape. @throws RangeError for an axis that the figure does not have. */
export function scaleOf(frame: Frame, id: string): Scale {
  const scale = frame.scales.get(id);
  if (scale === undefined) throw new RangeError(`the figure has no axis ${id}`);
  return scale;
}

/** The rectangle that two axes span. */
export function boxOf(frame: Frame, x: string, y: string): Box {
  const [left, right] = ordered(scaleOf(frame, x).ends);
  const [top, bottom] = ordered(scaleOf(frame, y).ends);
  return { x: left, y: top, width: right - left, height: bottom - top };
}

function ordered([a, b]: readonly [number, number]): readonly [number, number] {
  return a < b ? [a, b] : [b, a];
}
