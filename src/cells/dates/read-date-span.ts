import { lowered, takeDoubt } from '../certainty.ts';
import type { CellContext } from '../context.ts';
import { distinct, emptyNumeric, flagged, notUnderstood, quote, readAs } from '../notes.ts';
import { readNothing } from '../nothing.ts';
import type { Note, NumericReading } from '../reading.ts';
import { foldCell, plainSigns } from '../text.ts';
import { knownUnit } from '../units.ts';
import { readIso } from './iso.ts';
import { readSpan, type YearSpan } from './span.ts';
import { dateTokens } from './words.ts';

/** Era of years that name none, as the header of a column gives it. */
export type Era = 'BC' | 'AD' | 'cal BP' | 'BP';

const LONGEST = 160;

/** Era that the unit of a header states ("BC", "v. Chr.", "cal BP"), for readDateSpan. */
export function eraContext(context: CellContext): { readonly era?: Era } {
  const unit = context.unit === undefined ? null : knownUnit(context.unit);
  const eras: Readonly<Record<string, Era>> = { 'year BC': 'BC', 'year cal BP': 'cal BP', 'year BP': 'BP' };
  const era = unit === null ? undefined : eras[unit];
  if (era !== undefined) return { era };
  return context.unit !== undefined &&
    /^(?:a\.? ?d|c\.? ?e|n\. ?chr|ap\. ?j|d\. ?c|e\. ?kr)/u.test(foldCell(context.unit))
    ? { era: 'AD' }
    : {};
}

/**
 * Reads a date as a span of calendar years, numbered astronomically (ISO 8601: year 0 is 1 BC, n BC = 1 - n).
 *
 * - "800-550 BC" [-799, -549]; "10 BC - AD 10" [-9, 10]; "8th c. BC" [-799, -700]; "2nd half 4th mill. BC"
 *   [-3499, -3000]; "-799/-549" as it stands; eras and words in English, German, French, Italian, Spanish,
 *   Danish and Norwegian.
 * - "1200 ± 60" is [1140, 1260], flagged. Years without an era take that of `options.era`, else AD, flagged.
 * - A radiocarbon age BP is not a calendar year: not observed, with a note. "cal BP" is 1950 - n.
 * - "c." widens by 50 years for years printed in fifties, 10 in tens, 5 in fives, else 1 (own convention).
 * - "early", "mid", "late" are thirds of their century or millennium, flagged.
 * - Period names are not understood here; a table of periods gives their spans.
 */
export function readDateSpan(text: string, options: { readonly era?: Era } = {}): NumericReading {
  const nothing = readNothing(text);
  if (nothing !== null) return emptyNumeric(nothing.state, nothing.notes);
  const plain = plainSigns(text);
  if (plain.length > LONGEST) return failed('prose', `a text of ${plain.length} characters is no date`);
  const iso = readIso(plain);
  const signed = /^~?\s*[+-]|\/[+-]|^0|[xX]|\.\./u.test(plain);
  if (iso !== null && (options.era === undefined || options.era === 'AD' || signed)) {
    const notes = [...iso.notes];
    return finish({ low: iso.low, high: iso.high, about: iso.about, notes }, iso.uncertain ? 1 : 0, signed);
  }
  const doubt = takeDoubt(plain);
  const folded = foldCell(doubt.rest).replace(
    /[([]?\d{2}(?:[.,]\d+)? ?% ?(?:prob\p{L}*\.?)?[)\]]?|[([]?[12] ?(?:σ|sigma)[)\]]?/gu,
    ' ',
  );
  const tokens = dateTokens(folded);
  if (tokens === null)
    return failed(
      'unknown-date',
      `${quote(text)} is no date that is known; a period name needs a table of periods`,
    );
  const radiocarbon = tokens.some(({ kind }) => kind === 'radiocarbon');
  const calibrated = tokens.some(({ kind }) => kind === 'calibrated');
  const named = tokens.some(({ kind }) => kind === 'era');
  if ((radiocarbon && !calibrated) || (options.era === 'BP' && !named && !calibrated)) {
    return failed(
      'radiocarbon-uncalibrated',
      `${quote(text)} is a radiocarbon age, not a calendar year; give its calibrated span`,
    );
  }
  const beforePresent = radiocarbon || (options.era === 'cal BP' && !named);
  const era = beforePresent
    ? 'cal BP'
    : options.era === 'BC' || options.era === 'AD'
      ? options.era
      : undefined;
  const parts = tokens.filter(({ kind }) => kind !== 'radiocarbon' && kind !== 'calibrated');
  const span = readSpan(parts, era);
  if ('rule' in span) return emptyNumeric('not-observed', [span]);
  const notes: Note[] = [...span.notes];
  if (doubt.steps > 0) notes.unshift(flagged('uncertain', `marked as uncertain (${doubt.marks.join(', ')})`));
  if (calibrated) notes.push(readAs('calibrated', 'a calibrated radiocarbon span'));
  return finish({ ...span, notes }, doubt.steps);
}

const failed = (rule: string, why: string): NumericReading =>
  emptyNumeric('not-observed', [notUnderstood(rule, why)]);

/** @param asNumbered years were written with their astronomical number: -300 is round, although it is 301 BC. */
function finish(span: YearSpan, doubt: number, asNumbered = false): NumericReading {
  const { low, high, about } = span;
  const notes = [...span.notes];
  if (about)
    notes.push(readAs('about', 'said to be approximate; widened on either side by the rounding of the year'));
  if (doubt > 0 && !notes.some(({ rule }) => rule === 'uncertain'))
    notes.push(flagged('uncertain', 'marked as uncertain (?)'));
  return {
    kind: 'numeric',
    low: about ? low - roundness(low, asNumbered) : low,
    high: about ? high + roundness(high, asNumbered) : high,
    state: about ? 'approximate' : 'measured',
    step: 1,
    ...(doubt > 0 ? { certainty: lowered('certain', doubt) } : {}),
    notes: distinct(notes),
  };
}

/** How roughly a year is given, by its last digits; BC years are judged as they are printed. */
function roundness(year: number, asNumbered: boolean): number {
  if (!Number.isFinite(year)) return 0;
  const printed = roundnessOf(year > 0 ? year : 1 - year);
  return asNumbered ? Math.max(printed, roundnessOf(Math.abs(year))) : printed;
}

function roundnessOf(printed: number): number {
  if (printed % 50 === 0) return 50;
  if (printed % 10 === 0) return 10;
  return printed % 5 === 0 ? 5 : 1;
}
