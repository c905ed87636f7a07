import type { CellContext } from './context.ts';
import { labelledPair, namedInFront } from './labelled-pairs.ts';
import { flagged, quote, readAs } from './notes.ts';
import type { Note } from './reading.ts';
import { foldCell, plainSigns } from './text.ts';
import { COUNTED, knownUnit } from './units.ts';

/** A cell with several readings, taken apart in the order of the text. */
export interface PartedCell {
  readonly parts: readonly string[];
  readonly note: Note;
}

const FEET = `\\d+ ?(?:ft\\.?|foot|feet|') ?\\d+(?: \\d+/\\d+)? ?(?:in\\.?|inch(?:es)?|")`;
const NUMBER = "\\d+(?:[.,']\\d+)*(?:\\.(?!\\d))?(?: ?[½⅓⅔¼¾⅛⅜⅝⅞]| \\d+/\\d+)?|[½⅓⅔¼¾⅛⅜⅝⅞]";
const BEFORE = '(?:(?:c|ca|env|max|min|approx|aprox|omtr|circa|about|etwa|ungef|ung)\\.? ?|[~≈<>≤≥] ?)?';
const ABOUT = /^(?:(?:c|ca|env|approx|aprox|omtr|circa|about|etwa|ungef|ung)\.? ?|[~≈] ?)(?=\d)/iu;
const VALUE = `${BEFORE}(?:${FEET}|${NUMBER})(?: ?(?:-|to|bis|à|til|\\.\\.) ?${BEFORE}(?:${NUMBER}))?\\+?\\??`;
const SIDE = new RegExp(`^(${VALUE})(?: ?([SZIszi]\\d?[SZIszi]?\\??)(?![\\p{L}]))?(?: ?(.+))?$`, 'u');
const OVERALL = /^(?:overall|each|confirmed)[^:\n]{0,60}:+ ?/iu;
const LABEL =
  /^(?:(warp|kette|chaîne|chaine|ordito|urdimbre|trend|renning)|(weft|schuss|trame|trama|islæt|innslag)|h|w|l|b|d|br|t|ht|lg|wd|höhe|breite|länge|hauteur|largeur)\.?:? ?(?=[\d<>~≈c])/iu;
const LETTERS = /^([SZI]\??)( ?[/x×:] ?)([SZI](?: ?\(\?\)|\?)?)(?:( ?[/x×:] ?)([A-Z]))?$/iu;
const CODE = /^([<>≤≥~]? ?\d+(?:[.,](?:\d*|[Oo]))?)([A-Za-z])$/u;
const BRACKET = / ?[([]([^()[\]]*)[)\]]$/u;

/**
 * Parts a cell that holds the readings of several attributes; null where it holds one.
 *
 * - "14 x 12", "14×12", "14:12", "10/12 per cm", "0.5/0.8 mm" -> one part each, the unit with every part;
 *   the order of the text is kept.
 * - "47/38 per 2x2 cm" -> "47 per 2 cm", "38 per 2 cm": counts over the side of the field.
 * - "8-10 Z / 7 S" -> four parts: number, twist, number, twist.
 * - "Z/S", "Z/S/R" -> the letters.
 * - "8-10 x 6-7 (9 x 6.5)" -> "8-10 (9)", "6-7 (6.5)", flagged.
 * - "c. 12 x 8" -> "c. 12", "c. 8": a mark before the first holds for all that have none.
 * - "Schuss 10, Kette 12" -> "12", "10": parts that are called warp and weft come in that order.
 * - "14-12": descending, so two systems perhaps: parted and flagged. "12-14" is a range: null.
 * - "12-14 K, 10 S", "L 12 / B 8", "10 x ?", "z/?": see labelled-pairs.ts.
 * - "21.5K" -> number and code.
 *
 * Never throws.
 */
export function splitCell(text: string, context: CellContext): PartedCell | null {
  const whole = plainSigns(text);
  if (whole === '' || whole.length > 200) return null;
  // "13 x 10 fili/cm²": each system over one side of the square centimetre.
  const plain = namedInFront(whole).replace(
    /^(\d[^/²]*[x×] ?\d[^/²]*?)((?:\/ ?|(?:per|pro|je|par|al|por|pr\.) ?)(?:cm|mm|dm))[²2]$/iu,
    '$1$2',
  );
  if (context.missing !== undefined && Object.hasOwn(context.missing, text.trim())) return null;
  return (
    labelledPair(plain) ??
    letters(plain) ??
    numberAndCode(plain) ??
    lines(plain, context) ??
    descending(plain)
  );
}

