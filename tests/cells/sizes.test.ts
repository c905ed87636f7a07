import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { severalPieces } from '../../src/cells/several-pieces.ts';
import { sizeWords } from '../../src/cells/size-words.ts';

/** Cells with the sizes of a find, as catalogues print them. Common practice in fabric reports, no source. */

const PIECES: readonly (readonly [text: string, pieces: readonly string[] | null, stated?: number])[] = [
  ['12 x 8; 5 x 3', ['12 x 8', '5 x 3']],
  ['12 x 8; 5 x 3 cm', ['12 x 8 cm', '5 x 3 cm']],
  ['12 x 8 cm; 50 x 30 mm', ['12 x 8 cm', '50 x 30 mm']],
  ['a) 12 x 8 cm b) 5 x 3 cm', ['12 x 8 cm', '5 x 3 cm']],
  ['a: 12 x 8, b: 5 x 3', ['12 x 8', '5 x 3']],
  ['(1) 12 x 8 mm (2) 5 x 3 mm', ['12 x 8 mm', '5 x 3 mm']],
  ['1: 12 x 8 2: 5 x 3', ['12 x 8', '5 x 3']],
  ['A 12 x 8; B 5 x 3', ['12 x 8', '5 x 3']],
  ['12,5 x 8, 5 x 3,2 cm', ['12,5 x 8 cm', '5 x 3,2 cm']],
  ['12 x 8 und 5 x 3 cm', ['12 x 8 cm', '5 x 3 cm']],
  ['12 × 8 et 5 × 3', ['12 × 8', '5 × 3']],
  ['12x8+5x3', ['12x8', '5x3']],
  ['12 x 8\n5 x 3\n2 x 1', ['12 x 8', '5 x 3', '2 x 1']],
  ['3 Frgm.: 12 x 8, 5 x 3', ['12 x 8', '5 x 3'], 3],
  ['2 fragments, 12 x 8 and 5 x 3', ['12 x 8', '5 x 3'], 2],
  ['2 (12 x 8; 5 x 3)', ['12 x 8', '5 x 3'], 2],
  ['12 x 8', null],
  ['12 x 8 x 2', null],
  ['L. 12, B. 8', null],
  ['12 x 8, 3 threads', null],
  ['b) 12 x 8 a) 5 x 3', null],
  ['12 x 8, width not known', null],
  ['', null],
];

describe('severalPieces', () => {
  it.each(PIECES.map(([text, pieces, stated]) => ({ text, pieces, stated })))(
    'parts $text into $pieces',
    ({ text, pieces, stated }) => {
      const found = severalPieces(text);
      expect(found?.pieces ?? null).toEqual(pieces);
      if (found !== null) expect(found.stated).toBe(stated);
    },
  );

  it('gives two pieces at least and makes no digit up or lose one, whatever the text', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[\dx ;,.+()ab:\nucmdn]{0,30}$/u), (text) => {
        const found = severalPieces(text);
        if (found === null) return;
        expect(found.pieces.length).toBeGreaterThan(1);
        const kept = found.pieces.join(' ').match(/\d/gu)?.length ?? 0;
        const there = text.match(/\d/gu)?.length ?? 0;
        const labels = found.pieces.length + (found.stated === undefined ? 0 : 3);
        expect(kept).toBeLessThanOrEqual(there);
        expect(kept).toBeGreaterThanOrEqual(there - labels);
      }),
      { numRuns: 400 },
    );
  });
});

describe('sizeWords', () => {
  it.each([
    ['max. 12 x 8', '12 x 8', ''],
    ['12 x max. 8 cm', '12 x 8 cm', ''],
    ['12 x 8 cm (max.)', '12 x 8 cm', ''],
    ['max. L. 12, max. B. 8', 'L. 12, B. 8', ''],
    ['gr. L. 12 x gr. Br. 8', 'L. 12 x Br. 8', ''],
    ['erh. 12 x 8 cm', '12 x 8 cm', 'incomplete'],
    ['noch erhalten 12 x 8', '12 x 8', 'incomplete'],
    ['preserved 12 x 8', '12 x 8', 'incomplete'],
    ['max. 12', 'max. 12', ''],
    ['12 x 8', '12 x 8', ''],
  ])('of %j leaves %j', (text, rest, each) => {
    const found = sizeWords(text);
    expect([found.text, found.each]).toEqual([rest, each]);
    expect(found.why === '').toBe(rest === text);
  });
});
