import { readDateSpan } from '../../../cells/dates/read-date-span.ts';
import type { PrintedValue } from './numbers.ts';
import type { Quantity } from './terms.ts';
import type { TextPart } from './text-part.ts';

/** A date names its era; without one a number is a number. */
const ERA =
  /(?:^|[\s\d(])(?:cal\.?\s*)?(?:B\.?\s?C\.?(?:\s?E\.?)?|A\.?\s?D\.?|C\.?\s?E\.?|v\.?\s?Chr|n\.?\s?Chr|av\.?\s?J|ap\.?\s?J|a\.\s?C|d\.\s?C)(?:[\s.)\d–—-]|$)/u;

const ENDS: Partial<Record<Quantity, readonly [Quantity, Quantity]>> = {
  range: ['min', 'max'],
  interval: ['low', 'high'],
  iqr: ['q1', 'q3'],
};
const ONE: ReadonlySet<Quantity> = new Set<Quantity>([
  'min',
  'max',
  'mean',
  'median',
  'q1',
  'q3',
  'low',
  'high',
  'reading',
]);

/**
 * Dates and the spans of phases: "1200 BC", "50 BC–AD 20", "c. 1200–1150 v. Chr.", "8th c. BC", "1210 ± 30 cal BC",
 * in astronomical years, as the records have them (n BC is 1 - n). Null for any other text.
 */
export function years(text: string, quantity: Quantity): readonly TextPart[] | null {
  if (!ERA.test(text)) return null;
  const read = readDateSpan(text);
  const { low, high } = read;
  if (!Number.isFinite(low) || !Number.isFinite(high)) return null;
  const about = read.state === 'approximate';
  const part = (of: Quantity, year: number): TextPart => ({
    quantity: of,
    values: [yearValue(text, year, about)],
  });
  const ends = ENDS[quantity];
  if (ends !== undefined) return [part(ends[0], low), part(ends[1], high)];
  if (!ONE.has(quantity)) return null;
  if (/±|\+\/?-/.test(text) && quantity === 'mean')
    return [part('mean', (low + high) / 2), { ...part('sd', (high - low) / 2), vague: true }];
  // A century is no single year: its early end is a beginning, its late end an end.
  if (low < high && !about && quantity !== 'min' && quantity !== 'max') return null;
  return [part(quantity, quantity === 'min' ? low : quantity === 'max' ? high : (low + high) / 2)];
}

function yearValue(text: string, year: number, about: boolean): PrintedValue {
  const halves = Number.isInteger(year);
  return {
    text,
    relation: about ? '~' : '=',
    number: halves
      ? { digits: BigInt(year), decimals: 0 }
      : { digits: BigInt(Math.round(10 * year)), decimals: 1 },
    percent: false,
    year: true,
  };
}
