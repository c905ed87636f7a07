import { greatest, least } from '../../numerics/foundation/lists.ts';
import { each, list, numberOr, type Plain, part, textOr } from './plain.ts';
import { placeOn, type Scale } from './scale.ts';

/** One axis of a figure with what stands on it, before there are pixels. */
export interface Axis {
  /** As traces name it: x, x2, y … */
  readonly id: string;
  readonly letter: 'x' | 'y';
  readonly settings: Plain;
  readonly kind: Scale['kind'];
  readonly categories: readonly string[];
  /** Share of the plot from its left or lower edge. */
  readonly domain: readonly [number, number];
  /** The axis at which this one stands. */
  readonly anchor: string;
}

/** How far a trace reaches along an axis, in the axis' own numbers. */
export interface Extent {
  readonly axis: string;
  readonly low: number;
  readonly high: number;
  /** Room in pixels beyond each end. */
  readonly beyond: number;
  /** Whether an end at nought stays at nought, as the foot of bars does. */
  readonly footed?: boolean;
  /** Whether the twentieth of the axis is left free beyond it, as around points. */
  readonly airy: boolean;
}

export function axisOf(trace: Plain, letter: 'x' | 'y'): string {
  return textOr(trace[`${letter}axis`], letter);
}

/** All values that a trace puts on an axis. */
export function valuesOn(trace: Plain, letter: 'x' | 'y'): readonly unknown[] {
  const values = list(trace[letter]);
  return values.some(Array.isArray) ? values.flatMap((value) => list(value)) : values;
}

export function readAxes(traces: readonly Plain[], layout: Plain): ReadonlyMap<string, Axis> {
  const ids = new Set(traces.flatMap((trace) => [axisOf(trace, 'x'), axisOf(trace, 'y')]));
  for (const key of Object.keys(layout)) {
    const named = /^([xy])axis(\d*)$/.exec(key);
    if (named !== null) ids.add(`${named[1]}${named[2]}`);
  }
  return new Map([...ids].map((id) => [id, readAxis(id, traces, layout)]));
}

function readAxis(id: string, traces: readonly Plain[], layout: Plain): Axis {
  const letter = id.startsWith('x') ? 'x' : 'y';
  const settings = part(layout, id.replace(letter, `${letter}axis`));
  const own = traces.filter((trace) => axisOf(trace, letter) === id);
  const values = own.flatMap((trace) => valuesOn(trace, letter));
  const kind = kindOf(settings, values);
  const other = letter === 'x' ? 'y' : 'x';
  const domain = list(settings.domain);
  return {
    id,
    letter,
    settings,
    kind,
    categories:
      kind === 'category'
        ? [
            ...new Set(
              [...list(settings.categoryarray), ...values].filter((value) => value !== null).map(String),
            ),
          ]
        : [],
    domain: [numberOr(domain[0], 0), numberOr(domain[1], 1)],
    anchor: textOr(settings.anchor, own[0] === undefined ? other : axisOf(own[0], other)),
  };
}

function kindOf(settings: Plain, values: readonly unknown[]): Scale['kind'] {
  if (settings.type === 'log' || settings.type === 'category' || settings.type === 'linear')
    return settings.type;
  const texts = values.filter(
    (value) => typeof value === 'string' && value !== '' && !Number.isFinite(Number(value)),
  );
  return texts.length > 0 ? 'category' : 'linear';
}

/** The range of an axis in its own numbers: as set, or around all that stands on it. */
export function rangeOf(axis: Axis, extents: readonly Extent[], length: number): readonly [number, number] {
  const set = list(axis.settings.range);
  const asked = [numberOr(set[0], Number.NaN), numberOr(set[1], Number.NaN)] as const;
  if (asked.every(Number.isFinite)) return asked;
  const [low, high] = around(axis, extents, length);
  const [a, b] = [Number.isFinite(asked[0]) ? asked[0] : low, Number.isFinite(asked[1]) ? asked[1] : high];
  return axis.settings.autorange === 'reversed' ? [b, a] : [a, b];
}

function around(axis: Axis, extents: readonly Extent[], length: number): readonly [number, number] {
  const toZero = axis.settings.rangemode === 'tozero' && axis.kind === 'linear';
  const own = extents.filter(({ low, high }) => Number.isFinite(low) && Number.isFinite(high));
  let low = least([...own.map((one) => one.low), ...(toZero ? [0] : [])]);
  let high = greatest([...own.map((one) => one.high), ...(toZero ? [0] : [])]);
  if (!Number.isFinite(low) || !Number.isFinite(high)) return axis.kind === 'log' ? [0, 1] : [-1, 6];
  if (low === high) [low, high] = toZero && low === 0 ? [0, 1] : [low - 1, high + 1];
  const padOf = (end: number, at: (extent: Extent) => number) => {
    // Nought stays the edge where bars stand on it or the axis asks for it.
    if (end === 0 && (toZero || own.some((one) => one.footed))) return 0;
    const there = own.filter((one) => Math.abs(at(one) - end) < (high - low) * 0.02);
    return Math.max(0, greatest(there.map(({ beyond, airy }) => beyond + (airy ? length * 0.05 : 0))));
  };
  const [before, after] = [padOf(low, (one) => one.low), padOf(high, (one) => one.high)];
  const perPixel = (high - low) / Math.max(1, length - before - after);
  return [low - before * perPixel, high + after * perPixel];
}

/** Least and greatest of what stands on an axis. */
export function extentOf(
  axis: Axis,
  values: readonly unknown[],
  beyond: (place: number) => number,
  airy: boolean,
): Extent {
  let [low, high, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0];
  values.forEach((value, place) => {
    const own = placeOn(axis, value);
    if (!Number.isFinite(own)) return;
    low = Math.min(low, own);
    high = Math.max(high, own);
    most = Math.max(most, beyond(place));
  });
  return { axis: axis.id, low, high, beyond: most, airy };
}

export function eachNumber(value: unknown, place: number, otherwise: number): number {
  return numberOr(each(value, place), otherwise);
}
