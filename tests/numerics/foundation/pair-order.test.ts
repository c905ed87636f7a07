import fc from 'fast-check';
import { expect, it } from 'vitest';
import { orderOfPairs } from '../../../src/numerics/foundation/pair-order.ts';
import { midranks } from '../../../src/numerics/foundation/ranks.ts';

const few = fc.array(fc.tuple(fc.integer({ min: -3, max: 3 }), fc.double({ min: -2, max: 2, noNaN: true })), {
  maxLength: 40,
});

it('pairs come in the order in which comparing them one by one puts them', () => {
  fc.assert(
    fc.property(few, fc.boolean(), (pairs, coarse) => {
      const first = Float64Array.from(pairs, ([a]) => a / 2);
      const second = Float64Array.from(pairs, ([, b]) => (coarse ? Math.round(b) : b));
      const plainly = [...pairs.keys()].sort((a, b) => first[a]! - first[b]! || second[a]! - second[b]!);
      expect([...orderOfPairs(first, second)]).toEqual(plainly);
    }),
  );
});

// The definition itself (Kruskal & Wallis 1952): how many are smaller, and half of those that are equal.
it('mid-ranks are one more than the values below, and half of the other equal ones', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: -4, max: 4 }), { maxLength: 30 }), (values) => {
      const { ranks, ties, tieSum } = midranks(values);
      values.forEach((value, at) => {
        const below = values.filter((other) => other < value).length;
        const equal = values.filter((other) => other === value).length;
        expect(ranks[at]).toBe(below + (equal + 1) / 2);
      });
      const sizes = [...new Set(values)].map((value) => values.filter((other) => other === value).length);
      expect([...ties].sort()).toEqual(sizes.filter((size) => size > 1).sort());
      expect(tieSum).toBe(sizes.reduce((sum, t) => sum + t ** 3 - t, 0));
    }),
  );
});
