import type { Figure } from '../../analyses/contract.ts';
import { hasPanels } from '../drawing/printed-figure.ts';

/** Measures of a printed page: one column, and both, in millimetres. */
const MEASURES = [84, 174] as const;
export type FigureWidth = (typeof MEASURES)[number];

/** Measures that a figure may be saved in: small multiples across both columns alone. */
export function measuresOf(figure: Figure): readonly FigureWidth[] {
  return hasPanels(figure) ? [174] : MEASURES;
}
