import type { Figure } from '../contract.ts';
import type { PlacementFound } from './found.ts';
import { mapFigure } from './map-figure.ts';
import { typicalityFigure } from './typicality-figure.ts';

/** The find among its comparanda, its p values by label, and where its measurements stand. */
export function placementFigures(found: PlacementFound): Readonly<Record<string, Figure>> {
  if (found.unplaced !== null) return {};
  const figures: Record<string, Figure> = {};
  if (!('why' in found.position)) figures.map = mapFigure(found);
  const attributes = [...new Set(found.judged.map(({ attribute }) => attribute))];
  for (const attribute of attributes) {
    const judged = found.judged.filter((one) => one.attribute === attribute);
    figures[`typicality-${slug(attribute)}`] = typicalityFigure(found, attribute, judged);
  }
  return figures;
}

function slug(text: string): string {
  return text.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-');
}
