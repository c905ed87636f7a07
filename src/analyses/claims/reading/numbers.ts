import type { PrintedNumber } from '../../../numerics/printed/printed-number.ts';
import type { Quantity } from './terms.ts';

/** How the printed number stands to the computed one. */
export type Relation = '=' | '<' | '>' | '~';

/** One number as it stands in print. */
export interface PrintedValue {
  readonly text: string;
  readonly relation: Relation;
  readonly number: PrintedNumber;
  /** Printed with a percent sign. */
  readonly percent: boolean;
  /** An astronomical year, printed with its era. */
  readonly year?: true;
  /** The other number that the same print may be ("1,234": 1234 or 1.234; "0.8" of a variation: a part of one or per cent). */
  readonly otherwise?: PrintedNumber;
}

/** The decimal mark that a document uses; null where its print does not tell. */
export type DecimalMark = '.' | ',' | null;

const WHOLE: ReadonlySet<Quantity> = new Set(['n', 'count', 'total']);
const SMALL: ReadonlySet<Quantity> = new Set([
  'df',
  'p',
  'statistic',
  'correlation',
  'effect',
  'share',
  'cv',
]);

/** A printed number as a pattern: signs of every kind, thousands parted by space, mark or apostrophe, a power of ten. */
const MAGNITUDE = String.raw`(?:[1-9]\d{0,2}(?:[ '’]\d{3})+(?!\d)(?:[.,]\d+)?|[1-9]\d{0,2}(?:,\d{3})+(?!\d)(?:\.\d+)?|[1-9]\d{0,2}(?:\.\d{3})+(?!\d)(?:,\d+)?|\d+(?:[.,]\d+)?|[.,]\d+)`;
const POWER = String.raw`(?:\s?[x×·*]\s?10\s?\^?\s?[-]?(?:\d+|[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+)|[eE][-+]?\d+)?`;
export const NUMBER = String.raw`[+-]?${MAGNITUDE}${POWER}`;

const ONE = new RegExp(
  String.raw`^([+-]?)(${MAGNITUDE})(?:\s?[x×·*]\s?10\s?\^?\s?(-?\d+|[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+)|[eE]([-+]?\d+))?$`,
  'u',
);

/** Signs that print as another: every minus, every space, raised points. */
export function plainSigns(text: string): string {
  return text
    .replaceAll(/[\u00a0\u2007\u2009\u202f\u2002\u2003]/gu, ' ')
    .replaceAll(/[\u2212\ufe63\uff0d]/gu, '-')
    .replaceAll(/(?<![\d)\]])\s*[\u2012\u2013\u2014](?=\s?[\d.,])/gu, (dash) => dash.replace(/[^\s]/u, '-'))
    .replaceAll(/(?<=\d)·(?=\d)/gu, '.')
    .replaceAll(/[₀-₉]/gu, (digit) => String(digit.charCodeAt(0) - 0x2080))
    .trim();
}

export interface ReadNumber {
  readonly number: PrintedNumber;
  readonly otherwise?: PrintedNumber;
}

/**
 * Reads one number. A mark before exactly three digits may part thousands or decimals: a number of records is
 * whole; elsewhere the document's own decimal mark decides, and where that is not known both readings are kept.
 */
