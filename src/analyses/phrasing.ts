import type { Witness } from '../fragments/items/witness.ts';
import type { Counts, Turn } from './contract.ts';
import { MOST_WORDS } from './one-sentence.ts';

/** How numbers and lists are put into sentences, the same in every analysis. */

/**
 * A number as a reader would print it: three significant digits unless more are asked for, whole
 * numbers in full, no exponent from a millionth up, a true minus sign; rounding noise is 0.
 */
export function printNumber(value: number, digits = 3): string {
  if (value === Infinity) return 'without upper bound';
  if (value === -Infinity) return 'without lower bound';
  if (Math.abs(value) < ROUNDING_NOISE) return '0';
  const rounded = Number(value.toPrecision(digits));
  const whole = Math.abs(value) >= Number(`1e${digits}`) ? Math.round(value) : rounded;
  return String(whole === 0 ? 0 : whole).replace('-', '\u2212');
}

/** What is left of sums that cancel each other; nothing that is measured or tested is as small. */
const ROUNDING_NOISE = 1e-12;

/** "12.3 mm"; the number alone where there is no unit. */
export function printQuantity(value: number, unit: string, digits = 3): string {
  return unit === '' ? printNumber(value, digits) : `${printNumber(value, digits)} ${unit}`;
}

/** Unit of attributes that are dates, as a row of a table names it. */
export const DATE_UNIT = 'year';

/** A value on the scale of its attribute: "12.3 mm"; a date as BC or AD. */
export function printReading(value: number, unit: string): string {
  return unit === DATE_UNIT ? printYear(value) : printQuantity(value, unit);
}

/** A p value with two digits and a floor of 0.001. */
export function printP(p: number): string {
  return p < 0.001 ? 'p < 0.001' : `p = ${printNumber(p, 2)}`;
}

/** "a, b and c". */
export function printList(parts: readonly string[]): string {
  if (parts.length < 2) return parts.join('');
  return `${parts.slice(0, -1).join(', ')} and ${parts[parts.length - 1]}`;
}

/** "1 item", "3 items". */
export function printCount(count: number, noun: string, plural = `${noun}s`): string {
  return `${count} ${count === 1 ? noun : plural}`;
}

/** What mends a label that does not occur: the first of those that do. */
export function nameOneOf(labels: readonly string[], most = 12): string {
  if (labels.length === 0) return 'choose an attribute that some record has';
  const some = labels.slice(0, most).map((label) => `"${label}"`);
  return `name one of ${some.join(', ')}${labels.length > most ? ` and ${labels.length - most} more` : ''}`;
}

/** "72 fragments of 6 items"; the fragments alone until somebody has said what an object is. */
export function printBehind(
  { fragments, items }: Pick<Counts, 'fragments' | 'items'>,
  witness: Witness,
): string {
  const counted = printCount(fragments, 'fragment');
  return witness.status === 'confirmed'
    ? `${counted} of ${printCount(items, witness.one, witness.many)}`
    : counted;
}

/** An astronomical year as people write it: no year 0. */
export function printYear(year: number): string {
  const whole = Math.round(year);
  return whole > 0 ? `AD ${whole}` : `${1 - whole} BC`;
}

/** "Counted by what all catalogues record: Saltmere is the most alike." */
export function printTurn({ what, size }: Turn): string {
  const said = size === '' ? what : `${what}: ${size}`;
  const start = said.charAt(0).toUpperCase() + said.slice(1);
  return /[.!?]$/.test(start) ? start : `${start}.`;
}

const SMALL = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];

/** Small whole numbers as words, larger ones as figures: "three", "13"; 0 is "no". */
export function printSmall(count: number): string {
  return SMALL[count] ?? String(count);
}

/** The first of these and how many more: "a, b and 3 more". */
export function printSome(parts: readonly string[], most: number): string {
  if (parts.length <= most) return printList(parts);
  return printList([...parts.slice(0, most), `${parts.length - most} more`]);
}

/** A label within a sentence: "Row spacing" becomes "row spacing", "DNA" and "S-plied" stay. */
export function inSentence(label: string): string {
  return /^\p{Lu}[\p{Ll} ]/u.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label;
}

/** A share of certainty in per cent: "95 %". */
export function printLevel(share: number): string {
  return `${Number((share * 100).toPrecision(6))} %`;
}

/** The first of these sentences that is short enough for an answer; the last one where none is. */
export function firstShort(sentences: readonly string[]): string {
  const short = sentences.find((sentence) => sentence.split(/\s+/).length <= MOST_WORDS);
  const said = short ?? sentences[sentences.length - 1] ?? '';
  return said.charAt(0).toUpperCase() + said.slice(1);
}
