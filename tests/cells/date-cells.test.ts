import { describe, expect, it } from 'vitest';
import { readDateSpan } from '../../src/cells/dates/read-date-span.ts';
import { readCell } from '../../src/cells/read-cell.ts';
import type { Note } from '../../src/cells/reading.ts';
import { ATTRIBUTES, contextFor } from './attributes.ts';
import { DATE_CASES } from './tables/date-cells.ts';

const ORDER: readonly Note['level'][] = ['read', 'flagged', 'not-understood'];

describe.each(Object.entries(DATE_CASES))('%s', (_group, cases) => {
  it.each(cases.map((entry) => [JSON.stringify(entry.text), entry.era ?? 'no era', entry] as const))(
    '%s with %s',
    (_name, _era, expected) => {
      const reading = readDateSpan(expected.text, expected.era === undefined ? {} : { era: expected.era });
      expect([reading.low, reading.high]).toEqual([expected.low, expected.high]);
      expect(reading.state).toBe(expected.state ?? 'measured');
      const gravest = Math.max(0, ...reading.notes.map(({ level }) => ORDER.indexOf(level)));
      expect(ORDER[gravest]).toBe(expected.level ?? 'read');
      if (expected.rule !== undefined) expect(reading.notes.map(({ rule }) => rule)).toContain(expected.rule);
      expect(reading.certainty).toBe(expected.certainty);
    },
  );
});

describe('dates in a table', () => {
  it('takes the era from the unit of the header', () => {
    const bc = readCell('800-550', ATTRIBUTES.date, contextFor('date', { unit: 'BC' }));
    expect(bc).toMatchObject({ low: -799, high: -549 });
    const german = readCell('3370', ATTRIBUTES.date, contextFor('date', { unit: 'v. Chr.' }));
    expect(german).toMatchObject({ low: -3369, high: -3369 });
    const bp = readCell('5200', ATTRIBUTES.date, contextFor('date', { unit: 'BP' }));
    expect(bp).toMatchObject({ state: 'not-observed' });
  });

  // Arithmetic of the calendar: 10 BC to AD 10 is 19 years apart, because no year 0 stands between.
  it('makes no off-by-one across the change of era', () => {
    const { low, high } = readDateSpan('10 BC - AD 10');
    expect(high - low).toBe(19);
    for (let year = 1; year <= 4000; year += 37) {
      expect(readDateSpan(`${year} BC`).low).toBe(1 - year);
      expect(readDateSpan(`AD ${year}`).low).toBe(year);
    }
  });

  it('lets every century BC meet its neighbours without gap or overlap', () => {
    const ordinal = (n: number) => `${n}${n === 1 ? 'st' : n === 2 ? 'nd' : n === 3 ? 'rd' : 'th'}`;
    for (let century = 2; century <= 20; century += 1) {
      const later = readDateSpan(`${ordinal(century - 1)} c. BC`);
      expect(readDateSpan(`${ordinal(century)} c. BC`).high + 1).toBe(later.low);
    }
    expect(readDateSpan('1st c. BC').high + 1).toBe(readDateSpan('1st c. AD').low);
  });
});
