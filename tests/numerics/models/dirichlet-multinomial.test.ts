import { describe, expect, it } from 'vitest';
import { pooledShares } from '../../../src/numerics/models/dirichlet-multinomial.ts';
import { reference } from '../../references/reference.ts';
import { available, expectClose } from '../close.ts';

const r = reference<{
  readonly cases: Record<
    string,
    { counts: number[][]; concentration: number; common: number[]; shares: number[][] }
  >;
}>('pooled-shares');

describe(`shares of many groups by the Dirichlet-multinomial, as ${r.tool} (${r.version}) on its likelihood`, () => {
  it.each(Object.entries(r.cases))('%s', (_, { counts, concentration, common, shares }) => {
    const found = available(pooledShares(counts));
    // The optimiser of the reference stops where the likelihood is flat to its last digits.
    expectClose(found.concentration, concentration, 1e-5);
    found.common.forEach((share, kind) => {
      expectClose(share, common[kind], 1e-5);
    });
    found.shares.flat().forEach((share, at) => {
      expectClose(share, shares.flat()[at], 1e-5);
    });
  });

  it('groups that do not differ are one, however few their records', () => {
    const found = available(
      pooledShares([
        [2, 2],
        [20, 20],
        [1, 1],
        [6, 6],
      ]),
    );
    expect(found.concentration).toBe(Infinity);
    expect(found.shares).toEqual([
      [0.5, 0.5],
      [0.5, 0.5],
      [0.5, 0.5],
      [0.5, 0.5],
    ]);
  });

  it('draws small groups further than large ones, and always between raw and common', () => {
    const found = available(
      pooledShares([
        [3, 0],
        [60, 0],
        [5, 40],
        [30, 12],
        [8, 20],
      ]),
    );
    const [small, large] = [found.shares[0][0], found.shares[1][0]];
    expect(small).toBeLessThan(large);
    expect(large).toBeLessThan(1);
    expect(small).toBeGreaterThan(found.common[0]);
  });

  it('says why where nothing can be pooled', () => {
    expect(
      pooledShares([
        [1, 2],
        [3, 4],
      ]),
    ).toHaveProperty('why');
    expect(pooledShares([[1], [2], [3]])).toHaveProperty('why');
  });
});