function letters(plain: string): PartedCell | null {
  const found = LETTERS.exec(plain);
  if (found === null) return null;
  const parts = [found[1], found[3], found[5]].filter((part) => part !== undefined);
  const [one = '', other = ''] = parts;
  const mixed = (one === one.toUpperCase()) !== (other === other.toUpperCase());
  const note = mixed
    ? flagged('two-systems', 'letters of two cases: two systems, or singles and ply')
    : readAs('two-systems', `${parts.length} letters parted, the first for the first system`);
  return { parts, note };
}

function numberAndCode(plain: string): PartedCell | null {
  const found = CODE.exec(plain);
  if (found === null || knownUnit(found[2] ?? '') !== null) return null;
  const number = found[1] ?? '';
  const note = /[Oo]$|[.,]$/u.test(number)
    ? flagged('number-and-code', `${quote(plain)} parted into number and code; look at the number`)
    : readAs('number-and-code', `${quote(plain)} parted into number and code`);
  return { parts: [number, found[2] ?? ''], note };
}

/** Several lines may state one thing in two units; the metric one is taken where there is one. */
function lines(plain: string, context: CellContext): PartedCell | null {
  const all = plain
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
  const found = all.map((line) => systems(line, context));
  const first = found.find((split) => split !== null);
  if (first === undefined) return null;
  const metric = found.find((split, at) => split !== null && /\d ?(?:mm|cm|m)\.?$/u.test(all[at] ?? ''));
  const chosen = metric ?? first;
  if (chosen === null || all.length === 1) return chosen;
  // Two lines in one unit are two objects, not one in two units.
  const units = all
    .filter((_, at) => found[at] !== null)
    .map((line) => /[\d½¼¾]\s*(\p{L}*)\.?$/u.exec(line)?.[1] ?? '');
  if (new Set(units).size < units.length) return null;
  const same = found.every((split) => split?.parts.length === chosen.parts.length);
  return {
    parts: chosen.parts,
    note: flagged(
      'several-lines',
      `one of ${all.length} lines is read${same ? '' : '; the lines do not match'}`,
    ),
  };
}

