import { lookup } from './type/lookup.ts';

/** A text of a figure as lines of plain words. */
export interface Lettering {
  readonly lines: readonly string[];
  readonly bold: boolean;
}

const ENTITIES: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  nbsp: ' ',
  '#39': "'",
};

/** Reads the little markup that figures use: line breaks, bold, entities; other tags are taken off. */
export function lettering(text: string): Lettering {
  const bold = /^<b>[\s\S]*<\/b>$/.test(text.trim());
  const lines = text
    .split(/<br\s*\/?>/i)
    .map((line) =>
      line
        .replace(/<\/?(?:b|i|em|strong|sub|sup|span)(?:\s[^<>]*)?>/gi, '')
        .replace(/&(#?\w+);/g, (whole, name: string) => ENTITIES[name] ?? whole),
    );
  return { lines, bold };
}

/** Bold letters are about this much wider than plain ones. */
const BOLD = 1.06;

/** Width of one line in pixels; a letter that the typeface lacks counts as a wide one. */
export function widthOf(text: string, size: number, bold = false): number {
  let width = 0;
  for (const letter of text.normalize('NFC')) width += lookup(letter) ?? UNKNOWN;
  return (width / 1000) * size * (bold ? BOLD : 1);
}

const UNKNOWN = 700;

export const LINE_HEIGHT = 1.25;

/** From the middle of a line down to its base line, as a share of the size. */
export const MIDDLE = 0.35;

export function widest(lines: readonly string[], size: number): number {
  return lines.reduce((most, line) => Math.max(most, widthOf(line, size)), 0);
}

/** Breaks a line at spaces so that no part is wider than asked, where words allow it. */
export function broken(text: string, size: number, width: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && widthOf(`${last} ${word}`, size) <= width)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
