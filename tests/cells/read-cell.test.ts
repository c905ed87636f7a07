import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCell } from '../../src/cells/read-cell.ts';
import { convert } from '../../src/cells/units.ts';
import { ATTRIBUTES, type AttributeKey, contextFor } from './attributes.ts';

const KEYS = Object.keys(ATTRIBUTES) as AttributeKey[];

/** Strings near the patterns, where a grammar is likeliest to stumble. */
const fragments = fc
  .array(
    fc.constantFrom(
      ...[
        '3',
        '14',
        '0',
        '3.5',
        '3,5',
        '1,200',
        '½',
        '-',
        '–',
        '--',
        '/',
        'x',
        '×',
        ':',
        '±',
        '<',
        '>',
        '≤',
        '~',
        'c.',
        'ca.',
        'min.',
        'max.',
      ],
      ...[
        '(',
        ')',
        '[',
        ']',
        ',',
        ';',
        '?',
        '+',
        'mm',
        'cm',
        'per',
        'per cm',
        '/cm',
        'in',
        '"',
        "'",
        '°',
        'rows',
        'in 32 mm',
        'n=6',
        'mean',
        'to',
        'bis',
      ],
      ...[
        'or',
        'S',
        'Z',
        'z',
        'I',
        '2',
        'ply',
        'BC',
        'AD',
        'BP',
        'cal',
        'c',
        'half',
        'Jh.',
        'VIII',
        'lime bast',
        'cf.',
        '\n',
        ' ',
        '腰',
        'K',
        'O',
        'e',
        '=',
      ],
    ),
    { maxLength: 12 },
  )
  .chain((parts) => fc.constantFrom('', ' ').map((joint) => parts.join(joint)));
const anything = fc.oneof(
  fragments,
  fc.string({ unit: 'binary', maxLength: 80 }),
  fc.string({ unit: 'grapheme', maxLength: 40 }),
);

describe('readCell', () => {
  it('never throws, keeps low <= high and the state in step with the value, whatever the text', () => {
    fc.assert(
      fc.property(
        anything,
        fc.constantFrom(...KEYS),
        fc.constantFrom<',' | '.'>(',', '.'),
        (text, key, decimal) => {
          const reading = readCell(text, ATTRIBUTES[key], contextFor(key, { decimal }));
          for (const note of reading.notes) expect(note.why.length).toBeGreaterThan(0);
          if (reading.kind === 'numeric') {
            const valued = reading.state === 'measured' || reading.state === 'approximate';
            expect(Number.isNaN(reading.low)).toBe(!valued);
            expect(Number.isNaN(reading.high)).toBe(!valued);
            if (valued) expect(reading.low).toBeLessThanOrEqual(reading.high);
            if (reading.step !== undefined) expect(reading.step).toBeGreaterThan(0);
            for (const one of reading.readings ?? []) {
              expect(one).toBeGreaterThanOrEqual(reading.low);
              expect(one).toBeLessThanOrEqual(reading.high);
            }
          }
          if (reading.kind === 'term' && reading.state === 'measured') expect(reading.term).not.toBeNull();
        },
      ),
      { numRuns: 3000 },
    );
  });

  it('leaves a note on every text that gives no value, blanks alone excepted', () => {
    fc.assert(
      fc.property(anything, fc.constantFrom(...KEYS.filter((key) => key !== 'remarks')), (text, key) => {
        const reading = readCell(text, ATTRIBUTES[key], contextFor(key));
        const empty =
          reading.state !== 'measured' &&
          reading.state !== 'approximate' &&
          !(reading.kind === 'term' && reading.term === 'absent');
        // The invisible characters that a spreadsheet leaves behind are blank too.
        const blank = text.replace(/[\s\u200b-\u200f\u2060\ufeff\u00ad]/gu, '') === '';
        if (empty && !blank) expect(reading.notes.length).toBeGreaterThan(0);
      }),
      { numRuns: 1000 },
    );
  });

  it('reads back what it reads: a printed interval gives itself', () => {
    const value = fc.integer({ min: 1, max: 9999 }).map((n) => n / 100);
    fc.assert(
      fc.property(value, value, (a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const text = low === high ? `${low}` : `${low}-${high}`;
        expect(readCell(text, ATTRIBUTES.density, contextFor('density'))).toMatchObject({
          low,
          high,
          state: 'measured',
        });
      }),
    );
  });

  it('reads a count in a spacing column as convert turns it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 0, max: 20 }), (low, more) => {
        const reading = readCell(`${low}-${low + more} per cm`, ATTRIBUTES.spacing, contextFor('spacing'));
        const [expectedLow, expectedHigh] = convert([low, low + more], 'per cm', 'mm');
        expect(reading).toMatchObject({ low: expectedLow, high: expectedHigh });
      }),
    );
  });

  // Common practice: "c. 3.5 cm" between rows is about 35 mm, which is 0.286 rows per cm.
  it('turns "c. 3.5 cm" between rows into 35 mm and 0.286 per cm', () => {
    const reading = readCell('c. 3.5 cm', ATTRIBUTES.spacing, contextFor('spacing'));
    if (reading.kind !== 'numeric') throw new Error('not numeric');
    expect(reading.state).toBe('approximate');
    expect((reading.low + reading.high) / 2).toBe(35);
    expect(convert([35, 35], 'mm', 'per cm')[0]).toBeCloseTo(0.286, 3);
  });

  it('does not change frozen inputs, and does not know keys that were never given', () => {
    const missing = Object.freeze({ x: 'absent' as const });
    const context = Object.freeze(contextFor('density', { missing }));
    expect(readCell('constructor', ATTRIBUTES.density, context)).toMatchObject({ state: 'not-observed' });
    expect(
      readCell('toString', ATTRIBUTES.fibre, contextFor('fibre', { translations: Object.freeze({}) })),
    ).toMatchObject({ term: null });
  });

  it('reads hostile texts in time that grows with their length', () => {
    const hostile = [
      '9'.repeat(200_000),
      '('.repeat(100_000),
      '-'.repeat(100_000),
      ' 1'.repeat(50_000),
      'S'.repeat(100_000),
      '?'.repeat(100_000),
      'a '.repeat(50_000),
      `${'1,'.repeat(50_000)}1`,
    ];
    const start = performance.now();
    for (const text of hostile) for (const key of KEYS) readCell(text, ATTRIBUTES[key], contextFor(key));
    expect(performance.now() - start).toBeLessThan(5000);
  });
});
