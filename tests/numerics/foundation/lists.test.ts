import { describe, expect, it } from 'vitest';
import { append, greatest, least } from '../../../src/numerics/foundation/lists.ts';

describe('lists of any length', () => {
  it('give what Math gives of few values', () => {
    for (const values of [[], [3], [2, -1, 7], [Number.NaN, 1], [0, -0]])
      expect([least(values), greatest(values)]).toEqual([Math.min(...values), Math.max(...values)]);
  });

  it('hold more than an engine takes as arguments', () => {
    const many = Float64Array.from({ length: 1_000_000 }, (_, i) => i);
    expect(() => Math.max(...many)).toThrow(RangeError);
    expect([least(many), greatest(many)]).toEqual([0, 999_999]);
    const list: number[] = [];
    append(list, many);
    expect(list.length).toBe(1_000_000);
  });
});
