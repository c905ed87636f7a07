import { describe, expect, it } from 'vitest';
import {
  assemblageSimilarity,
  type SimilarityCoefficient,
} from '../../../src/numerics/assemblages/similarity.ts';
import { r } from '../assemblages-values.ts';
import { expectClose } from '../close.ts';

describe(`likeness of assemblages, as ${r.tool} ${r.version}`, () => {
  it.each(Object.entries(r.similarity) as [SimilarityCoefficient, number[]][])(
    '%s',
    (coefficient, expected) => {
      const found = assemblageSimilarity(r.dune, coefficient);
      expect(found.values.length).toBe(expected.length);
      found.values.forEach((value, pair) => {
        expect(Math.abs(value - expected[pair])).toBeLessThan(1e-9 * Math.max(1, expected[pair]));
      });
    },
  );

  // Robinson 1951, Am. Antiquity 16:293, the definition: 200 minus the summed differences of percentages.
  it('Brainerd-Robinson by hand: (10, 30, 60) and (20, 20, 60) are 180 alike, disjoint ones 0', () => {
    expectClose(
      assemblageSimilarity(
        [
          [10, 30, 60],
          [20, 20, 60],
        ],
        'brainerd-robinson',
      ).values[0],
      180,
    );
    expectClose(
      assemblageSimilarity(
        [
          [10, 30, 60],
          [5, 2, 3],
        ],
        'brainerd-robinson',
      ).values[0],
      120,
    );
    expect(
      assemblageSimilarity(
        [
          [1, 0],
          [0, 4],
        ],
        'brainerd-robinson',
      ).values[0],
    ).toBe(0);
  });

  it('an empty assemblage is unknown, not unlike', () => {
    expect(
      assemblageSimilarity(
        [
          [1, 2],
          [0, 0],
        ],
        'jaccard',
      ).values[0],
    ).toBeNaN();
  });
});
