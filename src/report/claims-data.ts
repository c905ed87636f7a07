import type { ClaimsFound } from '../analyses/claims/found.ts';
import { claimsWords } from '../analyses/claims/words.ts';
import { writeCsv } from '../sources/formats/safe-csv.ts';

/** The verdicts as data for another program: each figure with every check behind it. */
export function claimsJson(found: ClaimsFound) {
  return {
    paper: found.paper,
    words: claimsWords(found),
    counts: found.counts,
    figures: found.judged.map(({ figure, verdict, says, why, explained, resolve, unheld, checks }) => ({
      id: figure.id,
      place: figure.place,
      quantity: figure.quantity,
      set: figure.set,
      printed: figure.printed,
      verdict,
      says,
      why,
      explained,
      resolve,
      unheld,
      note: figure.note,
      checks,
    })),
    tables: found.tables,
    unread: found.unread,
    lastDigits: found.digits,
  };
}

/** The verdicts as a table, one line a figure, under the names that the JSON uses. */
export function claimsCsv({ judged }: ClaimsFound): string {
  return writeCsv([
    ['id', 'place', 'quantity', 'set', 'printed', 'verdict', 'says', 'why', 'explained', 'resolve', 'note'],
    ...judged.map(({ figure, verdict, says, why, explained, resolve }) => [
      figure.id,
      figure.place,
      figure.quantity,
      figure.set,
      figure.printed,
      verdict,
      says,
      why,
      explained,
      resolve,
      figure.note,
    ]),
  ]);
}
