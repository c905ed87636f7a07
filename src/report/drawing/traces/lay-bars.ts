import { least } from '../../../numerics/foundation/lists.ts';
import { type Axis, axisOf, eachNumber } from '../axes.ts';
import { list, numberOr, type Plain, textOr } from '../plain.ts';
import { placeOn } from '../scale.ts';

/** One bar in the own numbers of its axes. */
export interface Bar {
  readonly place: number;
  readonly thick: number;
  /** Ends of the room that it shares with the bars beside it. */
  readonly room: readonly [number, number];
  readonly from: number;
  readonly to: number;
}

export const isFlat = (trace: Plain) => trace.orientation === 'h';

/** Where the bars of every bar trace stand: stacked, side by side or over each other as the layout says. */
export function layBars(traces: readonly Plain[], axes: ReadonlyMap<string, Axis>, layout: Plain) {
  const bars = traces.filter(({ type }) => type === 'bar');
  const laid = new Map<Plain, readonly (Bar | null)[]>();
  const tops = new Map<string, number>();
  const gap = numberOr(layout.bargap, 0.2);
  const mode = textOr(layout.barmode, 'group');
  for (const trace of bars) {
    const [along, across] = isFlat(trace) ? (['y', 'x'] as const) : (['x', 'y'] as const);
    const [stand, reach] = [axes.get(axisOf(trace, along)), axes.get(axisOf(trace, across))];
    if (stand === undefined || reach === undefined) continue;
    const beside = bars.filter(
      (other) => axisOf(other, 'x') === axisOf(trace, 'x') && axisOf(other, 'y') === axisOf(trace, 'y'),
    );
    // Traces that never meet at one place have it to themselves.
    const shared = mode === 'group' && meet(beside, along) ? beside.length : 1;
    const apart = step(beside, along, stand);
    const thick = ((1 - gap) * apart) / shared;
    const shift = shared > 1 ? (beside.indexOf(trace) - (beside.length - 1) / 2) * thick : 0;
    laid.set(
      trace,
      list(trace[along]).map((value, at) => {
        const length = eachNumber(trace[across], at, Number.NaN);
        const place = placeOn(stand, value);
        if (!Number.isFinite(length) || !Number.isFinite(place)) return null;
        const base = eachNumber(trace.base, at, 0);
        const key = `${stand.id} ${reach.id} ${place} ${length < 0}`;
        const from = mode === 'stack' || mode === 'relative' ? (tops.get(key) ?? 0) + base : base;
        tops.set(key, from + length);
        const wide = eachNumber(trace.width, at, thick);
        const half = Math.max(wide, apart) / 2;
        return {
          place: place + eachNumber(trace.offset, at, shift),
          thick: wide,
          room:
            trace.width === undefined ? [place - half, place + half] : [place - wide / 2, place + wide / 2],
          from,
          to: from + length,
        };
      }),
    );
  }
  return laid;
}

function meet(traces: readonly Plain[], along: 'x' | 'y'): boolean {
  const places = traces.flatMap((trace) => [...new Set(list(trace[along]))]);
  return new Set(places).size < places.length;
}

function step(traces: readonly Plain[], along: 'x' | 'y', axis: Axis): number {
  if (axis.kind === 'category') return 1;
  const places = [
    ...new Set(traces.flatMap((trace) => list(trace[along]).map((value) => placeOn(axis, value)))),
  ]
    .filter(Number.isFinite)
    .sort((a, b) => a - b);
  const gaps = places.slice(1).map((place, at) => place - places[at]);
  return gaps.length === 0 ? 1 : least(gaps);
}

export type LaidBars = ReturnType<typeof layBars>;
