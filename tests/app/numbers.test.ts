import { describe, expect, it } from 'vitest';
import { count, percent, readable } from '../../src/app/parts/numbers.ts';

describe('numbers on a screen', () => {
  it.each([
    [12, '12'],
    [1.7, '1.7'],
    [11.8110236, '11.81'],
    [0.3937, '0.3937'],
    [-0.5, '−0.5'],
    [Number.POSITIVE_INFINITY, 'without upper bound'],
  ])('%s is written %s, without digits that were not measured', (value, text) => {
    expect(readable(value)).toBe(text);
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
