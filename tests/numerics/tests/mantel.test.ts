import { describe, expect, it } from 'vitest';
import { mantelTest } from '../../../src/numerics/tests/mantel.ts';
import { condensed, expectSameP, options, r } from '../assemblages-values.ts';
import { available, expectClose } from '../close.ts';

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
