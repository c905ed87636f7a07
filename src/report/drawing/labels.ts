import { shortNames } from '../../analyses/shared/figure/short-names.ts';
import { greatest } from '../../numerics/foundation/lists.ts';
import type { Axis } from './axes.ts';
import { broken, LINE_HEIGHT, lettering, widest, widthOf } from './lettering.ts';
import { numberOr, part } from './plain.ts';
import { pixel, type Scale, type Tick, ticksOf } from './scale.ts';

/** The tick labels of an axis as they will stand, and the room that they take away from the plot. */
export interface Labels {
  readonly ticks: readonly (Tick & { readonly lines: readonly string[] })[];
  readonly size: number;
  /** Degrees clockwise. */
  readonly turn: number;
  /** Pixels from the plot outwards, without the ticks. */
  readonly depth: number;
}

const NO_LABELS: Labels = { ticks: [], size: 10, turn: 0, depth: 0 };

/** Pixels that a tick of each axis wants. */
const PER_TICK = { x: 60, y: 40 } as const;

/** Lays the tick labels of an axis out, so that none covers another. */
export function layLabels(axis: Axis, scale: Scale, mostWide: number): Labels {
  if (axis.settings.visible === false) return NO_LABELS;
  const length = Math.abs(scale.ends[1] - scale.ends[0]);
  const ticks = ticksOf(axis.settings, scale, length / PER_TICK[axis.letter]);
  const size = numberOr(part(axis.settings, 'tickfont').size, 11);
  if (axis.settings.showticklabels === false)
    return { ...NO_LABELS, ticks: ticks.map((tick) => ({ ...tick, lines: [] })) };
  const plain = ticks.map((tick) => ({ ...tick, lines: lettering(tick.text).lines }));
  return axis.letter === 'y' ? beside(plain, scale, size, mostWide) : beneath(axis, plain, scale, size);
}

type Lined = Labels['ticks'];

function beside(ticks: Lined, scale: Scale, size: number, mostWide: number): Labels {
  const room = spacing(ticks, scale);
  const most = Math.max(1, Math.floor(room / (size * LINE_HEIGHT)));
  const short = inRoom(ticks, size, mostWide);
  const wrapped = ticks.map((tick, at) => {
    const lines = tick.lines.flatMap((line) => broken(line, size, mostWide));
    return { ...tick, lines: lines.length > most ? [short[at] as string] : lines };
  });
  const shown = room < size ? everyFew(wrapped, Math.ceil(size / room)) : wrapped;
  return {
    ticks: shown,
    size,
    turn: 0,
    depth: Math.max(0, greatest(shown.map(({ lines }) => widest(lines, size)))),
  };
}

function beneath(axis: Axis, ticks: Lined, scale: Scale, size: number): Labels {
  const asked = numberOr(axis.settings.tickangle, Number.NaN);
  const room = spacing(ticks, scale);
  const width = (some: Lined) => Math.max(0, greatest(some.map(({ lines }) => widest(lines, size))));
  const deep = (some: Lined) =>
    Math.max(1, greatest(some.map(({ lines }) => lines.length))) * size * LINE_HEIGHT;
  if (Number.isFinite(asked) && asked !== 0) return turned(ticks, size, asked);
  if (width(ticks) + GAP <= room) return { ticks, size, turn: 0, depth: deep(ticks) };
  if (scale.kind !== 'category') {
    const shown = unlapping(ticks, scale, size);
    return { ticks: shown, size, turn: 0, depth: deep(shown) };
  }
  const wrapped = ticks.map((tick) => ({
    ...tick,
    lines: tick.lines.flatMap((line) => broken(line, size, room - GAP)),
  }));
  if (width(wrapped) + GAP <= room && deep(wrapped) <= 4 * size * LINE_HEIGHT)
    return { ticks: wrapped, size, turn: 0, depth: deep(wrapped) };
  return turned(room < size ? everyFew(ticks, Math.ceil(size / room)) : ticks, size, -45);
}

const GAP = 6;
const MOST_DEEP = 130;

function turned(ticks: Lined, size: number, turn: number): Labels {
  const sine = turn === 0 ? 0 : Math.min(1, Math.abs(turn) / 57);
  const short = inRoom(ticks, size, MOST_DEEP / sine);
  const cut = ticks.map((tick, at) => ({ ...tick, lines: [short[at] as string] }));
  const longest = Math.max(0, greatest(cut.map(({ lines }) => widest(lines, size))));
  return { ticks: cut, size, turn, depth: longest * sine + size };
}

/** Pixels between the two nearest ticks. */
function spacing(ticks: Lined, scale: Scale): number {
  const at = ticks.map(({ own }) => pixel(scale, own)).sort((a, b) => a - b);
  return at
    .slice(1)
    .reduce((least, one, place) => Math.min(least, one - at[place]), Number.POSITIVE_INFINITY);
}

/** Keeps a tick only where its number does not touch the one before it. */
function unlapping(ticks: Lined, scale: Scale, size: number): Lined {
  let end = Number.NEGATIVE_INFINITY;
  const rising = scale.ends[0] < scale.ends[1] === scale.range[0] < scale.range[1];
  return (rising ? ticks : [...ticks].reverse()).map((tick) => {
    const half = widest(tick.lines, size) / 2;
    const at = pixel(scale, tick.own);
    if (at - half < end + GAP / 2) return { ...tick, lines: [] };
    end = at + half;
    return tick;
  });
}

function everyFew(ticks: Lined, few: number): Lined {
  return ticks.map((tick, at) => (at % few === 0 ? tick : { ...tick, lines: [] }));
}

/** Names that are too long for their room are cut, no two alike; the table has them whole. */
function inRoom(ticks: Lined, size: number, width: number): readonly string[] {
  return shortNames(
    ticks.map(({ lines }) => lines.join(' ')),
    (text) => widthOf(text, size) <= width,
  );
}
