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
  /^([+-]?)(\d{2,6}|\d{1,3}[xX]{1,3}|[yY]-?\d{5,})(?:-(\d{2})(?:-(\d{2}))?)?(?:[T ][\d:.]+Z?)?([~?%]?)$/u;

/**
 * Reads a year, date or interval of ISO 8601 with its extensions: "-0799", "-799/-549", "0120",
 * "2019-05-03", "-0799~" (approximate), "?" (uncertain), "%" (both), "-07XX" (some year of the century),
 * "-0799/.." (open). Years are astronomical: 0000 is 1 BC (ISO 8601-1:2019; extensions ISO 8601-2:2019).
 * Unsigned years need four digits. Null where the text is not of that form.
 */
export function readIso(text: string): IsoSpan | null {
  const sides = text.split('/');
  if (sides.length > 2) return null;
  const [first = '', second] = sides.map((side) => side.trim());
  if (second === undefined) return side(first);
  const low = first === '..' || first === '' ? open('low') : side(first);
  const high = second === '..' || second === '' ? open('high') : side(second);
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

function side(text: string): IsoSpan | null {
  const found = DATE.exec(text);
  if (found === null) return null;
  const [, sign = '', digits = '', month, day, mark = ''] = found;
  const unspecified = digits.match(/[xX]/gu)?.length ?? 0;
  if (sign === '' && digits.length < 4 && !/^[yY]/u.test(digits)) return null;
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
