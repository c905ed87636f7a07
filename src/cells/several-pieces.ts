import { plainSigns } from './text.ts';

/** The sizes of one of several pieces that a cell lists: its text, made whole. */
export interface Pieces {
  /** One text a piece, each with the unit that holds for it: "12 x 8 cm". */
  readonly pieces: readonly string[];
  /** How many pieces the cell says there are, where it says so. */
  readonly stated: number | undefined;
}

const COUNT_WORDS =
  '(?:frag(?:ment(?:e|s|er|i|os|o)?|m|s)?|frgm?|pieces?|pcs|bits|st(?:ü|u)cke?|teile|morceaux|pi(?:è|e)ces|pezzi|frammenti|trozos|piezas|stykker|stykke)\\.?';
const COUNTED = new RegExp(`^(\\d{1,3}) ?${COUNT_WORDS} ?[:,]? ?(?=\\S)`, 'iu');
/** "2 (12 x 8; 5 x 3)" */
const COUNTED_BRACKET = /^(\d{1,3}) ?\(([^()]*)\)$/u;
/** "b)", "(2)", "2:" before a size begins a piece, with or without a sign between. */
const LABEL_AHEAD = /(?<=\S) +(?=(?:\(?[a-h]\)|\(\d\)|\d[:)]) *\d)/giu;
const BETWEEN = /\s*[;\n+&]\s*|\s*,\s+|\s+(?:and|und|et|e|y|og)\s+/u;
const LABEL = /^(?:\(?([a-h])\)|([a-h])[.:]? (?=\d)|\(?(\d)[:)]) */iu;
const SIZES = /^(?:\D{0,4}\d[^;\n]*?) ?[x×] ?\D{0,4}\d/u;
/** A unit at the end holds for all the pieces before it that have none. */
const UNIT = /\d ?(mm|cm|dm|m)\.?$/u;

/**
 * Parts a cell that lists the sizes of several pieces; null where it does not, or says something that is not
 * a size besides.
 *
 * - "12 x 8; 5 x 3 cm", "12 x 8 und 5 x 3", one size a line
 * - "a) 12 x 8 cm b) 5 x 3 cm", "(1) 12 x 8 (2) 5 x 3": labels in their order
 * - "2 pieces: 12 x 8, 5 x 3", "2 (12 x 8; 5 x 3)"
 */
export function severalPieces(text: string): Pieces | null {
  const plain = plainSigns(text);
  const bracket = COUNTED_BRACKET.exec(plain);
  const counted = bracket === null ? COUNTED.exec(plain) : null;
  const list = bracket?.[2] ?? (counted === null ? plain : plain.slice(counted[0].length));
  const stated = bracket?.[1] ?? counted?.[1];
  const parts = list
    .replace(LABEL_AHEAD, '; ')
    .split(BETWEEN)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  if (parts.length < 2) return null;
  const sizes = parts.map(withoutLabel);
  if (sizes.some((size) => size === null || !SIZES.test(size))) return null;
  const unit = UNIT.exec(sizes.at(-1) ?? '')?.[1];
  const pieces = sizes.map((size) =>
    unit === undefined || UNIT.test(size ?? '') ? size : `${size} ${unit}`,
  );
  return {
    pieces: pieces.filter((piece) => piece !== null),
    stated: stated === undefined ? undefined : Number(stated),
  };
}

/** Takes "b)" off the second part, and so on; null where a label is out of its order. */
function withoutLabel(part: string, at: number): string | null {
  const found = LABEL.exec(part);
  if (found === null) return part;
  const letter = found[1] ?? found[2];
  const place = letter === undefined ? Number(found[3]) - 1 : letter.toLowerCase().charCodeAt(0) - 97;
  // "b 8 x l 12": a letter out of order may be a breadth.
  if (place !== at) return letter !== undefined && found[2] !== undefined ? part : null;
  return part.slice(found[0].length);
}
