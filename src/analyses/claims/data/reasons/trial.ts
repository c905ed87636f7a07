import { fitOfWays } from '../../conventions/way.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { Quantity } from '../../reading/terms.ts';
import { recompute } from '../quantities.ts';
import type { Departure } from '../recomputed.ts';
import type { View } from '../values.ts';

/** Everything that a reason may be tried with. */
export interface Trial {
  readonly figure: PrintedFigure;
  readonly view: View;
  /** The same material in the other unit. */
  readonly otherView: View;
  /** What the ordinary way gives. */
  readonly value: number;
  readonly peers: readonly Peer[];
}

/** Another figure of the same kind, with what the data give for it. */
export interface Peer {
  readonly figure: PrintedFigure;
  readonly value: number | null;
}

/** Tries one reason: what it says where it gives the print, else null. */
export type Reason = (trial: Trial) => string | null;

/** Spreads of readings. */
export const SPREADS: ReadonlySet<Quantity> = new Set(['sd', 'se', 'cv']);

/** Figures in the unit of the readings. */
export const IN_UNITS: ReadonlySet<Quantity> = new Set([
  'mean',
  'median',
  'sd',
  'se',
  'min',
  'max',
  'range',
  'q1',
  'q3',
  'total',
  'difference',
  'low',
  'high',
]);

/** Does a value print as the figure does? */
export function fits(figure: PrintedFigure, value: number): boolean {
  return fitOfWays(figure, [{ said: '', value }]) !== null;
}

/** Does another view or formula give the print? */
export function gives({ figure }: Trial, view: View, departure: Departure = {}): boolean {
  const found = recompute(figure, view, departure);
  return !('why' in found) && fitOfWays(figure, found.ways) !== null;
}
