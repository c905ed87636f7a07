import type { Era } from '../../../src/cells/dates/read-date-span.ts';
import type { CellState, Certainty, Note } from '../../../src/cells/reading.ts';

/**
 * Dates as spans of astronomical years. ISO 8601-1:2019: 1 BC = 0000, 2 BC = -0001, 44 BC = -0043, so
 * n BC = 1 - n; 1950 = 0 BP. Centuries: the n-th century BC runs from 100 n to 100 (n - 1) + 1 BC, since
 * there is no year 0 in BC/AD (common practice, no source). Qualifiers ~ ? % and X: ISO 8601-2:2019.
 */
export interface DateCase {
  readonly text: string;
  readonly low: number;
  readonly high: number;
  readonly state?: CellState;
  readonly level?: Note['level'];
  readonly rule?: string;
  readonly certainty?: Certainty;
  readonly era?: Era;
}

type Rest = Omit<DateCase, 'text' | 'low' | 'high'>;
const span = (text: string, low: number, high: number = low, rest: Rest = {}): DateCase => ({
  text,
  low,
  high,
  ...rest,
});
const flag = (text: string, low: number, high: number = low, rest: Rest = {}) =>
  span(text, low, high, { level: 'flagged', ...rest });
const about = (text: string, low: number, high: number, rest: Rest = {}) =>
  span(text, low, high, { state: 'approximate', ...rest });
const question = (text: string, rule: string, rest: Rest = {}) =>
  span(text, Number.NaN, Number.NaN, { state: 'not-observed', level: 'not-understood', rule, ...rest });
const INF = Number.POSITIVE_INFINITY;

