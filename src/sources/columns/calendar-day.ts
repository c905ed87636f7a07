/** Beginnings of the months' names in English, German, French, Italian, Spanish and Danish. */
const MONTH =
  'jan|ene|gen|feb|f[ée]v|mar|m[äæ]r|mrz|apr|abr|avr|ma[ijgy]|jun|juin|giu|jul|juil|lug|aug|ago|ao[uû]|sep|set|o[ckt]t|nov|de[czs]|dic|d[ée]c';
const YEAR = '(?:1[6-9]|20)\\d\\d';
const DAY = '(?:0?[1-9]|[12]\\d|3[01])';
const OF_MONTH = '(?:0?[1-9]|1[0-2])';
const TIME = '(?:[T ,]+\\d{1,2}:\\d{2}.*)?';

const FORMS: readonly RegExp[] = [
  // 1958-03-29, 2012/1/1, 1958-03
  `${YEAR}(?:-${OF_MONTH}|[-/.]${OF_MONTH}[-/.]${DAY})${TIME}`,
  // 19580329
  `${YEAR}(?:0[1-9]|1[0-2])(?:0[1-9]|[12]\\d|3[01])`,
  // 29.3.1958, 3/29/58, 29-03-1958
  `\\d{1,2}[./-]\\d{1,2}[./-](?:${YEAR}|\\d\\d)${TIME}`,
  // 29-III-1958, 29.III.58
  `${DAY}[./ -]+(?:I{1,3}|IV|VI{0,3}|IX|XI{0,2})[./ -]+(?:${YEAR}|\\d\\d)`,
  // 29 March 1958, 29-Mar-58, March 1958
  `(?:${DAY}(?:st|nd|rd|th|er|\\.|º)?[ .-]*(?:de |di )?)?(?:${MONTH})[a-zéûäæ]*[ .-]*(?:de |del )?(?:${YEAR}|'?\\d\\d)${TIME}`,
  // March 29, 1958, Jan-1-1995
  `(?:${MONTH})[a-zéûäæ]*[ .-]*${DAY}(?:st|nd|rd|th)?[ ,.-]+${YEAR}${TIME}`,
  // 14:30
  '\\d{1,2}:\\d{2}(?::\\d{2})?',
].map((form) => new RegExp(`^${form}$`, 'iu'));

/**
 * Whether a cell is a day of a modern calendar, or a time of day: when something was recorded, and not how old a
 * find is. Day and month are not told apart.
 */
export function isCalendarDay(cell: string): boolean {
  const text = cell.trim();
  return FORMS.some((form) => form.test(text));
}
