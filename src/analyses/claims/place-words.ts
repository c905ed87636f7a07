import type { PrintedFigure } from './reading/claim.ts';

/**
 * How a reader of the paper finds a figure: where it stands and what is printed there. A cell of a table is found
 * by its row and head; where no place is said, by what it is. Our own ids are no help to an author.
 */
export function placeAndText({
  id,
  place,
  cell,
  quantity,
  printed,
}: Pick<PrintedFigure, 'id' | 'place' | 'cell' | 'quantity' | 'printed'>): string {
  const where = place !== '' ? `${place}, ` : cell !== null ? `${id}, ` : `${quantity} `;
  return `${where}“${printed}”`;
}
