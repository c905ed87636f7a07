import type { PrintedFigure } from '../../reading/claim.ts';

/** A coefficient of a fitted model with what is printed in its line. */
export interface Coefficient {
  readonly estimate: PrintedFigure;
  readonly se: PrintedFigure | undefined;
  readonly statistic: PrintedFigure | undefined;
  readonly df: PrintedFigure | undefined;
  readonly p: PrintedFigure | undefined;
  readonly ends: readonly [PrintedFigure, PrintedFigure] | null;
  readonly oddsRatio: PrintedFigure | undefined;
}
