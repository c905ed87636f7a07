import { broken } from './drawing/lettering.ts';

/** CSS pixels of a millimetre. */
export const MM = 96 / 25.4;

/** Pixels of a point of type. */
const PT = 96 / 72;

/** How texts of a printed page are set: size in points, line height, measure in millimetres. */
export const SET = {
  title: { size: 16, line: 1.2, measure: 174 },
  heading: { size: 10.5, line: 1.25, measure: 174 },
  text: { size: 8.5, line: 1.35, measure: 174 },
  point: { size: 8.5, line: 1.35, measure: 170 },
  answer: { size: 9.5, line: 1.3, measure: 84 },
  beside: { size: 8.5, line: 1.35, measure: 80.5 },
  turn: { size: 8.5, line: 1.35, measure: 77.5 },
  caption: { size: 7.5, line: 1.25, measure: 84 },
  broad: { size: 7.5, line: 1.25, measure: 174 },
} as const;

export type SetAs = keyof typeof SET;

/** Pixels that a text takes, reckoned from the widths of letters; lines of a browser break a little earlier. */
export function linesHigh(text: string, set: SetAs): number {
  if (text === '') return 0;
  const { size, line, measure } = SET[set];
  return broken(text, size * PT, measure * MM * SAFE).length * size * PT * line;
}

/** Pixels of one line. */
export function lineHigh(set: SetAs): number {
  return SET[set].size * PT * SET[set].line;
}

const SAFE = 0.96;
