import type { Register } from '../../attributes/definition.ts';
import { matchAttribute } from '../../attributes/matching.ts';
import { readNothing } from '../../cells/nothing.ts';
import { isBlank, isNumberLike, isProse } from './cell-shapes.ts';

/**
 * Rows that are too long because a remark in the last column holds the sign that parts the cells, and nobody put it in
 * quotation marks: "T4, charred, brittle". Joined again the row is whole; but where another column could hold the sign
 * as well, the cells after it would stand one too far to the right, so that only what is beyond doubt is joined.
 */
export type Overflow =
  /** Nothing but the last column can hold the sign in any of the rows. */
  | 'certain'
  /** The last column is of free text, and another could hold the sign too. */
  | 'possible'
  | 'none';

type Row = readonly string[];

/**
 * @param fitting rows as wide as the header, or shorter.
 * @param long rows that are wider.
 */
export function overflowOf(
  headers: readonly string[],
  fitting: readonly Row[],
  long: readonly Row[],
  parted: string,
  register: Register,
): Overflow {
  const last = headers.length - 1;
  if (last < 1 || long.length === 0) return 'none';
  const sampled = sample(fitting);
  const columns = headers.map((_, at) => columnOf(sampled, at));
  if (!isFree(headers[last]!, columns[last]!, register)) return 'none';
  // What few rows show of a column is no ground to hold others against it.
  if (fitting.length < FEWEST) return 'possible';
  return long.every((row) => onlyLast(row, columns, parted)) ? 'certain' : 'possible';
}

/** The surplus cells of a row, joined to the last one as they stood in the file. */
export function joinOverflow(row: Row, width: number, parted: string): readonly string[] {
  const rest = row.slice(width - 1);
  while (rest.length > 1 && isBlank(rest.at(-1))) rest.pop();
  return [...row.slice(0, width - 1), rest.join(parted)];
}

const FEWEST = 5;
const SAMPLED = 2000;

function sample(rows: readonly Row[]): readonly Row[] {
  const step = Math.max(1, Math.floor(rows.length / SAMPLED));
  return step === 1 ? rows : rows.filter((_, at) => at % step === 0);
}

/** What the cells of a column look like in the rows that fit. */
interface Seen {
  readonly texts: ReadonlySet<string>;
  readonly filled: number;
  readonly numeric: boolean;
  readonly prose: number;
}

function columnOf(rows: readonly Row[], at: number): Seen {
  const said = rows.flatMap((row) => (saysNothing(row[at]) ? [] : [row[at]!.trim()]));
  return {
    texts: new Set(said),
    filled: said.length,
    numeric: said.length > 0 && said.filter(isNumberLike).length >= 0.9 * said.length,
    prose: said.filter((text) => isProse(text) || /\p{L}{2,}\s+\p{L}{2,}/u.test(text)).length,
  };
}

const saysNothing = (text: string | undefined): boolean =>
  isBlank(text) || readNothing(text!.trim()) !== null;

/** Remarks by its name, or words and sentences that hardly repeat. */
function isFree(header: string, seen: Seen, register: Register): boolean {
  if (seen.numeric) return false;
  const match = matchAttribute(header, register);
  if (match.kind === 'exact') return FREE.has(match.id);
  return seen.filled > 0 && seen.prose >= 0.5 * seen.filled && seen.texts.size >= 0.7 * seen.filled;
}

/** Attributes of running text. */
const FREE: ReadonlySet<string> = new Set([
  'remarks',
  'citation',
  'decoration',
  'repair',
  'conservationTreatment',
]);

/** The row fits with its surplus in the last column, and with it in no other. */
function onlyLast(row: Row, columns: readonly Seen[], parted: string): boolean {
  const width = columns.length;
  const surplus = row.length - width;
  const fits = (at: number, text: string | undefined) => fitsColumn(columns[at]!, text);
  for (let at = 0; at < width - 1; at++) if (!fits(at, row[at])) return false;
  for (let at = 0; at < width - 1; at++) {
    const joined = row.slice(at, at + surplus + 1).join(parted);
    if (!couldHold(columns[at]!, row[at]!, joined)) continue;
    let shifted = true;
    for (let next = at + 1; next < width - 1 && shifted; next++) shifted = fits(next, row[next + surplus]);
    if (shifted) return false;
  }
  return true;
}

/** A number where there are numbers; of few kinds one of them. */
function fitsColumn(seen: Seen, text: string | undefined): boolean {
  if (saysNothing(text)) return true;
  const trimmed = text!.trim();
  if (seen.numeric) return isNumberLike(trimmed);
  if (seen.texts.has(trimmed)) return true;
  return !isOfKinds(seen) && !isNumberLike(trimmed) === !hasNumbers(seen);
}

const isOfKinds = ({ texts, filled }: Seen): boolean => texts.size <= 0.5 * filled;
const hasNumbers = ({ texts }: Seen): boolean => [...texts].some(isNumberLike);

/** Whether the column could hold the joined text: a number with a decimal comma, a list, a name that nobody has seen. */
function couldHold(seen: Seen, own: string, joined: string): boolean {
  if (seen.texts.has(joined.trim())) return true;
  if (seen.numeric) return /^\D{0,4}\d+[,;]\d+\D{0,6}$/.test(joined.trim());
  // A cell that is whole as it stands was cut nowhere, unless its column holds lists.
  return !seen.texts.has(own.trim()) || [...seen.texts].some((text) => /[,;]/.test(text));
}