export function readNumber(text: string, quantity: Quantity, mark: DecimalMark = null): ReadNumber | null {
  const match = ONE.exec(text.trim());
  if (match === null) return null;
  const [, sign, body, raised, exponent] = match;
  const power = exponentOf(raised ?? exponent);
  const negative = sign === '-';
  const bare = body.replaceAll(/[ '’]/g, '');
  const build = (plain: string) => numberFrom(plain, negative, power);
  const marks = bare.replaceAll(/\d/g, '');
  if (marks.length === 0) return { number: build(bare) };
  const last = marks[marks.length - 1];
  if (marks.length > 1) {
    const grouped = /^\d{1,3}(?:([.,])\d{3})(?:\1\d{3})*(?:[.,]\d+)?$/.test(bare);
    if (!grouped) return null;
    const same = [...marks].every((one) => one === last);
    if (same) return { number: build(bare.replaceAll(last, '')) };
    const other = last === '.' ? ',' : '.';
    return { number: build(bare.replaceAll(other, '').replace(last, '.')) };
  }
  const decimal = build(bare.replace(last, '.'));
  if (!/^[1-9]\d{0,2}[.,]\d{3}$/.test(bare)) return { number: decimal };
  const thousands = build(bare.replace(last, ''));
  // Where the document's own mark stands before noughts, a program printed a whole number with decimals.
  if (WHOLE.has(quantity)) return { number: mark === last && /000$/.test(bare) ? decimal : thousands };
  if (mark !== null) return { number: mark === last ? decimal : thousands };
  // Of these a point before three digits is a decimal point; nobody has thousands of them.
  if (last === '.' && SMALL.has(quantity)) return { number: decimal };
  return { number: decimal, otherwise: thousands };
}

function numberFrom(plain: string, negative: boolean, power: number): PrintedNumber {
  const [whole, decimals = ''] = plain.split('.');
  const size = BigInt(`${whole}${decimals}` || '0');
  const digits = negative ? -size : size;
  const places = decimals.length - power;
  return places >= 0
    ? { digits, decimals: places }
    : { digits: digits * BigInt(`1${'0'.repeat(-places)}`), decimals: 0, unsaid: -places };
}

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';

function exponentOf(text: string | undefined): number {
  if (text === undefined) return 0;
  const plain = [...text.replace('⁻', '-')]
    .map((sign) => (RAISED.includes(sign) ? String(RAISED.indexOf(sign)) : sign))
    .join('');
  return Number(plain);
}

/** The decimal mark that a document's figures show beyond doubt; null where none or both are shown. */
export function decimalMarkOf(texts: readonly string[]): DecimalMark {
  let [points, commas] = [0, 0];
  for (const text of texts) {
    // Commas within brackets part numbers: "F(2,27)", "[3.1,4.2]".
    const plain = plainSigns(text).replaceAll(/[([][^)\]]*[)\]]/g, ' ');
    points += [...plain.matchAll(/(?<![\d.,])(?:\d*\.(?:\d{1,2}|\d{4,})|(?:0?|\d{4,})\.\d{3})(?![\d.,])/g)]
      .length;
    points += [...plain.matchAll(/(?<![\d.,])[1-9]\d{0,2}(?:,\d{3})+\.\d+(?![\d.,])/g)].length;
    commas += [...plain.matchAll(/(?<![\d.,])[1-9]\d{0,2}(?:\.\d{3})+,\d+(?![\d.,])/g)].length;
    commas += [
      ...plain.matchAll(/(?<![\d.,A-Za-z²_])(?:\d+,(?:\d{1,2}|\d{4,})|(?:0|\d{4,}),\d{3})(?![\d.,])/g),
    ].length;
  }
  if (points > 0 && commas === 0) return '.';
  if (commas > 0 && points === 0) return ',';
  return commas === 0 ? threeEverywhere(texts) : null;
}

/** A unit behind the number is passed over; the attribute says which one is meant. */
const UNIT =
  /(?<=\d)\s*(?:mm²?|cm²?|m²?|µm|μm|g|kg|mg|°|years?|yrs?|(?:threads?|rows?|picks?|ends?|yarns?|warps?|wefts?)?\s*(?:\/|per)\s*(?:\d+\s*)?(?:cm|dm|mm))$/iu;

const SIGN =
  /^\s*(=|<=|>=|<|>|≤|≥|⩽|⩾|≈|~|∼|c\.|ca\.?|circa|approx\.?|about|under|over|less than|more than)\s*/i;

/** "p < .05", "c. 12.3", "n = 34", "34 %", "12.3 mm". */
export function printedValue(
  text: string,
  quantity: Quantity,
  mark: DecimalMark = null,
): PrintedValue | null {
  const [, lead = ''] = /^([A-Za-zχ][\w²χ. -]{0,14}?)\s*(?=[=<>≤≥≈~])/u.exec(text) ?? [];
  let rest = text.slice(lead.length);
  let relation: Relation = '=';
  const sign = SIGN.exec(rest);
  if (sign !== null) {
    relation = relationOf(sign[1].toLowerCase());
    rest = rest.slice(sign[0].length);
  }
  const percent = /\s*(?:%|per\s?cent|pct\.?)$/i.exec(rest);
  if (percent !== null) rest = rest.slice(0, percent.index);
  if (!WHOLE.has(quantity)) rest = rest.replace(UNIT, '');
  const read = readNumber(rest, quantity, mark);
  return read === null ? null : { text, relation, ...read, percent: percent !== null };
}

export function relationOf(sign: string): Relation {
  const said = sign.toLowerCase();
  if (said === '=' || said === ':') return '=';
  if (/^(?:<|≤|⩽|under|less)/.test(said)) return '<';
  return /^(?:>|≥|⩾|over|more)/.test(said) ? '>' : '~';
}

/** Three digits behind the mark in every one of many numbers are decimals of a program; no table counts thousands alone. */
function threeEverywhere(texts: readonly string[]): DecimalMark {
  const said = texts.map((text) => plainSigns(text).trim()).filter((text) => /\d/.test(text));
  for (const mark of ['.', ','] as const)
    if (
      said.length >= MANY_ALIKE &&
      said.every((text) => /^-?\d{1,3}[.,]\d{3}$/.test(text) && text.includes(mark))
    )
      return mark;
  return null;
}
const MANY_ALIKE = 8;
