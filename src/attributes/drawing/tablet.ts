import { line, type Piece, type Schema } from './drawing.ts';

const CORD = 22;
const TURN = 16;

/** Cords of warp, twisted by tablets that are threaded by turns from either side; the weft shows at the edges only. */
export function tabletWoven(): Schema {
  const cords = 6;
  const turns = 9;
  const wefts = Array.from({ length: turns }, (_, turn) =>
    line([-CORD, TURN * turn], [CORD * cords, TURN * turn], 'passive', 6),
  );
  const twists: Piece[] = [];
  for (let cord = 0; cord < cords; cord += 1) {
    // The upright stroke of S falls to the right, that of Z rises to the right.
    const lean = cord % 2 === 0 ? 1 : -1;
    for (let turn = 0; turn <= turns; turn += 1) {
      const y = TURN * (turn - 0.5);
      const x = CORD * cord;
      const tone = turn % 2 === 0 ? 'active' : 'second';
      twists.push({ ...line([x - 5 * lean, y - 8], [x + 5 * lean, y + 8], tone, 11), round: true });
    }
  }
  return {
    pieces: [...wefts, ...twists],
    box: { x: -CORD, y: -TURN, width: CORD * (cords + 1), height: TURN * (turns + 1) },
    says: 'Each tablet twists its warps to a cord, here S and Z by turns; the weft passes through the cords, hidden but for its turns at the edges.',
  };
}
