import { greatest } from '../numerics/foundation/lists.ts';

export interface TextColumn {
  readonly head: string;
  /** Numbers stand right, words left. */
  readonly align: 'left' | 'right';
}

/**
 * Aligned columns within `width`. Where they do not fit, the widest columns of words are wrapped onto
 * further lines, so that nothing is cut off; only where numbers alone are too wide is `width` passed.
 */
export function textTable(
  columns: readonly TextColumn[],
  rows: readonly (readonly string[])[],
  width: number,
): string {
  const clean = rows.map((row) => row.map(tame));
  const widths = columns.map((column, place) =>
    clean.reduce((most, row) => Math.max(most, displayWidth(row[place] ?? '')), displayWidth(column.head)),
  );
  const gaps = GAP.length * (columns.length - 1);
  const fitted = fit(widths, columns, width - gaps);
  const lines = [columns.map((column) => column.head), ...clean].flatMap((row) =>
    wrapRow(row, fitted, columns),
  );
  const rule = fitted.map((size) => '─'.repeat(size)).join(GAP);
  const headLines = wrapRow(
    columns.map((column) => column.head),
    fitted,
    columns,
  ).length;
  lines.splice(headLines, 0, rule);
  return `${lines.map((line) => line.trimEnd()).join('\n')}\n`;
}

/** How many columns of these widths fit, at least one; columns of words count as narrow as they may be wrapped. */
export function columnsThatFit(widths: readonly number[], words: readonly boolean[], width: number): number {
  let used = -GAP.length;
  const fits = widths.findIndex((size, place) => {
    used += GAP.length + (words[place] ? Math.min(size, COMFORTABLE_WORDS) : size);
    return used > width;
  });
  return fits < 0 ? widths.length : Math.max(1, fits);
}

const GAP = '  ';
const NARROWEST_WORDS = 12;
const COMFORTABLE_WORDS = 24;

function fit(widths: readonly number[], columns: readonly TextColumn[], room: number): number[] {
  const fitted = [...widths];
  for (;;) {
    const excess = fitted.reduce((total, size) => total + size, 0) - room;
    if (excess <= 0) return fitted;
    const wide = fitted
      .map((size, place) => ({ size, place }))
      .filter(({ size, place }) => columns[place].align === 'left' && size > NARROWEST_WORDS)
      .sort((a, b) => b.size - a.size)[0];
    if (wide === undefined) return fitted;
    fitted[wide.place] = Math.max(NARROWEST_WORDS, wide.size - Math.max(1, Math.ceil(excess / 3)));
  }
}

function wrapRow(
  row: readonly string[],
  widths: readonly number[],
  columns: readonly TextColumn[],
): string[] {
  const cells = widths.map((size, place) => wrap(row[place] ?? '', size));
  const height = Math.max(1, greatest(cells.map((cell) => cell.length)));
  return Array.from({ length: height }, (_, line) =>
    cells.map((cell, place) => pad(cell[line] ?? '', widths[place], columns[place].align)).join(GAP),
  );
}

/** Words put into lines of at most `width`; a longer word is broken. */
export function wrap(text: string, width: number): string[] {
  const lines: string[] = [];
  let line: string[] = [];
  let used = 0;
  const end = () => {
    lines.push(line.join(' '));
    line = [];
    used = 0;
  };
  for (const word of text.split(' ')) {
    let letters = displayWidth(word);
    let rest = word;
    if (line.length > 0 && used + 1 + letters > width) end();
    if (letters > width) {
      const all = [...word];
      let at = 0;
      for (; letters - at > width; at += width) lines.push(all.slice(at, at + width).join(''));
      rest = all.slice(at).join('');
      letters -= at;
    }
    used += letters + (line.length > 0 ? 1 : 0);
    line.push(rest);
  }
  return [...lines, line.join(' ')];
}

function pad(text: string, width: number, align: 'left' | 'right'): string {
  const space = ' '.repeat(Math.max(0, width - displayWidth(text)));
  return align === 'left' ? text + space : space + text;
}

function displayWidth(text: string): number {
  let letters = 0;
  for (const _ of text) letters++;
  return letters;
}

const LONGEST_SHOWN = 160;

/** A text of somebody's table as far as a line of the terminal needs it; how long it is stands behind. */
export function clipped(text: string): string {
  if (text.length <= LONGEST_SHOWN) return text;
  return `${[...text.slice(0, LONGEST_SHOWN)].join('')}… (${text.length} letters)`;
}

/** Line ends, control characters and marks that turn the direction of writing must not reach the terminal. */
export function tame(text: string): string {
  return text.replace(/[\p{Cc}\u202a-\u202e\u2066-\u2069]+/gu, ' ');
}