export const DATE_CASES: Readonly<Record<string, readonly DateCase[]>> = {
  'signed years of fewer digits, and spans that cross nought': [
    span('-1', -1),
    span('-9', -9),
    span('-50/50', -50, 50),
    span('-100 - 100', -100, 100),
    span('-50 to 50', -50, 50),
    span('-1200 – -1000', -1200, -1000),
    span('-9 - -1', -9, -1),
    // The sign may be meant for both years.
    question('-1200-1000', 'unknown-date'),
    // As round as "c. 300 BC" is.
    about('-0300~', -350, -250),
    about('~-300', -350, -250),
  ],
  'ISO 8601 years': [
    span('0000', 0),
    span('-0001', -1),
    span('-0043', -43),
    span('-3369', -3369),
    span('0120', 120),
    span('1650', 1650),
    span('+1650', 1650),
    span('2019-05-03', 2019),
    span('-799/-549', -799, -549),
    span('-0799/-0549', -799, -549),
    span('1200/1300', 1200, 1300),
    span('-0799/..', -799, INF),
    span('../-0549', -INF, -549),
    span('-07XX', -799, -700),
    about('-0799~', -849, -749),
    flag('-0799?', -799, -799, { certainty: 'probable' }),
    flag('-0799%', -849, -749, { state: 'approximate', certainty: 'probable' }),
  ],
  'BC and AD in six languages': [
    span('1 BC', 0),
    span('2 BC', -1),
    span('44 BC', -43),
    span('3370 BC', -3369),
    span('AD 1', 1),
    span('1 AD', 1),
    span('800 BCE', -799),
    span('500 CE', 500),
    span('800 B.C.', -799),
    span('800-550 BC', -799, -549),
    span('800–550 BC', -799, -549),
    span('800 to 550 BC', -799, -549),
    span('800 BC - 550 BC', -799, -549),
    span('10 BC - AD 10', -9, 10),
    span('10 BC to 10 AD', -9, 10),
    span('AD 50-100', 50, 100),
    span('3500-3000 BC', -3499, -2999),
    span('between 800 and 550 BC', -799, -549),
    span('800-550 v. Chr.', -799, -549),
    span('800 bis 550 v.Chr.', -799, -549),
    span('3370 v. u. Z.', -3369),
    span('120 n. Chr.', 120),
    span('zwischen 800 und 550 v. Chr.', -799, -549),
    span('800-550 av. J.-C.', -799, -549),
    span('entre 800 et 550 av. J.-C.', -799, -549),
    span('120 apr. J.-C.', 120),
    span('120 ap. J.-C.', 120),
    span('800-550 a.C.', -799, -549),
    span('120 d.C.', 120),
    span('800 a 550 a. C.', -799, -549),
    span('800-550 f.Kr.', -799, -549),
    span('120 e.Kr.', 120),
    span('800 f.v.t.', -799),
    span('12,000 BC', -11999),
  ],
  'centuries and millennia': [
    span('8th c. BC', -799, -700),
    span('8th century BC', -799, -700),
    span('1st c. BC', -99, 0),
    span('1st c. AD', 1, 100),
    span('8th-7th c. BC', -799, -600),
    span('9th/8th c. BC', -899, -700),
    span('8. Jh. v. Chr.', -799, -700),
    span('8. Jahrhundert v. Chr.', -799, -700),
    span('8./7. Jh. v. Chr.', -799, -600),
    span('VIIIe siècle av. J.-C.', -799, -700),
    span('8e s. av. J.-C.', -799, -700),
    span('VIII sec. a.C.', -799, -700),
    span('VIII secolo a.C.', -799, -700),
    span('siglo VIII a.C.', -799, -700),
    span('s. VIII a.C.', -799, -700),
    span('8. årh. f.Kr.', -799, -700),
    span('8. århundrede f.Kr.', -799, -700),
    span('4th mill. BC', -3999, -3000),
    span('4th millennium BC', -3999, -3000),
    span('4. Jt. v. Chr.', -3999, -3000),
    span('IVe millénaire av. J.-C.', -3999, -3000),
    span('IV millennio a.C.', -3999, -3000),
    span('IV milenio a.C.', -3999, -3000),
    span('4. årtusinde f.Kr.', -3999, -3000),
    span('IV-III mill. a.C.', -3999, -2000),
  ],
  'parts of centuries and millennia': [
    span('2nd half 4th mill. BC', -3499, -3000),
    span('1st half of the 2nd millennium BC', -1999, -1500),
    span('second half of the first millennium BC', -499, 0),
    span('2. Hälfte 4. Jt. v. Chr.', -3499, -3000),
    span('2e moitié du IVe millénaire av. J.-C.', -3499, -3000),
    span('seconda metà del IV millennio a.C.', -3499, -3000),
    span('2. halvdel af 4. årtusinde f.Kr.', -3499, -3000),
    span('last quarter of the 6th century BC', -524, -500),
    span('letztes Viertel 6. Jh. v. Chr.', -524, -500),
    span('third quarter 4th c. AD', 351, 375),
    span('first third of the 2nd c. AD', 101, 134),
    flag('late 8th c. BC', -732, -700, { rule: 'part-of-span' }),
    flag('early 2nd mill. BC', -1999, -1666, { rule: 'part-of-span' }),
  ],
  'about, before, after, plus and minus': [
    about('c. 800 BC', -849, -749),
    about('ca. 750 BC', -799, -699),
    about('um 800 v. Chr.', -849, -749),
    about('vers 800 av. J.-C.', -849, -749),
    about('c. 370 BC', -379, -359),
    about('c. 8th c. BC', -849, -699, {}),
    span('before 550 BC', -INF, -549),
    span('vor 550 v. Chr.', -INF, -549),
    span('after 800 BC', -799, INF),
    span('TPQ 79 AD', 79, INF),
    flag('1200 ± 60 BC', -1259, -1139, { rule: 'plus-minus' }),
    flag('1200 ± 60', 1140, 1260, { rule: 'era-unstated' }),
    flag('1200 ± 60', -1259, -1139, { era: 'BC' }),
    flag('800 BC?', -799, -799, { certainty: 'probable' }),
    flag('prob. 8th c. BC', -799, -700, { certainty: 'probable' }),
  ],
  radiocarbon: [
    question('5200±40 BP', 'radiocarbon-uncalibrated'),
    question('4520 ± 35 BP', 'radiocarbon-uncalibrated'),
    question('5200', 'radiocarbon-uncalibrated', { era: 'BP' }),
    span('3370-3100 cal BC', -3369, -3099),
    span('cal BC 3370-3100', -3369, -3099),
    span('3370-3100 cal. BC (95.4%)', -3369, -3099),
    span('5300-5050 cal BP', -3350, -3100),
    span('5300-5050', -3350, -3100, { era: 'cal BP' }),
    span('0 cal BP', 1950),
  ],
  'eras from the header, and what is missing': [
    span('800-550', -799, -549, { era: 'BC' }),
    span('3500', -3499, -3499, { era: 'BC' }),
    span('8th c.', -799, -700, { era: 'BC' }),
    span('AD 50', 50, 50, { era: 'BC' }),
    span('120', 120, 120, { era: 'AD' }),
    flag('120', 120, 120, { rule: 'era-unstated' }),
    flag('14th c.', 1301, 1400, { rule: 'era-unstated' }),
    question('800-550', 'era-missing'),
    flag('550-800 BC', -799, -549, { rule: 'descending' }),
    flag('0', 0, 0, { rule: 'year-zero' }),
    question('early period', 'unknown-date'),
    question('3 May 1920', 'unknown-date'),
    question('2nd half', 'unknown-date'),
    question('BC', 'unknown-date'),
    span('', Number.NaN, Number.NaN, { state: 'not-observed' }),
    span('n.d.', Number.NaN, Number.NaN, { state: 'not-observed' }),
  ],
};
