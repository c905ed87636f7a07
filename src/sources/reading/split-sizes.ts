import type { AttributeDefinition } from '../../attributes/definition.ts';
import type { CellContext } from '../../cells/context.ts';
import { quote } from '../../cells/notes.ts';
import { severalPieces } from '../../cells/several-pieces.ts';
import { type SizeWords, sizeWords } from '../../cells/size-words.ts';
import { type PartedCell, splitCell } from '../../cells/split-cell.ts';
import { convert, knownUnit, unitDimension } from '../../cells/units.ts';
import { greatest } from '../../numerics/foundation/lists.ts';
import type { SourceProfile } from '../profile/profile.ts';

/** Cells that hold the sizes of a find: of one piece, or of several. */

/** What the profile says of cells with several pieces. */
export interface PieceHabit {
  readonly keep: NonNullable<SourceProfile['pieces']>;
  /** False while nobody has decided, and the largest is read with a flag. */
  readonly decided: boolean;
}

export const pieceHabit = ({ pieces }: SourceProfile): PieceHabit => ({
  keep: pieces ?? 'largest',
  decided: pieces !== undefined,
});

/** Whether an attribute is a size of the find itself: its length, not the diameter of a thread. */
export function isSize({ block, unit }: AttributeDefinition): boolean {
  return block === 'find' && unit !== undefined && unitDimension(unit) === 'length';
}

export function withSizeWords(text: string, sizes: PieceHabit | null): SizeWords {
  return sizes === null ? { text, each: '', why: '' } : sizeWords(text);
}

export function eachWith(word: string, parts: readonly string[]): readonly string[] {
  return word === '' ? parts : parts.map((part) => `${part} ${word}`);
}

export interface PickedPiece {
  /** False where the cell says more than sizes, so that no decision about pieces helps. */
  readonly listed: boolean;
  /** The piece that is read, taken apart; null where none is. */
  readonly split: PartedCell | null;
  readonly why: string;
  readonly level: 'read' | 'flagged';
}

/** The piece whose sizes stand for the row, since a row is one fragment; null where the cell lists no pieces. */
export function pickPiece(text: string, habit: PieceHabit, context: CellContext): PickedPiece | null {
  const found = severalPieces(text);
  const splits = found?.pieces.map((piece) => splitCell(piece, context));
  const whole = splits?.filter((split) => split !== null) ?? [];
  if (found === null || whole.length !== found.pieces.length) {
    const sizes = text.match(PAIR_OF_SIZES)?.length ?? 0;
    return sizes > 1 ? { listed: false, split: null, why: UNSURE, level: 'flagged' } : null;
  }
  const count = whole.length;
  const stated =
    found.stated === undefined || found.stated === count
      ? ''
      : `; the cell says that there are ${found.stated}`;
  if (habit.keep === 'unread') {
    const why = `The cell holds the sizes of ${count} pieces; they are left unread, as the profile says.`;
    return { listed: true, split: null, why, level: 'read' };
  }
  const kept = habit.keep === 'first' ? 0 : largest(whole, context);
  const others = found.pieces.filter((_, at) => at !== kept).map(quote);
  const why =
    `The cell holds the sizes of ${count} pieces; the ${habit.keep} is read, ${quote(found.pieces[kept]!)}, ` +
    `and ${others.join(', ')} ${others.length === 1 ? 'stands' : 'stand'} here only${stated}`;
  const mended = habit.decided ? why : `${why} (say in the profile which one to keep: "pieces")`;
  const level = habit.decided && stated === '' ? 'read' : 'flagged';
  return { listed: true, split: whole[kept]!, why: mended, level };
}

const PAIR_OF_SIZES = /\d[\d.,+–-]*\s*(?:mm|cm|m)?\s*[x×]\s*[<>c.a ]*\d/giu;
const UNSURE =
  'The cell holds the sizes of several pieces and other words besides, and a row can hold one; give each piece a row of its own.';

/** Position of the piece of which the first two sizes make the greatest area; the first of equal ones. */
function largest(splits: readonly PartedCell[], context: CellContext): number {
  const areas = splits.map(({ parts }) =>
    parts.slice(0, 2).reduce((area, part) => area * sizeOf(part, context), 1),
  );
  return areas.indexOf(greatest(areas));
}

/** Upper end of one size in mm; in whatever unit the column has where the part names none. */
function sizeOf(part: string, context: CellContext): number {
  const numbers = part.match(/\d+(?:[.,]\d+)?/gu) ?? [];
  const value = Number((numbers.at(-1) ?? '').replace(',', '.'));
  const unit = knownUnit(/[^\d.,\s]*\.?$/u.exec(part)?.[0] ?? '') ?? context.unit;
  if (unit === undefined || unitDimension(unit) !== 'length') return value;
  return convert([value, value], unit, 'mm')[1];
}
