import { describe, expect, it } from 'vitest';
import { isCalendarDay } from '../../../src/sources/columns/calendar-day.ts';

// Common practice, no source: how days of recording are written.
describe('a day of the calendar', () => {
  it.each([
    '1958-03-29',
    '1958-03',
    '2012/01/01',
    '2012/1/1',
    '2010/01/01 00:00',
    '2010-01-01T00:00:00Z',
    '19580329',
    '29.3.1958',
    '3/29/58',
    '29-03-1958',
    '29 March 1958',
    '29-Mar-58',
    'Jan 1 2000',
    'Jan-1-1995',
    'March 29, 1958',
    '29. März 1958',
    '1er août 1974',
    '3 de mayo de 1983',
    '12 giugno 1990',
    '4. oktober 1999',
    'May 1995',
    '14:30',
  ])('%s is one', (cell) => expect(isCalendarDay(cell)).toBe(true));

  it.each([
    '1200-1100',
    '1650-1700',
    '300 BC',
    'c. 1450',
    '3rd century',
    '1550',
    '2300 BP',
    '4215 ± 35 BP',
    '-0300',
    '12-14',
    '1700/1800',
    'May',
    '19581329',
    '1250-12',
    'Early',
    '1850.5',
    '1700/11',
    '0.5',
  ])('%s is none', (cell) => expect(isCalendarDay(cell)).toBe(false));
});
