import { line, type Piece, type Point, type Schema, type Tone } from './drawing.ts';
import { tuft } from './pile.ts';

const STEP = 20;
const PASSIVE = 9;
const ACTIVE = 6;
/** How far a turn climbs from the middle of its row. */
const CLIMB = 6;
export const ROW_HEIGHT = 2 * CLIMB + ACTIVE;

/** Middle to middle of two rows, in heights of a row: close rows touch. */
export const SPACING = { close: 1, 'semi-open': 1.6, open: 3 } as const;

export type Slant = 'S' | 'Z';

export interface TwinedLook {
  readonly spacing: keyof typeof SPACING;
  /** Passives in one turn: 1, or 2 where pairs alternate from row to row (diagonal). */
  readonly enclosed: 1 | 2;
  /** Slant of each row, from the top; repeats. */
  readonly slants: readonly Slant[];
  readonly pile: boolean;
}

/**
 * Two strands twist about each other and enclose the passives, rows lying across. The slant is that of the row held
 * upright, so a turn of an S row leans like the stroke of Z as long as the row lies across, and the other way round.
 */
export function twined(look: TwinedLook): Schema {
  const columns = 8;
  const rows = look.spacing === 'open' ? 3 : look.spacing === 'close' ? 6 : 4;
  const pitch = SPACING[look.spacing] * ROW_HEIGHT;
  const bottom = pitch * (rows - 1);
  const behind: Piece[] = [];
  const before: Piece[] = [];
  const tufts: Piece[] = [];
  for (let row = 0; row < rows; row += 1) {
    const y = pitch * row;
    const slant = look.slants[row % look.slants.length] ?? 'S';
    turnsOf(row, columns, look.enclosed).forEach(([from, to], turn) => {
      const tone: Tone = turn % 2 === 0 ? 'active' : 'second';
      const other: Tone = turn % 2 === 0 ? 'second' : 'active';
      const rise = slant === 'S' ? CLIMB : -CLIMB;
      before.push(turnPiece([from, y + rise], [to, y - rise], tone));
      behind.push(turnPiece([from, y - rise], [to, y + rise], other));
      if (look.pile && turn % 2 === 0) tufts.push(tuft([(from + to) / 2, y], ROW_HEIGHT * 1.3));
    });
  }
  const ends = 1.6 * STEP;
  const passives = Array.from({ length: columns }, (_, column) =>
    line([STEP * column, -ends], [STEP * column, bottom + ends], 'passive', PASSIVE),
  );
  return {
    pieces: [...behind, ...passives, ...before, ...tufts],
    box: { x: -STEP, y: -ends, width: STEP * (columns + 1), height: bottom + 2 * ends },
    says: `Two active strands twist about each other; each turn encloses ${look.enclosed === 1 ? 'one passive element' : 'two passive elements, and the next row divides the pairs'}. One strand passes before, the other behind, and they change places at every turn.`,
  };
}

/** Where turns begin and end; in a diagonal every second row is shifted by one passive. */
function turnsOf(
  row: number,
  columns: number,
  enclosed: 1 | 2,
): readonly (readonly [from: number, to: number])[] {
  const shift = enclosed === 2 && row % 2 === 1 ? 1 : 0;
  const turns: [number, number][] = [];
  for (let first = -shift; first < columns; first += enclosed) {
    const from = Math.max(first, 0) - 0.5;
    const to = Math.min(first + enclosed, columns) - 0.5;
    turns.push([STEP * from, STEP * to]);
  }
  return turns;
}

/** Level at both ends, where the strands change places, and climbing over the passives between. */
function turnPiece([x0, y0]: Point, [x1, y1]: Point, tone: Tone): Piece {
  const ease = 0.35 * (x1 - x0);
  return {
    points: [
      [x0, y0],
      [x0 + ease, y0],
      [x1 - ease, y1],
      [x1, y1],
    ],
    tone,
    width: ACTIVE,
    round: true,
  };
}
