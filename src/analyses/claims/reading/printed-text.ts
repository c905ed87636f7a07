import type { PrintedNumber } from '../../../numerics/printed/printed-number.ts';
import { type Method, methodNamed, type Quantity } from './terms.ts';

/** How the printed number stands to the computed one. */
export type Relation = '=' | '<' | '>' | '~';

/** One number as it stands in print. */
export interface PrintedValue {
  readonly text: string;
  readonly relation: Relation;
  readonly number: PrintedNumber;
  /** Printed with a percent sign. */
  readonly percent: boolean;
}

/** One number of a printed text, and what it is where the text itself says so. */
export interface TextPart {
  readonly values: readonly PrintedValue[];
  readonly quantity: Quantity;
  readonly method?: Method;
  /** The text does not say what the number is: the second one of "3.5±0.4". */
  readonly vague?: true;
}

const NUMBER = String.raw`[+\-−]?(?:\d{1,3}(?:[  ]\d{3})+|\d+)?(?:[.,]\d+)?`;
const POWER = String.raw`(?:\s*[x×·]\s*10\s*\^?\s*([\-−]?\d+|[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+)|[eE]([\-+−]?\d+))?`;
const ONE = new RegExp(`^(${NUMBER})${POWER}$`, 'u');
/** A unit behind the number is passed over; the attribute says which one is meant. */
const UNIT =
  /(?<=\d)\s*(?:mm|cm|m|µm|μm|g|kg|mg|°|(?:threads?|rows?|picks?|ends?)?\s*(?:\/|per)\s*(?:cm|dm|mm))$/iu;
const WHOLE: ReadonlySet<Quantity> = new Set(['n', 'count', 'total', 'df']);

/**
 * Reads a printed text: its numbers to the printed digit, with what it says of them.
 * "12,3" is 12.3; a comma before three digits parts thousands where the quantity is a whole number.
 * "3.5±0.4" is a mean and its spread, "12 (34 %)" a count and its share, "2.1-5.4" two ends,
 * "t(18) = 2.31, p = .03" a statistic, its degrees of freedom and p.
 *
 * @returns the numbers, or null where the text cannot be read as one.
 */
export function readPrinted(text: string, quantity: Quantity): readonly TextPart[] | null {
  const plain = text.trim().replaceAll('\u00a0', ' ');
  return (
    testReport(plain, quantity) ??
    spread(plain, quantity) ??
    countWithShare(plain, quantity) ??
    twoEnds(plain, quantity) ??
    degrees(plain, quantity) ??
    single(plain, quantity)
  );
}

function single(text: string, quantity: Quantity): readonly TextPart[] | null {
  if (quantity === 'p' && /^(?:n\.?\s?s\.?|not significant)$/i.test(text)) {
    return [part('p', { text, relation: '>', number: { digits: 5n, decimals: 2 }, percent: false })];
  }
  const value = printedValue(text, quantity);
  return value === null ? null : [part(quantity, value)];
}

/** "p < .05", "c. 12.3", "n = 34", "34 %". */
function printedValue(text: string, quantity: Quantity): PrintedValue | null {
  let rest = text.replace(/^[A-Za-zχ][A-Za-z²_-]{0,12}\s*(?=[=<>≤≥≈~])/u, '');
  let relation: Relation = '=';
  const sign = /^\s*(=|<=|>=|<|>|≤|≥|≈|~|c\.|ca\.?|circa|about|under|over)\s*/i.exec(rest);
  if (sign !== null) {
    relation = relationOf(sign[1].toLowerCase());
    rest = rest.slice(sign[0].length);
  }
  const percent = /\s*(?:%|per\s?cent)$/i.exec(rest);
  if (percent !== null) rest = rest.slice(0, percent.index);
  if (!WHOLE.has(quantity)) rest = rest.replace(UNIT, '');
  const number = readNumber(rest.trim(), quantity);
  return number === null ? null : { text, relation, number, percent: percent !== null };
}

function relationOf(sign: string): Relation {
  if (sign === '=') return '=';
  if (sign.startsWith('<') || sign === '≤' || sign === 'under') return '<';
  return sign.startsWith('>') || sign === '≥' || sign === 'over' ? '>' : '~';
}

function readNumber(text: string, quantity: Quantity): PrintedNumber | null {
  const match = ONE.exec(text);
  if (match === null || !/\d/.test(match[1])) return null;
  let plain = match[1]
    .replaceAll(/[ \u202f]/g, '')
    .replace(/[+]/, '')
    .replace('−', '-');
  if (WHOLE.has(quantity) && /^-?\d{1,3}(?:[.,]\d{3})+$/.test(plain)) plain = plain.replaceAll(/[.,]/g, '');
  const [whole, decimals = ''] = plain.split(/[.,]/);
  const power = exponent(match[2] ?? match[3]);
  const digits = BigInt(`${whole === '-' || whole === '' ? `${whole}0` : whole}${decimals}`);
  const sized = plain.startsWith('-') && digits > 0n ? -digits : digits;
  const places = decimals.length - power;
  return places >= 0
    ? { digits: sized, decimals: places }
    : { digits: sized * BigInt(`1${'0'.repeat(-places)}`), decimals: 0 };
}

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';

