import { WIDTHS } from './widths.ts';

const widths = new Map(
  WIDTHS.flatMap(([width, letters]) => [...letters].map((letter) => [letter, width] as const)),
);

/** Advance width of a letter in thousandths of the type size; nothing where the typeface lacks it. */
export function lookup(letter: string): number | undefined {
  return widths.get(letter);
}
