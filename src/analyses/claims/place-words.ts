import type { PrintedFigure } from './reading/claim.ts';

/** How a reader of the paper finds a figure: where it stands and what is printed there; our own ids only where no place is said. */
export function placeAndText({
  id,
  place,
  printed,
}: Pick<PrintedFigure, 'id' | 'place' | 'printed'>): string {
  return `${place === '' ? id : place}, “${printed}”`;
}