function exponent(text: string | undefined): number {
  if (text === undefined) return 0;
  const plain = [...text.replace('⁻', '-').replace('−', '-')]
    .map((sign) => (RAISED.includes(sign) ? String(RAISED.indexOf(sign)) : sign))
    .join('');
  return Number(plain);
}

function part(quantity: Quantity, ...values: readonly PrintedValue[]): TextPart {
  return { quantity, values };
}

/** "t(18) = 2.31, p = .033", "z = 1.96, p = .05", "F(2, 27) = 4.5", "χ²(4, n = 60) = 9.9; p < .05". */
function testReport(text: string, quantity: Quantity): readonly TextPart[] | null {
  const match =
    /^([A-Za-zχ][A-Za-z²2-]{0,12})\s*(?:\(([^)]*)\))?\s*([=<>][^,;]*(?:,\d[^,;]*)?)(?:[,;]\s+(p\s*[=<>].*|n\.?s\.?))?$/u.exec(
      text,
    );
  const method = match === null ? undefined : methodNamed(match[1]);
  if (match === null || method === undefined) return null;
  const [, , inner = '', said, p] = match;
  // A bare "r = .31" is the quantity that its row names.
  if (inner === '' && p === undefined) return null;
  const statistic = printedValue(said.trim(), 'statistic');
  if (statistic === null) return null;
  const own = quantity === 'correlation' ? quantity : 'statistic';
  const parts: TextPart[] = [{ quantity: own, values: [statistic], method }];
  const between = method === 'F' ? /[,;]\s*/ : /[,;]\s+|;|,(?=\s*[nN])/;
  const [counts, sizes] = divide(inner.split(between), (one) => !/[nN]\s*=/.test(one));
  const df = counts.map((one) => printedValue(one.trim(), 'df')).filter((one) => one !== null);
  if (df.length > 0) parts.push({ quantity: 'df', values: df, method });
  for (const one of sizes) {
    const n = printedValue(one.trim(), 'n');
    if (n !== null) parts.push(part('n', n));
  }
  const last = p === undefined ? null : single(p.trim(), 'p');
  if (last !== null) parts.push({ ...last[0], method });
  return parts;
}

function divide<T>(list: readonly T[], test: (one: T) => boolean): readonly [T[], T[]] {
  return [list.filter(test), list.filter((one) => !test(one))];
}

/** "3.5±0.4": whether the second number is a standard deviation or an error the text does not say. */
function spread(text: string, quantity: Quantity): readonly TextPart[] | null {
  const sides = text.split(/\s*(?:±|\+\/-|\+-)\s*/);
  if (sides.length !== 2) return null;
  const [mean, sd] = sides.map((side) => printedValue(side.replace(/[()]/g, ''), 'mean'));
  return mean === null || sd === null ? null : [part(quantity, mean), { ...part('sd', sd), vague: true }];
}

/** "12 (34 %)". */
function countWithShare(text: string, quantity: Quantity): readonly TextPart[] | null {
  const match = /^([^()]+)\(([^()]*(?:%|per\s?cent))\)$/i.exec(text);
  if (match === null || quantity !== 'count') return null;
  const count = printedValue(match[1].trim(), 'count');
  const share = printedValue(match[2].trim(), 'share');
  return count === null || share === null ? null : [part('count', count), part('share', share)];
}

/** "2.1-5.4", "3.1 to 4.2", "[3.1, 4.2]". */
function twoEnds(text: string, quantity: Quantity): readonly TextPart[] | null {
  if (quantity !== 'range' && quantity !== 'interval') return null;
  const inner = text.replace(/^[[(]|[\])]$/g, '');
  const match = new RegExp(`^(${NUMBER})\\s*(?:-|–|—|to|bis|;|,\\s)\\s*(${NUMBER})\\s*(%?)$`, 'u').exec(
    inner,
  );
  if (match === null) return null;
  const [low, high] = [match[1], match[2]].map((side) => printedValue(`${side}${match[3]}`, quantity));
  if (low === null || high === null) return null;
  const names: readonly [Quantity, Quantity] = quantity === 'range' ? ['min', 'max'] : ['low', 'high'];
  return [part(names[0], low), part(names[1], high)];
}

/** "2, 27" for F. */
function degrees(text: string, quantity: Quantity): readonly TextPart[] | null {
  if (quantity !== 'df') return null;
  const both = text.split(/\s*[,;]\s+|\s*;\s*|\s+and\s+/);
  if (both.length !== 2) return null;
  const values = both.map((one) => printedValue(one, 'df')).filter((one) => one !== null);
  return values.length === 2 ? [part('df', ...values)] : null;
}
