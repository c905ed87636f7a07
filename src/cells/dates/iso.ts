import { flagged, readAs } from '../notes.ts';
import type { Note } from '../reading.ts';

export interface IsoSpan {
  readonly low: number;
  readonly high: number;
  readonly about: boolean;
  readonly uncertain: boolean;
  readonly notes: readonly Note[];
}

const DATE =
  /^([+-]?)(\d{1,6}|\d{1,3}[xX]{1,3}|[yY]-?\d{5,})(?:-(\d{2})(?:-(\d{2}))?)?(?:[T ][\d:.]+Z?)?([~?%]?)$/u;

/**
 * Reads a year, date or interval of ISO 8601 with its extensions: "-0799", "-799/-549", "0120",
 * "2019-05-03", "-0799~" (approximate), "?" (uncertain), "%" (both), "-07XX" (some year of the century),
 * "-0799/.." (open). Years are astronomical: 0000 is 1 BC (ISO 8601-1:2019; extensions ISO 8601-2:2019).
 * Unsigned years need four digits, but for the second of a span whose first has a sign. Null where the text is not of that form.
 */
export function readIso(text: string): IsoSpan | null {
  const sides = (signedSpan(text) ?? text).split('/');
  if (sides.length > 2) return null;
  const [first = '', second] = sides.map((side) => side.trim());
  if (second === undefined) return side(first);
  const signed = /^[+-]/u.test(first);
  const low = first === '..' || first === '' ? open('low') : side(first);
  const high = second === '..' || second === '' ? open('high') : side(second, signed);
  if (low === null || high === null || (low.high === -low.low && high.high === -high.low && first === second))
    return null;
  const turned = low.low > high.high;
  return {
    low: Math.min(low.low, high.low),
    high: Math.max(low.high, high.high),
    about: low.about || high.about,
    uncertain: low.uncertain || high.uncertain,
    notes: [
      ...low.notes,
      ...high.notes,
      ...(turned
        ? [flagged('descending', 'the interval ends before it begins; its ends were exchanged')]
        : []),
    ],
  };
}

/**
 * A span from one signed year to another, as tables print it: "-100 - 100", "-50 to 50", "-1200 – -1000". Null
 * where the second year has no sign and is the smaller ("-1200-1000"): a sign for both, or for the first alone?
 */
function signedSpan(text: string): string | null {
  const found = /^([+-]\d{1,6})\s*(?:\bto\b|\bbis\b|\bà\b|\ba\b|-|\.\.)\s*([+-]?\d{1,6})$/u.exec(text);
  if (found === null) return null;
  const [, first = '', second = ''] = found;
  if (/^[+-]?\d+-\d\d$/u.test(text) && first.length >= 5) return null;
  if (!/^[+-]/u.test(second) && Number(second) < Math.abs(Number(first))) return null;
  return `${first}/${second}`;
}

function open(end: 'low' | 'high'): IsoSpan {
  const year = end === 'low' ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
  return {
    low: year,
    high: year,
    about: false,
    uncertain: false,
    notes: [readAs('open-end', 'an open end of the interval')],
  };
}

/** @param short years of fewer than four digits are meant, as beside a signed one. */
function side(given: string, short = false): IsoSpan | null {
  const text = given.replace(/^~\s*(?=[+-]\d)(.*\d)$/u, '$1~');
  const found = DATE.exec(text);
  if (found === null) return null;
  const [, sign = '', digits = '', month, day, mark = ''] = found;
  const unspecified = digits.match(/[xX]/gu)?.length ?? 0;
  if (sign === '' && digits.length < 4 && !short && !/^[yY]/u.test(digits)) return null;
  const negative = sign === '-' || /^[yY]-/u.test(digits);
  const least = Number(digits.replace(/[xX]/gu, '0').replace(/^[yY]-?/u, ''));
  const most = Number(digits.replace(/[xX]/gu, '9').replace(/^[yY]-?/u, ''));
  const notes: Note[] = [];
  let [low, high] = negative ? [-most, -least] : [least, most];
  // The minus of a whole year 0 is no sign.
  low += 0;
  high += 0;
  if (unspecified > 0)
    notes.push(readAs('unspecified-digits', `"${text}" read as any year from ${low} to ${high}`));
  if (month !== undefined) {
    const number = Number(month);
    if (day === undefined && (number < 1 || number > 12)) {
      // "1914-18" is no month: the second year is written short.
      const end = Math.trunc(least / 100) * 100 + number;
      if (negative || end <= least) return null;
      return {
        low: least,
        high: end,
        about: false,
        uncertain: false,
        notes: [flagged('short-year', `"${text}" read as ${least} to ${end}`)],
      };
    }
    if (number < 1 || number > 12 || (day !== undefined && !(Number(day) >= 1 && Number(day) <= 31)))
      return null;
    notes.push(readAs('year-of-date', `only the year of "${text}" is kept`));
  }
  if (sign === '-')
    notes.push(readAs('astronomical', 'a signed year read as astronomical: 0 is 1 BC, -799 is 800 BC'));
  return { low, high, about: mark === '~' || mark === '%', uncertain: mark === '?' || mark === '%', notes };
}
