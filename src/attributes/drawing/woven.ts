import { line, type Piece, quarterTurn, type Schema, type Tone } from './drawing.ts';
import { type Interlacing, runsOver } from './interlacing.ts';
import { tuft } from './pile.ts';

const STEP = 20;

export interface WovenLook {
  /** Width of an element in steps of 20: what is left is the opening between elements. */
  readonly width: number;
  /** Elements of a system that lie together in twos. */
  readonly paired: { readonly rows: boolean; readonly columns: boolean };
  readonly pile: boolean;
}

/** Both systems seen: rows across, columns upright; a column is painted again wherever it passes over. */
export function interlaced(
  over: Interlacing,
  look: WovenLook,
  tones: readonly [rows: Tone, columns: Tone],
): Schema {
  const columns = over[0]?.length ?? 0;
  const at = (index: number, paired: boolean) => STEP * index + (paired ? (index % 2 === 0 ? 2.5 : -2.5) : 0);
  const x = (column: number) => at(column, look.paired.columns);
  const y = (row: number) => at(row, look.paired.rows);
  const end = { x: STEP * (columns - 0.2), y: STEP * (over.length - 0.2) };
  const start = -0.8 * STEP;
  const reach = look.width / 2 + 1.5;
  const [rowTone, columnTone] = tones;
  const pieces: Piece[] = [];
  for (let column = 0; column < columns; column += 1)
    pieces.push(line([x(column), start], [x(column), end.y], columnTone, look.width));
  over.forEach((_, row) => {
    pieces.push(line([start, y(row)], [end.x, y(row)], rowTone, look.width));
  });
  over.forEach((cells, row) => {
    cells.forEach((rowOver, column) => {
      if (!rowOver)
        pieces.push(line([x(column), y(row) - reach], [x(column), y(row) + reach], columnTone, look.width));
    });
  });
  if (look.pile)
    over.forEach((cells, row) => {
      if (row % 2 === 1) return;
      cells.forEach((rowOver, column) => {
        if (rowOver) pieces.push(tuft([x(column), y(row)], 1.4 * STEP));
      });
    });
  return { pieces, box: { x: start, y: start, width: end.x - start, height: end.y - start }, says: '' };
}

/** The rows hide the columns: each float of a row is a bead, packed until nothing shows between. */
export function weftFaced(over: Interlacing, tones: readonly [rows: Tone, columns: Tone]): Schema {
  const columns = over[0]?.length ?? 0;
  const [rowTone, columnTone] = tones;
  const pitch = STEP / 2;
  const bottom = pitch * (over.length - 1);
  const pieces: Piece[] = [];
  for (let column = 0; column < columns; column += 1)
    pieces.push(line([STEP * column, -2 * STEP], [STEP * column, bottom + 2 * STEP], columnTone, 8));
  over.forEach((_, row) => {
    pieces.push(line([-0.8 * STEP, pitch * row], [STEP * (columns - 0.2), pitch * row], rowTone, pitch));
  });
  over.forEach((cells, row) => {
    for (const [first, last] of runsOver(cells)) {
      const [from, to] = [STEP * (first - 0.3), STEP * (last + 0.3)];
      pieces.push({ ...line([from, pitch * row], [to, pitch * row], rowTone, 1.5 * pitch), round: true });
    }
  });
  const box = { x: -STEP, y: -1.6 * STEP, width: STEP * (columns + 1), height: bottom + 3.2 * STEP };
  return { pieces, box, says: '' };
}

/** The columns hide the rows: the weft-faced picture, turned by a quarter, with the systems' parts exchanged. */
export function warpFaced(over: Interlacing, tones: readonly [rows: Tone, columns: Tone]): Schema {
  const [rowTone, columnTone] = tones;
  return quarterTurn(weftFaced(over, [columnTone, rowTone]));
}
