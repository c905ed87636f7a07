import { describe, expect, it } from 'vitest';
import { count, decimalsFor, percent, readable, readableP } from '../../src/app/parts/numbers.ts';

describe('numbers on a screen', () => {
  it.each([
    [12, '12'],
    [3.1467, '3.15'],
    [0.04567, '0.046'],
    [-0.5, '−0.500'],
    [123.456, '123.5'],
    [Number.POSITIVE_INFINITY, 'no upper limit'],
  ])('%s is written %s', (value, text) => {
    expect(readable(value)).toBe(text);
  });

  it('never writes a minus before a zero', () => {
    expect(readable(-0.0001, 2)).toBe('0.00');
  });

  it('keeps the decimals equal down a column', () => {
    const decimals = decimalsFor([1.5, 22.25, 3]);
    expect([1.5, 22.25, 3].map((value) => readable(value, decimals))).toEqual(['1.5', '22.3', '3.0']);
  });

  it('never prints a p value as zero', () => {
    expect(readableP(1e-12)).toBe('< 0.001');
    expect(readableP(0.0312)).toBe('0.031');
    expect(readableP(0.5)).toBe('0.50');
  });

  it('does not round a small share to nothing', () => {
    expect(percent(0.001)).toBe('< 1 %');
    expect(percent(0)).toBe('0 %');
    expect(percent(0.336)).toBe('34 %');
  });

  it('counts in words', () => {
    expect(count(1, 'entry', 'entries')).toBe('1 entry');
    expect(count(2, 'entry', 'entries')).toBe('2 entries');
    expect(count(12345, 'row')).toBe('12\u202f345 rows');
  });
});
