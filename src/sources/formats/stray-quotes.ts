import type { Delimiter } from '../source-reading.ts';

/** A parting of the text in which quotation marks that swallow rows are ordinary characters. */
export interface Rejoined {
  readonly grid: string[][];
  /** Rows (1 = first) in which a quotation mark was taken as it stands. */
  readonly mended: readonly number[];
}

interface Cells {
  readonly cells: string[];
  /** Lines that the record takes up. */
  readonly lines: number;
  /** A mark closed a cell and text followed it, or none closed it. */
  readonly odd: boolean;
  readonly open: boolean;
}

/**
 * Parts a text whose quotation marks do not pair, line by line: a quoted cell may go on over several lines only
 * where they would not be records by themselves. `""name"" type`, a lone `12"` and a mark that is never closed
 * stay as they stand, and the rows after them are rows.
 *
 * @param text with line feeds as line ends.
 */
export function partLeniently(text: string, delimiter: Delimiter): Rejoined {
  const lines = text.split('\n');
  if (lines.at(-1) === '') lines.pop();
  const width = usualWidth(lines, delimiter);
  const grid: string[][] = [];
  const mended: number[] = [];
  for (let at = 0; at < lines.length; ) {
    const line = lines[at]!;
    if (!line.includes('"')) {
      grid.push(line.split(delimiter));
      at++;
      continue;
    }
    const strict = quotedRecord(lines, at, delimiter);
    const literal = literalCells(line, delimiter);
    const swallows =
      strict.lines > 1 && literal.length === width && wouldBeRows(lines, at, strict, width, delimiter);
    if (strict.open || strict.odd || swallows) {
      grid.push(literal);
      mended.push(grid.length);
      at++;
    } else {
      grid.push(strict.cells);
      at += strict.lines;
    }
  }
  return { grid, mended };
}

/** Number of cells of most lines without a quotation mark; of the first line where every line has one. */
function usualWidth(lines: readonly string[], delimiter: Delimiter): number {
  const counts = new Map<number, number>();
  for (const line of lines) {
    if (line === '' || line.includes('"')) continue;
    const width = line.split(delimiter).length;
    counts.set(width, (counts.get(width) ?? 0) + 1);
  }
  const [most] = [...counts].sort((a, b) => b[1] - a[1]);
  return most?.[0] ?? literalCells(lines[0] ?? '', delimiter).length;
}

/** Whether the lines that a quoted cell takes in have the cells of whole records. */
function wouldBeRows(
  lines: readonly string[],
  at: number,
  { lines: count }: Cells,
  width: number,
  delimiter: Delimiter,
): boolean {
  if (width < 3) return false;
  for (let i = at + 1; i < at + count; i++)
    if (literalCells(lines[i]!, delimiter).length !== width) return false;
  return true;
}

/** One record after RFC 4180, over as many lines as its quoted cells take. */
function quotedRecord(lines: readonly string[], from: number, delimiter: Delimiter): Cells {
  const cells: string[] = [];
  let at = from;
  let line = lines[at]!;
  let place = 0;
  let odd = false;
  for (;;) {
    if (line[place] !== '"') {
      const end = line.indexOf(delimiter, place);
      cells.push(line.slice(place, end < 0 ? undefined : end));
      if (end < 0) return { cells, lines: at - from + 1, odd, open: false };
      place = end + 1;
      continue;
    }
    let cell = '';
    place++;
    for (;;) {
      const mark = line.indexOf('"', place);
      if (mark < 0) {
        cell += `${line.slice(place)}\n`;
        at++;
        if (at >= lines.length || at - from > LONGEST_CELL) return { cells, lines: 1, odd: true, open: true };
        line = lines[at]!;
        place = 0;
        continue;
      }
      cell += line.slice(place, mark);
      const next = line[mark + 1];
      if (next === '"') {
        cell += '"';
        place = mark + 2;
      } else if (next === undefined || next === delimiter) {
        place = mark + 1;
        break;
      } else {
        odd = true;
        cell += '"';
        place = mark + 1;
      }
    }
    cells.push(cell);
    if (place >= line.length) return { cells, lines: at - from + 1, odd, open: false };
    place++;
  }
}

/** A cell of more lines than this is no cell but a mark that was never closed. */
const LONGEST_CELL = 2000;

/** The cells of one line: a mark quotes only where its cell ends with another; every other mark is a character. */
function literalCells(line: string, delimiter: Delimiter): string[] {
  const cells: string[] = [];
  let place = 0;
  while (place <= line.length) {
    const close = line[place] === '"' ? closing(line, place, delimiter) : -1;
    if (close > 0) {
      cells.push(line.slice(place + 1, close).replaceAll('""', '"'));
      place = close + 2;
      continue;
    }
    const end = line.indexOf(delimiter, place);
    cells.push(line.slice(place, end < 0 ? undefined : end).replaceAll('""', '"'));
    if (end < 0) break;
    place = end + 1;
  }
  return cells;
}

/** Where the quoted cell that begins at `from` closes on its line; -1 where it does not, or with a doubled start. */
function closing(line: string, from: number, delimiter: Delimiter): number {
  if (
    line[from + 1] === '"' &&
    line[from + 2] !== '"' &&
    line[from + 2] !== delimiter &&
    line[from + 2] !== undefined
  )
    return -1;
  for (let at = from + 1; at < line.length; at++) {
    if (line[at] !== '"') continue;
    if (line[at + 1] === '"') {
      at++;
      continue;
    }
    const next = line[at + 1];
    if (next === undefined || next === delimiter) return at;
  }
  return -1;
}
