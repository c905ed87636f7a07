import { ln } from '../../../numerics/foundation/elementary.ts';
import { greatest, least as leastOf } from '../../../numerics/foundation/lists.ts';

/** A logarithmic axis with every tick written out as a number: 1, 2, 5, 10, 20 … */
export function logTicks(values: readonly number[]): Readonly<Record<string, unknown>> {
  const least = leastOf(values) / 2;
  const most = greatest(values) * 2;
  const ticks = TICKS.filter((tick) => tick >= least && tick <= most);
  return { type: 'log', tickmode: 'array', tickvals: ticks, ticktext: ticks.map(String) };
}

const TICKS = [0.001, 0.01, 0.1, 1, 10, 100, 1000, 10000].flatMap((power) =>
  [1, 2, 5].map((digit) => Number((digit * power).toPrecision(1))),
);

/** Where a value stands on a logarithmic axis, as plotly takes ranges and places of texts. */
export function placeOnLog(value: number): number {
  return ln(value) / ln(10);
}
