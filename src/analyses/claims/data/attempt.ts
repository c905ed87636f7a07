import { InputError } from '../../../errors.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import { recompute } from './quantities.ts';
import type { Departure, Recomputed } from './recomputed.ts';
import type { View } from './values.ts';

/** A figure recomputed, or why the data cannot answer, and what would mend it. */
export type Attempt = Recomputed | { readonly why: string; readonly mend?: string };

/** What the data cannot answer is said of the one figure; the others are checked all the same. */
export function attempt(figure: PrintedFigure, view: View, departure: Departure = {}): Attempt {
  // The ratio of two variances is the one test of another question that is computed here.
  const variances = figure.method === 'F' && figure.manners.includes('variances');
  if (figure.manners.includes('another test') && !variances)
    return { why: 'that test is not computed here', mend: 'compute it where it was computed' };
  try {
    return recompute(figure, view, departure);
  } catch (fault) {
    if (!(fault instanceof InputError)) throw fault;
    return { why: fault.what, mend: fault.mend };
  }
}

/** What the ordinary way gives; null where nothing does. */
export function valueIn(found: Attempt | undefined): number | null {
  return found === undefined || 'why' in found || found.ways.length === 0 ? null : found.ways[0].value;
}
