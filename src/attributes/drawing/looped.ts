import type { Piece, Point, Schema } from './drawing.ts';

export interface LoopedLook {
  /** Middle to middle of two loops of a row. */
  readonly pitch: number;
  /** Half the foot of a loop, and how far its sides reach out: wide makes the loop cross itself. */
  readonly foot: number;
  readonly reach: readonly [x: number, y: number];
  /** How deep the bight between two loops hangs, as a share of the upward reach. */
  readonly sag: number;
}

/** Loops side by side. */
export const LOOPING: LoopedLook = { pitch: 34, foot: 6, reach: [28, 32], sag: 0.4 };
/** The same engagement with long sides: meshes. */
export const MESHES: LoopedLook = { pitch: 48, foot: 5, reach: [22, 34], sag: 0.7 };

const WIDTH = 4;

/** How far below the row above a row lies, so that the tops of its loops just clear the bights they hold. */
function riseOf({ reach: [, up], sag }: LoopedLook): number {
  return 0.75 * up * (1 + sag) - 2.2 * WIDTH;
}

/**
 * One element, row by row: it rises before the bight above, turns back behind it, crosses itself and goes on to the
 * next bight. Rows are shifted by half a loop.
 */
export function looped(look: LoopedLook): Schema {
  const rows = 4;
  const columns = 5;
  const rise = riseOf(look);
  const layers: (readonly Piece[])[] = [];
  let above: readonly Piece[] = [topCord(look, columns)];
  for (let row = 1; row <= rows; row += 1) {
    const tone = row % 2 === 0 ? 'active' : 'second';
    const own = Array.from(
      { length: columns + 2 },
      (_, column): Point => [look.pitch * (column - 1 + (row % 2 === 0 ? 0.5 : 0)), rise * row],
    ).map((middle) => loopOf(middle, look, tone));
    const bights = own.map(({ bight }) => bight);
    // The bight above covers what turns back behind it, and the rising side covers the bight.
    layers.push(
      bights,
      own.map(({ falling }) => falling),
      above,
      own.map(({ rising }) => rising),
    );
    above = bights;
  }
  const box = {
    x: -0.2 * look.pitch,
    y: 0,
    width: (columns - 0.6) * look.pitch,
    height: rise * (rows + 1),
  };
  return {
    pieces: layers.flat(),
    box,
    says: 'One element: each loop rises before the bight of the row above, passes behind it and crosses itself.',
  };
}

function loopOf(
  [x, y]: Point,
  { pitch, foot, reach: [out, up], sag }: LoopedLook,
  tone: 'active' | 'second',
) {
  const start: Point = [x - foot, y];
  const end: Point = [x + foot, y];
  const a: Point = [start[0] + out, y - up];
  const b: Point = [end[0] - out, y - up];
  // One cubic cut at its middle (de Casteljau), so that its sides can be painted apart.
  const mid = (p: Point, q: Point): Point => [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2];
  const [p, q, r] = [mid(start, a), mid(a, b), mid(b, end)];
  const [s, t] = [mid(p, q), mid(q, r)];
  const top = mid(s, t);
  const next: Point = [x + pitch - foot, y];
  const slope = sag * up;
  const ease = (out / up) * slope;
  return {
    rising: { points: [start, p, s, top], tone, width: WIDTH } satisfies Piece,
    falling: { points: [top, t, r, end], tone, width: WIDTH } satisfies Piece,
    bight: {
      points: [end, [end[0] + ease, y + slope], [next[0] - ease, y + slope], next],
      tone,
      width: WIDTH,
    } satisfies Piece,
  };
}

/** The cord on which the first row hangs. */
function topCord(look: LoopedLook, columns: number): Piece {
  const y = 0.75 * look.reach[1] * look.sag;
  return {
    points: [
      [-look.pitch, y],
      [look.pitch * (columns + 1), y],
    ],
    tone: 'passive',
    width: WIDTH + 2,
  };
}
