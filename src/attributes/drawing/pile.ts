import type { Piece, Point } from './drawing.ts';

/** A tuft that hangs out of a row towards the viewer, `length` long. */
export function tuft([x, y]: Point, length: number): Piece {
  return {
    points: [
      [x, y],
      [x + 1, y + 0.3 * length],
      [x - 3, y + 0.6 * length],
      [x + 3, y + length],
    ],
    tone: 'extra',
    width: 5,
    round: true,
  };
}
