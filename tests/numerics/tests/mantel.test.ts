import { describe, expect, it } from 'vitest';
import type { SimilarityCoefficient } from '../../../src/numerics/assemblages/similarity.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { mantelTest } from '../../../src/numerics/tests/mantel.ts';
import { reference } from '../../references/reference.ts';
import { available, expectClose } from '../close.ts';

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

const condensed = (values: number[]) => ({
  n: Math.round((1 + Math.sqrt(1 + 8 * values.length)) / 2),
  values: Float64Array.from(values),
});

const options = (relabellings = 1999) => ({ random: createRandom(17), relabellings });

/** Two resampled p values of the same test differ by chance alone; six standard errors of the smaller run. */
const expectSameP = (p: number, expected: number, relabellings = 1999) => {
  expect(Math.abs(p - expected)).toBeLessThan(
    6 * Math.sqrt(Math.max(expected, 1 / relabellings) / relabellings),
  );
};

describe(`distances against distances, as ${r.tool}`, () => {
  const species = condensed(r.mantel.species);
  const chemistry = condensed(r.mantel.chemistry);

  it('Mantel', () => {
    const found = available(mantelTest(species, chemistry, options()));
    expectClose(found.statistic, r.mantel.r);
    expectSameP(found.p, r.mantel.p);
  });

  it('on ranks', () => {
    expectClose(
      available(mantelTest(species, chemistry, { ...options(99), correlation: 'rank' })).statistic,
      r.mantel.rank,
    );
  });

  it('partial', () => {
    const found = available(
      mantelTest(species, chemistry, { ...options(), apartFrom: condensed(r.mantel.ph) }),
    );
    expectClose(found.statistic, r.mantel.partial);
    expectSameP(found.p, r.mantel.partialP);
  });

  it('needs four objects', () => {
    expect(mantelTest(condensed([1, 2, 3]), condensed([1, 2, 3]), options())).toEqual({
      why: 'a comparison of distances needs 4 objects, not 3',
    });
  });
});
