import { expect } from 'vitest';
import type { SimilarityCoefficient } from '../../src/numerics/assemblages/similarity.ts';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { reference } from '../references/reference.ts';

/** What R's vegan gives for likeness, diversity and tests on distances; made by the script beside the values. */
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

export const r = reference<Reference>('assemblages');

export const condensed = (values: number[]) => ({
  n: Math.round((1 + Math.sqrt(1 + 8 * values.length)) / 2),
  values: Float64Array.from(values),
});

export const options = (relabellings = 1999) => ({ random: createRandom(17), relabellings });

/** Two resampled p values of the same test differ by chance alone; six standard errors of the smaller run. */
export const expectSameP = (p: number, expected: number, relabellings = 1999) => {
  expect(Math.abs(p - expected)).toBeLessThan(
    6 * Math.sqrt(Math.max(expected, 1 / relabellings) / relabellings),
  );
};
