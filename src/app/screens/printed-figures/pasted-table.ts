import { tableText } from '../../../analyses/claims/reading/table/grid.ts';
import { InputError } from '../../../errors.ts';
import { writeCsv } from '../../../sources/formats/safe-csv.ts';

/**
 * A table pasted from a page as a file of its own, parted into cells so that they can be corrected one by one,
 * and called by its caption ("Table 2"). What cannot be parted is kept as it is, and said where it is read.
 */
export function pastedTable(text: string): ReadonlyMap<string, Uint8Array> {
  const bytes = new TextEncoder().encode(text);
  try {
    const { caption, grid } = tableText(bytes, 'table.csv');
    const [[corner = '', ...heads], ...body] = grid;
    // The caption may be all that says that the figures are per cents.
    const said = /%|per\s?cent/i.test(caption) && !/%/.test(corner) ? `${corner} (%)`.trim() : corner;
    const [name] = /^[\p{L}]+\.?\s*[\dIVX]+[a-z]?/iu.exec(caption) ?? ['table'];
    return new Map([[`${name.trim()}.csv`, new TextEncoder().encode(writeCsv([[said, ...heads], ...body]))]]);
  } catch (fault) {
    if (!(fault instanceof InputError)) throw fault;
    return new Map([['table.csv', bytes]]);
  }
}
