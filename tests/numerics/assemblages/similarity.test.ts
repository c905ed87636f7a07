import { describe, expect, it } from 'vitest';
import {
  assemblageSimilarity,
  type SimilarityCoefficient,
} from '../../../src/numerics/assemblages/similarity.ts';
import { reference } from '../../references/reference.ts';
import { expectClose } from '../close.ts';

interface Reference {
  dune: number[][];
  similarity: Record<SimilarityCoefficient, number[]>;
  diversity: Record<
    'richness' | 'shannon' | 'simpson' | 'evenness' | 'chao1' | 'rarefied50' | 'rarefied200',
    number
  >[] &
    { counts: number[] }[];
  groups: number[];
  bray: number[];
  permanova: Record<'f' | 'r2' | 'within' | 'total' | 'p', number>;
  dispersion: { distances: number[]; f: number; means: number[] };
  anosim: Record<'r' | 'p', number>;
  mantel: {
    species: number[];
    chemistry: number[];
    ph: number[];
    r: number;
    p: number;
    rank: number;
    partial: number;
    partialP: number;
  };
}

const r = reference<Reference>('assemblages');

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
