import type { FigureCheck } from '../found.ts';
import type { PrintedFigure } from '../reading/claim.ts';

/** The data cannot answer: why, and what would let them. */
export function openCheck(
  figure: PrintedFigure,
  { why, mend }: { readonly why: string; readonly mend?: string },
): FigureCheck {
  return {
    figure: figure.id,
    name: 'recomputed from the data',
    from: 'data',
    with: [],
    outcome: 'open',
    missing: why,
    working: `The data cannot answer: ${why}.`,
    resolve:
      mend === undefined
        ? `Complete the row of the claims file: ${why}.`
        : `${mend.charAt(0).toUpperCase()}${mend.slice(1)}.`,
  };
}
