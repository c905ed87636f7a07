/** Cells as the text of a file. */
export type Cells = readonly (readonly string[])[];

export function asCsv(rows: Cells, delimiter = ','): string {
  const special = new RegExp(`["\\n${delimiter}]`);
  return `${rows
    .map((row) =>
      row.map((cell) => (special.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)).join(delimiter),
    )
    .join('\n')}\n`;
}

/** As copied from a page: numbers flush right, columns parted by two blanks or more. */
export function inColumns(rows: Cells, gap = 3): string {
  const widths = rows[0].map((_, c) => Math.max(...rows.map((row) => (row[c] ?? '').length)) + gap);
  return `${rows
    .map((row) =>
      row
        .map((cell, c) => (c === 0 ? cell.padEnd(widths[c]) : cell.padStart(widths[c])))
        .join('')
        .trimEnd(),
    )
    .join('\n')}\n`;
}

export const sum = (list: readonly number[]) => list.reduce((all, one) => all + one, 0);
