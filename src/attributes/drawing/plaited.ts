import type { Point, Schema } from './drawing.ts';
import type { Interlacing } from './interlacing.ts';
import { interlaced } from './woven.ts';

/** All elements are active and run aslant to the edges: the interlacing turned by an eighth, its middle shown. */
export function plaited(over: Interlacing): Schema {
  const look = { width: 16, paired: { rows: false, columns: false }, pile: false };
  const { pieces, box } = interlaced(over, look, ['active', 'second']);
  const half = Math.sqrt(0.5);
  const middle: Point = [box.x + box.width / 2, box.y + box.height / 2];
  const turned = ([x, y]: Point): Point => {
    const [dx, dy] = [x - middle[0], y - middle[1]];
    return [half * (dx - dy), half * (dx + dy)];
  };
  const side = half * box.width;
  return {
    pieces: pieces.map((piece) => ({ ...piece, points: piece.points.map(turned) })),
    box: { x: -side / 2, y: -side / 2, width: side, height: side },
    says: '',
  };
}
