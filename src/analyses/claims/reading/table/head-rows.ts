import { isBlank, isNumber } from './blank.ts';
import { unique } from './labels.ts';

/** Which rows of a printed table are heads, which columns are labels. */

/** A second row of heads holds words, or single signs such as "n" and "%", under heads that span. */
export function hasTwoHeads(grid: readonly (readonly string[])[]): boolean {
  if (grid.length < 3) return false;
  const [first, second, third] = grid;
  const cells = second.slice(1);
  const words = cells.filter((cell) => cell !== '' && !isNumber(cell) && !isBlank(cell)).length;
  const filled = cells.filter((cell) => cell !== '').length;
  const spanning =
    first.slice(1).some((cell) => cell === '') || (third.slice(1).some(isNumber) && second[0] === '');
  return words >= 2 && words * 2 > filled && spanning && third.slice(1).some((cell) => isNumber(cell));
}

/** Leading columns of words; the first is always one of labels. */
export function countLabelColumns(body: readonly (readonly string[])[]): number {
  const width = body[0]?.length ?? 0;
  let count = 1;
  while (count < width - 1) {
    const cells = body.map((row) => row[count]).filter((cell) => !isBlank(cell));
    const words = cells.filter((cell) => !isNumber(cell) && !/^(?:n\.?\s?s\.?|\*+)$/i.test(cell)).length;
    if (cells.length === 0 || words * 2 <= cells.length) break;
    count++;
  }
  return count;
}

/** The heads of the columns of numbers, with the heads that span them. */
export function headsOf(rows: readonly (readonly string[])[], labelColumns: number) {
  const [upper, lower] = rows.map((row) =>
    row.slice(labelColumns).map((cell) => cell.replaceAll(/\s+/g, ' ').trim()),
  );
  if (lower === undefined)
    return unique(upper.map((head, i) => (head === '' ? `column ${i + 1}` : head))).map((head) => ({
      head,
      group: '',
    }));
  let group = '';
  return upper.map((over, i) => {
    if (over !== '') group = over;
    const under = lower[i] ?? '';
    return under === ''
      ? { head: over === '' ? `column ${i + 1}` : over, group: '' }
      : { head: under, group };
  });
}
