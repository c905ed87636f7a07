import { foldText } from '../../../attributes/matching.ts';
import { InputError } from '../../../errors.ts';
import { decodeBytes } from '../../../sources/formats/decode.ts';
import { DELIMITERS, detectDelimiter } from '../../../sources/formats/dialect.ts';
import { parseCsv } from '../../../sources/formats/parse-csv.ts';
import { restoreText } from '../../../sources/formats/safe-csv.ts';
import type { Delimiter } from '../../../sources/source-reading.ts';
import { allFaults } from './all-faults.ts';
import { CLAIM_COLUMNS, type ClaimRow, type PrintedFigure } from './claim.ts';
import { figuresOf, readRow } from './claim-line.ts';
import { decimalMarkOf } from './numbers.ts';

export interface ClaimsFile {
  readonly claims: readonly ClaimRow[];
  /** The printed numbers of all claims, in their order. */
  readonly figures: readonly PrintedFigure[];
  /** Columns that are not read. */
  readonly ignored: readonly string[];
}

/** One line of a claims file: its texts, and what was made of them. */
export interface ClaimLine {
  /** Line of the file, the header being 1. */
  readonly row: number;
  readonly id: string;
  readonly figures: readonly PrintedFigure[];
  readonly claim: ClaimRow | null;
  /** Why the line cannot be read; then it holds no figure. */
  readonly fault: InputError | null;
}

/**
 * Reads a claims file: CSV under a header of the columns of `claimRow`, in any order, those that are not
 * needed left out. Encoding and delimiter are detected; lines without any text are passed over.
 *
 * @throws InputError naming row and column for anything that cannot be understood.
 */
export function readClaims(bytes: Uint8Array, name: string): ClaimsFile {
  const { lines, ignored } = readClaimLines(bytes, name);
  const fault = allFaults(
    lines.flatMap((line) => line.fault ?? []),
    name,
  );
  if (fault !== null) throw fault;
  return {
    claims: lines.flatMap(({ claim }) => claim ?? []),
    figures: lines.flatMap(({ figures }) => figures),
    ignored,
  };
}

/**
 * The same line by line, for a file that is still being filled in: a line that cannot be read says so and
 * the others are read all the same.
 *
 * @throws InputError where the file as a whole is no claims file.
 */
export function readClaimLines(
  bytes: Uint8Array,
  name: string,
): { readonly lines: readonly ClaimLine[]; readonly ignored: readonly string[] } {
  const { text } = decodeBytes(bytes, name);
  const delimiter = delimiterOf(text);
  const { grid } = parseCsv(withoutInnerLines(text, delimiter), name, delimiter);
  const header = (grid[0] ?? []).map((cell) => foldText(cell));
  const place = new Map(CLAIM_COLUMNS.map((column) => [column, header.indexOf(column)] as const));
  for (const column of ['quantity', 'printed'] as const) {
    if ((place.get(column) ?? -1) >= 0) continue;
    throw new InputError(
      `the column "${column}" is missing`,
      { file: name, row: 1 },
      '"thrum check --template" prints a file to fill in',
    );
  }
  const known = new Set(place.values());
  const ignored = (grid[0] ?? []).filter((cell, column) => !known.has(column) && cell.trim() !== '');
  const rowOf = new Map<string, number>();
  const mark = decimalMarkOf(grid.slice(1).map((cells) => textIn(cells, place.get('printed'))));
  const lines = grid.slice(1).flatMap((cells, i): ClaimLine[] => {
    if (cells.every((cell) => cell.trim() === '')) return [];
    const row = i + 2;
    const where = { file: name, row };
    const id = textIn(cells, place.get('id')) || String(row);
    try {
      const claim = readRow((column) => textIn(cells, place.get(column)), where);
      const earlier = rowOf.get(claim.id);
      if (earlier !== undefined)
        throw new InputError(
          `the id "${claim.id}" stands in row ${earlier} already`,
          where,
          'give one of the two another id',
        );
      rowOf.set(claim.id, row);
      return [
        {
          row,
          id,
          claim,
          figures: figuresOf(claim, where, mark, textIn(cells, place.get('test'))),
          fault: null,
        },
      ];
    } catch (fault) {
      if (!(fault instanceof InputError)) throw fault;
      return [{ row, id, claim: null, figures: [], fault }];
    }
  });
  return { lines, ignored };
}

/** Stands for a line end within a cell. */
const INNER = '\u2028';

/** A cell that holds a program's whole output has more lines than a file that lost a quotation mark. */
function withoutInnerLines(text: string, delimiter: Delimiter): string {
  const mark = delimiter === '|' ? '\\|' : delimiter;
  const quoted = new RegExp(`(?<=^|[\\n${mark}])"(?:[^"]|"")*"(?=[${mark}\\r\\n]|$)`, 'g');
  return text.replaceAll(quoted, (cell) => cell.replaceAll(/\r?\n/g, INNER));
}

/** The mark that parts the header into the columns that must be there: printed texts hold marks of every kind. */
function delimiterOf(text: string): Delimiter {
  const header = text.split(/\r?\n/, 1)[0] ?? '';
  const parts = (delimiter: Delimiter) =>
    header.split(delimiter).map((cell) => foldText(cell.replaceAll('"', '')));
  return (
    DELIMITERS.find((delimiter) =>
      (['quantity', 'printed'] as const).every((column) => parts(delimiter).includes(column)),
    ) ?? detectDelimiter(text)
  );
}

function textIn(cells: readonly string[], column: number | undefined): string {
  return restoreText((cells[column ?? -1] ?? '').replaceAll(INNER, '\n').trim());
}
