import type { AttributeDefinition } from './definition.ts';

/** A column header taken apart. `unit` is written as a unit text: "mm", "per cm", "per 5 cm", "cm2" … */
export interface HeaderParts {
  readonly name: string;
  readonly unit?: string;
}

/** What a unit measures; a header's unit must measure the same as its attribute. */
export type UnitKind = 'length' | 'count' | 'density' | 'area' | 'mass' | 'angle' | 'share' | 'year';

const LENGTH =
  'mm|cm|dm|m|km|µm|μm|um|nm|microns?|mikron|inch(?:es)?|in|zoll|pouces?|millimet(?:er|re)s?|centimet(?:er|re)s?|zentimeter|millimètres?|centimètres?|millimetri|centimetri|milímetros?|centímetros?';
const SQUARE = '(?:mm|cm|dm|m)(?:\\s?\\^?2|²)|(?:sq\\.?|square)\\s?(?:mm|cm|in(?:ch(?:es)?)?)|qmm|qcm|qm';
const MASS = 'mg|g|kg|gr|gramm?e?s?|gramm[io]|gramos';
const ANGLE = '°|deg|degrees?|grad|degrés?|gradi|grados?|grader';
const YEAR = 'years?|jahre?|ans?|anni?|años?|år';
/** Words that mean "for each" before a length, in the six languages. */
const PER = '/|per|pro|je|auf|par|au|al|ogni|por|pr\\.?';
const COUNT = `(?:epi|ppi|epcm|ppcm|(?:${PER})\\s*(?:\\d+(?:[.,]\\d+)?\\s*)?(?:running\\s+|linear\\s+)?(?:${LENGTH}|"|''))`;
const DENSITY = `(?:${PER})\\s*(?:\\d+(?:[.,]\\d+)?\\s*)?(?:${SQUARE})`;

const KINDS: readonly (readonly [UnitKind, RegExp])[] = [
  ['density', new RegExp(`^(?:${DENSITY})$`, 'iu')],
  [
    'count',
    new RegExp(`^(?:${COUNT}|(?:threads?|fils?|fäden|fili|hilos|tråde|n|no\\.?|f)?\\s*${COUNT})$`, 'iu'),
  ],
  ['area', new RegExp(`^(?:${SQUARE})$`, 'iu')],
  ['length', new RegExp(`^(?:${LENGTH}|")$`, 'iu')],
  ['mass', new RegExp(`^(?:${MASS})$`, 'iu')],
  ['angle', new RegExp(`^(?:${ANGLE})$`, 'iu')],
  ['share', /^(?:%|percent|prozent|pour ?cent|per ?cento|por ?ciento)$/iu],
  ['year', new RegExp(`^(?:${YEAR})$`, 'iu')],
];

/** What a unit text measures; undefined for a text that is not a unit. */
export function unitKind(unit: string): UnitKind | undefined {
  const trimmed = unit.trim();
  return KINDS.find(([, pattern]) => pattern.test(trimmed))?.[0];
}

const BRACKET = /\s*[([{]([^()[\]{}]*)[)\]}]\s*/gu;
const PER_LENGTH = new RegExp(
  `(?:(?<=[\\p{L}\\p{N}.)\\s])\\s*/|(?<=^|[\\s_])(?:${PER}))\\s*_?(?:\\d+(?:[.,]\\d+)?[\\s_]*)?(?:${SQUARE}|${LENGTH})(?![\\p{L}\\p{N}])`,
  'iu',
);
const THREADS_PER_INCH = /(?<=^|[\s_])(?:epi|ppi|epcm|ppcm)(?=$|[\s_])/iu;
const TRAILING = new RegExp(
  `[\\s_,;.:-]+(?:in\\s+)?(${SQUARE}|mm|cm|µm|μm|um|${MASS}|${ANGLE}|%)\\.?$`,
  'iu',
);
const AFTER_COMMA = new RegExp(`\\s*[,;:]\\s*(${SQUARE}|${LENGTH}|${MASS}|${ANGLE}|%)\\.?$`, 'iu');

