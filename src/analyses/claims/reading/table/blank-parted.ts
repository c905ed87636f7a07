import { alignedRuns, type Run, type Span } from './aligned-runs.ts';

/** Tables copied from a page, whose columns only blanks part. */

export function blankParted(text: string): string[][] {
  const lines = text
    .split(/\r?\n/)
    .map((line) => line.replaceAll(HARD, STUCK).replaceAll('\u00a0', ' ').trimEnd())
    .filter((line) => line.trim() !== '');
  return cellsIn(lines).map((row) => row.map((cell) => cell.replaceAll(STUCK, ' ')));
}

/** A hard or thin space between digits, or before a per cent sign, parts no columns. */
const HARD = /(?<=\d)[\u00a0\u2007\u2009\u202f](?=\d{3}(?!\d)|%)/gu;
const STUCK = '\u2060';

function cellsIn(lines: readonly string[]): string[][] {
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

/**
 * Columns of a text set in columns: where the lines agree in how many runs of blanks part them, those are the
 * columns; else what is blank in every line of numbers parts them, so that an empty cell does not move its
 * neighbours, and heads go to the column that they stand over.
 */
function byPlace(lines: readonly string[]): string[][] {
  const runs = alignedRuns(lines);
  const isBody = runs.map((cells) => cells.slice(1).filter(({ text }) => NUMERIC.test(text)).length > 0);
  const widths = runs.filter((_, i) => isBody[i]).map((cells) => cells.length);
  const usual = mostCommon(widths) ?? 1;
  const wide = runs.filter((cells) => cells.length > 1);
  if (wide.every((cells) => cells.length === usual)) return runs.map(setIn);
  // Heads over columns that most lines leave empty.
  const more = (cells: readonly unknown[]) => cells.length > usual;
  const columns = columnsOf(runs.filter((cells, i) => (isBody[i] && cells.length === usual) || more(cells)));
  return runs.map((cells, i) => {
    if (cells.length < 2) return setIn(cells);
    if (cells.length === columns.length && isBody[i]) return setIn(cells);
    const row = columns.map(() => '');
    for (const { text, from, to } of cells) {
      const at = nearest({ from, to }, columns);
      row[at] = row[at] === '' ? text : `${row[at]} ${text}`;
    }
    if (isBody[i] && row[0] !== '') row[0] = `${' '.repeat(cells[0].from)}${row[0]}`;
    return row;
  });
}

/** The cells of a line, the blanks before its label kept. */
function setIn(cells: readonly Run[]): string[] {
  return cells.map(({ text, from }, i) =>
    i === 0 && cells.length > 1 ? `${' '.repeat(from)}${text}` : text,
  );
}

/** Stretches that some of the lines fill, parted by what all leave blank. */
function columnsOf(runs: readonly (readonly Run[])[]): Span[] {
  const width = runs.flat().reduce((most, { to }) => Math.max(most, to), 0);
  const filled = (at: number) => runs.some((line) => line.some(({ from, to }) => at >= from && at < to));
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
      /(?:±|\+\/-|\+-)$/.test(last);
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
