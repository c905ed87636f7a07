import { broken } from '../drawing/lettering.ts';

/** CSS pixels of a millimetre. */
export const MM = 96 / 25.4;

/** Pixels of a point of type. */
const PT = 96 / 72;

/** How texts of the brief are set: size in points, line height, measure in millimetres. */
export const SET = {
  title: { size: 16, line: 1.2, measure: 174 },
  heading: { size: 10.5, line: 1.25, measure: 174 },
  text: { size: 8.5, line: 1.35, measure: 174 },
  answer: { size: 9.5, line: 1.3, measure: 84 },
  beside: { size: 8.5, line: 1.35, measure: 80 },
  caption: { size: 7.5, line: 1.25, measure: 84 },
} as const;

/** Pixels that a text takes, reckoned from the widths of letters; lines of a browser break a little earlier. */
export function linesHigh(text: string, set: keyof typeof SET): number {
  if (text === '') return 0;
  const { size, line, measure } = SET[set];
  return broken(text, size * PT, measure * MM * SAFE).length * size * PT * line;
}

const SAFE = 0.96;
