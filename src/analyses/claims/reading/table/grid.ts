import { InputError } from '../../../../errors.ts';
import { decodeBytes } from '../../../../sources/formats/decode.ts';
import { detectDelimiter } from '../../../../sources/formats/dialect.ts';
import { parseCsv } from '../../../../sources/formats/parse-csv.ts';
import { restoreText } from '../../../../sources/formats/safe-csv.ts';
import { blankParted } from './blank-parted.ts';

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
        row.map((cell, i) => restoreText(i === 0 ? labelCell(cell) : cell.trim())),
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

/** Blanks before a label are kept: they say that it is set in under another. */
function labelCell(cell: string): string {
  return cell.trim() === '' ? '' : cell.trimEnd();
}

/** Marks that part cells; commas between digits alone are decimal marks of a table parted by blanks. */
function isDelimited(whole: string): boolean {
  // "Pr(>|t|)" and "(1 | site)" part nothing.
  const text = whole.replaceAll(/\|[tzF]\|/g, '').replaceAll(/\([^()\n|]*\|[^()\n|]*\)/g, '');
  if (/\t|;|\|/.test(text)) return true;
  if (!text.includes(',')) return false;
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== '');
  // Columns set in blanks, whose numbers have commas.
  const set = lines.filter((line) => (line.match(/[^,\s] {2,}\S/g) ?? []).length > 1).length;
  if (set * 5 >= lines.length * 4) return false;
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

const filledIn = (row: readonly string[]) => row.filter((cell) => cell !== '').length;
const CAPTION = /^(?:table|tab\.|tabelle|tableau|tabla|tabel|fig\.|figure)\s*[\dIVX]/i;
const NOTE =
  /^(?:notes?\b|source\b|n\.?b\.|key\b|abbreviations|[*†‡§]+\s?\S|[a-eᵃᵇᶜ][.)]?\s+\p{L}|p\s*<|values|data\b|percentages|sd\s*=|\d\)\s)/iu;

function withoutWords(rows: readonly (readonly string[])[]) {
  let from = 0;
  let to = rows.length;
  const text = (row: readonly string[]) =>
    row
      .filter((cell) => cell !== '')
      .join(', ')
      .trim();
  const words = (row: readonly string[], pattern: RegExp) =>
    pattern.test(text(row)) || (filledIn(row) === 1 && text(row).length > 40);
  while (
    from < to - 2 &&
    (words(rows[from], CAPTION) ||
      (filledIn(rows[from]) === 1 && filledIn(rows[from + 1]) > 1 && rows[from][0] !== ''))
  )
    from++;
  const isNote = (row: readonly string[]) =>
    (filledIn(row) <= 2 && words(row, NOTE)) || NOTE_OPENS.test(row[0]?.trim() ?? '');
  while (to > from + 2 && isNote(rows[to - 1])) to--;
  return {
    caption: rows.slice(0, from).map(text).join(' '),
    body: rows
      .slice(from, to)
      .filter((row) => !(filledIn(row) <= 2 && /\bcont(?:inued|\.|'d)|fortsetzung/i.test(text(row)))),
    notes: rows.slice(to).map(text),
  };
}

/** A note says so itself, however many marks part its words. */
const NOTE_OPENS =
  /^(?:notes?|source|n\.?b\.|key|abbreviations|anm(?:erkung(?:en)?)?\.?|quelle|nota|remarque)\s*[.:]/iu;

/** A table that goes on over a page repeats its heads. */
function withoutRepeatedHeads(rows: readonly (readonly string[])[]): string[][] {
  const [head] = rows;
  const same = (row: readonly string[]) => row.join('¦') === head.join('¦');
  return rows.filter((row, i) => i === 0 || !same(row)).map((row) => [...row]);
}
