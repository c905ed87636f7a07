import { foldText, splitWords } from './folding.ts';
import type { Wording } from './likeness.ts';

/** Headers and terms written in short: "Obj.-Nr.", "Fadendurchm. Kette", "Row dist.", "Weidenb.". */

/** One word of a short wording. */
interface Piece {
  readonly letters: string;
  /** A point ends it: whoever wrote it says that letters are left out. */
  readonly cut: boolean;
}

/** A known wording as far as it is looked at here. */
export interface Whole {
  readonly via: string;
  readonly wording: Wording;
}

/** The known wordings that a text may be short for, and how sure that is. */
export interface Abbreviated<T extends Whole> {
  readonly wholes: readonly T[];
  /** Every word that is cut short ends in a point, and not one word alone. */
  readonly marked: boolean;
}

/** Fewer letters before a point, or without one, may begin anything. */
const FEWEST_CUT = 2;
const FEWEST_UNMARKED = 3;
/** A word that stands alone says more of itself. */
const FEWEST_ALONE = 3;
const FEWEST_ALONE_UNMARKED = 6;
const MOST_PIECES = 5;

/**
 * Known wordings of which each word begins as the word of the text at its place does, at least one of them cut
 * short. A compound may be cut at any of its parts: "Reihen-Abst." and "Reihenabst." both begin "Reihenabstand".
 *
 * @param parts words with which a part of a compound may begin.
 */
export function abbreviatedFrom<T extends Whole>(
  text: string,
  all: readonly T[],
  parts: ReadonlySet<string>,
): Abbreviated<T> | null {
  const pieces = piecesOf(text);
  const [first] = pieces;
  if (first === undefined || pieces.length > MOST_PIECES) return null;
  if (pieces.length === 1 && first.letters.length < (first.cut ? FEWEST_ALONE : FEWEST_ALONE_UNMARKED))
    return null;
  const start = first.letters;
  const meeting = (mayStand: MayStand, heard: (word: string) => boolean) =>
    all.filter(({ wording }) => {
      if (!wording.compact.startsWith(start.slice(0, 1))) return false;
      const met = begins(pieces, wording.words, mayStand, heard) ?? beginsParts(pieces, wording, parts);
      return met !== null && met.cut > 0;
    });
  const begun = meeting(beginsIt, () => true);
  const wholes = begun.length > 0 ? begun : meeting(contracts, (word) => !BETWEEN.has(word));
  if (wholes.length === 0) return null;
  // An unmarked word that is no known word by itself was cut without saying so.
  const marked =
    begun.length > 0 && pieces.length > 1 && pieces.every(({ letters, cut }) => cut || parts.has(letters));
  return { wholes: shortest(wholes), marked };
}

/** "Mat." is short for "material" before it is for "material thickness" in one word. */
const shortest = <T extends Whole>(wholes: readonly T[]): readonly T[] =>
  wholes.filter(
    ({ wording: { compact } }) =>
      !wholes.some(({ wording }) => wording.compact !== compact && compact.startsWith(wording.compact)),
  );

function piecesOf(text: string): readonly Piece[] {
  return [...splitWords(text).matchAll(/([\p{L}\p{M}]+|\d+)(\.?)/gu)]
    .map(([, word, point]) => ({ letters: foldText(word!), cut: point === '.' }))
    .filter(({ letters }) => letters !== '');
}

type MayStand = (piece: Piece, word: string) => boolean;
const beginsIt: MayStand = (piece, word) => word.startsWith(piece.letters) && mayBeCut(piece);

/** "ct." for "count", "lgth." for "length": its first and last letter, and between them letters in their order. */
const contracts: MayStand = (piece, word) => {
  const { letters, cut } = piece;
  if (beginsIt(piece, word)) return true;
  if (!cut || letters.length < FEWEST_CUT || letters[0] !== word[0] || letters.at(-1) !== word.at(-1))
    return false;
  let at = 0;
  for (const letter of word) if (letter === letters[at]) at++;
  return at === letters.length;
};

/** Between what was measured and of what; left out as often as not. */
const BETWEEN: ReadonlySet<string> = new Set(
  'entre tra fra between zwischen mellem mellom across'.split(' '),
);

/** Word by word; null where one is not what its piece stands for. */
function begins(
  pieces: readonly Piece[],
  words: readonly string[],
  mayStand: MayStand,
  heard: (word: string) => boolean,
): { readonly cut: number } | null {
  const own = pieces.filter(({ letters }) => heard(letters));
  const others = words.filter(heard);
  if (own.length !== others.length || own.length === 0) return null;
  let cut = 0;
  for (const [at, piece] of own.entries()) {
    const word = others[at]!;
    if (piece.letters === word) continue;
    if (!mayStand(piece, word)) return null;
    cut++;
  }
  return { cut };
}

/** Across the parts of compounds, however they are joined. */
function beginsParts(
  pieces: readonly Piece[],
  { compact, words }: Wording,
  parts: ReadonlySet<string>,
): { readonly cut: number } | null {
  const reaches = compact.length - (words.at(-1)?.length ?? 0);
  // "Obj." begins "object no", and is not short for it; "Rowdist" is for "row distance".
  const [only] = pieces;
  if (words.length > 1 && (pieces.length > 1 || only!.letters.length <= reaches)) return null;
  const from = (at: number, next: number): { readonly cut: number } | null => {
    if (next === pieces.length) return at === compact.length ? { cut: 0 } : null;
    const piece = pieces[next]!;
    if (!compact.startsWith(piece.letters, at)) return null;
    const end = at + piece.letters.length;
    const whole = from(end, next + 1);
    if (whole !== null) return whole;
    if (!mayBeCut(piece)) return null;
    if (next === pieces.length - 1) return { cut: 1 };
    for (let later = end + 1; later < compact.length; later++) {
      if (!parts.has(compact.slice(later))) continue;
      const rest = from(later, next + 1);
      if (rest !== null) return { cut: rest.cut + 1 };
    }
    return null;
  };
  return from(0, 0);
}

const mayBeCut = ({ letters, cut }: Piece): boolean =>
  !/\d/.test(letters) && letters.length >= (cut ? FEWEST_CUT : FEWEST_UNMARKED);
