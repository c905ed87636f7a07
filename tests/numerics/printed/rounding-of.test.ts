import { describe, expect, it } from 'vitest';
import { printedNumber } from '../../../src/numerics/printed/printed-number.ts';
import { roundingsOf } from '../../../src/numerics/printed/rounding-of.ts';

describe('how a computed number was rounded', () => {
  // By hand, after the rules of ISO 80000-1, Annex B (from memory).
  it.each([
    [12.25, '12.3', ['half-up']],
    [12.25, '12.2', ['half-even', 'truncated']],
    [12.35, '12.4', ['half-up', 'half-even']],
    [0.1 + 0.2, '0.3', ['half-up', 'half-even', 'truncated']],
    [1.005, '1.01', ['half-up']],
    [12.39, '12.3', ['truncated']],
    [12.39, '12.5', []],
    [-12.25, '-12.3', ['half-up']],
    [-0.04, '0.0', ['half-up', 'half-even', 'truncated']],
    [0.29 * 100, '28', ['truncated']],
  ])('%d as %s: %j', (value, text, roundings) => {
    expect(roundingsOf(value, printedNumber(text)!)).toEqual(roundings);
  });

  it('takes more printed digits than a double holds as agreeing within its noise, and no further', () => {
    expect(roundingsOf(23.089305040017262, printedNumber('23.089305040017261')!)).not.toEqual([]);
    expect(roundingsOf(23.089305040017262, printedNumber('23.089305050017262')!)).toEqual([]);
  });
});
