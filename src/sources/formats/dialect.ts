import Papa from 'papaparse';
import type { DecimalMark, Delimiter } from '../source-reading.ts';

/** In the order of preference where two explain the file equally well. */
export const DELIMITERS: readonly Delimiter[] = ['\t', ';', '|', ','];

const SAMPLE_CHARACTERS = 200_000;
const SAMPLE_ROWS = 300;

/**
 * Which delimiter parts the cells? The one under which most rows have the same number of cells, more than
 * one; a comma that only ever stands between digits is a decimal mark. A single column gives a comma.
 */
export function detectDelimiter(text: string): Delimiter {
  let best: Delimiter = ',';
  let bestScore = 0;
  const sample = text.slice(0, SAMPLE_CHARACTERS);
  for (const delimiter of DELIMITERS) {
    const score = consistency(sample, delimiter);
    if (score > bestScore + 1e-9) {
      best = delimiter;
      bestScore = score;
    }
  }
  return best;
}

/** Share of rows as wide as most, weighed by how many cells they have. */
function consistency(sample: string, delimiter: Delimiter): number {
  if (!sample.includes(delimiter)) return 0;
  const { data: rows, errors } = Papa.parse<string[]>(sample, {
    delimiter,
    newline: '\n',
    preview: SAMPLE_ROWS,
  });
  const widths = new Map<number, number>();
  let filled = 0;
  let betweenDigits = 0;
  let joints = 0;
  for (const row of rows) {
    if (row.every((cell) => cell.trim() === '')) continue;
    filled++;
    widths.set(row.length, (widths.get(row.length) ?? 0) + 1);
    for (let i = 1; i < row.length; i++) {
      joints++;
      if (/\d$/.test(row[i - 1]!) && /^\d/.test(row[i]!)) betweenDigits++;
    }
  }
  let width = 1;
  let share = 0;
  for (const [candidate, count] of widths) {
    if (candidate > 1 && count / filled > share) {
      width = candidate;
      share = count / filled;
    }
  }
  if (width === 1) return 0;
  const decimals = delimiter === ',' && joints > 0 && betweenDigits / joints > 0.9 && !headed(rows) ? 0.1 : 1;
  // Of two that part the rows as evenly, the one that leaves no quotation mark open.
  const open = errors.some(({ code }) => code === 'MissingQuotes') ? 0.99 : 1;
  return share * (1 + Math.min(width, 20) / 100) * decimals * open;
}

/** Does the first row have as many cells as the second? A decimal comma leaves the header undivided. */
function headed(rows: readonly (readonly string[])[]): boolean {
  return rows.length > 1 && rows[0]!.length === rows[1]!.length;
}

/** What the texts of one column say about its decimal mark. */
export interface DecimalEvidence {
  readonly comma: number;
  readonly point: number;
  /** Texts such as "1,200" or "1.200" that can be either. */
  readonly unclear: number;
}

/** Counts the marks that can only be decimal marks, and those that could part thousands. */
export function decimalEvidence(texts: Iterable<string>): DecimalEvidence {
  let comma = 0;
  let point = 0;
  let unclear = 0;
  for (const text of texts) {
    if (!/\d[.,]\d/.test(text)) continue;
    if (/\d\.\d{3},\d|\d,\d{1,2}(?![\d,])|\b0,\d|\d,\d{4,}/.test(text)) comma++;
    else if (/\d,\d{3}\.\d|\d\.\d{1,2}(?![\d.])|\b0\.\d|\d\.\d{4,}/.test(text)) point++;
    else unclear++;
  }
  return { comma, point, unclear };
}

/** The mark of one column: its own evidence first, then the habit of the file. */
export function decideDecimal(evidence: DecimalEvidence, habit: DecimalMark): DecimalMark {
  if (evidence.comma > evidence.point) return ',';
  if (evidence.point > evidence.comma) return '.';
  return habit;
}

/** The habit of the file: the mark that more columns use; without any, what the delimiter suggests. */
export function decimalHabit(columns: readonly DecimalEvidence[], delimiter: Delimiter): DecimalMark {
  let commas = 0;
  let points = 0;
  for (const { comma, point } of columns) {
    if (comma > point) commas++;
    else if (point > comma) points++;
  }
  if (commas !== points) return commas > points ? ',' : '.';
  return delimiter === ';' ? ',' : '.';
}
