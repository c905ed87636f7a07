import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { serializeResults } from '../../src/study/results/json.ts';
import type { Results } from '../../src/study/results/results.ts';

const written = (value: unknown) => serializeResults(value as Results);

describe('results as canonical JSON', () => {
  it('keep full double precision', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ noNaN: true, noDefaultInfinity: true })), (numbers) => {
        const back = JSON.parse(written({ numbers })) as { numbers: number[] };
        expect(back.numbers).toEqual(numbers.map((value) => value + 0));
      }),
    );
  });

  it('are the same value as plain JSON would give', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (value) => {
        expect(JSON.parse(written(value))).toEqual(JSON.parse(JSON.stringify(value)));
      }),
    );
  });

  it('write infinite ends as texts', () => {
    expect(written({ rows: [[1, Infinity, -Infinity]] })).toContain('[1, "Infinity", "-Infinity"]');
  });

  it('refuse a NaN and name its place, since a gap must be said in words', () => {
    expect(() => written({ tables: { a: { rows: [[1], [Number.NaN]] } } })).toThrow('$.tables.a.rows[1][0]');
  });

  it('refuse what JSON cannot hold', () => {
    expect(() => written({ a: new Map() })).toThrow('$.a');
    expect(() => written({ a: () => 1 })).toThrow('$.a');
  });

  it('write typed arrays as lists and leave out what is undefined', () => {
    expect(JSON.parse(written({ a: Float64Array.of(0.1, 2), b: undefined }))).toEqual({ a: [0.1, 2] });
  });
});
