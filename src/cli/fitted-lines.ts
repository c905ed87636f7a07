import { tame, wrap } from './text-table.ts';

/** Longer lines are hard to read, however wide the terminal. */
const WIDEST = 100;

export function line(text: string, width: number): string {
  return wrap(tame(text), Math.min(width, WIDEST)).join('\n');
}

/**
 * As much of a text as some lines hold, cut off between its clauses and marked so; the tail follows. A text
 * without such a place, outside of brackets, stands whole.
 *
 * @param from nothing before this place is cut off.
 */
export function inLines(text: string, most: number, tail: string, width: number, from = 0): string {
  const wide = Math.min(width, WIDEST) - 4;
  const fits = (some: string) => wrap(tame(`${some}${tail}`), wide).length <= most;
  if (fits(text)) return `${text}${tail}`;
  for (const between of [/; /g, /[;,:] /g]) {
    const places = [...text.matchAll(between)].map(({ index }) => index).reverse();
    const at = places.find(
      (place) => place > from && fits(`${text.slice(0, place)} …`) && isClosed(text.slice(0, place)),
    );
    if (at !== undefined) return `${text.slice(0, at)} …${tail}`;
  }
  return `${text}${tail}`;
}

/** The first lines of a text, cut off between words. */
export function firstWords(text: string, most: number, width: number): string {
  const wide = Math.min(width, WIDEST) - 4;
  const lines = wrap(tame(text), wide);
  if (lines.length <= most) return text;
  const kept = lines.slice(0, most).join(' ').split(' ');
  while (kept.length > 1 && wrap(`${kept.join(' ')} …`, wide).length > most) kept.pop();
  return `${kept.join(' ')} …`;
}

/** Whether no bracket stands open. */
function isClosed(text: string): boolean {
  return text.split('(').length === text.split(')').length;
}

/** A line of a list: its mark, then the text, further lines under the text. */
export function item(mark: string, text: string, width: number): string {
  const lines = wrap(tame(text), Math.min(width, WIDEST) - 4);
  return lines.map((part, place) => `${place === 0 ? `  ${mark} ` : '    '}${part}`).join('\n');
}
