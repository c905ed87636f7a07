/**
 * Comma-separated text after RFC 4180: UTF-8, CRLF, fields quoted where they need it. A text that a
 * spreadsheet would run as a formula is led by an apostrophe, which spreadsheets hide; numbers and
 * single signs stay as they are.
 */
export function toCsv(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map((cell) => quote(neutralise(cell))).join(',')}\r\n`).join('');
}

/** True where a spreadsheet would take the text for a formula (OWASP, "CSV Injection"). */
export function looksLikeFormula(text: string): boolean {
  return /^[=+\-@\t\r]./s.test(text) && !/^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/.test(text);
}

function neutralise(text: string): string {
  return looksLikeFormula(text) ? `'${text}` : text;
}

function quote(text: string): string {
  return /[",\r\n]/.test(text) || text !== text.trim() ? `"${text.replaceAll('"', '""')}"` : text;
}
