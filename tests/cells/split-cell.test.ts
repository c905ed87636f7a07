import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Note } from '../../src/cells/reading.ts';
import { splitCell } from '../../src/cells/split-cell.ts';

/** Cells that hold several readings. Common practice in fabric reports, no source. */
const CASES: readonly (readonly [text: string, parts: readonly string[] | null, level?: Note['level']])[] = [
  ['14 x 12', ['14', '12']],
  ['14×12', ['14', '12']],
  ['14 × 12', ['14', '12']],
  ['14x12', ['14', '12']],
  ['14:12', ['14', '12']],
  ['10/12 per cm', ['10 per cm', '12 per cm']],
  ['14/12/cm', ['14 per cm', '12 per cm']],
  ['12/10 F/cm', ['12 F/cm', '10 F/cm']],
  ['10 x 12 F/cm', ['10 F/cm', '12 F/cm']],
  ['14 Fäden x 12 Fäden', ['14', '12']],
  ['0.5/0.8 mm', ['0.5 mm', '0.8 mm']],
  ['0.5/0.8', ['0.5', '0.8'], 'flagged'],
  ['3,5 x 4,2 cm', ['3,5 cm', '4,2 cm']],
  ['14 x 12 x 3 cm', ['14 cm', '12 cm', '3 cm']],
  ['c. 14 x c. 12', ['c. 14', 'c. 12']],
  ['>10 x 8', ['>10', '8']],
  ['8-9 x 10?', ['8-9', '10?']],
  ['12-14/8-10', ['12-14', '8-10'], 'flagged'],
  ['8-10 Z / 7 S', ['8-10', 'Z', '7', 'S']],
  ['8–10 Z / 7 S', ['8-10', 'Z', '7', 'S']],
  ['12 Z x 9-10 S', ['12', 'Z', '9-10', 'S']],
  ['8-10 x 6-7 (9 x 6.5)', ['8-10 (9)', '6-7 (6.5)'], 'flagged'],
  ['47/38 per 2x2 cm', ['47 per 2 cm', '38 per 2 cm']],
  ['Kette 12, Schuss 10', ['12', '10']],
  ['Schuss 10, Kette 12', ['12', '10']],
  ['Z/S', ['Z', 'S']],
  ['z/s', ['z', 's']],
  ['z/S', ['z', 'S'], 'flagged'],
  ['Z/Z/S', ['Z', 'Z', 'S']],
  ['Z/S/R', ['Z', 'S', 'R']],
  ['14-12', ['14', '12'], 'flagged'],
  ['14-12 per cm', ['14 per cm', '12 per cm'], 'flagged'],
  ['21.5K', ['21.5', 'K']],
  ['20.K', ['20.', 'K'], 'flagged'],
  ['32.OK', ['32.O', 'K'], 'flagged'],
  ['3 x 3 in. (7.6 x 7.6 cm)', ['3 in. (7.6 cm)', '3 in. (7.6 cm)'], 'flagged'],
  [
    'H. 152 x W. 91 1/2 inches (386.1 x 232.4 cm)',
    ['152 inches (386.1 cm)', '91 1/2 inches (232.4 cm)'],
    'flagged',
  ],
  ['10 ft. 10 in. × 10 ft. 2 in.', ['10 ft. 10 in.', '10 ft. 2 in.']],
  ['H. 68 x W. 164 inches\n172.7 x 416.6 cm', ['172.7 cm', '416.6 cm'], 'flagged'],
  ['12-14', null],
  ['12', null],
  ['3 1/2', null],
  ['35/5 cm', null],
  ['2/2 twill', null],
  ['tabby', null],
  ['B', null],
  ['21 mm', null],
  ['21m', null],
  ['', null],
  ['-', null],
];

describe('splitCell', () => {
  it.each(CASES.map(([text, parts, level]) => ({ text, parts, level: level ?? 'read' })))(
    'parts $text into $parts',
    ({ text, parts, level }) => {
      const split = splitCell(text, { decimal: '.' });
      expect(split?.parts ?? null).toEqual(parts);
      if (parts !== null) expect(split?.note.level).toBe(level);
    },
  );

  it('leaves the codes of the profile whole', () => {
    expect(splitCell('9/9', { decimal: '.', missing: { '9/9': 'not-observed' } })).toBeNull();
  });

  it('never throws, and never gives fewer than two parts', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string({ unit: 'binary' }), fc.stringMatching(/^[\d .,x×/:SZ()c-]{0,20}$/u)),
        (text) => {
          const split = splitCell(text, { decimal: '.' });
          return split === null || split.parts.length >= 2;
        },
      ),
    );
  });
});
