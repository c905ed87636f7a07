import { InputError } from '../errors.ts';
import { alternation, foldCell } from './text.ts';
import { COUNT_SHORTHANDS, type Dimension, PER_WORDS, UNITS } from './units-table.ts';

/** A unit with its exact ratio to the base of its dimension. */
interface Measure {
  readonly id: string;
  readonly dimension: Dimension;
  readonly numerator: number;
  readonly denominator: number;
  readonly exponent: number;
}

const BY_SPELLING: ReadonlyMap<string, Measure> = new Map(
  UNITS.flatMap((unit) =>
    [unit.id, ...unit.spellings].map((spelling): [string, Measure] => [spelling, unit]),
  ),
);
const SHORTHANDS: ReadonlyMap<string, string> = new Map(COUNT_SHORTHANDS);

/** Nouns that may stand before "/cm" or "per cm" and say what was counted. */
export const COUNTED = alternation(
  (
    'threads|thread|thr.|thr|th|yarns|yarn|ends|picks|warps|wefts|warp|weft|warp threads|weft threads|rows|row|turns|turn|' +
    'stitches|sts|loops|knots|meshes|strands|elements|cords|coils|' +
    "kettf.|kettf|schussf.|schussf|fils chaine|fils trame|fili ordito|fili d'ordito|fili trama|urdimbres|urdimbre|tramas|file|fila|trendtrade|islaettrade|renningstrader|innslagstrader|kettfd.|kettfd|schussfd.|schussfd|chaines|trames|kaedetrade|skudtrade|hilos de urdimbre|hilos de trama|fils de chaine|fils de trame|faden|fd.|fd|f.|f|kettfaden|schussfaden|reihen|reihe|maschen|knoten|windungen|stiche|" +
    'fils|fil|tr.|tr|rangs|rang|duites|brins|mailles|noeuds|tours|fili|filo|righe|maglie|nodi|giri|' +
    'hilos|hilo|h.|h|trama|trame|indslag|islaet|pasadas|puntadas|puntada|sting|stik|punti|punto|points|point|stichen|stich|filas|mallas|nudos|vueltas|trade|trad|trader|raekker|raekke|rader|rad|masker|knuder|knuter|omgange'
  ).split('|'),
);

const COUNT = new RegExp(
  `^(?:(?:${COUNTED}|1) ?)?(?:(?:${PER_WORDS}) ?|/ ?)(\\d+(?:[.,]\\d+)?)? ?(?:[x×] ?\\1 ?)?(.+)$`,
  'u',
);

const ERAS: readonly (readonly [RegExp, string])[] = [
  [/^(?:cal\.? ?bp|bp cal\.?)$/u, 'year cal BP'],
  [/^(?:b\.?p\.?|14c bp|uncal\.? bp)$/u, 'year BP'],
  [
    /^(?:years? |cal\.? ?|jahre? |ans? |anni |anos )?(?:b\.? ?c\.?(?: ?e\.?)?|v\. ?chr\.?|v\. ?u\. ?z\.?|av\. ?j\.?-? ?c\.?|a\. ?c\.?|f\. ?kr\.?)$/u,
    'year BC',
  ],
  [
    /^(?:(?:years?|cal\.?|jahre?|ans?|anni|anos) ?)?(?:a\.? ?d\.?|c\.? ?e\.?|n\. ?chr\.?|apr?\. ?j\.?-? ?c\.?|d\. ?c\.?|e\. ?kr\.?)$|^(?:years?|jahre?|ans?|annees?|anni|anno|anos|aar|ar)$/u,
    'year',
  ],
];

/**
 * Canonical name of a unit as sources write it ("Fäden/cm" -> "per cm", "thr. per 5 cm" -> "per 5 cm",
 * "epi" -> "per inch", "v. Chr." -> "year BC"), or null where the text is none that is known.
 */
export function knownUnit(text: string): string | null {
  return resolve(foldCell(text))?.id ?? null;
}

/** Dimension of a unit text, or null where it is not known. */
export function unitDimension(text: string): Dimension | null {
  return resolve(foldCell(text))?.dimension ?? null;
}

function resolve(folded: string): Measure | null {
  if (folded.length === 0 || folded.length > 60) return null;
  const known = BY_SPELLING.get(folded) ?? BY_SPELLING.get(folded.replace(/^\.|\.$/gu, ''));
  if (known !== undefined) return known;
  const shorthand = SHORTHANDS.get(folded.replace(/\.$/u, ''));
  const count =
    COUNT.exec(shorthand ?? folded) ??
    COUNT.exec(folded.replace(/(\p{L})-1$|⁻¹$/u, '$1').replace(/^(cm|mm|dm|in)$/u, '/$1'));
  if (count !== null && (shorthand !== undefined || folded !== count[2]))
    return perLength(count[1], count[2] ?? '');
  for (const [pattern, id] of ERAS) {
    if (pattern.test(folded)) return { id, dimension: 'year', numerator: 1, denominator: 1, exponent: 0 };
  }
  return null;
}

