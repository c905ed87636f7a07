import type { Facets } from '../../attributes/drawing/facets.ts';
import { structureDrawing } from '../../attributes/drawing/structure-drawing.ts';
import { drawingSvg } from '../../attributes/drawing/svg.ts';
import { defaultRegister } from '../../attributes/register.ts';

/** The schema of a structure as SVG; null where it has none. */
export function schemaSvg(structure: string, facets: Facets): string | null {
  const drawing = structureDrawing(defaultRegister(), structure, facets);
  return drawing === null ? null : drawingSvg(drawing);
}
