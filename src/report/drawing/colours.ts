import { GROUND } from '../../analyses/shared/figure/colours.ts';
import type { Colour } from './marks.ts';
import { each, list, numberOr, type Plain, textOr } from './plain.ts';

/** What is the warm sheet on a screen is white on paper. */
export const WHITE = '#FFFFFF';

/** A colour and how much of it covers; `none` where nothing is drawn. */
export interface Paint {
  readonly colour: string;
  readonly opacity: number;
}

/** Reads a colour of a figure (#rgb, #rrggbb, #rrggbbaa, rgb(), rgba()); the sheet becomes white. */
export function paint(value: unknown): Paint {
  const text = textOr(value, '').trim();
  if (text === '' || text === 'transparent' || text === 'none') return { colour: 'none', opacity: 0 };
  const hex = /^#([0-9a-f]{3,8})$/i.exec(text)?.[1];
  if (hex !== undefined) {
    const long = hex.length < 5 ? [...hex].map((digit) => digit + digit).join('') : hex;
    const opacity = long.length === 8 ? Number.parseInt(long.slice(6), 16) / 255 : 1;
    return onPaper(`#${long.slice(0, 6).toUpperCase()}`, opacity);
  }
  const parts = /^rgba?\(([^)]*)\)$/i.exec(text)?.[1]?.split(',').map(Number);
  if (parts !== undefined && parts.length >= 3 && parts.every(Number.isFinite))
    return onPaper(hexOf([parts[0], parts[1], parts[2]]), parts[3] ?? 1);
  return { colour: text, opacity: 1 };
}

function onPaper(colour: string, opacity: number): Paint {
  if (opacity === 0) return { colour: 'none', opacity: 0 };
  return { colour: colour === GROUND.sheet ? WHITE : colour, opacity: Math.round(opacity * 1000) / 1000 };
}

export function hexOf(colour: Colour): string {
  return `#${colour.map((one) => Math.round(one).toString(16).padStart(2, '0')).join('')}`.toUpperCase();
}

export function colourOf(hex: string): Colour {
  const value = Number.parseInt(paint(hex).colour.slice(1), 16);
  return [(value >> 16) & 255, (value >> 8) & 255, value & 255];
}

export interface ColourScale {
  readonly low: number;
  readonly high: number;
  readonly at: (value: number) => Colour;
}

/** The colour of a number on a scale of stops, straight between them in RGB as plotly has it. */
export function colourScale(stops: unknown, low: number, high: number, reversed: unknown): ColourScale {
  const read = list(stops).map(
    (stop) => [numberOr(each(stop, 0), 0), colourOf(textOr(each(stop, 1), '#000'))] as const,
  );
  const scale = read.length > 1 ? read : GREY;
  const at = (value: number): Colour => {
    const raw = high === low ? 0.5 : Math.min(1, Math.max(0, (value - low) / (high - low)));
    const share = reversed === true ? 1 - raw : raw;
    const above = Math.max(
      1,
      scale.findIndex(([stop]) => stop >= share),
    );
    const [[from, a], [to, b]] = [scale[above - 1], scale[above]];
    const t = to === from ? 1 : (share - from) / (to - from);
    return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t, a[2] + (b[2] - a[2]) * t];
  };
  return { low, high, at };
}

const GREY: readonly (readonly [number, Colour])[] = [
  [0, [255, 255, 255]],
  [1, [0, 0, 0]],
];

/** Ink on light, white on dark: the relative luminance of WCAG 2.2 decides. */
export function inkOn(colour: Colour): string {
  const [r, g, b] = colour.map((one) => {
    const share = one / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b < 0.22 ? WHITE : GROUND.ink;
}

const DASHES: Readonly<Record<string, readonly number[]>> = {
  dash: [9, 9],
  dot: [3, 3],
  dashdot: [9, 3, 3, 3],
  longdash: [15, 15],
  longdashdot: [15, 5, 3, 5],
};

/** Dashes by plotly's names, whose lengths grow with the line from 3 px on. */
export function dashOf(name: unknown, width: number): readonly number[] | undefined {
  const pattern = DASHES[textOr(name, 'solid')];
  return pattern?.map((length) => (length / 3) * Math.max(width, 3));
}

/** Fill and line of a mark as a path takes them. */
export function fillOf(value: unknown, opacity = 1): { readonly fill?: string; readonly opacity?: number } {
  const { colour, opacity: own } = paint(value);
  if (colour === 'none') return {};
  const both = own * opacity;
  return both === 1 ? { fill: colour } : { fill: colour, opacity: both };
}

export function strokeOf(line: Plain, otherwise: string, width: number) {
  const { colour, opacity } = paint(line.color ?? otherwise);
  const wide = numberOr(line.width, width);
  if (colour === 'none' || wide === 0) return {};
  return {
    stroke: colour,
    width: wide,
    dash: dashOf(line.dash, wide),
    ...(opacity === 1 ? {} : { opacity }),
  };
}
