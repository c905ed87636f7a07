import { describe, expect, it } from 'vitest';
import { kindBits, numberBits } from '../../../src/numerics/grouping/code-length.ts';
import { reference } from '../../references/reference.ts';
import { available, expectClose } from '../close.ts';

const r = reference<{
  bits: {
    fold: number[];
    groups: number[];
    kinds: number[];
    kindBits: number;
    values: number[];
    numberBits: number;
  };
}>('typology');
const { fold, groups, kinds, values, ...bits } = r.bits;
const nobody = groups.map(() => 0);

describe(`bits of held-out records, as ${r.tool}`, () => {
  it('kinds', () => expectClose(kindBits(kinds, 5, groups, fold), bits.kindBits));
  it('numbers', () => expectClose(available(numberBits(values, groups, fold)), bits.numberBits));
});

describe('bits', () => {
  it('fall where the groups say something of the attribute', () => {
    expect(available(numberBits(values, groups, fold))).toBeLessThan(
      available(numberBits(values, nobody, fold)) - 100,
    );
    expect(kindBits(kinds, 5, groups, fold)).toBeLessThan(kindBits(kinds, 5, nobody, fold));
  });

  it('rise where a grouping is finer than the records bear', () => {
    const finer = groups.map((_, i) => i % 50);
    expect(kindBits(kinds, 5, finer, fold)).toBeGreaterThan(kindBits(kinds, 5, nobody, fold));
  });

  it('cost nothing where nothing is recorded', () => {
    expect(kindBits([-1, -1, -1], 2, [0, 0, 1], [0, 1, 2])).toBe(0);
    expect(numberBits([Number.NaN, Number.NaN], [0, 1], [0, 1])).toBe(0);
  });

  it('tell a first kind of two among unknown groups with one bit', () => {
    expect(kindBits([0, 1], 2, [0, 1], [0, 1])).toBeCloseTo(2, 12);
  });

  it('of numbers without spread are refused', () => {
    expect(numberBits([3, 3, 3, 3], [0, 0, 1, 1], [0, 1, 0, 1])).toEqual({
      why: 'too few records, or no spread, to tell by',
    });
  });
});
