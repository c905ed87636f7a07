import { InputError } from '../../../../errors.ts';
import { decodeBytes } from '../../../../sources/decode.ts';
import { detectDelimiter } from '../../../../sources/dialect.ts';
import { restoreText } from '../../../../sources/export.ts';
import { parseCsv } from '../../../../sources/parse-csv.ts';

/** A printed table as cells, with the words above and below it. */
export interface TableText {
  readonly caption: string;
  /** The head rows and the body, every row as wide as the widest. */
  readonly grid: readonly (readonly string[])[];
  readonly notes: readonly string[];
}

/**
 * Parts a printed table into cells, whether it is a CSV, a spreadsheet's clipboard or text copied from a page,
 * whose columns only blanks part. Captions, footnotes and repeated heads of a continued table are taken out.
 *
 * @throws InputError where there are no two columns.
 */
export function tableText(bytes: Uint8Array, file: string): TableText {
  const { text } = decodeBytes(bytes, file);
  const rows = isDelimited(text)
    ? parseCsv(text, file, detectDelimiter(text)).grid.map((row) =>
        row.map((cell) => restoreText(cell.trim())),
      )
    : blankParted(text);
  const filled = rows.filter((row) => row.some((cell) => cell !== ''));
  const { caption, body, notes } = withoutWords(filled);
  const width = body.reduce((most, row) => Math.max(most, row.length), 0);
  if (width < 2 || body.length < 2)
    throw new InputError(
      'this is no table with labels in its first row and column',
      { file },
      'give it a row of heads and a column of labels',
    );
  const even = body.map((row) => [...row, ...new Array<string>(width - row.length).fill('')]);
  return { caption, grid: withoutRepeatedHeads(even), notes };
}

