import { type DecimalMark, NUMBER, plainSigns } from '../numbers.ts';
import { readPrinted } from '../printed-text.ts';
import { isBlank, isPValue } from './blank.ts';
import { canHold } from './can-hold.ts';
import type { Role } from './heads.ts';
import type { Layout, TableColumn } from './laid.ts';
import { isStatistic } from './role-kinds.ts';
import type { TableSays } from './says.ts';

/** Roles from the heads; where a head names a kind, from what the cells hold. */
export function withRoles(
  asPrinted: Layout,
  caption: string,
  says: TableSays,
): (TableColumn & { readonly role: Role })[] {
  const laid = { ...asPrinted, texts: asPrinted.texts.map((row) => row.map(plainSigns)) };
  const strong =
    besideItsP(laid) ||
    hasLimits(laid) ||
    laid.columns.some(({ reading, head }) => isStatistic(reading) && reading.role !== 'n' && !isLetter(head));
  const asPercent = /%|per\s?cent|proportion/i.test(`${caption} ${laid.corner}`);
  const parts = laid.rows.flatMap(({ line }, r) => (line === 'part' ? [r] : []));
  const kindsOf = laid.columns.map((_, c) => contentOf(parts.map((r) => laid.texts[r][c] ?? '')));
  const square = isSquare(laid);
  const plain = laid.columns.map(({ reading, head }, c) => {
    if (square) return 'correlation';
    // "low", "d" or "r" name a statistic only beside others.
    const statistic = isStatistic(reading) && !(isLetter(head) && reading.role !== 'n');
    const weak = !statistic && (WEAK.has(reading.role) || isLetter(head)) && !strong;
    // A head such as "Freq" over broken numbers is a kind's name.
    const counts = (reading.role === 'count' || reading.role === 'n') && reading.both !== true;
    const cells = laid.texts.map((row) => row[c] ?? '').filter((cell) => !isBlank(cell));
    return weak || !canHold(reading, cells) || (counts && kindsOf[c] === 'decimal')
      ? 'unknown'
      : reading.role;
  });
  const open = laid.columns.flatMap((column, c) =>
    plain[c] === 'unknown' ? (column.line === 'part' || isSumLine(column) ? [c] : []) : [],
  );
  const shares =
    asPercent ||
    says.columns !== undefined ||
    addsToHundred(
      laid,
      open.filter((c) => !isSumLine(laid.columns[c])),
      parts,
    );
  const inside = open.filter((c) => !isSumLine(laid.columns[c]));
  // Whole numbers that add up to 100 are per cents where something else says so: a caption, an n, totals of 100.
  const wholePercents =
    (addsToHundred(laid, inside, parts, 2) && (asPercent || hasSizes(laid) || totalsAreHundred(laid))) ||
    (asPercent && wholeIsHundred(laid, inside, parts));
  // Without counts of kinds beside it, "n" heads the counts themselves.
  const onlySizes = !laid.columns.some(
    (column, c) =>
      (plain[c] === 'count' || plain[c] === 'unknown') &&
      column.line === 'part' &&
      (kindsOf[c] === 'whole' || kindsOf[c] === 'count with share'),
  );
  // Beside per cents that add up along the line, "n" heads what they are of.
  const sharesOfLine = laid.columns.flatMap(({ line }, c) =>
    line === 'part' && (plain[c] === 'share' || (plain[c] === 'unknown' && kindsOf[c] === 'per cent'))
      ? [c]
      : [],
  );
  const sizes = plain.filter((role) => role === 'n').length;
  const besideShares = sizes === 1 && sharesOfLine.length > 1 && linesAreHundred(laid, sharesOfLine, parts);
  const ofReadings = plain.some((role) => role === 'mean' || role === 'median');
  return laid.columns.map((column, c) => {
    const content = kindsOf[c];
    if (plain[c] !== 'unknown') {
      // "n" over cells such as "12 (34 %)".
      if (plain[c] === 'n' && content === 'count with share') return { ...column, role: 'count' };
      // Beside means, "Count" heads the numbers of readings.
      if (plain[c] === 'count' && strong && column.reading.both !== true && content === 'whole' && ofReadings)
        return { ...column, role: 'n' };
      if (plain[c] === 'n' && !strong && onlySizes && !besideShares) return { ...column, role: 'count' };
      return { ...column, role: plain[c] };
    }
    if (column.line === 'summary') return { ...column, role: 'unknown' };
    if (content === 'count with share') return { ...column, role: 'count' };
    if (content === 'per cent') return { ...column, role: 'share' };
    if (content === 'mean with spread') return { ...column, role: 'mean' };
    if (content === 'whole')
      return { ...column, role: strong ? 'unknown' : wholePercents ? 'share' : 'count' };
    if (content === 'decimal' && !strong && shares) return { ...column, role: 'share' };
    return { ...column, role: 'unknown' };
  });
}

