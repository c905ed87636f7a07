import { GROUND } from '../../analyses/shared/figure/colours.ts';
import { fillOf, paint, strokeOf } from './colours.ts';
import { type Frame, scaleOf } from './frame.ts';
import { LINE_HEIGHT, lettering, MIDDLE, widest } from './lettering.ts';
import { type Box, boxPath, linePath, type Mark } from './marks.ts';
import { list, numberOr, type Plain, part, textOr } from './plain.ts';
import { pixel, pixelOf } from './scale.ts';

/** Pixel of a coordinate that stands on an axis, on the plot (`paper`) or on the domain of an axis. */
function along(frame: Frame, ref: string, value: unknown, letter: 'x' | 'y', inPowers = false): number {
  const { plot } = frame;
  if (ref === 'paper') {
    const share = numberOr(value, 0);
    return letter === 'x' ? plot.x + share * plot.width : plot.y + (1 - share) * plot.height;
  }
  const scale = scaleOf(frame, ref.replace(' domain', ''));
  // As plotly has it, annotations on a logarithmic axis give the power of ten, shapes the number.
  if (!ref.endsWith(' domain'))
    return inPowers && scale.kind === 'log'
      ? pixel(scale, numberOr(value, Number.NaN))
      : pixelOf(scale, value);
  const [a, b] = scale.ends;
  const [low, high] = letter === 'x' ? [Math.min(a, b), Math.max(a, b)] : [Math.max(a, b), Math.min(a, b)];
  return low + numberOr(value, 0) * (high - low);
}

/** Lines, rectangles, circles and straight-edged paths that a layout draws over or under its traces. */
export function shapeMarks(frame: Frame, layer: 'above' | 'below'): readonly Mark[] {
  return list(frame.layout.shapes).flatMap((raw) => {
    const shape = raw as Plain;
    if (shape.visible === false || textOr(shape.layer, 'above') !== layer) return [];
    const [xref, yref] = [textOr(shape.xref, 'x'), textOr(shape.yref, 'y')];
    const opacity = numberOr(shape.opacity, 1);
    const stroke = strokeOf(part(shape, 'line'), GROUND.ink, 2);
    const style = { ...fillOf(shape.fillcolor), ...stroke, ...(opacity === 1 ? {} : { opacity }) };
    const path = pathOf(
      shape,
      (x) => along(frame, xref, x, 'x'),
      (y) => along(frame, yref, y, 'y'),
    );
    return path === '' ? [] : [{ clip: frame.plot, marks: [{ path, ...style }] }];
  });
}

/** The room of lines that stand for themselves, as a scale bar does; those that run through the plot are crossed by names. */
export function shortLines(frame: Frame): readonly Box[] {
  return list(frame.layout.shapes).flatMap((raw) => {
    const shape = raw as Plain;
    if (shape.type !== 'line' || shape.visible === false) return [];
    const [xref, yref] = [textOr(shape.xref, 'x'), textOr(shape.yref, 'y')];
    const [x0, x1] = [along(frame, xref, shape.x0, 'x'), along(frame, xref, shape.x1, 'x')];
    const [y0, y1] = [along(frame, yref, shape.y0, 'y'), along(frame, yref, shape.y1, 'y')];
    const [width, height] = [Math.abs(x1 - x0), Math.abs(y1 - y0)];
    const short = width < frame.plot.width * SHORT && height < frame.plot.height * SHORT;
    if (!short) return [];
    return [
      {
        x: Math.min(x0, x1) - AROUND,
        y: Math.min(y0, y1) - AROUND,
        width: width + 2 * AROUND,
        height: height + 2 * AROUND,
      },
    ];
  });
}

/** Share of the plot that a line which stands for itself takes at most. */
const SHORT = 0.4;
/** Pixels kept free around it. */
const AROUND = 2;

type AxisScale = (value: unknown) => number;

function pathOf(shape: Plain, x: AxisScale, y: AxisScale): string {
  if (shape.type === 'path') return edges(textOr(shape.path, ''), x, y);
  const [x0, x1, y0, y1] = [x(shape.x0), x(shape.x1), y(shape.y0), y(shape.y1)];
  if (![x0, x1, y0, y1].every(Number.isFinite)) return '';
  if (shape.type === 'line')
    return linePath([
      [x0, y0],
      [x1, y1],
    ]);
  const box = {
    x: Math.min(x0, x1),
    y: Math.min(y0, y1),
    width: Math.abs(x1 - x0),
    height: Math.abs(y1 - y0),
  };
  if (shape.type !== 'circle') return boxPath(box);
  const [rx, ry] = [box.width / 2, box.height / 2];
  const [cx, cy] = [box.x + rx, box.y + ry];
  const corner = (dx: number, dy: number) => `${cx + dx * rx} ${cy + dy * ry}`;
  const k = 0.5523;
  return `M${corner(1, 0)}C${corner(1, k)} ${corner(k, 1)} ${corner(0, 1)}C${corner(-k, 1)} ${corner(-1, k)} ${corner(-1, 0)}C${corner(-1, -k)} ${corner(-k, -1)} ${corner(0, -1)}C${corner(k, -1)} ${corner(1, -k)} ${corner(1, 0)}Z`;
}