/** Marks that part cells; commas between digits alone are decimal marks of a table parted by blanks. */
function isDelimited(text: string): boolean {
  if (/\t|;|\|/.test(text)) return true;
  if (!text.includes(',')) return false;
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== '');
  const parting = lines.filter((line) =>
    /[^\d\s],\S|,[^\d\s]|,,|^,|,$|,[\d.]+,|\d\.\d+,\d|,\d+\.\d/.test(line),
  ).length;
  const blanks = lines.filter((line) => /\S {2,}\S/.test(line.replaceAll(/"[^"]*"/g, ''))).length;
  const everywhere = lines.every((line) => line.includes(','));
  return (
    parting * 2 >= lines.length ||
    (parting > 0 &&
      blanks * 2 < lines.length &&
      (parting * 3 >= lines.length || (everywhere && blanks === 0)))
  );
}

function blankParted(text: string): string[][] {
  const lines = text
    .split(/\r?\n/)
    .map((line) => line.replaceAll('\u00a0', ' ').trimEnd())
    .filter((line) => line.trim() !== '');
  const wide = lines.filter((line) => /\S {2,}\S/.test(line)).length;
  if (wide * 2 >= lines.length) return byPlace(lines);
  const glued = lines.map((line) => glue(line.trim().split(/\s+/)));
  const trailing = glued.map((tokens) => trailingNumbers(tokens));
  const numbers = trailing.filter((count) => count > 0);
  // A label may end in a number ("phase 2"); the heads say how many columns follow it.
  const heads = glued.find((tokens, i) => trailing[i] === 0 && numbers.includes(tokens.length - 1));
  const columns = heads === undefined ? (mostCommon(numbers) ?? 1) : heads.length - 1;
  return glued.map((tokens, i) => {
    if (tokens.length <= columns || (trailing[i] === 0 && tokens.length > columns + 3))
      return trailing[i] === 0 && tokens.length > columns + 1
        ? [tokens.join(' ')]
        : ['', ...tokens].slice(tokens.length > columns ? 1 : 0);
    const label = tokens.slice(0, tokens.length - columns).join(' ');
    return [label, ...tokens.slice(tokens.length - columns)];
  });
}

/** A stretch of the line, from and up to. */
interface Span {
  readonly from: number;
  readonly to: number;
}

/**
 * Columns of a text set in columns: where the lines agree in how many runs of blanks part them, those are the
 * columns; else what is blank in every line of numbers parts them, so that an empty cell does not move its
 * neighbours, and heads go to the column that they stand over.
 */
function byPlace(lines: readonly string[]): string[][] {
  const runs = lines.map(runsOf);
  const isBody = runs.map((cells) => cells.slice(1).filter(({ text }) => NUMERIC.test(text)).length > 0);
  const widths = runs.filter((_, i) => isBody[i]).map((cells) => cells.length);
  const usual = mostCommon(widths) ?? 1;
  const wide = runs.filter((cells) => cells.length > 1);
  if (wide.every((cells) => cells.length === usual))
    return runs.map((cells) => cells.map(({ text }) => text));
  const columns = columnsOf(lines.filter((_, i) => isBody[i] && runs[i].length === usual));
  return runs.map((cells, i) => {
    if (cells.length < 2) return cells.map(({ text }) => text);
    if (cells.length === usual && isBody[i]) return cells.map(({ text }) => text);
    const row = columns.map(() => '');
    for (const { text, from, to } of cells) {
      const at = nearest({ from, to }, columns);
      row[at] = row[at] === '' ? text : `${row[at]} ${text}`;
    }
    return row;
  });
}

function runsOf(line: string): (Span & { readonly text: string })[] {
  return [...line.matchAll(/\S+(?: \S+)*/g)].map((match) => ({
    text: match[0],
    from: match.index,
    to: match.index + match[0].length,
  }));
}

/** Stretches that some of the lines fill, parted by what all leave blank. */
function columnsOf(lines: readonly string[]): Span[] {
  const width = lines.reduce((most, line) => Math.max(most, line.length), 0);
  const filled = (at: number) =>
    lines.some((line) => runsOf(line).some(({ from, to }) => at >= from && at < to));
  const columns: Span[] = [];
  let from: number | null = null;
  for (let at = 0; at <= width; at++) {
    const on = at < width && filled(at);
    if (on && from === null) from = at;
    if (!on && from !== null) {
      columns.push({ from, to: at });
      from = null;
    }
  }
  return columns;
}

/** The column that a text stands over; the nearest where it stands over none. */
function nearest({ from, to }: Span, columns: readonly Span[]): number {
  const gap = (column: Span) => Math.max(column.from - to, from - column.to);
  const over = columns.findIndex((column) => gap(column) < 0);
  if (over >= 0) return over;
  return columns.reduce((best, column, i) => (gap(column) < gap(columns[best]) ? i : best), 0);
}

/** "12 (34 %)", "5.6 ± 0.4" and "2.1 – 5.4" are one cell each. */
function glue(tokens: readonly string[]): string[] {
  const cells: string[] = [];
  let open = false;
  for (const token of tokens) {
    const last = cells[cells.length - 1] ?? '';
    const joins =
      open ||
      /^%/.test(token) ||
      (/^[([]/.test(token) && /[\d%]$/.test(last)) ||
      /^(?:±|\+\/-|\+-)/.test(token) ||
      /(?:±|\+\/-|\+-)$/.test(last) ||
      (/^[-–—]$/.test(last) && false);
    if (joins && cells.length > 0) cells[cells.length - 1] = `${last} ${token}`;
    else cells.push(token);
    if (/[([][^)\]]*$/.test(token))
      open = /\d|%/.test(cells[cells.length - 1]) && !/[)\]]/.test(token.slice(token.search(/[([]/)));
    if (/[)\]]/.test(token)) open = false;
  }
  return cells;
}

const NUMERIC = /^(?:[<>≤≥~]?\s?[-+−–]?[\d.,]+.*|[-–—]|n\.?\s?s\.?|n\/a|\*+)$/i;

function trailingNumbers(tokens: readonly string[]): number {
  let count = 0;
  // The first word is a label, whatever it looks like: "1st", "1200".
  while (count < tokens.length - 1 && NUMERIC.test(tokens[tokens.length - 1 - count])) count++;
  return count;
}

function mostCommon(values: readonly number[]): number | undefined {
  const times = new Map<number, number>();
  for (const value of values) times.set(value, (times.get(value) ?? 0) + 1);
  return [...times].sort((a, b) => b[1] - a[1] || b[0] - a[0])[0]?.[0];
}

const filledIn = (row: readonly string[]) => row.filter((cell) => cell !== '').length;
const CAPTION = /^(?:table|tab\.|tabelle|tableau|tabla|tabel|fig\.|figure)\s*[\dIVX]/i;
const NOTE =
  /^(?:notes?\b|source\b|n\.?b\.|key\b|abbreviations|[*†‡§]+\s?\S|[a-eᵃᵇᶜ][.)]?\s+\p{L}|p\s*<|values|data\b|percentages|sd\s*=|\d\)\s)/iu;

function withoutWords(rows: readonly (readonly string[])[]) {
  let from = 0;
  let to = rows.length;
  const text = (row: readonly string[]) => row.filter((cell) => cell !== '').join(', ');
  const words = (row: readonly string[], pattern: RegExp) =>
    pattern.test(text(row)) || (filledIn(row) === 1 && text(row).length > 40);
  while (
    from < to - 2 &&
    (words(rows[from], CAPTION) ||
      (filledIn(rows[from]) === 1 && filledIn(rows[from + 1]) > 1 && rows[from][0] !== ''))
  )
    from++;
  while (to > from + 2 && filledIn(rows[to - 1]) <= 2 && words(rows[to - 1], NOTE)) to--;
  return {
    caption: rows.slice(0, from).map(text).join(' '),
    body: rows
      .slice(from, to)
      .filter((row) => !(filledIn(row) <= 2 && /\bcont(?:inued|\.|'d)|fortsetzung/i.test(text(row)))),
    notes: rows.slice(to).map(text),
  };
}

/** A table that goes on over a page repeats its heads. */
function withoutRepeatedHeads(rows: readonly (readonly string[])[]): string[][] {
  const [head] = rows;
  const same = (row: readonly string[]) => row.join('¦') === head.join('¦');
  return rows.filter((row, i) => i === 0 || !same(row)).map((row) => [...row]);
}
