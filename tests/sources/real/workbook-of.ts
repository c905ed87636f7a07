import { utils, write } from 'xlsx';

/** The bytes of a workbook of one sheet; numbers are typed as numbers, as a spreadsheet does when it opens a CSV. */
export function workbookOf(grid: readonly (readonly string[])[]): Uint8Array {
  const cells = grid.map((row) =>
    row.map((text) => (/^(?:0|[1-9]\d*)(?:\.\d*[1-9])?$/u.test(text) ? Number(text) : text)),
  );
  const book = utils.book_new();
  utils.book_append_sheet(book, utils.aoa_to_sheet(cells), 'Finds');
  return new Uint8Array(write(book, { type: 'array', bookType: 'xlsx' }) as ArrayBuffer);
}