/** The M, L, H, V and Z of a path in the numbers of its axes. */
function edges(path: string, x: AxisScale, y: AxisScale): string {
  let at: [number, number] = [0, 0];
  return [...path.matchAll(/([MLHVZ])([^MLHVZ]*)/gi)]
    .map(([, letter, rest]) => {
      const numbers = rest
        .split(/[\s,]+/)
        .filter((one) => one !== '')
        .map(Number);
      if (letter === 'Z' || letter === 'z') return 'Z';
      if (letter === 'H') at = [x(numbers[0]), at[1]];
      else if (letter === 'V') at = [at[0], y(numbers[0])];
      else at = [x(numbers[0]), y(numbers[1])];
      return linePath([at]).replace('M', letter === 'M' ? 'M' : 'L');
    })
    .join('');
}

/** Texts that a layout writes into the figure, with the line to what they point at. */
export function annotationMarks(frame: Frame): readonly Mark[] {
  return list(frame.layout.annotations).flatMap((raw): readonly Mark[] => {
    const note = raw as Plain;
    const { lines, bold } = lettering(textOr(note.text, ''));
    if (note.visible === false || lines.every((line) => line === '')) return [];
    const size = numberOr(part(note, 'font').size, 11);
    const tip = [
      along(frame, textOr(note.xref, 'x'), note.x, 'x', true),
      along(frame, textOr(note.yref, 'y'), note.y, 'y', true),
    ] as const;
    const arrow = note.showarrow !== false;
    const [x, y] = [
      tip[0] + (arrow ? numberOr(note.ax, -10) : 0) + numberOr(note.xshift, 0),
      tip[1] + (arrow ? numberOr(note.ay, -30) : 0) - numberOr(note.yshift, 0),
    ];
    if (![x, y].every(Number.isFinite)) return [];
    const [wide, tall] = [widest(lines, size), lines.length * size * LINE_HEIGHT];
    const left =
      x - wide * shareOf(textOr(note.xanchor, 'auto'), 'left', 'right', arrow ? null : frame.plot, x, 'x');
    const top =
      y - tall * shareOf(textOr(note.yanchor, 'auto'), 'top', 'bottom', arrow ? null : frame.plot, y, 'y');
    const kept = Math.min(Math.max(left, 1), frame.width - wide - 1);
    const fill = paint(part(note, 'font').color ?? GROUND.ink).colour;
    const ground = paint(note.bgcolor);
    const turn = numberOr(note.textangle, 0);
    return [
      ...(arrow
        ? [
            {
              path: linePath([tip, [x, y]]),
              ...strokeOf({ color: note.arrowcolor, width: note.arrowwidth }, GROUND.ink, 1),
            },
          ]
        : []),
      ...(ground.opacity === 0
        ? []
        : [
            {
              path: boxPath({ x: kept - 2, y: top, width: wide + 4, height: tall }),
              fill: ground.colour,
              opacity: ground.opacity,
            },
          ]),
      ...lines.map(
        (text, line): Mark => ({
          text,
          x: turn === 0 ? kept : upright(x, size, textOr(note.xanchor, 'auto'), turn),
          y: turn === 0 ? top + size * (LINE_HEIGHT * line + 1) : y + line * size * LINE_HEIGHT,
          size,
          anchor: turn === 0 ? 'start' : 'middle',
          fill,
          ...(bold ? { bold } : {}),
          ...(turn === 0 ? {} : { turn }),
        }),
      ),
    ];
  });
}

/** Where the base line of a text on end stands, given what the anchor holds: its left, its middle or its right. */
function upright(x: number, size: number, anchor: string, turn: number): number {
  const middle = x + (anchor === 'left' ? 0.5 : anchor === 'right' ? -0.5 : 0) * size * LINE_HEIGHT;
  return middle - Math.sign(turn) * size * MIDDLE;
}

/** Which share of a text lies before its anchor; left to itself it leans inwards at the edges of the plot. */
function shareOf(
  anchor: string,
  first: string,
  last: string,
  plot: Frame['plot'] | null,
  at: number,
  letter: 'x' | 'y',
): number {
  if (anchor === first) return 0;
  if (anchor === last) return 1;
  if (anchor !== 'auto' || plot === null) return 0.5;
  const share = letter === 'x' ? (at - plot.x) / plot.width : (at - plot.y) / plot.height;
  return share < 1 / 3 ? 0 : share > 2 / 3 ? 1 : 0.5;
}
