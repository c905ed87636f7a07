import { GROUND } from '../../analyses/shared/figure/colours.ts';
import { greatest, least } from '../../numerics/foundation/lists.ts';
import type { Axis } from './axes.ts';
import { paint } from './colours.ts';
import { type Frame, scaleOf } from './frame.ts';
import type { Labels } from './labels.ts';
import { broken, LINE_HEIGHT, lettering, MIDDLE } from './lettering.ts';
import { linePath, type Mark } from './marks.ts';
import { numberOr, part, textOr } from './plain.ts';
import { pixel, type Scale } from './scale.ts';

/** Where an axis stands: the pixel across it, and which way is out of the plot. */
export interface Stand {
  readonly at: number;
  readonly out: 1 | -1;
  /** Ends of what it is drawn against, for the grid. */
  readonly against: readonly [number, number];
}

export function standOf(axis: Axis, frame: Frame): Stand {
  const other = axis.letter === 'x' ? 'y' : 'x';
  const anchor = frame.scales.has(axis.anchor) ? axis.anchor : other;
  const [a, b] = scaleOf(frame, anchor).ends;
  const [low, high] = a < b ? [a, b] : [b, a];
  const far = axis.settings.side === (axis.letter === 'x' ? 'top' : 'right');
  if (axis.letter === 'x') return { at: far ? low : high, out: far ? -1 : 1, against: [low, high] };
  return { at: far ? high : low, out: far ? 1 : -1, against: [low, high] };
}

export function gridMarks(axis: Axis, frame: Frame, labels: Labels): readonly Mark[] {
  const { settings, letter } = axis;
  if (settings.visible === false) return [];
  const scale = scaleOf(frame, axis.id);
  const { against } = standOf(axis, frame);
  const line = (own: number) => {
    const at = pixel(scale, own);
    return letter === 'x'
      ? linePath([
          [at, against[0]],
          [at, against[1]],
        ])
      : linePath([
          [against[0], at],
          [against[1], at],
        ]);
  };
  const grid: readonly Mark[] =
    settings.showgrid === false
      ? []
      : [
          {
            path: labels.ticks.map(({ own }) => line(own)).join(''),
            stroke: paint(settings.gridcolor ?? GROUND.line).colour,
            width: numberOr(settings.gridwidth, 1),
          },
        ];
  const [low, high] = [least(scale.range), greatest(scale.range)];
  if (settings.zeroline !== true || low > 0 || high < 0 || scale.kind === 'log') return grid;
  return [
    ...grid,
    {
      path: line(0),
      stroke: paint(settings.zerolinecolor ?? GROUND.ink).colour,
      width: numberOr(settings.zerolinewidth, 1),
    },
  ];
}

export function axisMarks(axis: Axis, frame: Frame, labels: Labels): readonly Mark[] {
  const { settings, letter } = axis;
  if (settings.visible === false) return [];
  const scale = scaleOf(frame, axis.id);
  const { at, out } = standOf(axis, frame);
  const [from, to] = scale.ends;
  const place = (along: number, across: number) =>
    (letter === 'x' ? [along, across] : [across, along]) as [number, number];
  const pen = {
    stroke: paint(settings.linecolor ?? GROUND.ink).colour,
    width: numberOr(settings.linewidth, 1),
  };
  const long = settings.ticks === 'outside' ? numberOr(settings.ticklen, 5) : 0;
  const ticks = labels.ticks.map(({ own }) => {
    const along = pixel(scale, own);
    return linePath([place(along, at), place(along, at + out * long)]);
  });
  return [
    ...(settings.showline === true ? [{ path: linePath([place(from, at), place(to, at)]), ...pen }] : []),
    ...(long > 0 && ticks.length > 0
      ? [{ path: ticks.join(''), stroke: paint(settings.tickcolor ?? GROUND.ink).colour, width: 1 }]
      : []),
    ...labels.ticks.flatMap(({ own, lines }) =>
      labelMarks(pixel(scale, own), at + out * (long + PAD), lines, labels, letter, out),
    ),
    ...titleMarks(axis, frame, at + out * (long + PAD + labels.depth + standoff(axis)), out),
  ];
}

/** Between a tick and its label. */
const PAD = 3;

function labelMarks(
  along: number,
  across: number,
  lines: readonly string[],
  { size, turn }: Labels,
  letter: 'x' | 'y',
  out: 1 | -1,
): readonly Mark[] {
  const tall = size * LINE_HEIGHT;
  const fill = GROUND.ink;
  if (letter === 'y')
    return lines.map((text, line) => ({
      text,
      x: across,
      y: along + size * MIDDLE + (line - (lines.length - 1) / 2) * tall,
      size,
      anchor: out < 0 ? ('end' as const) : ('start' as const),
      fill,
    }));
  if (turn !== 0)
    return lines.map((text) => ({
      text,
      x: along,
      y: across + size * 0.7,
      size,
      anchor: turn < 0 ? ('end' as const) : ('start' as const),
      fill,
      turn,
    }));
  const top = out > 0 ? across : across - lines.length * tall;
  return lines.map((text, line) => ({
    text,
    x: along,
    y: top + size * 0.85 + line * tall,
    size,
    anchor: 'middle' as const,
    fill,
  }));
}

function standoff(axis: Axis): number {
  return numberOr(part(axis.settings, 'title').standoff, 8);
}

/** Lines of a title, none longer than the axis where words allow it. */
export function titleOf(axis: Axis, length: number): readonly string[] {
  const { title } = axis.settings;
  const { lines } = lettering(textOr(title, textOr(part(axis.settings, 'title').text, '')));
  if (lines.every((line) => line === '')) return [];
  return lines.flatMap((line) => broken(line, titleSize(axis), Math.max(length, SHORTEST)));
}

/** Titles of very short axes may reach beyond them a little. */
const SHORTEST = 80;

export function titleSize(axis: Axis): number {
  return numberOr(part(part(axis.settings, 'title'), 'font').size, 11);
}

function titleMarks(axis: Axis, frame: Frame, across: number, out: 1 | -1): readonly Mark[] {
  const [from, to] = scaleOf(frame, axis.id).ends;
  const lines = titleOf(axis, Math.abs(to - from));
  const size = titleSize(axis);
  const tall = size * LINE_HEIGHT;
  const middle = (from + to) / 2;
  const fill = GROUND.ink;
  if (axis.letter === 'x') {
    const top = out > 0 ? across : across - lines.length * tall;
    return lines.map((text, line) => ({
      text,
      x: middle,
      y: top + size * 0.85 + line * tall,
      size,
      anchor: 'middle' as const,
      fill,
    }));
  }
  return lines.map((text, line) => ({
    text,
    x: across + (out > 0 ? size * 0.85 + line * tall : -(lines.length - 1 - line) * tall - size * 0.2),
    y: middle,
    size,
    anchor: 'middle' as const,
    fill,
    turn: -90,
  }));
}

/** Pixels that an axis takes outside of the plot: ticks, labels, title. */
export function depthOf(axis: Axis, labels: Labels, { ends }: Scale): number {
  const { settings } = axis;
  if (settings.visible === false) return 0;
  const long = settings.ticks === 'outside' ? numberOr(settings.ticklen, 5) : 0;
  const title = titleOf(axis, Math.abs(ends[1] - ends[0]));
  const heading = title.length === 0 ? 0 : standoff(axis) + title.length * titleSize(axis) * LINE_HEIGHT;
  return long + PAD + labels.depth + heading;
}
