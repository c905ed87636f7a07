import { line, type Piece, type Schema } from './drawing.ts';

const COIL = 26;
const BETWEEN = 20;

/** A foundation coil lies passive; the sewing element wraps it and takes hold of the coil below. */
export function coiled(): Schema {
  const coils = 4;
  const stitches = 9;
  const right = BETWEEN * stitches;
  const foundation = Array.from({ length: coils }, (_, coil) =>
    line([-20, COIL * coil], [right, COIL * coil], 'passive', COIL - 5),
  );
  const sewn: Piece[] = [];
  for (let coil = 0; coil < coils; coil += 1)
    for (let stitch = 0; stitch < stitches; stitch += 1) {
      const x = BETWEEN * (stitch + (coil % 2 === 0 ? 0 : 0.5));
      const y = COIL * coil;
      sewn.push({ ...line([x + 2, y - 10], [x - 2, y + 15], 'active', 6), round: true });
    }
  return {
    pieces: [...foundation, ...sewn],
    box: { x: -14, y: -20, width: right + 8, height: COIL * coils + 12 },
    says: 'The active element passes over the foundation coil, takes hold of the coil below and comes back behind.',
  };
}
