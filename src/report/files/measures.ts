import type { Figure } from '../../analyses/contract.ts';
import { panelsInColumn } from '../../analyses/shared/figure/panels.ts';
import { numberOr } from '../drawing/plain.ts';
import { hasPanels } from '../drawing/printed-figure.ts';

/** Measures of a printed page: one column, and both, in millimetres. */
const MEASURES = [84, 174] as const;
export type FigureWidth = (typeof MEASURES)[number];

/** Measures that a figure may be saved in: small multiples in one column only where they stand on one page. */
export function measuresOf(figure: Figure): readonly FigureWidth[] {
  if (!hasPanels(figure)) return MEASURES;
  const column = inMeasure(figure, 84);
  return column !== figure && numberOr(column.layout.height, 0) <= MOST_HIGH ? MEASURES : [174];
}

/** The figure with its panels, if it has any, arranged anew for the measure. */
export function inMeasure(figure: Figure, measure: FigureWidth): Figure {
  const layout = measure === 84 && hasPanels(figure) ? panelsInColumn(figure.layout) : null;
  return layout === null ? figure : { ...figure, layout };
}

/** CSS pixels, 240 mm. */
const MOST_HIGH = 907;