/** "per 5 cm" and "per cm2": the reciprocal of a length or an area, counted over `span` of it. */
function perLength(span: string | undefined, word: string): Measure | null {
  const of = BY_SPELLING.get(word.trim()) ?? BY_SPELLING.get(word.trim().replace(/\.$/u, ''));
  if (of === undefined || (of.dimension !== 'length' && of.dimension !== 'area')) return null;
  const [whole = '1', decimals = ''] = (span ?? '1').split(/[.,]/u);
  const size = Number(whole + decimals);
  if (!(size > 0) || !Number.isSafeInteger(size)) return null;
  const name = Number(`${size}e${-decimals.length}`);
  return {
    id: name === 1 ? `per ${of.id}` : `per ${name} ${of.id}`,
    dimension: of.dimension === 'length' ? 'count' : 'areal count',
    numerator: of.denominator,
    denominator: of.numerator * size,
    exponent: decimals.length - of.exponent,
  };
}

/** Multiplies by a power of ten without the rounding that 0.07 * 10 suffers. */
function shift(value: number, exponent: number): number {
  if (exponent === 0 || value === 0 || !Number.isFinite(value)) return value;
  const [digits = '0', power = '0'] = String(value).split('e');
  return Number(`${digits}e${Number(power) + exponent}`);
}

/**
 * Converts an interval between units of one dimension, or between a count and the spacing it stands for.
 *
 * `convert([3, 4], 'per cm', 'mm')` is `[2.5, 3.333…]`: a spacing from a count is turned over, so that the
 * ends change places, and so does the side of a censored reading (`[0, 1]` per cm is `[10, ∞]` mm). A count
 * of 0 gives an infinite spacing. Years: n BC is 1 - n and n cal BP is 1950 - n in astronomical years
 * (ISO 8601 has a year 0). NaN ends stay NaN.
 *
 * Throws InputError for an unknown unit, for two units that do not measure the same, for a negative count
 * or spacing that would have to be turned over, and for uncalibrated BP, which is no calendar year.
 */
export function convert(
  interval: readonly [low: number, high: number],
  from: string,
  to: string,
): [low: number, high: number] {
  const source = measure(from);
  const target = measure(to);
  const [low, high] = interval;
  if (source.id === target.id) return [low, high];
  if (source.dimension === 'year' && target.dimension === 'year')
    return convertYears(low, high, source, target);
  if (source.dimension === target.dimension) {
    const one = (value: number) => scale(value, source, target);
    return [one(low), one(high)];
  }
  const turned = new Set([source.dimension, target.dimension]);
  if (turned.has('count') && turned.has('length')) {
    if (low < 0)
      throw new InputError(`${low} ${source.id} cannot be turned over`, {}, 'give a value of 0 or more');
    return [turnOver(high, source, target), turnOver(low, source, target)];
  }
  throw new InputError(
    `"${from}" does not measure the same as "${to}"`,
    {},
    'state the unit of the source, or map the column to another attribute',
  );
}

function measure(text: string): Measure {
  const found = resolve(foldCell(text));
  if (found === null) {
    throw new InputError(
      `the unit "${text}" is not known`,
      {},
      'write it as mm, cm, per cm, per 5 cm, per inch, g …',
    );
  }
  return found;
}

function scale(value: number, source: Measure, target: Measure): number {
  const up = source.numerator * target.denominator;
  const down = source.denominator * target.numerator;
  const exponent = source.exponent - target.exponent;
  if (up === down) return shift(value, exponent);
  // Dividing last by one whole number keeps 36 per inch equal to the double nearest 36 / 2.54.
  return exponent < 0
    ? (value * up) / Number(`${down}e${-exponent}`)
    : (value * Number(`${up}e${exponent}`)) / down;
}

/** value of a count of `source` -> spacing in `target`, and back: 1 / (value * source * target). */
function turnOver(value: number, source: Measure, target: Measure): number {
  if (value === 0) return Number.POSITIVE_INFINITY;
  if (value === Number.POSITIVE_INFINITY) return 0;
  const over = source.denominator * target.denominator;
  const under = source.numerator * target.numerator;
  const exponent = -(source.exponent + target.exponent);
  return exponent >= 0
    ? Number(`${over}e${exponent}`) / (value * under)
    : over / (value * Number(`${under}e${-exponent}`));
}

function convertYears(low: number, high: number, source: Measure, target: Measure): [number, number] {
  const offset: Readonly<Record<string, number>> = { 'year BC': 1, 'year cal BP': 1950 };
  for (const { id } of [source, target]) {
    if (id === 'year BP') {
      throw new InputError(
        'a radiocarbon age BP is not a calendar year',
        {},
        'give the calibrated span, e.g. "3370-3100 cal BC"',
      );
    }
  }
  let ends: [number, number] = [low, high];
  const from = offset[source.id];
  if (from !== undefined) ends = [from - ends[1], from - ends[0]];
  const to = offset[target.id];
  if (to !== undefined) ends = [to - ends[1], to - ends[0]];
  return ends;
}
