/** Writing tables as CSV that is safe to open in a spreadsheet. */

/**
 * Comma-separated text after RFC 4180: CRLF, cells quoted where they need it. A text that a spreadsheet
 * would run as a formula gets an apostrophe in front; `restoreText` takes it off again.
 */
export function writeCsv(rows: Iterable<readonly string[]>): string {
  return [...csvPieces(rows)].join('');
}

/** Letters of a piece, about: enough that few are handed on, too few to weigh. */
const PIECE = 1 << 17;

/** `writeCsv` piece by piece: what is written of a long table is held no longer than it takes to hand it on. */
export function* csvPieces(rows: Iterable<readonly string[]>): Generator<string> {
  let piece = '';
  for (const row of rows) {
    for (let place = 0; place < row.length; place++)
      piece += place === 0 ? quote(neutralise(row[place]!)) : `,${quote(neutralise(row[place]!))}`;
    piece += '\r\n';
    if (piece.length < PIECE) continue;
    yield piece;
    piece = '';
  }
  if (piece !== '') yield piece;
}

/** What a spreadsheet takes for a formula, behind spaces and marks that nobody sees; full-width signs too. */
const FORMULA = /^['\s\p{Cf}]*[=+\-@＝＋－＠]/u;
const PLAIN = /^(?:[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?|-INF|-)$/;

/** Signs without which no part of a text is risky: most cells have none. */
const MAY_BE_RISKY = /[=+\-@＝＋－＠\t\r]/;

/** Where a spreadsheet of another language, or one that does not heed quotation marks, begins a new cell. */
const BORDER = /([;\t\r\n])/;

/**
 * Puts an apostrophe before whatever a spreadsheet would take for a formula, at the start of the text and
 * behind each sign at which spreadsheets of some languages begin a new cell; numbers stay as they are.
 */
export function neutralise(text: string): string {
  if (!MAY_BE_RISKY.test(text)) return text;
  const parts = text.split(BORDER);
  return parts.map((part, place) => (isRisky(part, place, parts) ? `'${part}` : part)).join('');
}

/** Undoes `neutralise`. */
export function restoreText(text: string): string {
  const parts = text.split(BORDER);
  return parts
    .map((part, place) => {
      const bare = part.slice(1);
      return part.startsWith("'") && isRisky(bare, place, parts) ? bare : part;
    })
    .join('');
}

/** Odd places hold the borders. A text that begins with a tab or a line end is risky by that alone. */
function isRisky(part: string, place: number, parts: readonly string[]): boolean {
  if (place % 2 === 1) return false;
  if (place === 0 && /^'*$/.test(part) && /[\t\r]/.test(parts[1] ?? '')) return true;
  return FORMULA.test(part) && !PLAIN.test(part.trim());
}

function quote(text: string): string {
  return /[",\r\n]/.test(text) || text !== text.trim() ? `"${text.replaceAll('"', '""')}"` : text;
}