/** Measures against themselves, with ones along the diagonal: coefficients of correlation. */
function isSquare({ rows, columns, texts }: Layout): boolean {
  return (
    columns.length > 1 &&
    rows.length === columns.length &&
    rows.every(
      ({ label }, i) =>
        label.trim() === columns[i].head.trim() && /^1(?:[.,]0*)?$/.test((texts[i][i] ?? '').trim()),
    )
  );
}

/** "2.5 %" and "97.5 %", "lwr" and "upr": heads of limits; "Low" and "High" may be kinds. */
function hasLimits({ columns }: Layout): boolean {
  const ends = new Set(
    columns.flatMap(({ head, reading }) =>
      /[\d%]|lwr|upr|lcl|ucl|lower|upper|limit|bound/i.test(head) ? (reading?.role ?? []) : [],
    ),
  );
  return ends.has('low') && ends.has('high');
}

/** "U", "t" or "r" beside a column of p values are statistics. */
function besideItsP(laid: Layout): boolean {
  const isP = laid.columns.some(({ head }, c) => {
    const cells = laid.texts.map((row) => row[c] ?? '').filter((cell) => !isBlank(cell));
    return /^p$/i.test(head) && cells.length > 0 && cells.every((cell) => isPValue(cell));
  });
  return (
    isP && laid.columns.some(({ reading }) => reading.role === 'statistic' || reading.role === 'correlation')
  );
}

