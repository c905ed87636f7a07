import Papa from 'papaparse';
import { InputError } from '../../errors.ts';
import { greatest } from '../../numerics/foundation/lists.ts';
import type { Delimiter } from '../source-reading.ts';
import { partLeniently } from './stray-quotes.ts';

export interface Parsed {
  /** Every record, an empty line included; records may differ in length. */
  readonly grid: string[][];
  /** Rows (1 = first) in which a quotation mark stands where none is expected. */
  readonly oddQuotes: readonly number[];
  readonly remarks: readonly string[];
  /** Lines of the file; more than records where cells hold line breaks. */
  readonly lines: number;
}

/** Physical lines longer than this are no table a person wrote. */
const LONGEST_LINE = 8_000_000;

/**
 * Parts decoded text into records. Line ends of every kind, mixed too, are read alike.
 * @param quoted false where the profile says that quotation marks are ordinary characters.
 * @throws InputError where a quotation mark is never closed or the file is one endless line.
 */
export function parseCsv(text: string, name: string, delimiter: Delimiter, quoted = true): Parsed {
  const ends = unifyLineEnds(text);
  refuseEndlessLine(ends.text, name);
  const remarks: string[] = [];
  let parsed = parseText(ends.text, delimiter, quoted);
  if (quoted && hasLoneMarks(ends.text, delimiter)) {
    const ditto = parseText(escapeLoneMarks(ends.text, delimiter), delimiter, quoted);
    if (ditto.open === 0 && (parsed.open > 0 || evenness(ditto.grid) > evenness(parsed.grid))) {
      parsed = ditto;
      remarks.push('a quotation mark that stands alone in a cell was read as a ditto mark');
    }
  }
  if (quoted && mayHaveSwallowed(parsed)) {
    const lenient = partLeniently(ends.text, delimiter);
    if (
      lenient.mended.length > 0 &&
      evenness(lenient.grid) >= (parsed.open > 0 ? EVEN : evenness(parsed.grid))
    ) {
      parsed = { grid: lenient.grid, open: 0, oddQuotes: lenient.mended };
      remarks.push(
        `quotation marks that close no cell were read as they stand in ${lenient.mended.length === 1 ? `row ${lenient.mended[0]}` : `${lenient.mended.length} rows`}, so that the rows after them are rows`,
      );
    }
  }
  const { grid, open, oddQuotes } = parsed;
  if (open > 0) {
    const rows = parseText(ends.text, delimiter, false).grid.length;
    throw new InputError(
      'a quotation mark opens a cell and is never closed',
      { file: name, row: open },
      `close it, double it if it belongs to the text, or set "quotes": false in the profile, by which ${rows} rows are read`,
    );
  }
  // The line end after the last record is no record of its own.
  const last = grid.at(-1);
  if (last !== undefined && last.length === 1 && last[0] === '') grid.pop();
  if (endsDiffer(ends, grid)) remarks.push('the file mixes line ends; each was read as the end of a line');
  return { grid, oddQuotes, remarks, lines: lineCount(ends.text) };
}

/** Share of rows as wide as most that a lenient reading of an unclosed mark must reach. */
const EVEN = 0.9;

/** A mark that is out of place, or a cell of several lines: rows may hide in it. */
function mayHaveSwallowed({ open, oddQuotes, grid }: Attempt): boolean {
  return open > 0 || oddQuotes.length > 0 || grid.some((row) => row.some((cell) => cell.includes('\n')));
}

function lineCount(text: string): number {
  const count = countOf(text, '\n');
  return text.endsWith('\n') ? count : count + 1;
}

interface Attempt {
  readonly grid: string[][];
  /** Row in which a quotation mark opens that is never closed; 0 where there is none. */
  readonly open: number;
  readonly oddQuotes: readonly number[];
}

function parseText(text: string, delimiter: Delimiter, quoted: boolean): Attempt {
  const { data: grid, errors } = Papa.parse<string[]>(text, {
    delimiter,
    newline: '\n',
    // A character that no cell holds switches quoting off.
    ...(quoted ? {} : { quoteChar: '\uFDD0' }),
  });
  const oddQuotes = new Set<number>();
  let open = 0;
  for (const { code, row } of errors) {
    if (code === 'MissingQuotes') open = (row ?? 0) + 1;
    else if (code === 'InvalidQuotes') oddQuotes.add((row ?? 0) + 1);
  }
  return { grid, open, oddQuotes: [...oddQuotes] };
}

/** A cell that is one quotation mark: a ditto mark by hand, or a quoted cell that begins with a delimiter. */
function hasLoneMarks(text: string, sign: Delimiter): boolean {
  return (
    [`${sign}"${sign}`, `\n"${sign}`, `${sign}"\n`].some((mark) => text.includes(mark)) ||
    text.endsWith(`${sign}"`)
  );
}

function escapeLoneMarks(text: string, sign: Delimiter): string {
  const literal = sign === '|' ? '\\|' : sign;
  return text.replace(new RegExp(`(?<=^|\\n|${literal})"(?=\\n|${literal}|$)`, 'g'), '""""');
}

/** Share of the records that are as wide as most. */
function evenness(grid: readonly (readonly string[])[]): number {
  const widths = new Map<number, number>();
  for (const row of grid) widths.set(row.length, (widths.get(row.length) ?? 0) + 1);
  return Math.max(0, greatest(widths.values())) / Math.max(1, grid.length);
}

interface LineEnds {
  readonly text: string;
  readonly pairs: number;
  readonly feeds: number;
  readonly returns: number;
}

/** Makes every line end a line feed, and counts what stood there. */
function unifyLineEnds(text: string): LineEnds {
  if (!text.includes('\r')) return { text, pairs: 0, feeds: 0, returns: 0 };
  const withoutPairs = text.replaceAll('\r\n', '\n');
  const pairs = text.length - withoutPairs.length;
  const returns = countOf(withoutPairs, '\r');
  const feeds = countOf(withoutPairs, '\n') - pairs;
  return { text: returns > 0 ? withoutPairs.replaceAll('\r', '\n') : withoutPairs, pairs, feeds, returns };
}

/** Whether records end in different ways; a line break inside a cell is no line end. */
function endsDiffer({ pairs, feeds, returns }: LineEnds, grid: readonly (readonly string[])[]): boolean {
  const kinds = [pairs, feeds, returns].filter((count) => count > 0);
  if (kinds.length < 2) return false;
  let inside = 0;
  for (const row of grid) for (const cell of row) if (cell.includes('\n')) inside += countOf(cell, '\n');
  return kinds.length > 2 || !kinds.some((count) => count <= inside);
}

function countOf(text: string, character: string): number {
  let count = 0;
  for (let at = text.indexOf(character); at >= 0; at = text.indexOf(character, at + 1)) count++;
  return count;
}

function refuseEndlessLine(text: string, name: string): void {
  let start = 0;
  let row = 1;
  while (text.length - start > LONGEST_LINE) {
    const end = text.indexOf('\n', start);
    const length = (end < 0 ? text.length : end) - start;
    if (length > LONGEST_LINE) {
      throw new InputError(
        `one line holds ${(length / 1e6).toFixed(1)} million characters, so this is not a table with line ends`,
        { file: name, row },
        'export the table again with one record a line',
      );
    }
    start = end + 1;
    row++;
  }
}
