import { greatest, least } from '../numerics/foundation/lists.ts';
import { escapeText, PRINT_WIDTH } from './shared/figure/style.ts';

/** A point of a figure that has a name. */
export interface NamedPoint {
  readonly x: number;
  readonly y: number;
  readonly name: string;
  /** Across its marker in CSS pixels, 9 if left out. */
  readonly size?: number;
}

export interface PlacedLabel {
  /** The name, or nothing where no place is free. */
  readonly text: string;
  /** A plotly `textposition`. */
  readonly textposition: string;
}

export interface LabelRoom {
  /** Of the figure, CSS pixels at print width. */
  readonly height: number;
  /** Whether one unit is as long on both axes. */
  readonly equal: boolean;
}

/** Widths of the letters differ; this is a wide mean at 10 px. */
const LETTER = 5.6;
const LINE = 12;
/** Across a marker of the usual size. */
const MARKER = 9;
/** Nearer to each other than this, marks are at one place. */
const NEAR = 6;
/** From the middle of a marker to its text, as plotly sets it: this share of its size, and a pixel. */
const GAP = 0.625;
/** What ticks, titles and the legend take from the height, and ticks from the width. */
const AROUND = { width: 90, height: 110 };
/** Plotly leaves about this share of the range free at each end. */
const FREE = 0.06;

/** Directions in the order in which they are tried: [textposition, right, down]. */
const WAYS: readonly (readonly [string, number, number])[] = [
  ['top center', 0, -1],
  ['bottom center', 0, 1],
  ['middle right', 1, 0],
  ['middle left', -1, 0],
  ['top right', 1, -1],
  ['top left', -1, -1],
  ['bottom right', 1, 1],
  ['bottom left', -1, 1],
];

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * Where the names of points can stand without covering each other or a mark, at print size: the first free
 * one of eight places around each point, earlier points first. A name without a free place is left out, so the
 * table behind the figure must hold it. Sizes of letters are estimated.
 */
export function placeLabels(points: readonly NamedPoint[], room: LabelRoom): readonly PlacedLabel[] {
  const at = toPixels(points, room);
  const gaps = points.map(({ size = MARKER }) => GAP * size + 1);
  const marks = at.map(({ x, y }, place) => ({
    left: x - gaps[place],
    right: x + gaps[place],
    top: y - gaps[place],
    bottom: y + gaps[place],
  }));
  const taken: Box[] = [];
  return points.map(({ name }, place) => {
    const width = LETTER * name.length;
    for (const [textposition, right, down] of WAYS) {
      const box = boxAt(at[place], gaps[place], width, right, down);
      if (taken.some((other) => overlap(box, other))) continue;
      if (marks.some((mark, other) => !isSame(at[other], at[place]) && overlap(box, mark))) continue;
      if (box.left < -AROUND.width / 2 || box.right > PRINT_WIDTH.double - AROUND.width / 2) continue;
      taken.push(box);
      return { text: name, textposition };
    }
    return { text: '', textposition: 'top center' };
  });
}

/** What a trace of points needs to show its names there, and all of them under the pointer. */
export function labelled(labels: readonly PlacedLabel[], points: readonly NamedPoint[]) {
  return {
    text: labels.map(({ text }) => escapeText(text)),
    textposition: labels.map(({ textposition }) => textposition),
    hovertext: points.map(({ name }) => escapeText(name)),
    hovertemplate: '%{hovertext}<extra></extra>',
    cliponaxis: false,
  };
}

/** What a caption says of names that had no place. */
export function leftOut(labels: readonly PlacedLabel[]): string {
  const none = labels.filter(({ text }) => text === '').length;
  return none === 0 ? '' : ` ${none} ${none === 1 ? 'name is' : 'names are'} left out for want of room.`;
}

export interface SaidPoints {
  readonly labels: readonly PlacedLabel[];
  /** For the end of the caption: what the numbers stand for, which names are left out; nothing where all stand. */
  readonly said: string;
}

/** Of the names, the share that may be left out before numbers take their place. */
const MAY_LACK = 0.1;

/**
 * Points with their names; where more than a tenth of these have no room, with numbers that the caption explains, so
 * that a crowded or a small picture still says of each point what it is.
 */
export function namesOrNumbers(points: readonly NamedPoint[], room: LabelRoom): SaidPoints {
  const named = placeLabels(points, room);
  const lacking = named.filter(({ text }, at) => text === '' && points[at].name !== '').length;
  const own = points.filter(({ name }) => name !== '').length;
  if (lacking <= MAY_LACK * own)
    return { labels: named, said: leftOut(named.filter((_, at) => points[at].name !== '')) };
  let number = 0;
  const numbered = points.map((point) => (point.name === '' ? point : { ...point, name: String(++number) }));
  const labels = placeLabels(numbered, room);
  const key = points.flatMap(({ name }, at) => (name === '' ? [] : [`${numbered[at].name} ${name.trim()}`]));
  return {
    labels,
    said: ` Numbers: ${key.join('; ')}.${leftOut(labels.filter((_, at) => points[at].name !== ''))}`,
  };
}

function toPixels(points: readonly NamedPoint[], { height, equal }: LabelRoom): { x: number; y: number }[] {
  const inner = { width: PRINT_WIDTH.double - AROUND.width, height: height - AROUND.height };
  const [left, right] = ends(points.map(({ x }) => x));
  const [bottom, top] = ends(points.map(({ y }) => y));
  const wide = (right - left) * (1 + 2 * FREE) || 1;
  const tall = (top - bottom) * (1 + 2 * FREE) || 1;
  const across = inner.width / wide;
  const up = inner.height / tall;
  const both = Math.min(across, up);
  const [scaleX, scaleY] = equal ? [both, both] : [across, up];
  return points.map(({ x, y }) => ({
    x: inner.width / 2 + (x - (left + right) / 2) * scaleX,
    y: inner.height / 2 - (y - (bottom + top) / 2) * scaleY,
  }));
}

function ends(values: readonly number[]): readonly [number, number] {
  return values.length === 0 ? [0, 0] : [least(values), greatest(values)];
}

function boxAt(
  { x, y }: { x: number; y: number },
  gap: number,
  width: number,
  right: number,
  down: number,
): Box {
  const left = right === 0 ? x - width / 2 : right > 0 ? x + gap : x - gap - width;
  const top = down === 0 ? y - LINE / 2 : down > 0 ? y + gap : y - gap - LINE;
  return { left, right: left + width, top, bottom: top + LINE };
}

function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/** Marks at one place cover each other; their names still find places of their own around it. */
function isSame(a: { x: number; y: number }, b: { x: number; y: number }): boolean {
  return Math.abs(a.x - b.x) < NEAR && Math.abs(a.y - b.y) < NEAR;
}