/** "M" may be a mean or a man, "DE" a deviation or a country. */
function isLetter(head: string): boolean {
  return /^(?:\p{L}|ds|de|et|ee)$/iu.test(head.replaceAll(/\s*[([,].*$/g, '').trim());
}

const WEAK: ReadonlySet<Role> = new Set<Role>(['low', 'high', 'statistic', 'correlation', 'effect', 'step']);

/** Printed totals of 99, 100 or 101 in every line. */
function totalsAreHundred(laid: Layout): boolean {
  const column = laid.columns.findIndex(isSumLine);
  const row = laid.rows.findIndex(isSumLine);
  const cells = [
    ...(column < 0 ? [] : laid.texts.map((texts) => texts[column])),
    ...(row < 0 ? [] : laid.texts[row].filter((_, c) => !isSumLine(laid.columns[c]))),
  ].filter((cell) => !isBlank(cell));
  return cells.length >= 2 && cells.every((cell) => Math.abs(Number(cell.replace(/[%\s]/g, '')) - 100) <= 2);
}

function hasSizes(laid: Layout): boolean {
  return (
    laid.rows.some(({ line }) => line === 'n') || laid.columns.some(({ reading }) => reading.role === 'n')
  );
}

type Content = 'whole' | 'decimal' | 'per cent' | 'count with share' | 'mean with spread' | 'other';

const ONE_NUMBER = new RegExp(`^[<>≤≥~]?\\s?${NUMBER}$`, 'u');

function contentOf(cells: readonly string[]): Content {
  const filled = cells.filter((cell) => !isBlank(cell)).map((cell) => cell.replace(/\s?[*†‡§ᵃᵇᶜ]+$/u, ''));
  if (filled.length === 0) return 'other';
  const share = (pattern: RegExp) => filled.filter((cell) => pattern.test(cell)).length * 2 > filled.length;
  if (share(/±|\+\/-/)) return 'mean with spread';
  if (
    share(/^\d[\d ,.]*\s*(?:\/\s*\d+\s*)?[([]\s*[\d.,]+\s*%?\s*[)\]]$/) &&
    !filled.some((cell) => /^[-−–]?(?:0?[.,]\d|\d+[.,]\d{1,2}(?!\d))/u.test(cell))
  )
    return 'count with share';
  if (filled.some((cell) => /%$/.test(cell)) && share(/^[<~]?\s?[\d.,]+\s*%?$/)) return 'per cent';
  if (
    share(/^\(?[1-9]\d{0,2}(?:[ ,.'’]\d{3})+\)?$|^\(?\d+\)?$/) &&
    !filled.some((cell) => /^\d+[.,]\d{1,2}$|^[.,]\d|^0[.,]\d/.test(cell))
  )
    return 'whole';
  if (filled.every((cell) => ONE_NUMBER.test(bracketed(cell)))) return 'decimal';
  return 'other';
}

/** Do the cells of most rows, or of most columns, add up to 100 (or to 1)? */
function addsToHundred(
  laid: Layout,
  columns: readonly number[],
  rows: readonly number[],
  least = 2,
): boolean {
  const at = (r: number, c: number) =>
    Number((laid.texts[r][c] ?? '').replace(/[%\s]/g, '').replace(',', '.')) || 0;
  const near = (cells: readonly number[]) => {
    const sum = cells.reduce((all, one) => all + one, 0);
    const slack = Math.max(1, cells.length / 2);
    return cells.length >= 2 && (Math.abs(sum - 100) <= slack || Math.abs(sum - 1) <= 0.01 * cells.length);
  };
  const byRow = rows.map((r) => near(columns.map((c) => at(r, c))));
  const byColumn = columns.map((c) => near(rows.map((r) => at(r, c))));
  const most = (list: readonly boolean[]) =>
    list.length >= least && list.filter(Boolean).length * 3 >= list.length * 2;
  return (
    most(byRow) ||
    most(byColumn) ||
    (least <= 2 && (byRow.length === 1 || byColumn.length === 1) && [...byRow, ...byColumn].some(Boolean))
  );
}

/** Do the cells of most lines add up to 100? */
function linesAreHundred(laid: Layout, columns: readonly number[], rows: readonly number[]): boolean {
  const good = rows.filter((r) => {
    const sum = columns.reduce(
      (all, c) => all + (Number((laid.texts[r][c] ?? '').replace(/[%\s]/g, '').replace(',', '.')) || 0),
      0,
    );
    return Math.abs(sum - 100) <= Math.max(1, columns.length / 2);
  }).length;
  return good * 3 >= rows.length * 2;
}

/** Do all cells together add up to 100, as per cents of the whole do? */
function wholeIsHundred(laid: Layout, columns: readonly number[], rows: readonly number[]): boolean {
  const cells = rows.flatMap((r) =>
    columns.map((c) => Number((laid.texts[r][c] ?? '').replace(/[%\s]/g, '')) || 0),
  );
  const sum = cells.reduce((all, one) => all + one, 0);
  return cells.length > 3 && Math.abs(sum - 100) <= cells.length / 2;
}

/** Coefficients of variation as parts of one stay below 3 or so; a column that goes beyond is in per cent. */
export function variationInPerCent(
  laid: Layout,
  columns: readonly { readonly role: Role; readonly head: string }[],
  mark: DecimalMark,
): boolean {
  const at = columns.findIndex(({ role }) => role === 'cv');
  if (at < 0) return false;
  if (/%/.test(columns[at].head)) return true;
  const values = laid.texts.flatMap(
    (row) => readPrinted(row[at] ?? '', 'mean', { mark })?.parts[0]?.values[0] ?? [],
  );
  return values.some(({ number }) => Number(`${number.digits}e-${number.decimals}`) > 3);
}

/** "(12.5)" below or beside a count is the number alone. */
export function bracketed(text: string): string {
  const match = /^\(\s*([^()]+?)\s*\)$/.exec(text.trim());
  return match === null ? text.trim() : match[1];
}

function isSumLine({ line }: Pick<TableColumn, 'line'>): boolean {
  return line === 'total' || line === 'subtotal';
}
