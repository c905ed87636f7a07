import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Condensed,
  condensedIndex,
  dissimilarityAt,
} from '../../../src/numerics/dissimilarity/condensed.ts';
import { knownRecords } from '../../../src/numerics/grouping/known-records.ts';

const withUnknown = (n: number, pairs: readonly (readonly [number, number])[]): Condensed => {
  const values = new Float64Array((n * (n - 1)) / 2).fill(1);
  for (const [i, j] of pairs) values[condensedIndex(n, i, j)] = Number.NaN;
  return { n, values };
};

describe('knownRecords', () => {
  it('sets aside the one record that many cannot be compared with', () => {
    const found = knownRecords(
      withUnknown(5, [
        [0, 2],
        [1, 2],
        [2, 4],
      ]),
    );
    expect([...found.kept]).toEqual([0, 1, 3, 4]);
    expect(found.setAside).toEqual([{ row: 2, unknown: 3 }]);
  });

  it('sets aside the later of two records that only miss each other', () => {
    expect(knownRecords(withUnknown(3, [[0, 1]])).setAside).toEqual([{ row: 1, unknown: 1 }]);
  });

  it('keeps everything where nothing is unknown', () => {
    expect([...knownRecords(withUnknown(4, [])).kept]).toEqual([0, 1, 2, 3]);
  });

  it('leaves only known pairs, and no record gone that could come back', () => {
    const graphs = fc.array(
      fc.tuple(fc.nat(8), fc.nat(8)).filter(([i, j]) => i !== j),
      { maxLength: 25 },
    );
    fc.assert(
      fc.property(graphs, (pairs) => {
        const matrix = withUnknown(9, pairs);
        const { kept, setAside } = knownRecords(matrix);
        const unknownWithin = (rows: readonly number[]) =>
          rows.some((i) => rows.some((j) => Number.isNaN(dissimilarityAt(matrix, i, j))));
        expect(unknownWithin([...kept])).toBe(false);
        for (const { row } of setAside) expect(unknownWithin([...kept, row])).toBe(true);
        expect(kept.length + setAside.length).toBe(9);
      }),
      { seed: 3 },
    );
  });
});