function systems(line: string, context: CellContext): PartedCell | null {
  const bare = line.replace(OVERALL, '');
  const bracket = BRACKET.exec(bare);
  const main = bracket === null ? bare : bare.slice(0, bracket.index);
  const divided = divide(main);
  if (divided === null) return null;
  const inner = bracket === null ? null : divide(bracket[1] ?? '');
  if (bracket !== null && inner?.sides.length !== divided.sides.length) return null;
  const unit = divided.unit;
  const about = sharedAbout(divided.sides);
  const numbers = divided.sides.map((side, at) => {
    const feet = /\d ?(?:f|')/u.test(side.value);
    const own = [at === 0 ? side.value : `${about}${side.value}`, feet ? '' : (side.unit ?? unit)]
      .filter((part) => part !== '')
      .join(' ');
    const beside = inner?.sides[at];
    return beside === undefined
      ? own
      : `${own} (${[beside.value, beside.unit ?? inner?.unit ?? ''].filter((part) => part !== '').join(' ')})`;
  });
  const twisted = divided.sides.some(({ twist }) => twist !== '');
  const parts = twisted ? divided.sides.flatMap((side, at) => [numbers[at] ?? '', side.twist]) : numbers;
  const all = about === '' ? '' : '; what is said to be approximate holds for all of them';
  const many = `${quote(line)} parted into ${parts.length}, in the order of the text${all}`;
  if (inner !== null)
    return { parts, note: flagged('two-systems', `${many}; the bracket is taken as further values of each`) };
  if (divided.by === '/' && unit === '' && !twisted && context.unit === undefined) {
    return { parts, note: flagged('two-systems', `${many}; a slash may also part the ends of a range`) };
  }
  return { parts, note: readAs(divided.square ? 'per-square' : 'two-systems', many) };
}

/** "c. 12 x 8": the mark before the first holds for the others too, unless one of them has a sign of its own. */
function sharedAbout([first, ...others]: readonly Side[]): string {
  const mark = ABOUT.exec(first?.value ?? '')?.[0] ?? '';
  return others.every(({ value }) => /^[\d½⅓⅔¼¾⅛⅜⅝⅞]/u.test(value)) ? mark : '';
}

interface Side {
  readonly value: string;
  readonly twist: string;
  readonly unit: string | undefined;
  /** 1 for a part called warp, 2 for one called weft. */
  readonly system: 1 | 2 | undefined;
}

interface Divided {
  readonly sides: readonly Side[];
  readonly by: string;
  /** Unit behind the last part, which holds for all that have none. */
  readonly unit: string;
  readonly square: boolean;
}

const SEPARATORS: readonly (readonly [name: string, pattern: RegExp])[] = [
  ['x', /\s*(?:[x×*✕]|(?<=\s)(?:by|mal|zu)(?=\s))\s*(?=[\d<>~≈≤≥½¼¾chwlbdks])/iu],
  [':', /\s*:\s*(?=[\d<>~≈≤≥½¼¾]|(?:c|ca|circa)\.? ?\d)/u],
  ['/', /\s*\/\s*(?=[\d<>~≈≤≥½¼¾]|(?:c|ca|circa)\.? ?\d)/u],
  [';', /\s*[;,]\s+(?=\p{L}+\.?:? ?[\d<>~≈c])/iu],
];

function divide(text: string): Divided | null {
  // A field of 2x2 cm is the length of its side for each system.
  const field =
    /^(.*?\d) ?((?:per|pro|je|par|al|por|pr\.?|\/) ?)(\d+(?:[.,]\d+)?) ?[x×] ?\3 ?(\p{L}+)\.?$/u.exec(text);
  // "35/5 cm" is one count over 5 cm.
  if (/^\d[\d.,-]* ?\/ ?(?:1|2|5|10) ?(?:mm|cm|dm|in|inch)\.?$/iu.test(text)) return null;
  const per = /^(.*\d) ?\/ ?(mm|cm|dm|in|inch)\.?$/iu.exec(text);
  const body = field !== null ? (field[1] ?? '') : per !== null ? `${per[1]} per ${per[2]}` : text;
  for (const [by, pattern] of SEPARATORS) {
    const pieces = splitSides(body, by, pattern);
    if (pieces.length < 2 || pieces.length > 3) continue;
    const sides = pieces.map(readSide);
    if (sides.some((side) => side === null)) continue;
    const read = inOrder(sides.filter((side) => side !== null));
    const last = sides.at(-1)?.unit ?? '';
    const unit = field === null ? last : `per ${field[3]} ${field[4]}`;
    return { sides: read, by, unit, square: field !== null };
  }
  return null;
}

/** "3 1/2" and "per 5 cm" keep their slash: only a slash between two whole readings parts them. */
function splitSides(body: string, by: string, pattern: RegExp): readonly string[] {
  if (by !== '/')
    return body.split(new RegExp(pattern, `g${pattern.flags.replace('g', '')}`)).map((piece) => piece.trim());
  if (/\d \d+\/\d+/u.test(body) || /\/ ?\d+ ?\/ ?\d+ ?\//u.test(body)) return [];
  return body.split(/\s*\/\s*(?=[\d<>~≈≤≥½¼¾]|(?:c|ca|circa)\.? ?\d)/u).map((piece) => piece.trim());
}

/** Parts that are called weft and warp are given as warp and weft. */
function inOrder(sides: readonly Side[]): readonly Side[] {
  const [first, second] = sides;
  return sides.length === 2 && first?.system === 2 && second?.system === 1 ? [second, first] : sides;
}

const NOUN = new RegExp(`^(?:${COUNTED})\\.?$`, 'u');

function readSide(piece: string): Side | null {
  const label = LABEL.exec(piece);
  const found = SIDE.exec(label === null ? piece : piece.slice(label[0].length));
  if (found === null) return null;
  const words = found[3]?.trim();
  const unit = words === undefined || NOUN.test(foldCell(words)) ? undefined : words;
  if (unit !== undefined && knownUnit(unit.replace(/[.,;]$/u, '')) === null) return null;
  const system = label?.[1] !== undefined ? 1 : label?.[2] !== undefined ? 2 : undefined;
  return { value: found[1] ?? '', twist: found[2] ?? '', unit, system };
}

function descending(plain: string): PartedCell | null {
  const found = /^(\d+(?:[.,]\d+)?) ?- ?(\d+(?:[.,]\d+)?)( .+)?$/u.exec(plain);
  if (found === null) return null;
  const [first, second] = [found[1] ?? '', found[2] ?? ''];
  if (!(Number(first.replace(',', '.')) > Number(second.replace(',', '.')))) return null;
  const unit = found[3]?.trim() ?? '';
  if (unit !== '' && knownUnit(unit) === null) return null;
  const parts = [first, second].map((part) => (unit === '' ? part : `${part} ${unit}`));
  return {
    parts,
    note: flagged(
      'descending',
      `${quote(plain)} runs downwards, so it may be two systems; it may also be a range`,
    ),
  };
}