/**
 * Takes the unit out of a header, wherever specialists put it: in any bracket, after a comma or a
 * slash, as "per 5 cm" between the words, or as the last word. A bracket that is not a unit stays
 * with the name. "Dm" is left alone (a diameter as a rule, not a decimetre).
 *
 * @example splitHeader('Fäden/cm Kette') // { name: 'Fäden Kette', unit: 'per cm' }
 * @example splitHeader('Reihenabstand [mm]') // { name: 'Reihenabstand', unit: 'mm' }
 */
export function splitHeader(header: string): HeaderParts {
  const text = header.replace(/\s+/gu, ' ').trim();
  if (text.length > 300 || NUMBERED.test(text)) return { name: text };
  for (const bracket of text.matchAll(BRACKET)) {
    const unit = unitOf(bracket[1] ?? '');
    if (unit !== undefined) return parts(text, bracket.index, bracket[0].length, unit);
  }
  const perLength = PER_LENGTH.exec(text) ?? THREADS_PER_INCH.exec(text);
  if (perLength !== null)
    return parts(text, perLength.index, perLength[0].length, canonicalPer(perLength[0]));
  const tail = AFTER_COMMA.exec(text) ?? TRAILING.exec(text);
  if (tail !== null && !(tail[1] ?? '').startsWith('D'))
    return parts(text, tail.index, tail[0].length, tail[1] ?? '');
  return { name: text };
}

/** "V12", "c0": every unit ends in a letter or a sign. */
const NUMBERED = /^[a-z]*\d+$/i;

function parts(text: string, start: number, length: number, unit: string): HeaderParts {
  const name = `${text.slice(0, start)} ${text.slice(start + length)}`.replace(/[\s_]+/gu, ' ').trim();
  return name === '' ? { name: text, unit } : { name, unit };
}

/** Unit inside a bracket; "(5 cm)" says over which length was counted. */
function unitOf(content: string): string | undefined {
  const inner = content
    .replace(/^\s*in\s+/iu, '')
    .replace(/\.$/u, '')
    .trim();
  if (/^\d+(?:[.,]\d+)?\s*(?:mm|cm|in|inch(?:es)?)$/iu.test(inner)) return canonicalPer(`per ${inner}`);
  const kind = unitKind(inner);
  if (kind === 'count' || kind === 'density') return canonicalPer(inner);
  return kind === undefined ? undefined : inner;
}

/** "/5cm", "pro 5 cm", "Fd/5 cm" -> "per 5 cm"; "/cm" -> "per cm"; "epi" -> "per inch". */
function canonicalPer(text: string): string {
  const lower = text.toLowerCase().replace(/_/gu, ' ').trim();
  if (/^[ep]pi$/u.test(lower)) return 'per inch';
  if (/^[ep]pcm$/u.test(lower)) return 'per cm';
  const match = new RegExp(`(\\d+(?:[.,]\\d+)?)?\\s*(${SQUARE}|${LENGTH}|"|'')$`, 'iu').exec(lower);
  const count = match?.[1]?.replace(',', '.');
  const unit = match?.[2] ?? lower;
  const length = /^(?:in|inch|inches|zoll|pouces?|"|'')$/u.test(unit) ? 'inch' : unit;
  return count === undefined || Number(count) === 1 ? `per ${length}` : `per ${count} ${length}`;
}

/**
 * The name before a last word "in", which may be the unit ("Length in") or a small word ("Woven in"): so it
 * is never taken for a unit without being asked.
 */
export function withoutInches(header: string): string | null {
  return /^(.*\S)[\s_]in\.?$/iu.exec(header.trim())?.[1] ?? null;
}

/**
 * The unit that a header states for the attribute that it was matched to. "Länge / mm" may mean
 * "length in mm": for an attribute that is itself a length, an area, a mass or an angle, a slash
 * before the unit divides the quantity by it and does not count.
 *
 * @returns undefined where the header names no unit.
 */
export function headerUnit(header: string, attribute: AttributeDefinition): string | undefined {
  const { unit } = splitHeader(header);
  if (attribute.unit === undefined) return unit;
  const wanted = unitKind(attribute.unit);
  if (unit === undefined) return wanted === 'length' && withoutInches(header) !== null ? 'in' : undefined;
  const plain = /^per (\D+)$/u.exec(unit)?.[1];
  const divided = /\/\s*\p{L}+[²2]?[\s)\]]*$/u.test(header.trim());
  if (plain !== undefined && divided && unitKind(plain) === wanted) return plain;
  return unit;
}
