import { describe, expect, it } from 'vitest';
import { defaultRegister } from '../../src/attributes/register.ts';
import { readCell } from '../../src/cells/read-cell.ts';

/** Degrees, minutes and seconds, north and east positive: ISO 6709:2022; 1 degree = 60 minutes = 3600 seconds. */
const read = (id: 'latitude' | 'longitude', text: string) =>
  readCell(text, defaultRegister().attributes.get(id)!, { decimal: '.' });

describe('coordinates', () => {
  it.each([
    ['latitude', "45°30'N", 45.5],
    ['latitude', '45° 30′ 36″ S', -45.51],
    ['latitude', 'N 45.5', 45.5],
    ['longitude', "12°15'W", -12.25],
    ['longitude', '7.25 E', 7.25],
    ['longitude', '-7.25', -7.25],
  ] as const)('%s "%s" is %d', (id, text, value) => {
    const reading = read(id, text);
    expect(reading).toMatchObject({ kind: 'numeric', state: 'measured' });
    if (reading.kind === 'numeric') expect(reading.low).toBeCloseTo(value, 9);
  });

  it.each(["12°75'W", '7°15 O', '200° W'])('"%s" is not guessed at', (text) => {
    expect(read('longitude', text)).toMatchObject({ state: 'not-observed' });
  });
});

describe('words for "not available"', () => {
  it.each(['Not_Available', 's. d.', 'k. A.', 'k.A', 'not-available.', 'N.A.', '(no data)', 'sans données'])(
    '"%s" is missing in a column of numbers as in one of names',
    (text) => {
      for (const id of ['length', 'site', 'structure']) {
        const attribute = defaultRegister().attributes.get(id)!;
        const vocabulary = defaultRegister().vocabularies.get(attribute.vocabulary ?? '');
        const reading = readCell(text, attribute, {
          decimal: '.',
          ...(vocabulary === undefined ? {} : { vocabulary }),
        });
        expect(reading.state).toBe('not-observed');
        expect(reading.notes.every(({ level }) => level !== 'not-understood')).toBe(true);
      }
    },
  );
});
