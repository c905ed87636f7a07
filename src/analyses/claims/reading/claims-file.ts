import { foldText } from '../../../attributes/matching.ts';
import { InputError } from '../../../errors.ts';
import { decodeBytes } from '../../../sources/decode.ts';
import { detectDelimiter } from '../../../sources/dialect.ts';
import { restoreText } from '../../../sources/export.ts';
import { parseCsv } from '../../../sources/parse-csv.ts';
import { CLAIM_COLUMNS, type ClaimRow, claimRow, type PrintedFigure, perUnitOf } from './claim.ts';
import { readPrinted, type TextPart } from './printed-text.ts';
import { readSelection, selectionText } from './select-text.ts';
import { methodNamed } from './terms.ts';

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
  const fault = lines.find((line) => line.fault !== null)?.fault;
  if (fault !== undefined && fault !== null) throw fault;
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
  const { grid } = parseCsv(text, name, detectDelimiter(text));
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
  const lines = grid.slice(1).flatMap((cells, i): ClaimLine[] => {
    if (cells.every((cell) => cell.trim() === '')) return [];
    const row = i + 2;
    const where = { file: name, row };
    const id = textIn(cells, place.get('id')) || String(row);
    try {
      const claim = readRow(cells, place, where);
      const earlier = rowOf.get(claim.id);
      if (earlier !== undefined)
        throw new InputError(
          `the id "${claim.id}" stands in row ${earlier} already`,
          where,
          'give one of the two another id',
        );
      rowOf.set(claim.id, row);
      return [{ row, id, claim, figures: figuresOf(claim, where), fault: null }];
    } catch (fault) {
      if (!(fault instanceof InputError)) throw fault;
      return [{ row, id, claim: null, figures: [], fault }];
    }
  });
  return { lines, ignored };
}

function textIn(cells: readonly string[], column: number | undefined): string {
  return restoreText((cells[column ?? -1] ?? '').trim());
}

type Where = InputError['where'];

function readRow(
  cells: readonly string[],
  place: ReadonlyMap<keyof ClaimRow, number>,
  where: Where & { readonly row: number },
): ClaimRow {
  const raw = Object.fromEntries(
    CLAIM_COLUMNS.map((column) => [column, textIn(cells, place.get(column))]),
  ) as Record<keyof ClaimRow, string>;
  const test = raw.test === '' ? '' : (methodNamed(raw.test) ?? raw.test);
  const given = {
    ...raw,
    test,
    quantity: raw.quantity.toLowerCase(),
    sided: raw.sided.toLowerCase().replace(/^(one|two)[- ]?sided$/, '$1'),
    id: raw.id === '' ? String(where.row) : raw.id,
  };
  const parsed = claimRow.safeParse(given);
  if (parsed.success) return parsed.data;
  const issue = parsed.error.issues[0];
  const column = String(issue.path[0]);
  throw new InputError(
    issue.code === 'invalid_value'
      ? `"${raw[column as keyof ClaimRow]}" is not known here`
      : `the cell ${issue.message}`,
    { ...where, column },
    issue.code === 'invalid_value'
      ? `use ${issue.values.filter((value) => value !== '').join(', ')}`
      : 'correct the cell',
  );
}

/** The numbers of one claim. @throws InputError for a printed text or a selection that cannot be read. */
function figuresOf(claim: ClaimRow, where: Where): PrintedFigure[] {
  const parts = readPrinted(claim.printed, claim.quantity);
  if (parts === null)
    throw new InputError(
      `"${claim.printed}" cannot be read as a printed ${claim.quantity}`,
      { ...where, column: 'printed' },
      'copy the figure alone, and put words into "note"',
    );
  const select = selectionOf(claim, 'select', where);
  const versus = selectionOf(claim, 'versus', where);
  return parts.map((part, i) => ({
    id: i === 0 ? claim.id : `${claim.id} (${part.quantity})`,
    place: claim.place,
    quantity: part.quantity,
    // What one text prints together belongs together: "t(18) = 2.31, p = .03".
    set: claim.set === '' && parts.length > 1 ? claim.id : claim.set,
    method: part.method ?? (claim.test === '' ? null : claim.test),
    sided: claim.sided,
    perUnit: perUnitOf(claim.step),
    attributes: claim.attribute
      .split(';')
      .map((id) => id.trim())
      .filter((id) => id !== ''),
    select,
    versus,
    counted: selectionOf(claim, 'counted', where),
    selectText: select.length > 0 ? selectionText(select) : claim.select,
    versusText: versus.length > 0 ? selectionText(versus) : claim.versus,
    values: shareParts(part),
    vague: part.vague === true,
    printed: claim.printed,
    note: claim.note,
  }));
}

/** A set that is a printed table names its rows by label; such a cell is no condition. */
function selectionOf(claim: ClaimRow, column: 'select' | 'versus' | 'counted', where: Where) {
  const text = claim[column];
  const label =
    claim.set !== '' && column !== 'counted' && !/[=<>≤≥;]|\s(?:in|within|known|unknown|to)\b/.test(text);
  return label ? [] : readSelection(text, { ...where, column });
}

/** Shares are kept as parts of one: "34 %" and "34" are 0.34. */
function shareParts(part: TextPart): TextPart['values'] {
  return part.values.map((value) => {
    const { digits, decimals } = value.number;
    const asPercent =
      value.percent ||
      ((part.quantity === 'share' || part.quantity === 'cv') && Number(`${digits}e-${decimals}`) > 1);
    return asPercent ? { ...value, percent: true, number: { digits, decimals: decimals + 2 } } : value;
  });
}
