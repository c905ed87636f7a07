import { line, type Piece, type Point, type Schema } from './drawing.ts';

const MESH = 22;
const WIDTH = 4;

/** Meshes of one element: sides run from knot to knot, and every knot holds the row above. */
export function knottedNet(): Schema {
  const rows = 6;
  const columns = 8;
  const knots: Point[] = [];
  const pieces: Piece[] = [];
  for (let row = 0; row <= rows; row += 1)
    for (let column = -1; column <= columns; column += 1) {
      if ((row + column) % 2 !== 0) continue;
      const knot: Point = [MESH * column, MESH * row];
      knots.push(knot);
      const tone = row % 2 === 0 ? 'active' : 'second';
      pieces.push(line(knot, [knot[0] - MESH, knot[1] + MESH], tone, WIDTH));
      pieces.push(line(knot, [knot[0] + MESH, knot[1] + MESH], tone, WIDTH));
    }
  const tied = knots.flatMap(([x, y]): Piece[] => [
    { ...line([x - 3, y], [x + 3, y], 'active', 8), round: true },
    { ...line([x - 2, y + 2.5], [x + 2, y - 2.5], 'second', 2.5), round: true },
  ]);
  return {
    pieces: [...pieces, ...tied],
    box: { x: 0, y: -8, width: MESH * (columns - 1), height: MESH * rows + 16 },
    says: 'One element forms open meshes; a knot fixes each to the row above.',
  };
}
