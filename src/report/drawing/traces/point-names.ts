import { GROUND } from '../../../analyses/shared/figure/colours.ts';
import { eachNumber } from '../axes.ts';
import { paint } from '../colours.ts';
import type { Frame } from '../frame.ts';
import { LINE_HEIGHT, lettering, widest } from '../lettering.ts';
import type { Mark, TextMark } from '../marks.ts';
import { each, numberOr, type Plain, part, textOr } from '../plain.ts';

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
export function nameAt(
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
      crosses: inside < plot.x,
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
            .filter(({ moved }) => !moved)
            // Over the axis on the left only where nothing else is free.
            .sort((a, b) => Number(a.crosses) - Number(b.crosses)),
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
