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
  values,
}: Pick<PrintedFigure, 'id' | 'place' | 'cell' | 'quantity' | 'printed' | 'values'>): string {
  const where = place !== '' ? `${place}, ` : cell !== null ? `${id}, ` : `${quantity} `;
  return `${where}“${briefPrint({ printed, values })}”`;
}

/** Longer texts, such as a program's whole output, stand once; elsewhere a figure is shown by its own words. */
const MOST_PRINTED = 90;

/** The print as it is repeated beside its verdict: all of a short text, of a long one what this figure is. */
export function briefPrint({ printed, values }: Pick<PrintedFigure, 'printed' | 'values'>): string {
  const flat = printed.replaceAll(/\s+/g, ' ').trim();
  if (flat.length <= MOST_PRINTED) return flat;
  const own = values.map(({ text }) => text.replaceAll(/\s+/g, ' ').trim()).join(', ');
  return own.length <= MOST_PRINTED ? own : `${own.slice(0, MOST_PRINTED - 2)} …`;
}
