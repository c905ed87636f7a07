import type { QuantileType } from '../../../numerics/describing/quantile.ts';
import type { Way } from '../conventions/way.ts';
import type { View } from './values.ts';

/** Departures from the ordinary formula, tried one at a time where the ordinary one does not fit. */
export interface Departure {
  readonly divisor?: 'n';
  readonly quantileType?: QuantileType;
  /** Which of the two degrees of freedom of F; the last one if left out. */
  readonly place?: number;
}

export interface Recomputed {
  /** The ordinary ways to compute it, each of them a fit. */
  readonly ways: readonly Way[];
  /** What the number rests on: "28 items, 3 without a reading". */
  readonly basis: string;
}

/** "28 items, 3 without a reading". */
export function basisOf(view: View, rows: number, missing = 0, what = 'a reading'): string {
  const noun = rows === 1 ? view.unit : `${view.unit}s`;
  return `${rows} ${noun}${missing > 0 ? `, ${missing} without ${what}` : ''}`;
}
