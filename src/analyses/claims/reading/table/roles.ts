import { type DecimalMark, plainSigns } from '../numbers.ts';
import { readPrinted } from '../printed-text.ts';
import { isBlank, isPValue } from './blank.ts';
import { canHold } from './can-hold.ts';
import { type Content, contentOf } from './cell-contents.ts';
import type { Role } from './heads.ts';
import { addsToHundred, isSumLine, linesAreHundred, totalsAreHundred, wholeIsHundred } from './hundreds.ts';
import type { Layout, TableColumn } from './laid.ts';
import { isStatistic } from './role-kinds.ts';
import type { TableSays } from './says.ts';

/** Roles from the heads; where a head names a kind, from what the cells hold. */
export function withRoles(
  asPrinted: Layout,
  caption: string,
  says: TableSays,
  mark: DecimalMark,
): (TableColumn & { readonly role: Role })[] {
  const laid = { ...asPrinted, texts: asPrinted.texts.map((row) => row.map(plainSigns)) };
  const strong =
    besideItsP(laid) ||
    hasLimits(laid) ||
    laid.columns.some(
      ({ reading, head }) =>
        isStatistic(reading) && reading.role !== 'n' && (!isLetter(head) || reading.second !== undefined),
    );
  const asPercent = /%|per\s?cent|proportion/i.test(`${caption} ${laid.corner}`);
  const parts = laid.rows.flatMap(({ line }, r) => (line === 'part' ? [r] : []));
  const kindsOf = laid.columns.map((_, c) =>
    contentOf(
      parts.map((r) => laid.texts[r][c] ?? ''),
      mark,
    ),
  );
  const square = isSquare(laid);
  const said = laid.columns.map(({ reading, head }, c): Role => {
    if (square) return 'correlation';
    // "low", "d" or "r" name a statistic only beside others.
    // "b (SE)" says of itself that it is one.
    const letter = isLetter(head) && reading.second === undefined;
    const statistic = isStatistic(reading) && !(letter && reading.role !== 'n');
    const weak = !statistic && (WEAK.has(reading.role) || letter) && !strong;
    // A head such as "Freq" over broken numbers is a kind's name.
    const counts = (reading.role === 'count' || reading.role === 'n') && reading.both !== true;
    const cells = laid.texts.map((row) => row[c] ?? '').filter((cell) => !isBlank(cell));
    // "No (%)" beside "Yes (%)" is a kind, and holds per cents.
    if (reading.both === true && reading.role === 'count' && isKindInPerCent(laid, c, kindsOf[c]))
      return 'share';
    return weak || !canHold(reading, cells) || (counts && kindsOf[c] === 'decimal')
      ? 'unknown'
      : reading.role;
  });
  // A table of "weight" alone is about that: what is no part of any sum would else be read by nothing.
  const plain = said.every((role) => role === 'not part') ? said.map((): Role => 'unknown') : said;
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

/** One number a cell, broken or signed as a per cent, or under a head like those of its neighbours: "No (%)", "Yes (%)". */
function isKindInPerCent({ columns }: Layout, at: number, content: Content): boolean {
  if (content === 'decimal' || content === 'per cent') return true;
  const alike = columns.filter(
    ({ head, reading }, c) => c !== at && reading.role === 'share' && /\S\s*\(%\)$/.test(head),
  );
  return content === 'whole' && alike.length > 0 && /^no\s*\(%\)$/i.test(columns[at].head);
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

function hasSizes(laid: Layout): boolean {
  return (
    laid.rows.some(({ line }) => line === 'n') || laid.columns.some(({ reading }) => reading.role === 'n')
  );
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
