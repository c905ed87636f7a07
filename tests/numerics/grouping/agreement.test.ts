import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  adjustedMutualInformation,
  adjustedRand,
  contingency,
  information,
  matchGroups,
  vMeasure,
} from '../../../src/numerics/grouping/agreement.ts';
import { reference } from '../../references/reference.ts';

interface AgreementCase {
  first: number[];
  second: number[];
  adjustedRand: number;
  mutualInformation: number;
  adjustedMutualInformation: number;
  homogeneity: number;
  completeness: number;
  vMeasure: number;
}
const { agreement } = reference<{ agreement: AgreementCase[] }>('grouping-python');

describe('agreement of two groupings', () => {
  it.each(agreement.map((a, i): [number, AgreementCase] => [i, a]))(
    'gives every index of scikit-learn on case %i',
    (_, expected) => {
      const table = contingency(expected.first, expected.second);
      expect(adjustedRand(table)).toBeCloseTo(expected.adjustedRand, 10);
      expect(adjustedMutualInformation(table)).toBeCloseTo(expected.adjustedMutualInformation, 9);
      const v = vMeasure(table);
      const mutual = information(table);
      if ('why' in v || 'why' in mutual) throw new Error('must be computable');
      expect(mutual.mutual).toBeCloseTo(expected.mutualInformation, 10);
      expect(v.homogeneity).toBeCloseTo(expected.homogeneity, 10);
      expect(v.completeness).toBeCloseTo(expected.completeness, 10);
      expect(v.vMeasure).toBeCloseTo(expected.vMeasure, 10);
    },
  );

  it('gives 266/851 on the published table 1 1 0 / 1 2 1 / 0 0 4 (Yeung & Ruzzo 2001)', () => {
    expect(
      adjustedRand(contingency([0, 0, 1, 1, 1, 1, 2, 2, 2, 2], [0, 1, 0, 1, 1, 2, 2, 2, 2, 2])),
    ).toBeCloseTo(266 / 851, 14);
  });

  it('does not change when either grouping is renumbered or the two are exchanged', () => {
    const labels = fc.array(fc.tuple(fc.nat(3), fc.nat(3)), { minLength: 3, maxLength: 40 });
    fc.assert(
      fc.property(labels, (both) => {
        const first = both.map((pair) => pair[0]);
        const second = both.map((pair) => pair[1]);
        const turned = first.map((label) => 3 - label);
        const table = contingency(first, second);
        const other = contingency(second, turned);
        expect(adjustedRand(other)).toBeCloseTo(adjustedRand(table) as number, 12);
        expect(adjustedMutualInformation(other)).toBeCloseTo(adjustedMutualInformation(table) as number, 9);
      }),
      { seed: 4 },
    );
  });

  it('leaves out records that either grouping does not place, and says so when too few are left', () => {
    expect(contingency([0, 1, -1, 1], [0, 1, 1, -1]).n).toBe(2);
    expect(adjustedRand(contingency([0, -1], [-1, 0]))).toEqual({
      why: expect.stringContaining('fewer than two'),
    });
    expect(() => contingency([0], [0, 1])).toThrow(/same records/);
  });

  it('pairs kinds with groups one to one, the largest common count first', () => {
    const table = contingency([0, 0, 0, 1, 1, 2], [1, 1, 0, 0, 0, 1]);
    expect([...matchGroups(table)]).toEqual([1, 0, -1]);
  });
});
