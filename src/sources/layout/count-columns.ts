import { foldText } from '../../attributes/folding.ts';
import { splitHeader } from '../../attributes/matching.ts';
import { unitDimension } from '../../cells/units.ts';
import type { CountsRule } from '../profile/layout-rules.ts';
import { isBlank } from './cell-shapes.ts';
import { oddCount } from './odd-counts.ts';

/** Which columns of a table of counts count a kind, and which sum the others up. */

const HALVES = /^\d+(?:[.,][05]0*)?$/;
/** A count or a share. */
const COUNT = /^\d+(?:[.,]\d+)?\s*%?$/;
const words = (list: string): ReadonlySet<string> => new Set(list.split('|'));
/** Words that head nothing but a total. */
const SUMS = words(
  'total|totals|grand total|sum|sum total|all|summe|gesamt|insgesamt|totale|totaux|total general|somme|suma|totalt|i alt|ialt',
);
/** Words that head a total as well as a kind, such as the letter of an element. */
const MAYBE_SUMS = words('n|count|base|anzahl|antal|antall|nombre|numero');

/** A printed count or share; NaN where there is none. */
export function printedNumber(text: string | undefined): number {
  const bare = (text ?? '').replace('%', '').replace(',', '.').trim();
  return bare === '' ? Number.NaN : Number(bare);
}

/** A column that sums up others: where it is the header alone that says so, its cells need not agree. */
export interface TotalColumn {
  readonly column: number;
  /** Rows of the body, 0 = first, where the kinds come to something else, with what they come to. */
  readonly differs: ReadonlyMap<number, number>;
}

export interface CountColumns {
  readonly counted: readonly number[];
  readonly totals: readonly TotalColumn[];
}

/**
 * The columns that count kinds: those the rule names; else every column of whole or half counts (or of shares) but
 * the base, measurements and totals. A total is known by its header, and where that may be a kind's as well, by its
 * cells.
 */
export function countColumns(
  headers: readonly string[],
  body: readonly (readonly string[])[],
  rule: CountsRule,
): CountColumns {
  const named = rule.columns === undefined ? undefined : new Set(rule.columns);
  const numeric = headers.flatMap((header, i) =>
    i > 0 && header !== rule.base && !namesMeasure(header) && holds(COUNT, body, i) ? [i] : [],
  );
  const shares = rule.base !== undefined || areShares(headers, numeric, body);
  const counts = shares ? numeric : numeric.filter((i) => holds(HALVES, body, i));
  const totals = counts.flatMap((i) => {
    if (named?.has(headers[i]!) === true) return [];
    return totalOf(i, headers[i]!, named === undefined ? counts : namedOf(headers, named), headers, body);
  });
  if (named !== undefined) return { counted: namedOf(headers, named), totals };
  const sums = new Set(totals.map(({ column }) => column));
  return { counted: counts.filter((i) => !sums.has(i)), totals };
}

function namedOf(headers: readonly string[], named: ReadonlySet<string>): readonly number[] {
  return headers.flatMap((header, i) => (named.has(header) ? [i] : []));
}

/** "Area (m2)" and "Weight (g)" are measured, whatever their numbers. */
function namesMeasure(header: string): boolean {
  const { unit } = splitHeader(header);
  const dimension = unit === undefined ? null : unitDimension(unit);
  return dimension !== null && dimension !== 'share' && dimension !== 'number';
}

/** At most one cell in three may be none. */
const FEW = 3;

function holds(pattern: RegExp, body: readonly (readonly string[])[], column: number): boolean {
  const said = body.map((row) => (row[column] ?? '').trim()).filter((text) => !/^[-–—.]?$/.test(text));
  const odd = said.filter((text) => !pattern.test(text));
  // A few cells that say less than a count make no text of a column of counts.
  return said.length > 0 && said.length >= odd.length * FEW && odd.every((text) => oddCount(text) !== null);
}

function totalOf(
  column: number,
  header: string,
  counts: readonly number[],
  headers: readonly string[],
  body: readonly (readonly string[])[],
): TotalColumn[] {
  const word = foldText(header);
  const sure = SUMS.has(word);
  if (!sure && !MAYBE_SUMS.has(word)) return [];
  const kinds = counts.filter((i) => i !== column && !SUMS.has(foldText(headers[i]!)));
  if (kinds.length < 2) return [];
  const differs = new Map<number, number>();
  let said = 0;
  for (const [at, row] of body.entries()) {
    if (isBlank(row[column])) continue;
    said++;
    const odd = kinds.flatMap((i) => oddCount(row[i] ?? '') ?? []);
    const sum =
      kinds.reduce((all, i) => all + (printedNumber(row[i]) || 0), 0) +
      odd.reduce((all, { count }) => all + (count ?? 0), 0);
    const over = sum - printedNumber(row[column]);
    // What an unknown count leaves open is no misprint.
    if (over >= TOLERANCE || (over <= -TOLERANCE && odd.length === 0)) differs.set(at, sum);
  }
  return sure || differs.size <= MAY_DIFFER * said ? [{ column, differs }] : [];
}

/** Half counts are counted; what is below one half is rounding of shares. */
const TOLERANCE = 0.5;
/** A misprint in one row of ten makes no kind of a total. */
const MAY_DIFFER = 0.1;

/**
 * Whether the kinds of every row come to a hundred: shares, of which the counts cannot be told without a base. A
 * column headed like a number of objects ("n") is no kind among them.
 */
export function areShares(
  headers: readonly string[],
  counted: readonly number[],
  body: readonly (readonly string[])[],
): boolean {
  const kinds = counted.filter((i) => !MAYBE_SUMS.has(foldText(headers[i]!)));
  return comeToHundred(counted, body) || (kinds.length < counted.length && comeToHundred(kinds, body));
}

function comeToHundred(counted: readonly number[], body: readonly (readonly string[])[]): boolean {
  const sums = body
    .map((row) => counted.map((i) => printedNumber(row[i])).filter((value) => !Number.isNaN(value)))
    .filter((values) => values.length > 1)
    .map((values) => values.reduce((all, value) => all + value, 0));
  return sums.length > 1 && sums.every((sum) => Math.abs(sum - 100) <= ROUNDED);
}

/** Several shares rounded to whole per cents. */
const ROUNDED = 2;
