import { foldText } from '../../../attributes/matching.ts';
import { InputError } from '../../../errors.ts';
import { decodeBytes } from '../../../sources/formats/decode.ts';
import { detectDelimiter } from '../../../sources/formats/dialect.ts';
import { parseCsv } from '../../../sources/formats/parse-csv.ts';
import { restoreText } from '../../../sources/formats/safe-csv.ts';
import { CLAIM_COLUMNS, type ClaimRow, claimRow, type PrintedFigure, perUnitOf } from './claim.ts';
import { type DecimalMark, decimalMarkOf } from './numbers.ts';
import { readPrinted } from './printed-text.ts';
import { readSelection, selectionText } from './select-text.ts';
import { mannersIn } from './symbols.ts';
import { methodNamed } from './terms.ts';
import type { TextPart } from './text-part.ts';

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

/** All faults of a file as one, so that they are mended in one go; null for none. */
export function allFaults(faults: readonly InputError[], file: string): InputError | null {
  const [first, ...more] = faults;
  if (first === undefined) return null;
  if (more.length === 0) return first;
  const said = faults.map(({ what, where, mend }) => {
    const place = [
      ...(where.file === undefined || where.file === file ? [] : [where.file]),
      ...(where.row === undefined ? [] : [`row ${where.row}`]),
      ...(where.column === undefined ? [] : [`column "${where.column}"`]),
    ];
    return `${place.length === 0 ? '' : `${place.join(', ')}: `}${what} (${mend})`;
  });
  return new InputError(
    `${faults.length} faults: ${said.join('; ')}`,
    { file },
    'mend each of them, or empty its line to leave it out',
  );
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
  const mark = decimalMarkOf(grid.slice(1).map((cells) => textIn(cells, place.get('printed'))));
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
      return [{ row, id, claim, figures: figuresOf(claim, where, mark), fault: null }];
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
function figuresOf(claim: ClaimRow, where: Where, mark: DecimalMark): PrintedFigure[] {
  const read = readPrinted(claim.printed, claim.quantity, { mark });
  if (read === null)
    throw new InputError(
      `"${claim.printed}" cannot be read as a printed ${claim.quantity}`,
      { ...where, column: 'printed' },
      'copy the figure alone, and put words into "note"',
    );
  const { parts, unused } = read;
  const select = selectionOf(claim, 'select', where);
  const versus = selectionOf(claim, 'versus', where);
  const said = mannersIn(claim.note);
  const times = new Map<string, number>();
  return parts.map((part, i) => ({
    id: i === 0 ? claim.id : partId(claim.id, part.quantity, times),
    place: claim.place,
    quantity: part.quantity,
    // What one text prints together belongs together: "t(18) = 2.31, p = .03".
    set: claim.set === '' && parts.length > 1 ? claim.id : claim.set,
    line: claim.id,
    cell: null,
    method: part.method ?? (claim.test === '' ? null : claim.test),
    sided: claim.sided === '' ? (part.sided ?? '') : claim.sided,
    perUnit: perUnitOf(claim.step),
    attributes: claim.attribute
      .split(';')
      .map((id) => id.trim())
      .filter((id) => id !== ''),
    select,
    versus,
    counted: part.quantity === 'n' && i > 0 ? [] : selectionOf(claim, 'counted', where),
    selectText: select.length > 0 ? selectionText(select) : claim.select,
    versusText: versus.length > 0 ? selectionText(versus) : claim.versus,
    values: inParts(part),
    vague: part.vague === true,
    stars: part.stars === true,
    manners: [...new Set([...(part.manners ?? []), ...said])],
    level: part.level ?? null,
    unused: i === 0 ? unused : [],
    printed: claim.printed,
    note: claim.note,
  }));
}

/** The second number of records of a text is its n 2. */
function partId(id: string, quantity: string, times: Map<string, number>): string {
  const before = times.get(quantity) ?? 0;
  times.set(quantity, before + 1);
  return before === 0 ? `${id} (${quantity})` : `${id} (${quantity} ${before + 1})`;
}

/** A set that is a printed table names its rows by label; such a cell is no condition. */
function selectionOf(claim: ClaimRow, column: 'select' | 'versus' | 'counted', where: Where) {
  const text = claim[column];
  const label =
    claim.set !== '' && column !== 'counted' && !/[=<>≤≥;]|\s(?:in|within|known|unknown|to)\b/.test(text);
  return label ? [] : readSelection(text, { ...where, column });
}

/**
 * Shares and variation are kept as parts of one: "34 %" and "34" are 0.34. A bare number that may be either, such
 * as a variation of "0.8" or "1.4", keeps its other reading.
 */
function inParts(part: TextPart): TextPart['values'] {
  if (part.quantity !== 'share' && part.quantity !== 'cv') return part.values;
  return part.values.map((value) => {
    const { digits, decimals } = value.number;
    const size = Number(`${digits}e-${decimals}`);
    const perCent = { digits, decimals: decimals + 2 };
    if (value.percent) return { ...value, number: perCent };
    if (size > 1)
      return {
        ...value,
        percent: true,
        number: perCent,
        ...(part.quantity === 'cv' && size < 5 ? { otherwise: value.number } : {}),
      };
    return size > 0 && decimals > 0 ? { ...value, otherwise: perCent } : value;
  });
}
